import { volumeOfUnit_m3 } from '../units/index.ts'
import type { Placed } from './classify.ts'
import { common, type Desk, justAdded, liquidInPot_kg, loadsAt, move, namesOf, touch } from './desk.ts'
import { bringIn, meatAmong, takeIn } from './enter.ts'
import { fryFor } from './fry-for.ts'
import { handTime, potTimes } from './norms.ts'
import type { Load } from './plan.ts'
import { finding } from './say.ts'
import { isMeat } from './stocks.ts'
import { restUnderPressure } from './under-lid.ts'
import { mid, numberOf, shareIn, spoken, timeOf } from './words.ts'

// Work by hand at the open pot: lift, strain, skim, thicken, season, mash, rest, serve.

export function lift(desk: Desk, item: Placed, index: number): void {
  desk.lid = 'off'
  const { within, fresh } = touch(desk, index)
  bringIn(desk, item, { fresh, back: [], within: [] })
  const next = desk.placed[index + 1]
  // "Ladle a third of the soup into a bowl, mash it and stir it back": the mash takes its share, nothing leaves.
  if (within.length === 0 && next && (next.op.verb === 'mash' || shareIn(item.sentence) !== null)) return
  let ids = within.filter(
    (id) => desk.loads[id].pieces !== null || /herb|spice|seasoning/.test(desk.loads[id].food.character),
  )
  if (ids.length === 0 && item.op.uses.length === 0) {
    const inside = loadsAt(desk, 'pot').map((load) => load.id)
    ids = meatAmong(desk, inside)
  }
  if (ids.length === 0) return
  const small = ids.every((id) => desk.loads[id].mass_kg < 0.02)
  desk.operations.push({
    ...common(item, `lift out ${namesOf(desk, ids)}`, { handsOn: true, verb: 'lift' }),
    kind: 'lift',
    loads: ids,
    time_s: timeOf(item.op) ?? handTime(small ? 'liftOne' : 'lift', 1, desk.hands),
  })
  move(desk, ids, /\b(discard|throw)\b/.test(item.words) && ids.length === within.length ? 'gone' : 'aside')
}

/** "Pour off all but 1 tablespoon of the fat" -> what is left, m3. */
function fatLeft_m3(words: string): number | null {
  const found = /\ball but (?:about )?([\d\s./¼½¾⅓⅔]+|one|two|three|a) (tablespoons?|tbsp|teaspoons?|tsp)/.exec(words)
  const n = found && numberOf(found[1])
  const unit_m3 = found && volumeOfUnit_m3(found[2].startsWith('ta') || found[2] === 'tbsp' ? 'tbsp' : 'tsp')
  return n && unit_m3 ? n * unit_m3 : null
}

export function strain(desk: Desk, item: Placed, index: number): void {
  const { words, sentence, op } = item
  if (op.verb === 'drain' && /\b(fat|grease|oil|drippings|lard)\b/.test(`${words} ${sentence}`)) {
    skim(desk, item, index)
    return
  }
  const { within } = touch(desk, index)
  const drains = op.verb === 'drain'
  // Tins and rinsed grains are drained at the bench; only what cooks in the pot loses its liquid with it.
  if (drains && (loadsAt(desk, 'pot').length === 0 || (within.length === 0 && op.uses.length > 0))) return
  const solids = loadsAt(desk, 'pot').filter((load) => load.pieces !== null || /herb|spice/.test(load.food.character))
  // What the words go on to use is set by; of the rest a strainer keeps the solids, a drain the liquid.
  const kept = solids.filter((load) => load.pieces !== null && usedLater(desk, index, load)).map((load) => load.id)
  if (kept.length > 0) {
    desk.operations.push({
      ...common(item, `set by ${namesOf(desk, kept)}`, { handsOn: true, verb: 'lift', implied: true }),
      kind: 'lift',
      loads: kept,
      time_s: handTime('lift', 1, desk.hands),
    })
    move(desk, kept, 'aside')
  }
  const away = drains ? [] : solids.filter((load) => !kept.includes(load.id)).map((load) => load.id)
  if (!drains && away.length === 0) return
  desk.operations.push({
    ...common(item, op.verb, { handsOn: true }),
    kind: drains ? 'drain' : 'strain',
    loads: away,
    time_s: handTime(drains ? 'pourOff' : 'strain', 1, desk.hands),
  })
  const poured = (load: Load) => load.pieces === null && load.food.character !== 'fat'
  move(
    desk,
    drains
      ? loadsAt(desk, 'pot')
          .filter(poured)
          .map((load) => load.id)
      : away,
    'gone',
  )
}

