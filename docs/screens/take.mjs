// Takes the pictures of this folder from a running application:
//   node docs/screens/take.mjs http://127.0.0.1:7413
// Start it on a fresh data folder, so that the demonstration dishes stand as they came.
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'
import { findChromium } from '../../scripts/lib-chromium.mjs'

const here = dirname(fileURLToPath(import.meta.url))
const address = process.argv[2] ?? 'http://127.0.0.1:7413'
const desk = { width: 1440, height: 1000 }
const hand = { width: 390, height: 844 }
const pork = '/dishes/pork-shoulder-leeks-cider'
const beef = '/dishes/beef-tomato-sauce'

const pictures = [
  { name: 'bench-light', path: beef, size: desk },
  { name: 'bench-dark', path: pork, size: desk, colorScheme: 'dark' },
  { name: 'dishes', path: '/', size: desk },
  { name: 'revisions', path: `${pork}/revisions`, size: desk },
  { name: 'phone', path: beef, size: hand },
  { name: 'phone-open', path: pork, size: hand, colorScheme: 'dark', act: openPot },
]

async function openPot(page) {
  await page.getByRole('button', { name: 'Open the pot' }).click()
}

const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] })
for (const { name, path, size, colorScheme = 'light', act } of pictures) {
  const context = await browser.newContext({ viewport: size, colorScheme, deviceScaleFactor: size === hand ? 2 : 1 })
  await context.addInitScript(() => localStorage.setItem('underlid:been-here', 'yes'))
  const page = await context.newPage()
  await page.goto(address + path)
  const stands = path === '/' ? '.contents-line' : path.endsWith('revisions') ? '.revisions-sheet' : '.strip-cursor'
  await page.locator(stands).first().waitFor()
  await act?.(page)
  // Notes find their places once the faces are there.
  await page.evaluate(() => document.fonts.ready)
  await page.waitForTimeout(1500)
  await page.screenshot({ path: join(here, `${name}.png`) })
  await context.close()
}
await browser.close()
