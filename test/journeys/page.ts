import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core'

/** A page and everything the browser complains about while it is open. */
export interface Visit {
  readonly page: Page
  readonly complaints: string[]
  readonly end: () => Promise<void>
}

/** Somebody who has been here before and is not led to the first dish. Pages of one visitor share what was fetched. */
export async function visitor(browser: Browser, options: BrowserContextOptions = {}): Promise<BrowserContext> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 1000 }, ...options })
  await context.addInitScript(() => localStorage.setItem('underlid:been-here', 'yes'))
  return context
}

export async function visit(context: BrowserContext, address: string): Promise<Visit> {
  const page = await context.newPage()
  const complaints: string[] = []
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text())
  })
  page.on('pageerror', (error) => complaints.push(String(error)))
  await page.goto(address)
  return { page, complaints, end: () => page.close() }
}

/** A braise of the journeys' own: the demonstration dishes may change as they please. */
export const braise = `Lamb shoulder with turnips

Serves 4
Total time: 35 minutes

900 g boneless lamb shoulder, cut into 4-cm pieces
1 teaspoon table salt
1 tablespoon olive oil
300 g turnips, cut into 3-cm pieces
1 onion, chopped
180 ml light stock

1. Toss the lamb with the salt. Heat the oil in a 6-quart electric pressure cooker on high for 3 minutes. Brown half of the lamb on two sides, 7 minutes, and transfer to a bowl. Repeat with the rest.

2. Add the onion and cook, stirring, for 4 minutes. Add the stock and scrape up the browned bits. Pour in the white wine.

3. Return the lamb with the turnips. Lock the lid and cook at high pressure for 25 minutes. Let the pressure release naturally for 10 minutes, then vent what remains.

4. Lift out the lamb. Boil the liquid for 5 minutes, return the lamb and serve.`

/** Lays a dish on the server and keeps its first revision; the address of its bench. */
export async function layDish(address: string, text = braise): Promise<string> {
  const post = async (path: string, body: unknown) => {
    const answer = await fetch(address + path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    })
    if (!answer.ok) throw new Error(await answer.text())
    return (await answer.json()) as { id: string }
  }
  const { id } = await post('/api/dishes', { text })
  await post(`/api/dishes/${id}/revisions`, { text, note: 'As it came.' })
  return `${address}/dishes/${id}`
}

/** The text that the server holds of a dish. */
export async function held(bench: string): Promise<string> {
  const answer = await fetch(bench.replace('/dishes/', '/api/dishes/'))
  return ((await answer.json()) as { text: string }).text
}

/** The bench stands when the editor and the strip do. */
export async function benchStands(page: Page): Promise<void> {
  await page.locator('.cm-content').waitFor()
  await page.getByRole('slider', { name: 'Moment' }).waitFor()
}

export const sheetText = (page: Page): Promise<string> =>
  page
    .locator('.cm-content')
    .evaluate((content) => [...content.querySelectorAll('.cm-line')].map((line) => line.textContent ?? '').join('\n'))

/** Where words stand in the window, after they are brought into sight. */
async function placeOf(page: Page, words: string): Promise<{ left: number; right: number; middle: number }> {
  const line = page.locator('.cm-line', { hasText: words }).first()
  await line.scrollIntoViewIfNeeded()
  return line.evaluate((element, sought) => {
    const range = document.createRange()
    const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT)
    const from = (element.textContent ?? '').indexOf(sought)
    let passed = 0
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const length = node.textContent?.length ?? 0
      const inside = (at: number) => at >= passed && at <= passed + length
      if (inside(from)) range.setStart(node, from - passed)
      if (inside(from + sought.length)) range.setEnd(node, from + sought.length - passed)
      passed += length
    }
    const boxes = [...range.getClientRects()].filter((box) => box.width > 0)
    const first = boxes[0]
    const last = boxes[boxes.length - 1]
    return { left: first.left, right: last.right, middle: first.top + first.height / 2 }
  }, words)
}

/** Selects words on one line of the sheet as a hand would, with the mouse. */
export async function select(page: Page, words: string): Promise<void> {
  const { left, right, middle } = await placeOf(page, words)
  await page.mouse.move(left + 0.5, middle)
  await page.mouse.down()
  await page.mouse.move(right - 0.5, middle, { steps: 3 })
  await page.mouse.up()
  const selected = await page.evaluate(() => document.getSelection()?.toString())
  if (selected !== words) throw new Error(`selected “${selected}” instead of “${words}”`)
}

/** Puts the caret into words of the sheet. */
export async function press(page: Page, words: string): Promise<void> {
  const { left, middle } = await placeOf(page, words)
  await page.mouse.click(left + 12, middle)
}

/** A figure under the pot, without its unit. */
export async function reading(page: Page, id: string): Promise<number> {
  const words = (await page.locator(`[data-reading="${id}"] dd`).textContent()) ?? ''
  return Number.parseFloat(words.replace('−', '-'))
}
