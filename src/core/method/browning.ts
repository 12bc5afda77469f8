import type { Placed } from './classify.ts'
import { common, type Desk, justAdded, loadsAt, move, namesOf, touch } from './desk.ts'
import { bringIn, ensureHot, meatAmong } from './enter.ts'
import { fryFor, lastSetting } from './fry-for.ts'
import { assumeTime } from './heat-words.ts'
import { potTimes } from './norms.ts'
import { timeOf } from './words.ts'

// Browning: what goes in at once, how often, and whether it waits beside the pot afterwards.

/** The next operations that lift these loads out, if that is the very next thing done with the vessel. */
function liftFollowing(desk: Desk, index: number, ids: readonly number[]): number | null {
  for (let at = index + 1; at < desk.placed.length; at++) {
    const item = desk.placed[at]
    if (item.where !== 'main' || desk.done.has(at)) continue
    if (item.op.verb === 'drain' || item.op.verb === 'skim') continue
    if (item.op.verb !== 'lift' && !(item.op.verb === 'rest' && item.op.uses.length > 0)) return null
    if (item.step > desk.placed[index].step + 1) return null
    const lines = item.op.uses.map((use) => use.ingredient)
    return lines.length === 0 || ids.some((id) => lines.includes(desk.loads[id].ingredient ?? -1)) ? at : null
  }
  return null
}

/** Later browning operations that do the rest of the same loads. */
function repeats(desk: Desk, index: number, ids: readonly number[]): number[] {
  const lines = new Set(ids.map((id) => desk.loads[id].ingredient))
  const found: number[] = []
  for (let at = index + 1; at < desk.placed.length; at++) {
    const { op, where, step } = desk.placed[at]
    if (where !== 'main' || desk.done.has(at)) continue
    if (op.verb === 'brown' && step <= desk.placed[index].step + 1 && op.uses.some((use) => lines.has(use.ingredient)))
      found.push(at)
    else if (op.verb !== 'lift' && op.verb !== 'heat' && op.verb !== 'add') break
    else if (op.verb === 'add' && op.uses.some((use) => lines.has(use.ingredient))) break
  }
  return found
}

export function brown(desk: Desk, item: Placed, index: number): void {
  const { op } = item
  const touched = touch(desk, index)
  bringIn(desk, item, { fresh: [], back: touched.back, within: [] })
  const entering = [...touched.fresh]
  const targets = meatAmong(desk, [...entering, ...touched.back, ...touched.within])
  if (targets.length === 0 && entering.length + touched.within.length > 0) {
    // Browned onions are fried onions; so is anything else that is no meat.
    bringIn(desk, item, { ...touched, back: [] })
    ensureHot(desk, item)
    fryFor(desk, item, 'fry', potTimes.brownOnions, namesOf(desk, entering.length > 0 ? entering : touched.within))
    return
  }
  const inside = loadsAt(desk, 'pot').map((load) => load.id)
  const loads = targets.length > 0 ? targets : meatAmong(desk, inside)
  if (loads.length === 0) {
    fryFor(desk, item, 'fry', potTimes.fry, namesOf(desk, justAdded(desk, item)))
    return
  }
  // Fat named with the meat goes in first and is heated; the rest comes in with the pieces.
  const fats = entering.filter((id) => desk.loads[id].food.character === 'fat')
  if (!desk.hot && fats.length > 0) bringIn(desk, item, { fresh: fats, back: [], within: [] })
  ensureHot(desk, item)
  const again = repeats(desk, index, loads)
  const extra: number[] = []
  for (const at of again) {
    const more = touch(desk, at)
    extra.push(...more.fresh.filter((id) => !loads.includes(id)))
    desk.done.add(at)
  }
  let batches = Math.max(1, Math.round(item.op.batches ?? 1))
  if (item.op.batches === null && again.length > 0)
    batches = 1 + again.reduce((sum, at) => sum + Math.max(1, desk.placed[at].op.batches ?? 1), 0)
  const once = timeOf(item.op)
  // "4 minutes a side": browned on two.
  const said = once && op.perSide ? { low: 2 * once.low, high: 2 * once.high } : once
  const mince = loads.some((id) => (desk.loads[id].pieces?.thickness_m ?? 1) < 0.008)
  const norm = mince ? potTimes.brownMince : potTimes.brownMeat
  // "in two batches, 6 to 8 minutes in all": the words give the sum unless they say per batch or name one batch.
  const time = said
    ? op.perBatch || op.perSide || op.batches === null
      ? said
      : { low: said.low / batches, high: said.high / batches }
    : assumeTime(desk, item, norm, 'browning, each batch,')
  const lift = liftFollowing(desk, again.at(-1) ?? index, loads) ?? liftFollowing(desk, index, loads)
  // Only the meat itself is lifted out afterwards, so other pieces come in by an `add` of their own.
  const others = [...new Set([...entering, ...extra])].filter((id) => !loads.includes(id) && desk.place[id] !== 'pot')
  const beside = others.filter((id) => desk.loads[id].pieces !== null)
  bringIn(desk, item, { fresh: beside, back: [], within: [] })
  const ids = [...loads, ...others.filter((id) => !beside.includes(id))]
  desk.operations.push({
    ...common(item, `brown ${namesOf(desk, loads)}${batches > 1 ? `, ${countWord(batches)} batches` : ''}`, {
      handsOn: true,
      timed: said !== null,
      verb: 'brown',
    }),
    kind: 'brown',
    loads: ids,
    setting: item.op.heat ?? lastSetting(desk) ?? 'medium-high',
    batches,
    time_s: time,
    liftsOut: lift !== null,
  })
  move(desk, ids, 'pot')
  desk.fond = true
  desk.hot = true
  if (lift !== null) {
    const op = desk.placed[lift].op
    const others = op.uses.some((use) => !loads.some((id) => desk.loads[id].ingredient === use.ingredient))
    move(desk, loads, 'aside')
    if (!others) desk.done.add(lift)
    for (let at = index + 1; at < lift; at++) if (desk.placed[at].op.verb === 'lift') desk.done.add(at)
  }
}

const countWord = (n: number): string => ['no', 'one', 'two', 'three', 'four', 'five', 'six'][n] ?? String(n)
