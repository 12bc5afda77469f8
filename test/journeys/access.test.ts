import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openBrowser, openWorkbench, type Workbench } from '../support/browser.ts'
import { benchStands, layDish, visit } from './page.ts'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

let browser: Browser
let workbench: Workbench

beforeAll(async () => {
  ;[browser, workbench] = await Promise.all([openBrowser(), openWorkbench()])
})
afterAll(async () => {
  await browser?.close()
  await workbench?.end()
})

/** What axe-core finds against WCAG 2.2 AA and its own good practice, as lines that can be read. */
async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axe)
  return page.evaluate(async () => {
    // @ts-expect-error the page has axe now
    const { violations } = await window.axe.run(document, { resultTypes: ['violations'] })
    return violations.flatMap((rule: { id: string; nodes: { target: string[]; failureSummary: string }[] }) =>
      rule.nodes.map((node) => `${rule.id}: ${node.target.join(' ')}: ${node.failureSummary}`),
    )
  })
}

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }

describe.each(['light', 'dark'] as const)('in the %s axe-core finds nothing', (colorScheme) => {
  it('on the bench, among the revisions and among the dishes', async () => {
    const { page, complaints, end } = await visit(browser, await layDish(workbench.address), { colorScheme })
    await benchStands(page)
    await page.locator('.margin .note').first().waitFor()
    expect(await violations(page)).toEqual([])
    await page.getByRole('link', { name: 'Revisions' }).click()
    await page.locator('.revisions-sheet').waitFor()
    expect(await violations(page)).toEqual([])
    await page.getByRole('link', { name: 'Dishes' }).click()
    await page.locator('.contents-line').first().waitFor()
    expect(await violations(page)).toEqual([])
    expect(complaints).toEqual([])
    await end()
  })

  it('on the bench in a hand, with the pot closed and open', async () => {
    const { page, complaints, end } = await visit(browser, await layDish(workbench.address), { colorScheme, ...phone })
    await benchStands(page)
    await page.locator('.fold .note').first().waitFor()
    expect(await violations(page)).toEqual([])
    await page.getByRole('button', { name: 'Open the pot' }).click()
    await page.locator('.bar-panel svg.glass-pot').waitFor()
    expect(await violations(page)).toEqual([])
    expect(complaints).toEqual([])
    await end()
  })
})

describe('on a narrow page', () => {
  it('nothing runs out sideways, down to 320 px', async () => {
    const narrow = { ...phone, viewport: { width: 320, height: 700 } }
    const { page, end } = await visit(browser, await layDish(workbench.address), narrow)
    await benchStands(page)
    await page.locator('.fold .note').first().waitFor()
    expect(await sideways(page)).toBe(0)
    await page.getByRole('button', { name: 'Open the pot' }).click()
    await page.locator('.bar-panel svg.glass-pot').waitFor()
    expect(await sideways(page)).toBe(0)
    await page.getByRole('button', { name: 'Close the pot' }).click()
    await page.getByRole('link', { name: 'Revisions' }).click()
    await page.locator('.revisions-sheet').waitFor()
    expect(await sideways(page)).toBe(0)
    await page.getByRole('link', { name: 'Dishes' }).click()
    await page.locator('.contents-line').first().waitFor()
    expect(await sideways(page)).toBe(0)
    await end()
  })
})

describe('the light', () => {
  it('is chosen in words and kept', async () => {
    const { page, end } = await visit(browser, workbench.address, { colorScheme: 'light' })
    const ground = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)
    await page.locator('.contents-line').first().waitFor()
    const light = await ground()
    await page.getByText('dark', { exact: true }).click()
    const dark = await ground()
    expect(dark).not.toBe(light)
    await page.reload()
    await page.locator('.contents-line').first().waitFor()
    expect(await ground()).toBe(dark)
    await end()
  })
})
