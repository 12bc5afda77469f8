import type { Phase, Run } from '../../core/cook/index.ts'
import type { Span } from '../../core/findings/index.ts'
import type { Recipe } from '../../core/manuscript/index.ts'
import type { Plan } from '../../core/method/index.ts'

// The one cursor of the bench. It is kept as a place in the work ("23 minutes into the hold"), not as a time of day:
// when a word changes what comes before, it stays with the work.

export interface Cursor {
  readonly kind: Phase['kind']
  /** Which of the bands of that kind, counted from the start. */
  readonly nth: number
  readonly into_s: number
}

export function cursorAt(run: Run, time_s: number): Cursor | null {
  const index = indexAt(run.phases, time_s)
  if (index < 0) return null
  const phase = run.phases[index]
  const nth = run.phases.slice(0, index).filter((each) => each.kind === phase.kind).length
  return { kind: phase.kind, nth, into_s: time_s - phase.start_s }
}

export function timeOf(run: Run, cursor: Cursor | null): number {
  if (!cursor) return firstLook_s(run)
  const alike = run.phases.filter((phase) => phase.kind === cursor.kind)
  const phase = alike[Math.min(cursor.nth, alike.length - 1)]
  if (!phase) return firstLook_s(run)
  return phase.start_s + Math.min(cursor.into_s, phase.end_s - phase.start_s)
}

/** Where to look first: a stop, else three quarters into the hold, else two thirds into the longest work. */
export function firstLook_s(run: Run): number {
  // A breath before the stop, while the work that met it still goes on.
  if (run.base.trips) return Math.max(0, run.base.at_s - 1)
  const hold = run.phases.find((phase) => phase.kind === 'hold')
  if (hold) return hold.start_s + 0.75 * (hold.end_s - hold.start_s)
  const longest = run.phases
    .filter((phase) => phase.kind !== 'bench')
    .sort((a, b) => b.end_s - b.start_s - (a.end_s - a.start_s))
    .at(0)
  return longest ? longest.start_s + (2 / 3) * (longest.end_s - longest.start_s) : 0
}

export const endOf_s = (run: Run): number => run.phases.at(-1)?.end_s ?? 0

export function phaseAt(run: Run, time_s: number): Phase | null {
  return run.phases[indexAt(run.phases, time_s)] ?? null
}

/** At a seam, the band that begins. */
function indexAt(phases: readonly Phase[], time_s: number): number {
  const index = phases.findIndex((phase) => time_s >= phase.start_s && time_s < phase.end_s)
  return index < 0 ? phases.length - 1 : index
}

/** The words that ask for what happens at a time, and the step they stand in. */
export function wordsAt(recipe: Recipe, run: Run, time_s: number): { words: Span; step: Span } | null {
  const at = indexAt(run.phases, time_s)
  if (at < 0) return null
  // What the pot does by itself belongs to what it leads to: coming up leads to the hold.
  const named = run.phases.slice(at).find((phase) => phase.operation !== null)
  const operation = named && run.plan.operations[named.operation!]
  if (!operation || operation.implied) return null
  const step =
    recipe.steps.find((each) => operation.from >= each.from && operation.to <= each.to) ?? recipe.steps[operation.step]
  return step ? { words: operation, step } : null
}

/** Start of the work that the sentence at a place asks for; null when the place asks for none. */
export function timeAsked_s(recipe: Recipe, run: Run, at: number): number | null {
  const step = recipe.steps.find((each) => at >= each.from && at <= each.to)
  if (!step) return null
  const asked = operationAt(run.plan, step, at)
  return asked === null ? null : startOf_s(run, asked)
}

/** The operation whose words hold the place, the narrowest; else the last one before it in the step; else the first. */
function operationAt(plan: Plan, step: Span, at: number): number | null {
  const inside = plan.operations
    .map((operation, index) => ({ operation, index }))
    .filter(({ operation }) => operation.from >= step.from && operation.to <= step.to)
  const holding = inside
    .filter(({ operation }) => at >= operation.from && at <= operation.to)
    .sort((a, b) => a.operation.to - a.operation.from - (b.operation.to - b.operation.from))
  const before = inside.filter(({ operation }) => operation.to <= at)
  return (holding[0] ?? before.at(-1) ?? inside[0])?.index ?? null
}

/** An operation that takes no time of its own happens where the next one begins. */
function startOf_s(run: Run, operation: number): number | null {
  const phase = run.phases.find((each) => each.operation !== null && each.operation >= operation)
  return phase ? phase.start_s : null
}

/** True when a time lies in the work that a place asks for: the cursor need not move then. */
export function withinAsked(run: Run, time_s: number, start_s: number): boolean {
  const here = phaseAt(run, time_s)
  const there = phaseAt(run, start_s)
  return here !== null && here.operation !== null && here.operation === there?.operation
}
