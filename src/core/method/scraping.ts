import type { Range } from '../manuscript/index.ts'
import type { Placed } from './classify.ts'
import { common, type Desk } from './desk.ts'
import { takeIn } from './enter.ts'
import { handTime, lifted } from './norms.ts'
import { timeOf } from './words.ts'

// The brown layer on the base, and what lifts it.

/** Writes the scraping of the base. */
export function scrape(desk: Desk, item: Placed, share: number, time: Range | null = null): void {
  desk.operations.push({
    ...common(item, 'scrape the base', { handsOn: true, verb: 'deglaze', timed: time !== null }),
    kind: 'deglaze',
    scraped: share,
    time_s: time ?? handTime('deglaze', 1, desk.hands),
  })
  desk.fond = false
}

export function deglaze(desk: Desk, item: Placed, index: number): void {
  takeIn(desk, item, index, { washes: false })
  scrape(
    desk,
    item,
    item.op.scrapes || /\bscrap/.test(item.sentence) ? lifted.scraped : lifted.deglazed,
    timeOf(item.op),
  )
}

/** Whether a scraping order follows before the lid closes, so that a liquid poured now is not left to itself. */
export function scrapedSoon(desk: Desk, index: number): boolean {
  for (let at = index + 1; at < desk.placed.length; at++) {
    const { op, where } = desk.placed[at]
    if (where !== 'main') continue
    if (op.scrapes || op.verb === 'deglaze') return true
    if (
      op.verb === 'lock' ||
      op.verb === 'hold' ||
      op.verb === 'bake' ||
      op.verb === 'simmer' ||
      op.verb === 'reduce' ||
      op.verb === 'boil'
    )
      return false
  }
  return false
}
