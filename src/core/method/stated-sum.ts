import type { Span } from '../findings/index.ts'
import type { Operation, Range, Recipe } from '../manuscript/index.ts'

/** A time that stands in the method, and how often it is to be spent. */
export interface StatedPart extends Span {
  readonly verb: Operation['verb']
  readonly step: number
  /** In all: a batch time is multiplied out. */
  readonly time_s: Range
  /** Soaking, marinating, chilling: waiting that totals print apart. */
  readonly apart: boolean
}

export interface StatedSum {
  /** Everything printed in the method, without what waits apart. */
  readonly time_s: Range
  readonly apart_s: Range
  readonly parts: readonly StatedPart[]
}

const waits = new Set<Operation['verb']>(['soak', 'marinate', 'pickle', 'chill'])

/** The sum of the minutes that the method itself prints: what its stated total must at least come to. */
export function statedSum(recipe: Recipe): StatedSum {
  const parts: StatedPart[] = []
  recipe.steps.forEach((step, index) => {
    for (const op of step.operations) {
      if (op.aside) continue
      const times = [
        op.time_s ? { low: op.time_s.low, high: op.time_s.high } : null,
        op.verb === 'release' && op.releaseTime_s !== null && !op.time_s
          ? { low: op.releaseTime_s, high: op.releaseTime_s }
          : null,
      ]
      const time = times.find((each) => each && each.high > 0 && Number.isFinite(each.high))
      if (!time) continue
      const factor =
        ((op.perBatch || op.perSide) && op.batches !== null ? Math.max(1, op.batches) : 1) * (op.perSide ? 2 : 1)
      const whole = { low: time.low * factor, high: time.high * factor }
      parts.push({
        from: op.from,
        to: op.to,
        verb: op.verb,
        step: index,
        time_s: whole,
        apart: waits.has(op.verb) && whole.high >= 1800,
      })
    }
  })
  const sum = (list: readonly StatedPart[]): Range => ({
    low: list.reduce((s, p) => s + p.time_s.low, 0),
    high: list.reduce((s, p) => s + p.time_s.high, 0),
  })
  return { time_s: sum(parts.filter((part) => !part.apart)), apart_s: sum(parts.filter((part) => part.apart)), parts }
}
