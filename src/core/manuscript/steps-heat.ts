import type { RawOperation } from './operations-raw.ts'
import { cookedAs, sautéedAs } from './steps-context.ts'
import type { Draft } from './steps-draft.ts'
import { type Context, draft, type Fold, isHeated, lasts, says, settle, unlock } from './steps-fold.ts'
import { hold, lockByLid } from './steps-pressure.ts'

// Cooking in the open pot, and the heat and the times that stand apart from what they are for.

/** "cook": held, baked, simmered, sweated or fried, as the pot stands. */
export function cook(context: Context, raw: RawOperation, i: number): void {
  const { fold } = context
  const { slots } = raw
  const goesOn = says(context, raw, /^(?:more|longer|further|another)$/u)
  if (fold.locked && fold.held && !slots.pressure && !goesOn) unlock(fold)
  const releasedHere = fold.pressed && context.operations[i + 1]?.kind === 'release'
  if (slots.pressure || fold.locked || fold.pendingPressure || releasedHere) {
    hold(context, raw)
    return
  }
  if (slots.place === 'oven' || (fold.oven && slots.place === null && !slots.heat)) {
    fold.oven = true
    draft(context, raw, 'bake').lid ??= fold.lid
    return
  }
  settle(fold, draft(context, raw, cookedAs(fold, slots, fold.pantry)))
}

/** "sauté": never under a locked lid. */
export function sauté(context: Context, raw: RawOperation): void {
  const { fold } = context
  if (fold.locked && fold.held) unlock(fold)
  settle(fold, draft(context, raw, sautéedAs(fold, raw.slots, fold.pantry)))
}

/** "Turn the heat to high, add the pork and fry": the heat is for what is cooked next, else an operation of its own. */
export function setHeat(context: Context, raw: RawOperation, i: number): void {
  const { fold } = context
  const { heat, pressure } = raw.slots
  if (pressure) {
    lockByLid(context)
    fold.pendingPressure = pressure.value
    return
  }
  if (forwardHeat(context, i, heat)) return
  if (says(context, raw, /^simmer$/u) && !fold.locked) {
    settle(fold, draft(context, raw, 'simmer'))
    return
  }
  const browning = raw.verb !== null && says(context, raw, /^(?:sauté|saute|s\/té|s\/te|browning|brown)$/u)
  if (!heat && !browning) return
  const made = draft(context, raw, 'heat')
  if (raw.verb === null) made.lid = null
}

/** Gives a heat word to the next cooking of the sentence; false when there is none. */
export function forwardHeat({ operations }: Context, i: number, heat: RawOperation['slots']['heat']): boolean {
  let k = i + 1
  while (k < operations.length && k < i + 12 && !isHeated(operations[k]!)) k += 1
  const later = operations[k]
  if (!later || !isHeated(later)) return false
  if (heat && !later.slots.heat) operations[k] = { ...later, slots: { ...later.slots, heat } }
  return true
}

/** "about 15 minutes", "reckon on 10 minutes", "this will take an hour": the time of what was said before. */
export function timeForLast(context: Context, raw: RawOperation): void {
  const { fold } = context
  const { time, cue, batches } = raw.slots
  if (!time) return
  if (fold.locked && !fold.held) {
    hold(context, raw)
    return
  }
  // "Add garlic and cumin; 30 seconds more."
  const latest = fold.drafts.at(-1)
  if (latest?.verb === 'add' && latest.sentence === fold.sentence && !latest.time && raw.verb === null) {
    settle(fold, draft(context, raw, cookedAs(fold, raw.slots, fold.pantry)))
    return
  }
  const last = fold.drafts.findLast((one) => lasts.has(one.verb))
  if (!last || last.sentence < fold.sentence - 1 || last.time) return
  last.time = { low: time.low_s, high: time.high_s }
  last.timeSpan = { from: time.from, to: time.to }
  last.perSide = batches.perSide
  if (last.verb === 'release' && last.release === 'natural') last.releaseTime_s = time.low_s
  if (last.sentence === fold.sentence) last.to = Math.max(last.to, raw.to)
  if (cue && !last.cue) {
    last.cue = cue.value
    last.cueSpan = { from: cue.from, to: cue.to }
  }
}

/** "Do it in two goes": batches of the browning before. */
export function batchesForLast(fold: Fold, batches: number): void {
  const last = fold.drafts.findLast((one) => /^(?:brown|fry|sweat)$/u.test(one.verb))
  if (!last || last.batches !== null || last.sentence < fold.sentence - 2) return
  last.batches = batches
  last.perBatch = last.time !== null
}

/** Most operations that "Repeat" may mean. */
const mostRepeated = 4

/** "Repeat with the remaining oil and pork": the last browning and what followed it, once more. */
export function repeat(context: Context, raw: RawOperation): void {
  const { fold } = context
  const from = fold.drafts.findLastIndex((one) => /^(?:brown|fry|sweat|bake|boil)$/u.test(one.verb))
  const old: readonly Draft[] = from < 0 ? [] : fold.drafts.slice(from)
  if (old.length > mostRepeated) return
  for (const earlier of old) {
    const { time, heat, cue, perSide, place } = earlier
    Object.assign(draft(context, raw, earlier.verb), {
      time,
      timeSpan: null,
      heat,
      cue,
      perSide,
      place,
      repeats: earlier,
    })
  }
}
