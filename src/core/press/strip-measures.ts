import type { Run } from '../cook/index.ts'
import { type DoneScale, doneScales } from './done-words.ts'
import { type Mark, mark } from './mark.ts'
import { fitted } from './measure.ts'
import { endOf_s, momentOf } from './moment.ts'
import { shortNames } from './names.ts'
import { type Box, textMark } from './text-mark.ts'

const bar = 18

/** Room at the right edge for the measures of what is done; none on a phone, where words say it. */
export function measuresWidth(run: Run, width: number): number {
  const count = Math.min(doneScales(run).length, width >= 1000 ? 2 : width >= 640 ? 1 : 0)
  return count * oneWidth(width)
}

function oneWidth(width: number): number {
  return width >= 1000 ? 112 : 100
}

interface MeasurePlace {
  readonly x0: number
  readonly x1: number
  readonly plot: Box
  readonly size: number
  readonly cursor_s: number | undefined
}

/** What is done, as a filled measure with the words along it; the spread of what comes out as a bracket. */
export function stripMeasures(run: Run, { x0, x1, plot, size, cursor_s }: MeasurePlace): Mark[] {
  const each = 100
  const count = Math.min(doneScales(run).length, Math.floor((x1 - x0 + 12) / each))
  return doneScales(run)
    .slice(0, count)
    .map((scale, i) => measure(run, scale, x0 + 12 + i * ((x1 - x0) / count), plot, size, cursor_s, (x1 - x0) / count))
}

function measure(
  run: Run,
  scale: DoneScale,
  x: number,
  plot: Box,
  size: number,
  cursor_s: number | undefined,
  room: number,
): Mark {
  const height = plot.y1 - plot.y0
  const y = (share: number) => plot.y1 - Math.min(Math.max(share, 0), 1) * height
  const at = (time_s: number) => momentOf(run, time_s).groups.find((g) => g.load.id === scale.load)?.done ?? Number.NaN
  const verdict = run.pieces.find((piece) => piece.load === scale.load)
  const end = verdict?.tender ?? (verdict?.firm != null ? 1 - verdict.firm : at(endOf_s(run)))
  const now =
    cursor_s === undefined ? end : Math.min(at(cursor_s), Number.isFinite(end) ? Math.max(end, at(cursor_s)) : 1)
  const word = verdict?.word ?? [...scale.zones].reverse().find((zone) => end >= zone.from)?.word ?? ''
  const small = size - 0.5
  const name = shortNames(run.plan)[scale.load]
  const words = scale.zones.map((zone, i) => {
    const to = scale.zones[i + 1]?.from ?? 1
    // A zone thinner than its word borrows room: its word sits at the zone's middle only if the neighbours leave space.
    return { zone, to, mid: (y(zone.from) + y(to)) / 2, tall: y(zone.from) - y(to) }
  })
  const centres = settle(
    words.map((w) => w.mid),
    small + 2,
    plot.y0 + small / 2,
    plot.y1 - small / 2,
  )
  return mark(
    'g',
    { class: 'measure' },
    textMark(x, plot.y0 - 8, fitted(name, room - 16, size + 1, 'serifItalic') ?? '', {
      face: 'serifItalic',
      size: size + 1,
    }),
    Number.isFinite(now) && mark('rect', { class: 'f-heat-tint', x, y: y(now), width: bar, height: plot.y1 - y(now) }),
    mark('rect', { class: 'line s-ink', x, y: plot.y0, width: bar, height, 'stroke-width': 1 }),
    Number.isFinite(end) &&
      mark('path', { class: 'line s-heat', d: `M${r(x)} ${r(y(end))}h${bar}`, 'stroke-width': 2 }),
    verdict?.tenderBand &&
      mark('path', {
        class: 'line s-heat',
        d: `M${r(x - 2)} ${r(y(verdict.tenderBand[0]))}h-3V${r(y(verdict.tenderBand[1]))}h3`,
        'stroke-width': 1,
      }),
    scale.zones
      .slice(1)
      .map((zone) =>
        mark('path', { class: 'line s-ink', d: `M${r(x + bar)} ${r(y(zone.from))}h4`, 'stroke-width': 1 }),
      ),
    words.map(({ zone }, i) =>
      textMark(x + bar + 8, centres[i] + 0.35 * small, zone.word, {
        size: small,
        face: zone.word === word ? 'sansBold' : 'sans',
        colour: zone.word === word ? 'ink' : 'soft',
      }),
    ),
  )
}

// Words of thin zones pushed apart, from the bottom up and back down.
function settle(wanted: readonly number[], gap: number, low: number, high: number): number[] {
  const at = [...wanted]
  let floor = high + gap
  for (let i = 0; i < at.length; i++) {
    at[i] = Math.min(at[i], floor - gap)
    floor = at[i]
  }
  let ceiling = low - gap
  for (let i = at.length - 1; i >= 0; i--) {
    at[i] = Math.max(at[i], ceiling + gap)
    ceiling = at[i]
  }
  return at
}

const r = (x: number) => Math.round(x * 10) / 10
