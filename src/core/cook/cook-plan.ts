import type { Plan } from '../method/index.ts'
import { type Constants, constantsWith } from './assumptions.ts'
import { hold, lock, open, release } from './closed-work.ts'
import { findingsOf } from './findings.ts'
import { foams } from './foam.ts'
import { giveBack, lift, skim, strain } from './hand-work.ts'
import { add, bake, bench, brown, deglaze, fry, heat, reduce, rest, simmer } from './open-work.ts'
import { makeRecorder, noRecorder } from './recorder.ts'
import type { Clock, Run } from './run.ts'
import { accountOf, pieceVerdicts, sauceOf } from './verdicts.ts'
import { contentsVolume_m3, heatHeld_J } from './vessel.ts'
import { startWalk, type Walk } from './walk.ts'

export interface CookOptions {
  /** Assumed constants to use in place of the starting values. */
  readonly constants?: Partial<Constants>
  /** False for runs that nobody draws: `series` is then empty. */
  readonly record?: boolean
}

/**
 * The run of a plan in its pot.
 *
 * Shape    walks the operations in order; open steps, come-up, hold and release are each stepped implicitly
 * Range    any plan of planRecipe
 * Outside  nothing is clamped; what the model does not know is null with a finding
 * Error    docs/models/agreement.md
 * Source   docs/models/pot.md
 * Check    test/core/cook: balances to 0.1 %, the facts of a pot, halving the step
 */
export function cookPlan(plan: Plan, options: CookOptions = {}): Run {
  const c = constantsWith(options.constants)
  const recorder = options.record === false ? noRecorder : makeRecorder(plan.loads.length)
  const w = startWalk(plan, c, recorder)
  const start_J = heatHeld_J(w.v)
  recorder.sample(w.v, 0)
  plan.operations.forEach((op, index) => {
    w.at = index
    perform(w, op)
    // A pot that is never locked is judged at its fullest.
    if (!plan.pot.regulator) w.fill_m3 = Math.max(w.fill_m3, contentsVolume_m3(w.v))
  })
  if (w.v.lid === 2) open(w)
  if (w.fill_m3 === 0) w.fill_m3 = contentsVolume_m3(w.v)
  const pieces = pieceVerdicts(w)
  const sauce = sauceOf(w)
  const account = accountOf(w, start_J)
  const closed = w.clock.comeUp_s !== null || Number.isFinite(w.margin.dK)
  const run: Omit<Run, 'findings'> = {
    plan,
    clock: clockOf(w),
    phases: w.phases,
    events: w.events,
    base: closed
      ? { margin_dK: w.margin.dK, trips: w.margin.trips, at_s: w.margin.at_s, cause: w.margin.cause }
      : { margin_dK: (plan.pot.trip_K ?? plan.pot.scorch_K) - w.v.boil_K, trips: false, at_s: 0, cause: null },
    fill: {
      volume_m3: w.fill_m3,
      fraction: w.fill_m3 / plan.pot.capacity_m3,
      limit: foams(plan) ? plan.pot.foamLimit : plan.pot.fillLimit,
    },
    pieces,
    sauce,
    account,
    series: recorder.series(w.v.groups.map((g) => g.load.id)),
  }
  return { ...run, findings: findingsOf(run, w) }
}

type Doing = { [K in Plan['operations'][number]['kind']]: (w: Walk, op: never) => void }

const doing: Doing = {
  bench,
  heat,
  add,
  season: add,
  thicken: add,
  brown,
  fry,
  deglaze,
  simmer,
  reduce,
  bake,
  lock,
  hold,
  release,
  rest,
  chill: rest,
  serve: rest,
  mash: rest,
  lift,
  return: giveBack,
  strain,
  drain: strain,
  skim,
}

function perform(w: Walk, op: Plan['operations'][number]): void {
  // Each function takes the operation of its own kind; the table pairs them, which the compiler cannot follow.
  doing[op.kind](w, op as never)
}

function clockOf(w: Walk): Clock {
  return {
    prep_s: w.clock.prep_s,
    beforeLock_s: w.clock.beforeLock_s,
    comeUp_s: w.clock.comeUp_s,
    hold_s: w.clock.hold_s,
    release_s: w.clock.release_s,
    after_s: w.clock.after_s,
    total_s: [w.low_s, w.high_s],
    handsOn_s: w.handsOn_s,
    apart_s: w.clock.apart_s,
  }
}
