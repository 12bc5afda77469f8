import type { Range } from '../manuscript/index.ts'
import type { Placed } from './classify.ts'
import { common, type Desk } from './desk.ts'
import { takeIn } from './enter.ts'
import { slowest } from './heat-words.ts'
import { handTime, holdUntilDone } from './norms.ts'
import { finding } from './say.ts'
import { spoken, timeOf } from './words.ts'

// What happens with the lid locked.

export function lock(desk: Desk, item: Placed, index: number): void {
  takeIn(desk, item, index)
  if (desk.sealed) return
  desk.lid = 'on'
  // A lid locked for nothing is only a lid that lies on.
  if (desk.pot.regulator && pressureAhead(desk, index)) seal(desk, item, false)
}

function seal(desk: Desk, item: Placed, implied: boolean): void {
  desk.lid = 'on'
  desk.operations.push({
    ...common(item, 'lock the lid', { handsOn: true, verb: 'lock', implied }),
    kind: 'lock',
    time_s: handTime('lock', 1, desk.hands),
  })
  desk.sealed = true
  desk.held = false
}

export function hold(desk: Desk, item: Placed, index: number): void {
  takeIn(desk, item, index)
  const said = timeOf(item.op)
  if (!desk.pot.regulator) {
    simmerInstead(desk, item, said)
    return
  }
  // A second time at pressure with nothing between is one time in two sentences, or one with the opening left out.
  if (!desk.sealed) seal(desk, item, true)
  // "Bring up to high pressure … cook for 35 minutes": the run finds the way up, the second phrase the time.
  if (!said && pressureAhead(desk, index) === 'timed') return
  holdFor(desk, item, said)
}

const usualHold = (desk: Desk): Range => slowest(desk, holdUntilDone) ?? { low: 600, high: 900 }

function assumeHold(desk: Desk, item: Placed): Range {
  const norm = usualHold(desk)
  desk.findings.push(
    finding(
      'time-assumed',
      'warning',
      item.op,
      'How long at pressure?',
      `No time is said; ${spoken(norm)} is taken, as is usual for the slowest thing in the pot.`,
      'Write the minutes at pressure.',
      'common practice, no source',
    ),
  )
  return norm
}

/** Writes the time at pressure under a locked lid. */
function holdFor(desk: Desk, item: Placed, said: Range | null): void {
  const { op } = item
  const time = said ?? assumeHold(desk, item)
  if (op.pressure === 'medium')
    desk.findings.push(
      finding(
        'level-assumed',
        'hint',
        op,
        'Medium pressure?',
        'The pot’s card knows a high and a low setting; the low one is taken, which needs more time.',
        'Write high or low, or the gauge pressure.',
        'the pot’s card',
      ),
    )
  const level = op.pressure === 'low' || op.pressure === 'medium' ? 'low' : 'high'
  desk.operations.push({
    ...common(item, `at ${level === 'low' ? 'low ' : ''}pressure, ${spoken(time)}`, {
      handsOn: false,
      timed: said !== null,
      verb: 'hold',
    }),
    kind: 'hold',
    level,
    time_s: time,
  })
  desk.held = true
  desk.hot = false
}

/** Pressure asked of a pot that has none: the nearest thing to it, and a finding that says it is not that dish. */
function simmerInstead(desk: Desk, item: Placed, said: Range | null): void {
  const time = said ?? assumeHold(desk, item)
  desk.findings.push(
    finding(
      'pot-cannot-hold',
      'blocking',
      item.op,
      'This pot holds no pressure.',
      `The words ask for pressure; a ${desk.pot.name} cannot hold it, so ${spoken(time)} at a lidded simmer is cooked instead. That is not the dish the words describe.`,
      'Choose a pressure pot, or write the time for a braise.',
      'the pot’s card',
    ),
  )
  desk.lid = 'on'
  desk.operations.push({
    ...common(item, `simmer, lid on, ${spoken(time)}`, {
      handsOn: false,
      timed: said !== null,
      verb: 'simmer',
      implied: true,
    }),
    kind: 'simmer',
    lid: 'on',
    setting: 'low',
    vigour: 'simmer',
    time_s: time,
    stirred: false,
  })
}

/**
 * What the words ahead say of pressure before the lid comes off again: a time at it, or only that there is some
 * (a hold without minutes, a release); null when it is opened before.
 */
