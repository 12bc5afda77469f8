import type { Said } from './operations-heat.ts'
import { readPressure } from './operations-heat.ts'
import type { RawOperation } from './operations-raw.ts'
import type { PressureWord } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'
import type { Draft } from './steps-draft.ts'
import { type Context, draft, draftOf, isHeated, says, settle, unlock } from './steps-fold.ts'

// Lid, lock, hold and release: the parts of a cook under pressure.

/** Longest hold, s: "Lock the lid and cook on low for 8 hours" is slow cooking and holds nothing. */
const longestHold_s = 3 * 3600

/** An order that moves the lid. */
export function moveLid(context: Context, raw: RawOperation, i: number): void {
  const { fold, tokens, operations } = context
  const to = raw.lidTo ?? 'on'
  const it = tokens[raw.clause.head + 1]?.low === 'it'
  if (i === 0 && it && hasTwoVessels(fold.before)) fold.twoVessels.push({ from: raw.from, to: raw.to })
  const loosely = says(context, raw, /^(?:without|loosely|foil|partially|ajar|paper)$/u)
  if (to === 'on' && fold.pressed && !fold.locked && !loosely) {
    fold.lidOrder = { raw, at: fold.drafts.length, tokens, step: context.step, sentence: fold.sentence }
  }
  if (to === 'off' && fold.locked && fold.held) unlock(fold)
  fold.lid = to
  if (raw.slots.time && !operations.slice(i + 1, i + 9).some(isHeated)) draft(context, raw, 'rest').lid = to
}

/** "Put the trivet in the cooker and lower in the basin": a vessel inside another. */
function hasTwoVessels(tokens: readonly Token[]): boolean {
  const inner = tokens.some((token) => /^(?:basin|bowl|tin|mould|mold|ramekins?|dish)$/u.test(token.low))
  return inner && tokens.some((token) => /^(?:cooker|pot|pan|casserole|steamer|saucepan|p\/c)$/u.test(token.low))
}

/** A lid put on a moment ago was locked if pressure follows. */
export function lockByLid(context: Context): void {
  const { fold } = context
  const order = fold.lidOrder
  if (!order || fold.locked) return
  const { raw, tokens, step, at, sentence } = order
  const slots = { ...raw.slots, time: null, mentions: [], cue: null }
  const made = {
    ...draftOf({ ...context, tokens, step }, { ...raw, slots }, 'lock'),
    sentence,
    lid: 'on' as const,
    handled: [],
  }
  fold.drafts.splice(at, 0, made)
  fold.locked = true
  fold.held = false
  fold.lidOrder = null
}

/** "Lock the lid", "set the valve to sealing": one lock, however many words. */
export function lock(context: Context, raw: RawOperation): void {
  const { fold } = context
  fold.lid = 'on'
  const last = fold.drafts.at(-1)
  if (last?.verb === 'lock' && last.sentence >= fold.sentence - 1 && fold.locked && !fold.held) {
    if (last.sentence === fold.sentence) last.to = raw.to
    return
  }
  if (!fold.pressed) return
  draft(context, { ...raw, slots: { ...raw.slots, time: null } }, 'lock').lid = 'on'
  fold.locked = true
  fold.held = false
  fold.oven = false
}

/** "Bring up to high pressure": the way there. */
export function comeUp(context: Context, raw: RawOperation): void {
  const { fold } = context
  lockByLid(context)
  fold.locked = true
  fold.held = false
  const made = draft(context, raw, 'heat')
  made.pressure = raw.slots.pressure?.value ?? null
  made.pressureSpan = raw.slots.pressure
}

/** "Cook at high pressure for 30 minutes". Not under pressure the same words keep food warm. */
export function hold(context: Context, raw: RawOperation): void {
  const { fold } = context
  const { slots } = raw
  if (!fold.pressed && !slots.pressure) {
    settle(fold, draft(context, raw, 'rest'))
    return
  }
  lockByLid(context)
  if (!slots.pressure && slots.heat && slots.time && slots.time.low_s >= longestHold_s) {
    fold.locked = false
    draft(context, raw, 'simmer').lid = 'on'
    return
  }
  const level = levelOf(context, raw)
  const made = draft(context, raw, 'hold')
  made.pressure = level?.value ?? fold.pendingPressure ?? earlierLevel(context)
  made.pressureSpan = level && level.from >= raw.from ? { from: level.from, to: level.to } : null
  // "on HIGH" is the pressure, "over high heat" is the fire.
  if (level && slots.heat && level.from <= slots.heat.from && slots.heat.to <= level.to) {
    made.heat = null
    made.heatSpan = null
  }
  made.lid = null
  fold.pendingPressure = null
  fold.held = true
  fold.locked = true
  fold.wet = true
}

/** Tokens in front of an order that are still about it. */
const farthest = 40

const asPressure: Readonly<Record<string, PressureWord>> = { high: 'high', medium: 'medium', low: 'low' }

/** The level in the clause, in front of it ("Once up to high pressure, time 30 minutes"), or "on high". */
function levelOf(context: Context, raw: RawOperation): Said<PressureWord> | null {
  const { heat, pressure } = raw.slots
  if (pressure) return pressure
  const fronted = readPressure(context.tokens, Math.max(0, raw.clause.at - farthest), raw.clause.next, [], false)
  if (fronted) return fronted
  const word = heat ? asPressure[heat.value] : undefined
  return heat && word && !says(context, raw, /^(?:heat|flame|burner)$/u) ? { ...heat, value: word } : null
}

const earlierLevel = ({ fold, first }: Context): PressureWord | null =>
  fold.drafts.slice(first).findLast((one) => one.pressure !== null)?.pressure ?? null

/** "Let the pressure drop for 10 minutes, then vent the rest": one release, however many words. */
export function release(context: Context, raw: RawOperation): void {
  const { fold, first } = context
  const said = raw.release ?? 'vented'
  const last = fold.drafts.length > first ? fold.drafts.at(-1)! : null
  const joined = last !== null && joinRelease(last, raw, said)
  if (!joined) {
    const made = draft(context, raw, 'release')
    made.release = said
    made.heat = null
    made.heatSpan = null
    made.temperature_K = null
    if (said === 'natural' && raw.slots.time) made.releaseTime_s = raw.slots.time.low_s
  }
  unlock(fold)
}

function joinRelease(last: Draft, raw: RawOperation, said: NonNullable<RawOperation['release']>): boolean {
  const { time } = raw.slots
  // "Leave for 10 minutes, then open the valve."
  if (last.verb === 'rest' && last.time && said !== 'natural' && last.raw.clause.next <= raw.clause.at) {
    last.verb = 'release'
    last.release = 'natural-then-vented'
    last.releaseTime_s = last.time.low
    last.to = raw.to
    return true
  }
  if (last.verb !== 'release') return false
  if (said !== 'natural' && last.release === 'natural') last.release = 'natural-then-vented'
  else if ((said === 'natural') !== (last.release === 'natural')) return false
  else if (time && !last.time) {
    last.time = { low: time.low_s, high: time.high_s }
    last.timeSpan = { from: time.from, to: time.to }
    if (last.release === 'natural') last.releaseTime_s = time.low_s
  }
  last.to = raw.to
  return true
}
