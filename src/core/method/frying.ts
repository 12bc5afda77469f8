import { brown } from './browning.ts'
import type { Placed } from './classify.ts'
import { type Desk, justAdded, namesOf, touch } from './desk.ts'
import { bringIn, ensureHot } from './enter.ts'
import { fryFor } from './fry-for.ts'
import { lifted, potTimes } from './norms.ts'
import { scrape } from './scraping.ts'
import { isMeat } from './stocks.ts'
import { mid } from './words.ts'

// Sweating, blooming, frying.

export function fry(desk: Desk, item: Placed, index: number, mode: 'sweat' | 'bloom' | 'fry'): void {
  const { op } = item
  const peek = [...desk.draws.taken[index].map((draw) => draw.ingredient), ...desk.draws.spoken[index]]
  const mass_kg = (lines: readonly number[]) => lines.reduce((sum, line) => sum + desk.stocks[line].mass_kg, 0)
  const meat_kg = mass_kg(peek.filter((line) => isMeat(desk.stocks[line].food.character)))
  const meaty = meat_kg > 0.15 && meat_kg > mass_kg(peek) / 2
  // Meat fried for minutes leaves a brown layer like any browning.
  if (mode === 'fry' && meaty && (op.time_s === null || mid(op.time_s) >= 150)) {
    brown(desk, item, index)
    return
  }
  const touched = touch(desk, index)
  const fats = touched.fresh.filter((id) => desk.loads[id].food.character === 'fat')
  const cold = !desk.hot && fats.length > 0 && fats.length < touched.fresh.length
  if (cold) {
    bringIn(desk, item, { fresh: fats, back: [], within: [] })
    ensureHot(desk, item)
  }
  const rest = cold ? touched.fresh.filter((id) => !fats.includes(id)) : touched.fresh
  if (!desk.hot && fats.length === 0) ensureHot(desk, item)
  bringIn(desk, item, { ...touched, fresh: rest })
  ensureHot(desk, item)
  const named = [...rest, ...touched.back, ...touched.within]
  const about = named.length > 0 ? named : justAdded(desk, item)
  const seasoning =
    about.length > 0 &&
    about.every(
      (id) => /spice|herb|paste|seasoning/.test(desk.loads[id].food.character) || desk.loads[id].mass_kg < 0.04,
    )
  const norm =
    mode === 'bloom'
      ? potTimes.bloom
      : seasoning
        ? potTimes.softenGarlic
        : mode === 'sweat'
          ? potTimes.sweat
          : potTimes.fry
  if (op.scrapes) scrape(desk, item, lifted.scraped)
  fryFor(desk, item, mode, norm, namesOf(desk, about))
}