/** Whether the words put a load into the vessel again after this. */
function usedLater(desk: Desk, index: number, load: Load): boolean {
  return desk.placed
    .slice(index + 1)
    .some(
      ({ op, where }) =>
        where === 'main' &&
        /^(add|brown|fry|mix|simmer)$/.test(op.verb) &&
        op.uses.some((use) => use.ingredient === load.ingredient),
    )
}

export function skim(desk: Desk, item: Placed, index: number): void {
  touch(desk, index)
  desk.lid = 'off'
  if (item.op.verb === 'settle') {
    desk.operations.push({
      ...common(item, 'let settle', { handsOn: false, timed: timeOf(item.op) !== null }),
      kind: 'rest',
      time_s: timeOf(item.op) ?? potTimes.rest,
      heatOff: true,
    })
    return
  }
  const leaves_m3 = fatLeft_m3(item.sentence)
  desk.operations.push({
    ...common(item, leaves_m3 ? 'pour off fat' : 'skim', { handsOn: true, timed: timeOf(item.op) !== null }),
    kind: 'skim',
    time_s: timeOf(item.op) ?? handTime(leaves_m3 ? 'pourOff' : 'skim', 1, desk.hands),
    ...(leaves_m3 ? { leaves_m3 } : {}),
  })
}

export function thicken(desk: Desk, item: Placed, index: number): void {
  takeIn(desk, item, index)
  desk.operations.push({
    ...common(item, 'thicken', { handsOn: true, timed: timeOf(item.op) !== null }),
    kind: 'thicken',
    // What thickens has come in with the `add` before.
    loads: [],
    time_s: timeOf(item.op) ?? handTime('thicken', 1, desk.hands),
  })
}

export function season(desk: Desk, item: Placed, index: number): void {
  const { touched } = takeIn(desk, item, index)
  if (touched.fresh.length === 0 && touched.back.length === 0)
    desk.operations.push({
      ...common(item, 'taste and season', { handsOn: true }),
      kind: 'season',
      loads: [],
      time_s: handTime('season', 1, desk.hands),
    })
}

export function mix(desk: Desk, item: Placed, index: number): void {
  const { touched } = takeIn(desk, item, index)
  const dry = desk.hot && liquidInPot_kg(desk) <= 0.05
  // "Keep stirring until the meat is no longer pink" is frying, with or without minutes.
  const time = timeOf(item.op) ?? (dry && item.op.cue ? potTimes.fry : null)
  // A stir that only ends an addition is in its time already.
  if (!time && (touched.fresh.length > 0 || touched.back.length > 0 || justAdded(desk, item).length > 0)) return
  if (time && dry) {
    fryFor(desk, item, 'fry', time, namesOf(desk, touched.fresh.length > 0 ? touched.fresh : justAdded(desk, item)))
    return
  }
  desk.operations.push({
    ...common(item, 'stir', { handsOn: true, timed: time !== null }),
    kind: 'season',
    loads: [],
    time_s: time ?? handTime('stir', 1, desk.hands),
  })
}

export function mash(desk: Desk, item: Placed, index: number): void {
  const named = [...desk.draws.taken[index].map((draw) => draw.ingredient), ...desk.draws.spoken[index]]
  // "Break up the beef with a fork" makes no purée.
  if (named.length > 0 && named.every((line) => isMeat(desk.stocks[line].food.character))) {
    cutCooked(desk, item, index)
    return
  }
  const { about } = takeIn(desk, item, index)
  const soft = about.filter((id) => desk.loads[id].pieces)
  const loads =
    soft.length > 0
      ? soft
      : loadsAt(desk, 'pot')
          .filter((load) => load.pieces && meatAmong(desk, [load.id]).length === 0)
          .map((load) => load.id)
  const previous = desk.placed[index - 1]
  const share =
    shareIn(item.words) ??
    (previous && previous.step === item.step ? shareIn(previous.words) : null) ??
    shareIn(item.sentence)
  desk.operations.push({
    ...common(item, share ? 'mash part' : 'mash', { handsOn: true, timed: timeOf(item.op) !== null }),
    kind: 'mash',
    loads,
    time_s: timeOf(item.op) ?? handTime('mash', 1, desk.hands),
    ...(share ? { share } : {}),
  })
}

