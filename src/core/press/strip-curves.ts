import { line } from 'd3-shape'
import type { Run } from '../cook/index.ts'
import type { ClockScale } from './clock-scale.ts'
import { type Mark, mark, round } from './mark.ts'
import { type CurveLabel, type LabelWish, placeNames } from './place.ts'
import { type Curve, curvesOf, here, mainGroups, temperatureScale, tripLine, zero_K } from './strip-lines.ts'
import { pressureWash, wash } from './strip-washes.ts'
import { type Box, textMark } from './text-mark.ts'
import { type Point, thinned } from './thin.ts'

export interface CurveSet {
  readonly grid: readonly Mark[]
  readonly marks: readonly Mark[]
  /** Dots where the cursor meets the curves. */
  dots(time_s: number): Mark[]
}

const drawn = new WeakMap<Run, Map<string, CurveSet>>()

/**
 * Curves of temperature with their names beside them, the trip line, spreads and the pressure as a tint.
 * The same run in the same field has the same curves: a moving cursor does not place their names again.
 */
export function stripCurves(run: Run, clock: ClockScale, plot: Box, size: number): CurveSet {
  const known = drawn.get(run) ?? new Map<string, CurveSet>()
  drawn.set(run, known)
  const key = [plot.x0, plot.x1, plot.y0, plot.y1, size].join(' ')
  const set = known.get(key) ?? buildCurves(run, clock, plot, size)
  known.set(key, set)
  return set
}

function buildCurves(run: Run, clock: ClockScale, plot: Box, size: number): CurveSet {
  const { series } = run
  const y = temperatureScale(run, plot)
  const points = (celsius: (sample: number) => number): Point[] =>
    thinned(Array.from(series.time_s, (t, i) => ({ x: clock.x(t), y: y(celsius(i)) })))
  const curves = curvesOf(run, points)
  const trip = tripLine(run, points)
  const obstacles = [...curves.map((curve) => curve.points), trip.points]
  const pressure = pressureWash(run, clock, plot, size, obstacles)
  const wishes = [
    ...(trip.label ? [wish(trip.label, trip.points, plot.x1, size)] : []),
    ...curves.map((curve) => wish(curve.name, curve.points, clock.x(curve.near_s), size)),
  ]
  const field = { x0: plot.x0 + 2, y0: plot.y0 - 4, x1: plot.x1 - 2, y1: plot.y1 - 2 }
  const names = placeNames(wishes, field, pressure.box ? [pressure.box] : [], obstacles)
  return {
    grid: gridMarks(y, plot, size),
    marks: [
      ...(pressure.mark ? [pressure.mark] : []),
      ...tints(run, clock, y),
      lineMark(trip.points, 's-heat', 1.2, '5 4'),
      ...[...curves].reverse().map((curve) => lineMark(curve.points, `s-${curve.colour}`, curve.width, curve.dash)),
      ...names.flatMap((name, i) => (name ? nameMarks(name, wishes[i], curves) : [])),
    ],
    dots: (time_s) =>
      curves.flatMap((curve) => {
        const value = curve.at(time_s)
        return Number.isFinite(value)
          ? [mark('circle', { class: `f-${curve.colour}`, cx: clock.x(time_s), cy: y(value), r: 3.2 })]
          : []
      }),
  }
}

function wish(text: string, curve: readonly Point[], near: number, size: number): LabelWish {
  return { text, style: { face: 'serifItalic', size: size + 1 }, curve, near }
}

function gridMarks(y: ReturnType<typeof temperatureScale>, plot: Box, size: number): Mark[] {
  const ticks = y.ticks(Math.max(2, Math.round((plot.y1 - plot.y0) / 38)))
  return ticks.flatMap((t, i) => [
    mark('path', { class: 'line s-rule', d: `M${round(plot.x0)} ${round(y(t))}H${round(plot.x1)}`, 'stroke-width': 1 }),
    textMark(plot.x0 - 7, y(t) + 0.35 * size, i === ticks.length - 1 ? `${t} °C` : String(t), {
      size,
      colour: 'soft',
      anchor: 'end',
    }),
  ])
}

/** From the base's mean to its hottest spot, and from the core to the skin of the piece that matters most. */
function tints(run: Run, clock: ClockScale, y: (celsius: number) => number): Mark[] {
  const { series } = run
  const main = mainGroups(run)[0]
  return [
    wash(
      run,
      clock,
      y,
      (i) => series.base_K[i] - zero_K,
      (i) => series.baseHot_K[i] - zero_K,
    ),
    ...(main
      ? [
          wash(
            run,
            clock,
            y,
            (i) => (here(main, i) ? main.coldest_K[i] - zero_K : Number.NaN),
            (i) => (here(main, i) ? main.surface_K[i] - zero_K : Number.NaN),
          ),
        ]
      : []),
  ]
}

function lineMark(points: readonly Point[], stroke: string, width: number, dash?: string): Mark {
  const path = line<Point>(
    (p) => p.x,
    (p) => p.y,
  )
    .defined((p) => Number.isFinite(p.y))
    .digits(1)
  return mark('path', {
    class: `line ${stroke}`,
    d: path([...points]) ?? '',
    'stroke-width': width,
    'stroke-linejoin': 'round',
    'stroke-dasharray': dash,
  })
}

function nameMarks(name: CurveLabel, wish: LabelWish, curves: readonly Curve[]): Mark[] {
  const colour = curves.find((curve) => curve.points === wish.curve)?.colour ?? 'heat'
  const words = textMark(name.x, name.y, name.text, { ...wish.style, halo: true })
  if (!name.leader) return [words]
  const [a, b] = name.leader
  return [
    mark('path', {
      class: 'line s-soft',
      d: `M${round(a.x)} ${round(a.y)}L${round(b.x)} ${round(b.y)}`,
      'stroke-width': 0.8,
    }),
    mark('circle', { class: `f-${colour}`, cx: b.x, cy: b.y, r: 1.8 }),
    words,
  ]
}
