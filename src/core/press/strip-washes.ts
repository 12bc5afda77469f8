import { area } from 'd3-shape'
import type { Run } from '../cook/index.ts'
import type { ClockScale } from './clock-scale.ts'
import { columnsOf, inside } from './columns.ts'
import { type Mark, mark } from './mark.ts'
import { type Box, textBox, textMark } from './text-mark.ts'
import { type Point, thinned } from './thin.ts'

type Level = (sample: number) => number

/** The room between two curves as a wash, one slice a pixel column. */
export function wash(run: Run, clock: ClockScale, y: (c: number) => number, low: Level, high: Level): Mark {
  const columns = new Map<number, { top: number; foot: number }>()
  let last = -1
  Array.from(run.series.time_s).forEach((t, i) => {
    const [a, b] = [y(low(i)), y(high(i))]
    if (!Number.isFinite(a) || !Number.isFinite(b)) return
    const x = Math.round(clock.x(t))
    // A hole of more than a few columns is a gap, not a slope.
    if (last >= 0 && x - last > 12) columns.set(last + 1, { top: Number.NaN, foot: Number.NaN })
    last = x
    const now = columns.get(x)
    columns.set(x, { top: Math.min(a, b, now?.top ?? a), foot: Math.max(a, b, now?.foot ?? a) })
  })
  const shape = area<[number, { top: number; foot: number }]>(
    ([x]) => x,
    ([, c]) => c.foot,
    ([, c]) => c.top,
  )
    .defined(([, c]) => Number.isFinite(c.top))
    .digits(1)
  return mark('path', { class: 'f-heat-tint', d: shape([...columns]) ?? '', opacity: 0.55 })
}

/** Pressure over the outside air as a low wash along the foot, named with its peak so that it needs no axis. */
export function pressureWash(
  run: Run,
  clock: ClockScale,
  plot: Box,
  size: number,
  lines: readonly (readonly Point[])[],
): { mark: Mark | null; box: Box | null } {
  const { series } = run
  const peak = series.gauge_Pa.reduce((a, b) => Math.max(a, b), 0)
  if (!(peak > 3000)) return { mark: null, box: null }
  const tall = Math.min(30, 0.2 * (plot.y1 - plot.y0))
  const points = thinned(
    Array.from(series.time_s, (t, i) => ({ x: clock.x(t), y: plot.y1 - (tall * series.gauge_Pa[i]) / peak })),
  )
  const shape = area<Point>(
    (p) => p.x,
    plot.y1,
    (p) => p.y,
  ).digits(1)
  const high = [...series.gauge_Pa]
    .map((p, i) => (p > 0.9 * peak ? clock.x(series.time_s[i]) : Number.NaN))
    .filter(Number.isFinite)
  const words = `${Math.round(peak / 1000)} kPa over the air outside`
  const style = { size: size - 1, colour: 'soft' as const, anchor: 'middle' as const }
  const [from, to] = [high[0], high[high.length - 1]]
  const baseline = plot.y1 - tall / 2 + 0.3 * size
  const rasters = lines.map((curve) => columnsOf(curve, plot.x0, plot.x1))
  // The words stand where no line runs through them, or not at all.
  const place = [0.5, 0.3, 0.7, 0.15, 0.85]
    .map((share) => from + share * (to - from))
    .map((x) => ({ x, box: textBox(x, baseline, words, style) }))
    .find(({ box }) => box.x0 > from + 4 && box.x1 < to - 4 && rasters.every((curve) => inside(curve, box, 2) === 0))
  return {
    mark: mark(
      'g',
      { class: 'pressure' },
      mark('path', { class: 'f-rule', d: shape(points) ?? '', opacity: 0.5 }),
      place && textMark(place.x, baseline, words, style),
    ),
    box: place?.box ?? null,
  }
}
