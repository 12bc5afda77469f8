import type { Phase, Run } from '../cook/index.ts'
import { endOf_s } from './moment.ts'

/** Time along a strip. A long wait (an overnight soak) is drawn short, with a break, or the cooking would be a sliver. */
export interface ClockScale {
  readonly left: number
  readonly right: number
  /** Where the labelled clock begins: after a wait that precedes all cooking, else the start. */
  readonly zero_s: number
  readonly breaks: readonly {
    readonly from_s: number
    readonly to_s: number
    readonly x0: number
    readonly x1: number
  }[]
  x(time_s: number): number
  time_s(x: number): number
  /** Marks at least `gap` pixels apart, in minutes of the labelled clock, none inside a break. */
  ticks(gap: number): readonly { readonly time_s: number; readonly x: number; readonly minutes: number }[]
}

interface Stretch {
  readonly from_s: number
  readonly to_s: number
  readonly x0: number
  readonly x1: number
  readonly broken: boolean
}

/** Share of the width that a broken wait takes. */
const brokenShare = 0.09

export function clockScale(run: Run, left: number, right: number): ClockScale {
  const end = Math.max(endOf_s(run), run.phases.at(-1)?.end_s ?? 0, 60)
  const waits = longWaits(run.phases, end)
  const width = right - left
  const brokenWidth = brokenShare * width
  const plain_s = end - waits.reduce((sum, wait) => sum + wait.end_s - wait.start_s, 0)
  const perSecond = (width - brokenWidth * waits.length) / Math.max(plain_s, 1)

  const stretches: Stretch[] = []
  let at = 0
  let x = left
  const push = (to_s: number, wide: number, broken: boolean) => {
    if (to_s <= at) return
    stretches.push({ from_s: at, to_s, x0: x, x1: x + wide, broken })
    at = to_s
    x += wide
  }
  for (const wait of waits) {
    push(wait.start_s, (wait.start_s - at) * perSecond, false)
    push(wait.end_s, brokenWidth, true)
  }
  push(end, (end - at) * perSecond, false)

  // What is soaked the night before is not part of the evening: the clock that is labelled begins after it.
  const heat = run.series.power_W.findIndex((power) => power > 0)
  const heat_s = heat < 0 ? Number.POSITIVE_INFINITY : run.series.time_s[heat]
  const zero_s = waits.filter((wait) => wait.end_s <= heat_s + 1).at(-1)?.end_s ?? 0

  const scale = (time_s: number) => {
    const s = stretches.find((one) => time_s <= one.to_s) ?? stretches[stretches.length - 1]
    const share = (Math.min(Math.max(time_s, 0), end) - s.from_s) / (s.to_s - s.from_s)
    return s.x0 + share * (s.x1 - s.x0)
  }
  return {
    left,
    right,
    zero_s,
    breaks: stretches.filter((s) => s.broken),
    x: scale,
    time_s(px) {
      const clamped = Math.min(Math.max(px, left), right)
      const s = stretches.find((one) => clamped <= one.x1) ?? stretches[stretches.length - 1]
      return s.from_s + ((clamped - s.x0) / (s.x1 - s.x0)) * (s.to_s - s.from_s)
    },
    ticks(gap) {
      const step = tickStep(gap / (perSecond * 60))
      return stretches
        .filter((s) => !s.broken)
        .flatMap((s) => {
          const marks = []
          const firstMark = Math.max(0, Math.ceil((s.from_s - zero_s) / 60 / step - 1e-6) * step)
          for (let m = firstMark; zero_s + m * 60 <= s.to_s + 1; m += step) {
            marks.push({ time_s: zero_s + m * 60, x: scale(zero_s + m * 60), minutes: m })
          }
          return marks
        })
    },
  }
}

/** Unattended bench waits of over an hour that would take more than half of the strip together with the rest. */
function longWaits(phases: readonly Phase[], end: number): Phase[] {
  const waits = phases.filter((phase) => phase.kind === 'bench' && !phase.handsOn && phase.end_s - phase.start_s > 3600)
  const waiting = waits.reduce((sum, phase) => sum + phase.end_s - phase.start_s, 0)
  return waiting > 0.3 * end ? waits : []
}

/** The smallest step a clock face knows that is at least `least` minutes. */
function tickStep(least: number): number {
  return [1, 2, 5, 10, 15, 20, 30, 60, 120, 180, 240, 360].find((step) => step >= least) ?? Math.ceil(least / 720) * 720
}
