import { describe, expect, it } from 'vitest'
import { dataFolder } from '../../src/store/index.ts'

describe('the folder for the data', () => {
  it('is the one that UNDERLID_DATA names, on every system', () => {
    for (const system of ['linux', 'darwin', 'win32']) {
      expect(dataFolder({ UNDERLID_DATA: '/kitchen', XDG_DATA_HOME: '/x' }, system, '/home/ann')).toBe('/kitchen')
    }
  })

  // XDG Base Directory Specification 0.8: $XDG_DATA_HOME, else ~/.local/share; relative paths are to be ignored.
  it('follows the XDG base directory specification on Linux', () => {
    expect(dataFolder({}, 'linux', '/home/ann')).toBe('/home/ann/.local/share/underlid')
    expect(dataFolder({ XDG_DATA_HOME: '/big/disk' }, 'linux', '/home/ann')).toBe('/big/disk/underlid')
    expect(dataFolder({ XDG_DATA_HOME: 'relative' }, 'linux', '/home/ann')).toBe('/home/ann/.local/share/underlid')
  })

  it('lies where applications keep their data on macOS and Windows', () => {
    expect(dataFolder({}, 'darwin', '/Users/ann')).toBe('/Users/ann/Library/Application Support/Underlid')
    expect(dataFolder({ LOCALAPPDATA: 'C:\\Users\\ann\\AppData\\Local' }, 'win32', 'C:\\Users\\ann')).toBe(
      'C:\\Users\\ann\\AppData\\Local\\Underlid',
    )
    expect(dataFolder({}, 'win32', 'C:\\Users\\ann')).toBe('C:\\Users\\ann\\AppData\\Local\\Underlid')
  })
})
