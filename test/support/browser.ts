import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Browser, chromium } from 'playwright-core'
import { findChromium } from '../../scripts/lib-chromium.mjs'
import { type Serving, serve } from '../../src/server/index.ts'

const flags = [
  // Tests may run as root, where the sandbox cannot.
  '--no-sandbox',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-dev-shm-usage',
  '--disable-extensions',
  '--disable-gpu',
  '--disable-sync',
  '--no-default-browser-check',
  '--no-first-run',
  // Letters of the same width on every machine.
  '--font-render-hinting=none',
  // A journey that needs the outside world is broken: no name leads there.
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost',
]

/** A real browser without a window. Close it in `afterAll`. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = findChromium()
  if (executablePath === null) {
    throw new Error(
      'No Chromium was found: run the tests with "npm test", which says how to get one, or set CHROMIUM_PATH.',
    )
  }
  return chromium.launch({ executablePath, args: flags })
}

export interface Workbench extends Serving {
  /** Stops, and starts again on the same dishes and the same port. */
  restart(): Promise<void>
  /** Stops and removes the dishes. */
  end(): Promise<void>
}

/** The built page, served on a free port from a fresh folder with the three demonstration dishes. */
export async function openWorkbench(): Promise<Workbench> {
  const index = fileURLToPath(new URL('../../dist/web/index.html', import.meta.url))
  if (!existsSync(index)) throw new Error('The page has not been built: run "npm test", or "npm run build" first.')
  const folder = mkdtempSync(join(tmpdir(), 'underlid-journey-'))
  const at = { folder }
  let serving = await serve({ at, port: 0 })
  const { address } = serving
  return {
    address,
    get store() {
      return serving.store
    },
    close: () => serving.close(),
    restart: async () => {
      await serving.close()
      serving = await serve({ at, port: Number(new URL(address).port) })
    },
    end: async () => {
      await serving.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
