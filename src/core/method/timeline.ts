import type { Range } from '../manuscript/index.ts'
import { potTimes } from './norms.ts'
import type { Plan, PlanOperation } from './plan.ts'

/** One stretch of work, with its earliest and latest place on the clock. */
export interface Band {
  /** Index in `Plan.operations`. */
  readonly operation: number
  readonly label: string
  readonly kind: PlanOperation['kind']
  readonly handsOn: boolean
  /** Begins after this much, if everything before goes fast (low) or slowly (high). */
  readonly start_s: Range
  readonly time_s: Range
  /** True when the plan alone cannot know the time and nobody supplied it: `time_s` is 0 then. */
  readonly open: boolean
  /** Runs beside the band before it and takes clock time only where it outlasts that. */
  readonly beside: boolean
}

export interface Timeline {
  readonly bands: readonly Band[]
  /** From first to last, without what waits apart. */
  readonly total_s: Range
  /** Of that, time a person must stand there. */
  readonly handsOn_s: Range
  /** Waiting kept apart from the clock of the cook: overnight soaking, marinating. */
  readonly apart_s: Range
  /** Operations whose time only a run can tell: come-up, release, "until it boils". */
  readonly open: readonly number[]
}

/** Time that an operation takes by the plan alone; null when only a run can tell. */
export function plannedTime_s(operation: PlanOperation): Range | null {
  switch (operation.kind) {
    case 'brown':
      return { low: operation.time_s.low * operation.batches, high: operation.time_s.high * operation.batches }
    case 'release':
      // How long the fall to the float takes is the run's to tell.
      if (operation.how === 'vented') return potTimes.vent
      return operation.natural_s === null
        ? null
        : { low: operation.natural_s, high: operation.natural_s + potTimes.vent.high }
    case 'heat':
    case 'simmer':
    case 'reduce':
      return operation.time_s
    default:
      return operation.time_s
  }
}

/**
 * The clock of one cook with two hands: hands-on bands follow one another, what runs by itself may carry bench work
 * that the words put beside it.
 *
 * Shape    sums of ranges, low and high apart
 * Range    any plan; `supplied` gives what a run found, by operation: a wait before it (come-up) is its caller's to add
 * Outside  operations whose time is not known count nothing and are listed in `open`
 * Error    of the norms; the sum of lows and of highs is wider than a likely spread
 * Source   docs/models/method.md
 * Check    test/core/method/timeline.test.ts
 */
export function timeline(plan: Plan, supplied: ReadonlyMap<number, Range> = new Map()): Timeline {
  const bands: Band[] = []
  const open: number[] = []
  let clock: Range = { low: 0, high: 0 }
  let hands: Range = { low: 0, high: 0 }
  let apart: Range = { low: 0, high: 0 }
  // Free unattended time of the band before, that work beside it can use up.
  let free: Range = { low: 0, high: 0 }
  plan.operations.forEach((operation, index) => {
    const known = supplied.get(index) ?? plannedTime_s(operation)
    const time = known ?? { low: 0, high: 0 }
    if (!known) open.push(index)
    const bench = operation.kind === 'bench' ? operation : null
    // Chilling is after the dish is done, or the day before it.
    if (bench?.apart || operation.kind === 'chill') {
      apart = plus(apart, time)
      return
    }
    const beside = bench?.beside ?? false
    bands.push({
      operation: index,
      label: operation.label,
      kind: operation.kind,
      handsOn: operation.handsOn,
      start_s: clock,
      time_s: time,
      open: !known,
      beside,
    })
    if (operation.handsOn) hands = plus(hands, time)
    if (beside && !operation.handsOn) return
    if (beside) {
      const outlasts = { low: Math.max(0, time.low - free.low), high: Math.max(0, time.high - free.high) }
      free = { low: Math.max(0, free.low - time.low), high: Math.max(0, free.high - time.high) }
      clock = plus(clock, outlasts)
      return
    }
    clock = plus(clock, time)
    free = operation.handsOn ? { low: 0, high: 0 } : time
  })
  return { bands, total_s: clock, handsOn_s: hands, apart_s: apart, open }
}

const plus = (a: Range, b: Range): Range => ({ low: a.low + b.low, high: a.high + b.high })
