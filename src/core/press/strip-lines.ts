import { type ScaleLinear, scaleLinear } from 'd3-scale'
import type { GroupSeries, Run } from '../cook/index.ts'
import { isClosed, isWet, momentOf } from './moment.ts'
import { shortNames } from './names.ts'
import type { ColourName } from './style.ts'
import type { Box } from './text-mark.ts'
import type { Point } from './thin.ts'

/** One named line of the strip. */
export interface Curve {
  readonly name: string
  readonly colour: ColourName
  readonly width: number
  readonly dash?: string
  readonly points: Point[]
  /** Where its name reads best, seconds. */
  readonly near_s: number
  at(time_s: number): number
}

/** From a level (in degrees Celsius, by sample) to the thinned points of its line. */
export type Plotter = (celsius: (sample: number) => number) => Point[]

export const zero_K = 273.15

/** Whether a group is there at a sample: in the pot, on the rack or beside it. */
export function here(g: GroupSeries, i: number): boolean {
  return g.where[i] !== 0
}

export /** Groups worth a line: pieces that lag the liquor, the heaviest first, three at most. */
function mainGroups(run: Run): GroupSeries[] {
  return run.series.groups
    .filter((g) => {
      const load = run.plan.loads[g.load]
      if (!load.pieces || load.pieces.thickness_m < 0.006) return false
      return load.mass_kg >= 0.05
    })
    .sort((a, b) => run.plan.loads[b.load].mass_kg - run.plan.loads[a.load].mass_kg)
    .slice(0, 3)
}

/** The lines of a run, the base first, then the liquor, then the pieces. */
export function curvesOf(run: Run, points: Plotter): Curve[] {
  const { series } = run
  const names = shortNames(run.plan)
  const wet = (i: number) => isWet(series.liquid_m3[i], series.fat_kg[i])
  const phase = (kind: string) => run.phases.find((p) => p.kind === kind)
  const middle = (kind: string, share: number) => {
    const p = phase(kind)
    return p ? p.start_s + share * (p.end_s - p.start_s) : (run.phases.at(-1)?.end_s ?? 0) / 2
  }
  const brown = run.phases.find((p) => p.operation !== null && run.plan.operations[p.operation]?.kind === 'brown')
  const started = series.power_W.findIndex((p) => p > 0)
  const curves: Curve[] = [
    {
      name: 'base of the pot',
      colour: 'heat',
      width: 1.4,
      points: points((i) => (i < started ? Number.NaN : series.baseHot_K[i] - zero_K)),
      near_s: brown ? (brown.start_s + brown.end_s) / 2 : middle('hold', 0.5),
      at: (t) => momentOf(run, t).baseHot_K - zero_K,
    },
    {
      name: 'liquor',
      colour: 'water',
      width: 1.6,
      points: points((i) => (wet(i) ? series.liquor_K[i] - zero_K : Number.NaN)),
      near_s: middle('come-up', 0.6),
      at: (t) => {
        const m = momentOf(run, t)
        return m.wet ? m.liquor_K - zero_K : Number.NaN
      },
    },
  ]
  mainGroups(run).forEach((g, k) => {
    curves.push({
      name: k === 0 ? `coldest ${names[g.load]}` : names[g.load],
      colour: k === 0 ? 'ink' : 'soft',
      width: k === 0 ? 1.6 : 1.1,
      ...(k === 0 ? {} : { dash: k === 1 ? '1 2.5' : '6 2 1 2' }),
      points: points((i) => (here(g, i) ? g.coldest_K[i] - zero_K : Number.NaN)),
      near_s: middle('hold', k === 0 ? 0.35 : 0.05),
      at: (t) => {
        const group = momentOf(run, t).groups.find((one) => one.load.id === run.plan.loads[g.load].id)
        return group && group.where !== 'away' ? group.coldest_K - zero_K : Number.NaN
      },
    })
  })
  return curves
}

/** The line at which the heat stops or food scorches, while the lid keeps the base from sight. */
export function tripLine(run: Run, points: Plotter): { points: Point[]; label: string | null } {
  const { trip_K, scorch_K } = run.plan.pot
  const limit_K = trip_K ?? scorch_K
  const line = points((i) => (isClosed(run, i) ? limit_K - zero_K : Number.NaN))
  const drawn = line.some((p) => Number.isFinite(p.y))
  return { points: drawn ? line : [], label: !drawn ? null : trip_K === null ? 'scorches' : 'trip' }
}

/** Degrees Celsius to pixels, wide enough for the hottest base and, when something is frozen, below zero. */
export function temperatureScale(run: Run, plot: Box): ScaleLinear<number, number> {
  const { series } = run
  let high = 120
  let low = 0
  for (let i = 0; i < series.time_s.length; i++) {
    for (const value of [series.base_K[i], series.baseHot_K[i], series.liquor_K[i]]) {
      if (value - zero_K > high) high = value - zero_K
    }
    for (const g of series.groups) if (here(g, i) && g.coldest_K[i] - zero_K < low) low = g.coldest_K[i] - zero_K
  }
  const trip = run.plan.pot.trip_K ?? run.plan.pot.scorch_K
  high = Math.max(high, trip - zero_K + 4)
  return scaleLinear([low < -1 ? -25 : 0, Math.ceil((high - 3) / 50) * 50], [plot.y1, plot.y0])
}
