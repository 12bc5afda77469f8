// What `npm start` and `npm test` look at before they install or build.
import { mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { hashOf, isInstalled } from '../../scripts/prepare.mjs'
import { newEnough } from '../../scripts/prepare-node.mjs'

const folder = mkdtempSync(join(tmpdir(), 'underlid-prepare-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('Node', () => {
  it.each(['v20.19.0', 'v20.20.2', 'v22.0.0', 'v24.11.1'])('%s will do', (version) => {
    expect(newEnough(version)).toBe(true)
  })
  it.each(['v20.18.9', 'v18.20.8', 'v12.22.12', 'v0.10.48'])('%s is too old', (version) => {
    expect(newEnough(version)).toBe(false)
  })
})

describe('node_modules', () => {
  const lock = {
    '': { name: 'x' },
    'node_modules/a': { version: '1.0.0' },
    'node_modules/b': { version: '2.0.0', dev: true },
    'node_modules/other-system': { version: '3.0.0', optional: true },
  }
  const given = (name: string, installed: object | null) => {
    const at = join(folder, name)
    mkdirSync(join(at, 'node_modules'), { recursive: true })
    writeFileSync(join(at, 'package-lock.json'), JSON.stringify({ packages: lock }))
    const hidden = join(at, 'node_modules', '.package-lock.json')
    if (installed !== null) writeFileSync(hidden, JSON.stringify({ packages: installed }))
    return isInstalled(at)
  }
  const a = { 'node_modules/a': { version: '1.0.0' } }
  const b = { 'node_modules/b': { version: '2.0.0', dev: true } }

  it('is complete without the packages for other systems', () => {
    expect(given('complete', { ...a, ...b })).toBe(true)
  })
  it.each([
    ['missing', null],
    ['without the tools', a],
    ['older than the lock', { ...b, 'node_modules/a': { version: '0.9.0' } }],
    ['of another system', { ...a, ...b, 'node_modules/other-system': { version: '2.9.0' } }],
  ])('is to be installed when it is %s', (name, installed) => {
    expect(given(name, installed)).toBe(false)
  })
})

describe('the hash over the sources', () => {
  const file = (path: string, text: string) => {
    mkdirSync(join(folder, 'sources', path, '..'), { recursive: true })
    writeFileSync(join(folder, 'sources', path), text)
  }
  const hash = () => hashOf(join(folder, 'sources'), ['src/', 'config.json', 'not-there.json'])

  it('changes with every change of a file, its name or its place, and with nothing else', () => {
    file('src/a.ts', 'one')
    file('src/deep/b.ts', 'two')
    file('config.json', '{}')
    file('elsewhere.ts', 'x')
    const seen = [hash()]
    expect(hash()).toBe(seen[0])
    file('elsewhere.ts', 'y')
    expect(hash()).toBe(seen[0])
    file('src/deep/b.ts', 'three')
    seen.push(hash())
    file('src/c.ts', '')
    seen.push(hash())
    renameSync(join(folder, 'sources/src/c.ts'), join(folder, 'sources/src/deep/c.ts'))
    seen.push(hash())
    file('config.json', '{ }')
    seen.push(hash())
    file('not-there.json', '')
    seen.push(hash())
    expect(new Set(seen).size).toBe(6)
  })
})
