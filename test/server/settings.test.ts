import { describe, expect, it } from 'vitest'
import { SettingsError, settings } from '../../src/server/index.ts'

const home = { UNDERLID_DATA: '/kitchen' }

describe('what is asked for', () => {
  it('is the embedded database on port 7413, if nothing is said', () => {
    expect(settings([], home)).toEqual({ at: { folder: '/kitchen' }, port: 7413 })
  })

  it('is on the command line before it is in the environment', () => {
    const environment = { ...home, PORT: '8000' }
    expect(settings([], environment)?.port).toBe(8000)
    expect(settings(['--port', '9000', '--data', '/other'], environment)).toEqual({
      at: { folder: '/other' },
      port: 9000,
    })
  })

  it('is the PostgreSQL of DATABASE_URL, unless a folder is typed', () => {
    const environment = { ...home, DATABASE_URL: 'postgresql://db/kitchen' }
    expect(settings([], environment)?.at).toEqual({ url: 'postgresql://db/kitchen' })
    expect(settings(['--data', '/other'], environment)?.at).toEqual({ folder: '/other' })
    expect(settings([], { ...home, DATABASE_URL: '' })?.at).toEqual({ folder: '/kitchen' })
  })

  it('may be help', () => {
    expect(settings(['--help'], home)).toBeNull()
    expect(settings(['-h'], home)).toBeNull()
  })

  it.each([
    [['--prot', '1'], "'--prot'"],
    [['serve'], "'serve'"],
    [['--port'], '--port'],
    [['--port', 'eighty'], '"eighty"'],
    [['--port', '65536'], '"65536"'],
    [['--port', ''], '""'],
  ])('%j cannot be understood', (args, words) => {
    expect(() => settings(args, home)).toThrow(SettingsError)
    expect(() => settings(args, home)).toThrow(words)
  })

  it('names PORT when that is what is wrong', () => {
    expect(() => settings([], { ...home, PORT: '-1' })).toThrow('PORT is "-1"')
  })
})
