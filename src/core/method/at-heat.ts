import type { Placed } from './classify.ts'
import { common, type Desk, liquidInPot_kg, namesOf } from './desk.ts'
import { takeIn } from './enter.ts'
import { fryFor } from './fry-for.ts'
import { lifted, potTimes } from './norms.ts'
import { scrape, scrapedSoon } from './scraping.ts'
import { isThin } from './stocks.ts'
import { timeOf } from './words.ts'

// Heating, and adding to a pot on the heat.

export function heat(desk: Desk, item: Placed, index: number): void {
  const next = desk.placed.find((other, at) => at > index && other.where === 'main')
  // "Lower the heat": a turn of the dial, for what comes next.
  if (
    item.op.uses.length === 0 &&
    !item.op.time_s &&
    /\b(lower|reduce|turn (down|up)|raise|increase|adjust|drop)\b.*\b(heat|flame|setting)\b|\bturn the (heat|flame|gas)\b/.test(
      item.words,
    ) &&
    desk.operations.some((operation) => operation.kind !== 'bench')
  ) {
    desk.dial = item.op.heat
    return
  }
  // "Bring up to pressure": the way up is the run's to find.
  if (
    item.op.uses.length === 0 &&
    !item.op.time_s &&
    desk.pot.regulator &&
    (next?.op.verb === 'hold' || next?.op.verb === 'lock') &&
    liquidInPot_kg(desk) > 0.05
  )
    return
  // "Set the pot to sauté. Melt the ghee." is one heating, and the second phrase says of what.
  if (
    item.op.uses.length === 0 &&
    !item.op.time_s &&
    next?.op.verb === 'heat' &&
    next.step === item.step &&
    next.op.uses.length > 0
  ) {
    desk.dial = item.op.heat
    return
  }
  const { about } = takeIn(desk, item, index)
  const wet = liquidInPot_kg(desk) > 0.05
  const time = timeOf(item.op)
  // Fat or an empty base heats until it is hot; liquid needs a clock.
  desk.operations.push({
    ...common(item, about.length > 0 ? `heat ${namesOf(desk, about)}` : 'heat the pot', {
      handsOn: false,
      timed: time !== null,
    }),
    kind: 'heat',
    setting: item.op.heat ?? desk.dial ?? (wet ? 'medium' : 'medium-high'),
    time_s: time ?? (wet ? potTimes.heatLiquid : null),
  })
  desk.hot = true
  desk.dial = null
}

export function add(desk: Desk, item: Placed, index: number): void {
  const { op } = item
  const { about, touched } = takeIn(desk, item, index, { washes: !op.scrapes && !scrapedSoon(desk, index) })
  if (op.lid && !desk.sealed) desk.lid = op.lid
  if (op.scrapes) scrape(desk, item, lifted.scraped)
  const time = timeOf(item.op)
  if (!time) return
  // "Add the spinach and stir for 2 minutes": the minutes belong to the pot, not to the spoon.
  const wet = liquidInPot_kg(desk) > 0.05 || touched.within.some((id) => isThin(desk.loads[id].food.character))
  if (!wet && desk.hot) {
    fryFor(desk, item, 'fry', time, namesOf(desk, about))
    return
  }
  desk.operations.push({
    ...common(item, `stir ${namesOf(desk, about)}`.trim(), { handsOn: time.high <= 600, timed: true, verb: 'simmer' }),
    kind: 'simmer',
    lid: desk.lid,
    setting: op.heat ?? 'low',
    vigour: 'simmer',
    time_s: time,
    stirred: true,
  })
}
