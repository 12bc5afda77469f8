import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Browser, BrowserContext } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openBrowser } from '../support/browser.ts'
import { benchStands, held, layDish, select, sheetText, visit, visitor } from './page.ts'

const home = fileURLToPath(new URL('../..', import.meta.url))
const folder = mkdtempSync(join(tmpdir(), 'underlid-keeping-'))
let browser: Browser
let cook: BrowserContext
let port: number
let server: ChildProcess
let address: string

/** The program itself, so that it can be killed like one. */
async function start(): Promise<void> {
  server = spawn(
    process.execPath,
    ['--import', 'tsx', 'src/server/main.ts', '--data', folder, '--port', String(port)],
    {
      cwd: home,
      stdio: 'ignore',
    },
  )
  for (const patience = Date.now() + 30_000; Date.now() < patience && server.exitCode === null; ) {
    const answer = await fetch(`${address}/api/health`).catch(() => null)
    if (answer?.ok) return
    await new Promise((resolve) => setTimeout(resolve, 100))
  }
  throw new Error('The server did not start.')
}

async function kill(): Promise<void> {
  if (server.exitCode !== null || server.signalCode !== null) return
  const ended = new Promise((resolve) => server.once('exit', resolve))
  server.kill('SIGKILL')
  await ended
}

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const probe = createServer().once('error', reject)
    probe.listen(0, '127.0.0.1', () => {
      const found = probe.address()
      probe.close(() => resolve(typeof found === 'object' && found ? found.port : 0))
    })
  })

beforeAll(async () => {
  port = await freePort()
  address = `http://127.0.0.1:${port}`
  ;[browser] = await Promise.all([openBrowser(), start()])
  cook = await visitor(browser)
})
afterAll(async () => {
  await browser?.close()
  await kill()
  rmSync(folder, { recursive: true, force: true })
})

describe('nothing typed is lost', () => {
  it('when the page is loaded again in the middle of a word', async () => {
    const bench = await layDish(address)
    const { page, end } = await visit(cook, bench)
    await benchStands(page)
    await select(page, '300 g')
    await page.keyboard.type('350 gra')
    await page.reload()
    await benchStands(page)
    expect(await sheetText(page)).toContain('350 gra turnips')
    await expect.poll(() => held(bench), { timeout: 8000 }).toContain('350 gra turnips')
    await end()
  })

  it('when the server is killed: what stays open is sent when it is back, what was closed when it is opened', async () => {
    const [open, closed] = [await layDish(address), await layDish(address)]
    const [one, other] = [await visit(cook, open), await visit(cook, closed)]
    await Promise.all([benchStands(one.page), benchStands(other.page)])
    await kill()

    await select(one.page, '180 ml')
    await one.page.keyboard.type('175 ml')
    await one.page.getByText('kept on this device; the server does not answer').waitFor()
    await select(other.page, '900 g')
    await other.page.keyboard.type('850 g')
    await other.page.goto('about:blank')

    await start()
    await one.page.getByText('revision 1 and changes, saved').waitFor()
    expect(await held(open)).toContain('175 ml light stock')
    await other.page.goto(closed)
    await benchStands(other.page)
    expect(await sheetText(other.page)).toContain('850 g boneless lamb')
    await other.page.getByText('had not reached the server').waitFor()
    await expect.poll(() => held(closed), { timeout: 8000 }).toContain('850 g boneless lamb')
    await Promise.all([one.end(), other.end()])
  })

  it('when two windows write at the same time', async () => {
    const bench = await layDish(address)
    const one = await visit(cook, bench)
    const other = await visit(cook, bench)
    await Promise.all([benchStands(one.page), benchStands(other.page)])
    await select(one.page, '300 g')
    await one.page.keyboard.type('310 g')
    await expect.poll(() => held(bench), { timeout: 8000 }).toContain('310 g turnips')
    await select(other.page, '300 g')
    await other.page.keyboard.type('320 g')
    await other.page.getByText('was changed in another window at the same time').waitFor()
    await expect.poll(() => held(bench), { timeout: 8000 }).toContain('320 g turnips')
    await other.page
      .getByRole('status')
      .getByRole('link', { name: /revision \d/ })
      .click()
    await other.page.locator('.revisions-sheet').getByText('310 g turnips').waitFor()
    await Promise.all([one.end(), other.end()])
  })
})
