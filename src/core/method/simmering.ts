import type { Character } from '../larder/index.ts'
import type { Placed } from './classify.ts'
import { common, type Desk, liquidInPot_kg, loadsAt, namesOf, waterToCover } from './desk.ts'
import { bringIn, takeIn } from './enter.ts'
import { assumeTime, dialled, lidSaid, untilDone } from './heat-words.ts'
import { lifted, potTimes } from './norms.ts'
import { scrape, scrapedSoon } from './scraping.ts'
import { timeOf } from './words.ts'

// Liquor over heat in an open or merely covered pot: boil, simmer, reduce.

const bringsUp = /\b(bring|brought|come|comes|return|heat|until (it|the \w+)?\s*(boils?|simmers?|bubbl))/

/** Whether the next thing done with the vessel is a boil or a simmer whose minutes are said. */
function timedSoon(desk: Desk, index: number): boolean {
  const next = desk.placed.find((other, at) => at > index && other.where === 'main')
  return (
    next !== undefined &&
    timeOf(next.op) !== null &&
    next.op.uses.length === 0 &&
    /^(boil|simmer|reduce|hold|bake)$/.test(next.op.verb)
  )
}

const drinks: ReadonlySet<Character> = new Set(['egg', 'pasta', 'starch', 'grain', 'pulse'])

/** "Boil the eggs": in water, which nobody lists. */
function pourForgotten(desk: Desk, item: Placed): void {
  const inside = loadsAt(desk, 'pot').filter((load) => load.pieces)
  if (inside.length === 0 || liquidInPot_kg(desk) > 0.02) return
  const named = /\bwater\b/.test(item.sentence)
  if (!named && !(item.op.verb === 'boil' && inside.every((load) => drinks.has(load.food.character)))) return
  const water = waterToCover(desk, item.op)
  if (water) bringIn(desk, item, { fresh: [water.id], back: [], within: [] })
}

export function simmer(desk: Desk, item: Placed, index: number): void {
  const { op } = item
  const { about } = takeIn(desk, item, index, { washes: !op.scrapes && !scrapedSoon(desk, index) })
  if (op.scrapes) scrape(desk, item, lifted.scraped)
  lidSaid(desk, item)
  pourForgotten(desk, item)
  const vigour = op.verb === 'boil' ? 'boil' : 'simmer'
  const said = timeOf(item.op)
  const upOnly =
    said === null &&
    (bringsUp.test(item.words) ||
      op.verb === 'boil' ||
      timedSoon(desk, index) ||
      (bringsUp.test(item.sentence) && op.cue === null && /\bto (a|the)\b/.test(item.sentence)))
  const thickens =
    said === null &&
    !upOnly &&
    /\b(thick|thicken\w*|syrup\w*|glossy|coat\w*|reduc\w*|gone|evaporat\w*|half)\b/.test(
      `${op.cue ?? ''} ${item.words}`,
    )
  if (thickens) {
    reduceBy(desk, item)
    return
  }
  const time = said ?? (upOnly ? null : assumeTime(desk, item, untilDone(desk, item), 'simmering'))
  const long = time !== null && time.high > 600
  const solid = about.filter((id) => desk.loads[id].pieces)
  desk.operations.push({
    ...common(
      item,
      upOnly
        ? 'bring to the boil'
        : `${vigour}${solid.length > 0 && solid.length < 3 ? ` ${namesOf(desk, solid)}` : ''}${desk.lid === 'on' ? ', lid on' : ''}`,
      {
        handsOn: op.stirs || (!long && desk.lid !== 'on' && time !== null),
        timed: said !== null,
      },
    ),
    kind: 'simmer',
    lid: desk.lid,
    setting:
      op.heat ?? dialled(desk) ?? (vigour === 'boil' || upOnly ? 'high' : desk.lid === 'on' ? 'low' : 'medium-low'),
    vigour,
    time_s: time,
    stirred: op.stirs,
  })
  desk.hot = true
}

export function reduce(desk: Desk, item: Placed, index: number): void {
  takeIn(desk, item, index, { washes: !item.op.scrapes })
  if (item.op.scrapes) scrape(desk, item, lifted.scraped)
  reduceBy(desk, item)
}

/** Liquid that still wets the whole floor when a cook calls it gone (assumed). */
const goneDepth_m = 0.8e-3

/** Where "until it has boiled away" ends: at a last film, with the fat that cannot boil; unknown when there is no more than that. */
function untilGone(desk: Desk): { share: null; volume_m3: number | null } {
  const film_m3 = goneDepth_m * desk.pot.baseArea_m2
  const fat = loadsAt(desk, 'pot').filter((load) => load.food.character === 'fat')
  const fat_m3 = fat.reduce((sum, load) => sum + load.mass_kg / load.food.density_kg_per_m3, 0)
  return { share: null, volume_m3: liquidInPot_kg(desk) / 1000 > 1.5 * film_m3 ? film_m3 + fat_m3 : null }
}

function reduceBy(desk: Desk, item: Placed): void {
  const { op } = item
  desk.lid = op.lid ?? 'off'
  const said = timeOf(op)
  const wanted = op.reduceTo?.share ?? null
  const gone =
    (wanted !== null && wanted < 0.1) || /\b(gone|boil away|evaporat\w*|dry)\b/.test(`${op.cue ?? ''} ${item.words}`)
  const ends = gone
    ? untilGone(desk)
    : { share: wanted === null ? null : Math.min(0.95, wanted), volume_m3: op.reduceTo?.volume_m3 ?? null }
  // A wanted share or volume ends it; so does a printed time; with neither, a norm has to.
  const time =
    said ??
    (ends.share !== null || ends.volume_m3 !== null
      ? null
      : assumeTime(desk, item, gone ? potTimes.boilOff : potTimes.reduce, 'boiling down'))
  desk.operations.push({
    ...common(item, 'boil down', { handsOn: op.stirs || (time !== null && time.high <= 720), timed: said !== null }),
    kind: 'reduce',
    setting: op.heat ?? dialled(desk) ?? 'medium-high',
    time_s: time,
    toShare: ends.share,
    toVolume_m3: ends.volume_m3 !== null && ends.volume_m3 > 0 ? ends.volume_m3 : null,
    stirred: op.stirs,
  })
  desk.hot = true
}