function pressureAhead(desk: Desk, index: number): 'timed' | 'untimed' | null {
  let found: 'untimed' | null = null
  for (const { op, where } of desk.placed.slice(index + 1)) {
    if (where !== 'main') continue
    const { verb } = op
    const bare = op.uses.length === 0
    const timed = timeOf(op) !== null
    if (verb === 'release') return 'untimed'
    if (verb === 'hold') {
      if (timed) return 'timed'
      found = 'untimed'
    } else if (bare && timed && (verb === 'simmer' || verb === 'boil' || verb === 'add')) return 'timed'
    else if (!(verb === 'lock' || (bare && (verb === 'heat' || verb === 'boil' || verb === 'simmer')))) return found
  }
  return found
}

/** Heat words under a locked lid: the way up belongs to the run, a time to the hold. True when dealt with. */
export function underPressure(desk: Desk, item: Placed): boolean {
  if (!desk.sealed || desk.held || item.op.uses.length > 0) return false
  const { verb } = item.op
  const timed = timeOf(item.op)
  if (verb === 'heat') return true
  if (verb === 'add') {
    if (!timed) return false
  } else if (verb !== 'boil' && verb !== 'simmer') return false
  if (timed) holdFor(desk, item, timed)
  return true
}

export function release(desk: Desk, item: Placed, index: number): void {
  takeIn(desk, item, index)
  if (!desk.sealed) return
  // A pressure that is let down has been held: the words only forget for how long.
  if (!desk.held) holdFor(desk, item, null)
  const { op } = item
  let how = op.release
  let natural_s = op.releaseTime_s
  let said: Range | null = null
  if (how === null) {
    how = 'natural'
    desk.findings.push(
      finding(
        'release-assumed',
        'warning',
        op,
        'Released how?',
        'The words do not say whether the pressure falls by itself or is vented; it is left to fall by itself.',
        'Say: release naturally, or vent at once.',
        'common practice, no source',
      ),
    )
  }
  if (how === 'natural') {
    // "Let it fall naturally for 10 minutes." "Then vent what remains." in two sentences is one release.
    const next = ventFollowing(desk, index)
    const minutes_s = natural_s ?? timeOf(op)?.high ?? null
    if (next !== null && minutes_s !== null) {
      how = 'natural-then-vented'
      natural_s = minutes_s
      desk.done.add(next)
    } else {
      said = timeOf(op) ?? (natural_s !== null ? { low: natural_s, high: natural_s } : null)
      natural_s = null
    }
  } else if (how === 'natural-then-vented') natural_s = natural_s ?? timeOf(op)?.high ?? 600
  else natural_s = null
  writeRelease(desk, item, how, natural_s, said)
}

type How = NonNullable<Placed['op']['release']>

function writeRelease(desk: Desk, item: Placed, how: How, natural_s: number | null, said: Range | null): void {
  const labels: Record<How, string> = {
    natural: 'natural release',
    vented: 'vent',
    iced: 'release under ice',
    'natural-then-vented': `natural ${spoken({ low: natural_s ?? 0, high: natural_s ?? 0 })}, then vent`,
  }
  desk.operations.push({
    ...common(item, labels[how], {
      handsOn: how === 'vented' || how === 'iced',
      timed: natural_s !== null || said !== null,
      verb: 'release',
    }),
    kind: 'release',
    how,
    natural_s,
    ...(said ? { said_s: said } : {}),
  })
  desk.sealed = false
  desk.held = false
  desk.lid = 'off'
}

/** A stand under a locked lid is the natural part of the release that follows, or all of it. */
export function restUnderPressure(desk: Desk, item: Placed, index: number): void {
  const said = timeOf(item.op)
  const next = ventFollowing(desk, index)
  if (next !== null && said) {
    desk.done.add(next)
    writeRelease(desk, item, 'natural-then-vented', said.high, null)
  } else writeRelease(desk, item, 'natural', null, said)
}

function ventFollowing(desk: Desk, index: number): number | null {
  const at = desk.placed.findIndex((item, i) => i > index && item.where === 'main')
  return at >= 0 && desk.placed[at].op.verb === 'release' && desk.placed[at].op.release !== 'natural' ? at : null
}
