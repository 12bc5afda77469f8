import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { findChromium } from '../../scripts/lib-chromium.mjs'

const folder = mkdtempSync(join(tmpdir(), 'underlid-chromium-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function program(path: string, exit: number): string {
  const file = join(folder, path)
  mkdirSync(join(file, '..'), { recursive: true })
  writeFileSync(file, `#!/bin/sh\nexit ${exit}\n`)
  chmodSync(file, 0o755)
  return file
}

describe.skipIf(process.platform === 'win32')('the browser', () => {
  it('is the one that CHROMIUM_PATH names, and no other', () => {
    const named = program('named/browser', 0)
    const inPath = program('path/chromium', 0)
    const PATH = join(inPath, '..')
    expect(findChromium({ CHROMIUM_PATH: named, PATH })).toBe(named)
    expect(findChromium({ CHROMIUM_PATH: join(folder, 'gone'), PATH })).toBeNull()
  })

  it('is the first in PATH that runs', () => {
    const stub = program('stub/chromium', 1)
    const real = program('real/google-chrome', 0)
    expect(findChromium({ PATH: [join(stub, '..'), join(real, '..')].join(':') })).toBe(real)
  })
})