/** Cooked food cut, shredded or broken up, beside the pot or in it. */
export function cutCooked(desk: Desk, item: Placed, index: number): void {
  const { fresh, back, within } = touch(desk, index)
  const ids = [...fresh, ...back, ...within]
  const meat = meatAmong(
    desk,
    ids.length > 0 ? ids : desk.loads.filter((load) => desk.place[load.id] !== 'gone').map((load) => load.id),
  )
  const mass_kg = meat.reduce((sum, id) => sum + desk.loads[id].mass_kg, 0)
  const last = desk.operations.at(-1)
  // "Take the meat off the bone, chop it": one piece of work in two words.
  if (
    last?.kind === 'bench' &&
    last.verb === 'cut' &&
    last.step === item.step &&
    meat.length > 0 &&
    meat.every((id) => last.loads.includes(id))
  )
    return
  desk.operations.push({
    ...common(
      item,
      `${/\b(shred|slice|peel|chop|carve|flake|bone)\b/.exec(item.words)?.[1] ?? 'cut up'} ${namesOf(desk, meat.length > 0 ? meat : ids) || 'the food'}`,
      {
        handsOn: true,
        verb: 'cut',
      },
    ),
    kind: 'bench',
    loads: meat.length > 0 ? meat : ids,
    time_s: meat.length > 0 ? handTime('tearMeat', mass_kg, desk.hands) : handTime('cutOther', 1, desk.hands),
  })
}

export function rest(desk: Desk, item: Placed, index: number): void {
  const said = timeOf(item.op)
  if (item.op.lid) desk.lid = item.op.lid
  if (desk.sealed && desk.held) {
    restUnderPressure(desk, item, index)
    return
  }
  // Without a time only a stand that is asked for counts, not "set aside".
  const { fresh } = touch(desk, index)
  bringIn(desk, item, { fresh, back: [], within: [] })
  if (!said && !/\b(stand|rest|sit|cool)\b/.test(item.words)) {
    const within = item.op.uses.flatMap((use) =>
      loadsAt(desk, 'pot').filter((load) => load.ingredient === use.ingredient && load.pieces),
    )
    if (within.length > 0) lift(desk, item, index)
    return
  }
  desk.operations.push({
    ...common(item, `rest${said ? `, ${spoken(said)}` : ''}`, { handsOn: false, timed: said !== null }),
    kind: 'rest',
    time_s: said ?? potTimes.rest,
    heatOff: true,
  })
  desk.hot = false
}

export function chill(desk: Desk, item: Placed, index: number): void {
  const said = timeOf(item.op)
  const { within } = touch(desk, index)
  // "Cool in cold water" is a minute's work at the sink, not a night in the fridge.
  if (!said && /\b(water|ice bath|iced)\b/.test(item.words)) {
    desk.operations.push({
      ...common(item, `cool ${namesOf(desk, within)}`.trim(), { handsOn: true }),
      kind: 'bench',
      loads: within,
      time_s: handTime('rinseCold', 1, desk.hands),
    })
    return
  }
  if (!said)
    desk.findings.push(
      finding(
        'time-assumed',
        'hint',
        item.op,
        'Chill how long?',
        `No time is said; ${spoken(potTimes.chill)} is taken.`,
        'Write the time.',
      ),
    )
  desk.operations.push({
    ...common(item, 'chill', { handsOn: false, timed: said !== null }),
    kind: 'chill',
    loads: loadsAt(desk, 'pot').map((load) => load.id),
    time_s: said ?? potTimes.chill,
  })
}

export function serve(desk: Desk, item: Placed, index: number): void {
  const { fresh } = desk.draws.taken[index].length > 0 ? touch(desk, index) : { fresh: [] }
  bringIn(desk, item, { fresh, back: [], within: [] })
  const said = timeOf(item.op)
  if (said && mid(said) > 3600) return
  const last = desk.operations.at(-1)
  if (last?.kind === 'serve') return
  desk.operations.push({
    ...common(item, 'serve', { handsOn: true }),
    kind: 'serve',
    loads: [],
    time_s: handTime('serve', 1, desk.hands),
  })
}
