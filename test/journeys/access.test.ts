import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openBrowser, openWorkbench, type Workbench } from '../support/browser.ts'
import { benchStands, layDish, visit, visitor } from './page.ts'

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
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe)
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

/** The same page by day and by night. */
async function findings(page: Page): Promise<string[]> {
  const found: string[] = []
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    found.push(...(await violations(page)).map((line) => `${colorScheme}: ${line}`))
  }
  return found
}

describe('axe-core finds nothing', () => {
  it('on the bench, among the revisions and among the dishes, light and dark', async () => {
    const { page, complaints } = await visit(await visitor(browser), await layDish(workbench.address))
    await benchStands(page)
    await page.locator('.margin .note').first().waitFor()
    expect(await findings(page)).toEqual([])
    await page.getByRole('link', { name: 'Revisions' }).click()
    await page.locator('.revisions-sheet').waitFor()
    expect(await findings(page)).toEqual([])
    await page.getByRole('link', { name: 'Dishes' }).click()
    await page.locator('.contents-line').first().waitFor()
    expect(await findings(page)).toEqual([])
    expect(complaints).toEqual([])
  })

  it('in a hand, with the pot closed and open; and nothing runs out sideways, down to 320 px', async () => {
    const hand = await visitor(browser, { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })
    const { page, complaints } = await visit(hand, await layDish(workbench.address))
    await benchStands(page)
    await page.locator('.fold .note').first().waitFor()
    expect(await findings(page)).toEqual([])
    await page.getByRole('button', { name: 'Open the pot' }).click()
    await page.locator('.bar-panel svg.glass-pot').waitFor()
    expect(await findings(page)).toEqual([])

    await page.setViewportSize({ width: 320, height: 700 })
    expect(await sideways(page)).toBe(0)
    await page.getByRole('button', { name: 'Close the pot' }).click()
    expect(await sideways(page)).toBe(0)
    await page.getByRole('link', { name: 'Revisions' }).click()
    await page.locator('.revisions-sheet').waitFor()
    expect(await sideways(page)).toBe(0)
    await page.getByRole('link', { name: 'Dishes' }).click()
    await page.locator('.contents-line').first().waitFor()
    expect(await sideways(page)).toBe(0)
    expect(complaints).toEqual([])
  })
})

describe('the light', () => {
  it('is chosen in words and kept', async () => {
    const { page } = await visit(await visitor(browser, { colorScheme: 'light' }), workbench.address)
    const ground = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)
    await page.locator('.contents-line').first().waitFor()
    const light = await ground()
    await page.getByText('dark', { exact: true }).click()
    const dark = await ground()
    expect(dark).not.toBe(light)
    await page.reload()
    await page.locator('.contents-line').first().waitFor()
    expect(await ground()).toBe(dark)
  })
})
