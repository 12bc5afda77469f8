import type { Character } from '../larder/index.ts'
import type { HeatWord, Range } from '../manuscript/index.ts'
import type { Placed } from './classify.ts'
import { type Desk, justAdded, loadsAt } from './desk.ts'
import { potTimes, simmerUntilDone } from './norms.ts'
import type { Load } from './plan.ts'
import { finding } from './say.ts'
import { spoken } from './words.ts'

// What the words leave to the cook at the stove: how hot, how long, how the lid lies.

/** A dial set before, used up by what it was set for. */
export function dialled(desk: Desk): HeatWord | null {
  const { dial } = desk
  desk.dial = null
  return dial
}

/** Says that a time was filled in. */
export function assumeTime(desk: Desk, item: Placed, time: Range, what: string): Range {
  desk.findings.push(
    finding(
      'time-assumed',
      'hint',
      item.op,
      'How long?',
      `No time is said; ${what} is taken for ${spoken(time)}.`,
      'Write the minutes.',
    ),
  )
  return time
}

/** Longest usual time among loads; lentils and split peas take a third of what beans do. */
export function slowest(
  desk: Desk,
  table: Partial<Record<Character, Range>>,
  loads: readonly Load[] = loadsAt(desk, 'pot'),
): Range | null {
  let best: Range | null = null
  for (const load of loads) {
    const norm = load.pieces && load.mass_kg > 0.05 ? table[load.food.character] : undefined
    const small = load.food.character === 'pulse' && (load.pieces?.thickness_m ?? 1) < 0.005
    const time = norm && small ? { low: norm.low / 3, high: norm.high / 3 } : norm
    if (time && (!best || time.high > best.high)) best = time
  }
  return best
}

/** Time for "simmer until tender": of what the step has just put in, else of the slowest thing in the pot. */
export function untilDone(desk: Desk, item: Placed): Range {
  const fresh = justAdded(desk, item).map((id) => desk.loads[id])
  return slowest(desk, simmerUntilDone, fresh) ?? slowest(desk, simmerUntilDone) ?? potTimes.simmerShort
}

/** The sentence as far as the operation goes: what comes after has not happened yet. */
const soFar = (item: Placed): string => item.sentence.slice(0, item.sentence.indexOf(item.words) + item.words.length)

/** How the lid lies from here on, where the words say so. */
export function lidSaid(desk: Desk, item: Placed): void {
  if (item.op.lid) desk.lid = item.op.lid
  else if (
    /\buncover(ed)?\b|\blid off\b|\bwithout (the |a )?lid\b|\b(take|lift|remove|pull) (off )?the lid\b/.test(
      soFar(item),
    )
  )
    desk.lid = 'off'
  else if (
    /\blid\b[^.;]{0,40}\b(shut|closed|close)\b|\b(closely|tightly) covered\b|\bcover(ed)? (closely|tightly)\b/.test(
      item.sentence,
    )
  )
    desk.lid = 'on'
}
