import type { Browser, BrowserContext } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openBrowser, openWorkbench, type Workbench } from '../support/browser.ts'
import { benchStands, layDish, press, reading, select, sheetText, visit, visitor } from './page.ts'

let browser: Browser
let workbench: Workbench
let cook: BrowserContext

beforeAll(async () => {
  ;[browser, workbench] = await Promise.all([openBrowser(), openWorkbench()])
  cook = await visitor(browser)
})
afterAll(async () => {
  await browser?.close()
  await workbench?.end()
})

describe('at the bench', () => {
  it('opens the first dish already cooked on the first visit, and the list of dishes from then on', async () => {
    const { page, complaints, end } = await visit(await browser.newContext(), workbench.address)
    await benchStands(page)
    expect(new URL(page.url()).pathname).toMatch(/^\/dishes\/.+/)
    expect(await page.locator('.readings dd').count()).toBe(4)
    expect(await page.getByRole('slider').getAttribute('aria-valuetext')).toMatch(/\d+ min: /)
    expect(await page.locator('.glass svg.drawing').count()).toBe(1)

    await page.goto(workbench.address)
    await page.getByRole('heading', { name: 'Dishes' }).waitFor()
    expect(await page.locator('.contents-title').count()).toBeGreaterThanOrEqual(3)
    expect(complaints).toEqual([])
    await end()
  })

  it('moves the margin of the base with the liquid, while it is being typed and without a button', async () => {
    const { page, complaints, end } = await visit(cook, await layDish(workbench.address))
    await benchStands(page)
    const before = await reading(page, 'base')
    expect(before).toBeGreaterThan(0)
    await select(page, '180 ml')
    await page.keyboard.type('20 ml')
    await expect.poll(() => reading(page, 'base'), { timeout: 8000 }).not.toBe(before)
    expect(complaints).toEqual([])
    await end()
  })

  it('edits the text by the cure of a note, and takes it back', async () => {
    const { page, end } = await visit(cook, await layDish(workbench.address))
    await benchStands(page)
    const cure = page.locator('.margin .note-cure').first()
    await cure.waitFor()
    const before = await sheetText(page)
    const label = await cure.textContent()
    await cure.click()
    await expect.poll(() => sheetText(page)).not.toBe(before)
    await page.getByRole('status').getByText(`Done: ${label}.`).waitFor()
    await page.getByRole('button', { name: 'Undo' }).click()
    expect(await sheetText(page)).toBe(before)
    await end()
  })

  it('keeps text and strip on one cursor', async () => {
    const { page, end } = await visit(cook, await layDish(workbench.address))
    await benchStands(page)
    const moment = page.getByRole('slider')
    await press(page, 'Brown half of the lamb')
    await expect.poll(() => moment.getAttribute('aria-valuetext')).toMatch(/brown/i)
    expect(await page.locator('.l-now').textContent()).toMatch(/^1\. /)

    await moment.focus()
    await page.keyboard.press('End')
    expect(await page.locator('.l-now').textContent()).toMatch(/^4\. /)
    // The bar moves at once, and so does the pot.
    const drawn = await page.locator('.glass svg desc').textContent()
    await page.keyboard.press('Home')
    await expect.poll(() => page.locator('.glass svg desc').textContent()).not.toBe(drawn)

    const strip = (await page.locator('.strip-cursor').boundingBox())!
    await page.mouse.move(strip.x + 10, strip.y + 100)
    await page.mouse.down()
    await page.mouse.move(strip.x + strip.width / 2, strip.y + 100, { steps: 4 })
    await page.mouse.up()
    const middle = Number(await moment.getAttribute('aria-valuenow'))
    const whole = Number(await moment.getAttribute('aria-valuemax'))
    expect(Math.abs(middle - whole / 2)).toBeLessThanOrEqual(1)
    await end()
  })

  it('can be worked with the keys alone', async () => {
    const { page, complaints, end } = await visit(cook, await layDish(workbench.address))
    await benchStands(page)
    const tabTo = async (name: string | RegExp) => {
      for (let n = 0; n < 40; n++) {
        await page.keyboard.press('Tab')
        const focused = await page.evaluate(() => {
          const element = document.activeElement
          return element?.getAttribute('aria-label') ?? element?.textContent ?? ''
        })
        if (typeof name === 'string' ? focused === name : name.test(focused)) return
      }
      throw new Error(`no way to ${name} by Tab`)
    }
    await tabTo('Pot')
    await page.keyboard.type('8-quart')
    await expect.poll(() => page.locator('.glass svg').getAttribute('aria-label')).toMatch(/8-quart/)
    await tabTo(/^Altitude/)
    await page.keyboard.type('5250 ft')
    await page.keyboard.press('Enter')
    expect(await page.getByLabel(/^Altitude/).inputValue()).toBe('1600 m')

    await tabTo('Manuscript')
    await page.keyboard.press('Control+Home')
    await page.keyboard.type('A ')
    expect(await sheetText(page)).toMatch(/^A Lamb shoulder/)
    await page.keyboard.press('Control+z')
    expect(await sheetText(page)).toMatch(/^Lamb shoulder/)
    await page.keyboard.press('F8')
    await page.locator('.note-open').first().waitFor()

    // Tab leaves the editor again: no trap.
    await tabTo('Moment')
    await page.keyboard.press('Home')
    const moment = page.getByRole('slider')
    const start = await moment.getAttribute('aria-valuetext')
    await page.keyboard.press('PageUp')
    expect(await moment.getAttribute('aria-valuetext')).not.toBe(start)
    await page.keyboard.press('ArrowRight')
    expect(Number(await moment.getAttribute('aria-valuenow'))).toBeGreaterThan(0)
    expect(complaints).toEqual([])
    await end()
  })

  it('begins a new dish on an empty sheet and cooks what is pasted', async () => {
    const { page, complaints, end } = await visit(cook, workbench.address)
    await page.getByRole('button', { name: 'Begin a new dish' }).click()
    await benchStands(page)
    await page.getByText('Paste a manuscript here').waitFor()
    await page.locator('.cm-content').focus()
    await page.keyboard.insertText(
      'Lentil soup\n\nServes 4\n\n250 g brown lentils\n1.2 litres water\n1 onion, chopped\n\n1. Put everything in a 6-quart electric pressure cooker. Lock the lid and cook at high pressure for 12 minutes. Release the pressure naturally.',
    )
    await expect.poll(() => page.getByRole('slider').getAttribute('aria-valuetext'), { timeout: 8000 }).toMatch(/min: /)
    await expect.poll(() => page.title()).toMatch(/^Lentil soup/)
    await page.getByText('no revision kept, saved').waitFor()

    await page.getByRole('button', { name: 'Keep this revision' }).click()
    await page.getByText('revision 1, saved').waitFor()
    await page.getByRole('link', { name: 'Dishes' }).click()
    await page.getByRole('link', { name: 'Lentil soup' }).waitFor()
    await page.getByRole('button', { name: 'Put away: Lentil soup' }).click()
    await page.getByText('is put away').waitFor()
    expect(await page.locator('ol.contents-list').first().getByRole('link', { name: 'Lentil soup' }).count()).toBe(0)
    await page.getByRole('button', { name: 'Take it out again' }).click()
    await page.locator('ol.contents-list').first().getByRole('link', { name: 'Lentil soup' }).waitFor()
    expect(complaints).toEqual([])
    await end()
  })

  it('returns to a kept revision as an edit that can be undone', async () => {
    const { page, end } = await visit(cook, await layDish(workbench.address))
    await benchStands(page)
    await select(page, '300 g')
    await page.keyboard.type('350 g')
    const changed = await sheetText(page)
    await page.getByText('revision 1 and changes, saved').waitFor()
    await page.getByRole('link', { name: 'Revisions' }).click()
    await page.getByText('against the sheet').click()
    expect(await page.locator('.changes del').allInnerTexts()).toEqual(['300'])
    expect(await page.locator('.changes ins').allInnerTexts()).toEqual(['350'])
    await page.getByRole('button', { name: 'Return to this text' }).click()
    await benchStands(page)
    expect(await sheetText(page)).toContain('300 g turnips')
    await page.getByText('revision 1, saved').waitFor()
    await page.locator('.cm-content').focus()
    await page.keyboard.press('Control+z')
    expect(await sheetText(page)).toBe(changed)
    await end()
  })

  it('prints a page worth filing', async () => {
    const { page, end } = await visit(cook, await layDish(workbench.address))
    await benchStands(page)
    await page.emulateMedia({ media: 'print' })
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')))
    const sheet = page.locator('.print-sheet')
    await sheet.waitFor()
    expect(await sheet.locator('.prose').textContent()).toContain('180 ml light stock')
    expect(await sheet.locator('.print-note').count()).toBeGreaterThan(0)
    expect(await sheet.locator('svg.strip').count()).toBe(1)
    expect(await page.locator('.bench').isVisible()).toBe(false)
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')))
    await sheet.waitFor({ state: 'detached' })
    await end()
  })
})
