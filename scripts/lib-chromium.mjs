// Where the browser for the journeys is.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome']

const usualPlaces = {
  linux: ['/usr/bin', '/usr/local/bin', '/snap/bin'].flatMap((folder) => names.map((name) => join(folder, name))),
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ],
  win32: ['ProgramFiles', 'ProgramFiles(x86)', 'LOCALAPPDATA']
    .map((name) => process.env[name])
    .filter(Boolean)
    .map((folder) => join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe')),
}

/** Some systems put a stub in its place that only tells how to install it. */
function runs(file) {
  if (process.platform === 'win32') return existsSync(file)
  return spawnSync(file, ['--version'], { timeout: 20_000, stdio: 'ignore' }).status === 0
}

/** Path of a browser that runs, or null. CHROMIUM_PATH counts before all others, and alone. */
export function findChromium(environment = process.env) {
  const named = environment.CHROMIUM_PATH
  if (named) return existsSync(named) && runs(named) ? named : null
  const suffix = process.platform === 'win32' ? '.exe' : ''
  const inPath = (environment.PATH ?? '')
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => names.map((name) => join(folder, name + suffix)))
  const places = [...inPath, ...(usualPlaces[process.platform] ?? [])]
  return [...new Set(places)].find((file) => existsSync(file) && runs(file)) ?? null
}
