import type { Run } from '../cook/index.ts'
import { type ClockScale, clockScale } from './clock-scale.ts'
import { describeStrip } from './describe.ts'
import { type Mark, mark, round } from './mark.ts'
import { textWidth } from './measure.ts'
import { stripBands } from './strip-bands.ts'
import { type CurveSet, stripCurves } from './strip-curves.ts'
import { stripEvents } from './strip-events.ts'
import { footHeight, footLines, stripFoot } from './strip-foot.ts'
import { measuresWidth, stripMeasures } from './strip-measures.ts'
import { momentSentence, totalSentence } from './strip-words.ts'
import { type Box, textMark } from './text-mark.ts'

export interface StripOptions {
  /** 320 to 1400 px read well. */
  readonly width: number
  readonly height: number
  /** The instant that the bench shows; no cursor when left out. */
  readonly cursor_s?: number | undefined
  /** A slim bar for the foot of a phone: bands and cursor only. */
  readonly compact?: boolean
  /** Keeps ids apart when a page holds two strips. */
  readonly prefix?: string
}

/** Between time and pixels of the same strip, for pointers and keys. */
export interface StripScale {
  readonly left: number
  readonly right: number
  readonly end_s: number
  x(time_s: number): number
  time_s(x: number): number
}

interface Frame {
  readonly clock: ClockScale
  readonly plot: Box
  readonly size: number
  readonly bandHeight: number
}

function frameOf(run: Run, { width, height, compact = false }: StripOptions): Frame {
  const size = width < 520 ? 11.5 : 12.5
  const measures = compact ? 0 : measuresWidth(run, width)
  const left = compact ? 0.5 : textWidth('200 °C', size) + 10
  const right = compact ? width - 0.5 : width - measures - 12
  const bandHeight = compact ? Math.min(16, Math.max(8, height * 0.4)) : width < 520 ? 16 : 18
  const foot = compact ? 0 : footHeight(footLines(run, width, size), size)
  const plot = { x0: left, y0: bandHeight + size + 16, x1: right, y1: Math.max(height - foot, bandHeight + 40) }
  return { clock: clockScale(run, left, right), plot, size, bandHeight }
}

/** The hit test of a strip drawn with the same options. */
export function stripScale(run: Run, options: StripOptions): StripScale {
  const { clock } = frameOf(run, options)
  return {
    left: clock.left,
    right: clock.right,
    end_s: clock.time_s(clock.right),
    x: clock.x,
    time_s: clock.time_s,
  }
}

/** One time axis for everything that happens in a run. */
export function strip(run: Run, options: StripOptions): Mark {
  const { width, height, cursor_s, compact = false, prefix = 'strip' } = options
  const frame = frameOf(run, options)
  const body = compact ? compactStrip(run, options, frame) : fullStrip(run, options, frame)
  return mark(
    'svg',
    {
      class: 'drawing strip',
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: 'img',
      'aria-label': `Time: ${totalSentence(run)}${cursor_s === undefined ? '' : `; ${momentSentence(run, cursor_s)}`}`,
      'data-prefix': prefix,
    },
    { tag: 'desc', attrs: {}, children: [], text: describeStrip(run) },
    body,
  )
}

function fullStrip(run: Run, { width, cursor_s }: StripOptions, frame: Frame): Mark[] {
  const { clock, plot, size, bandHeight } = frame
  const curves = stripCurves(run, clock, plot, size)
  return [
    stripBands(run, clock, { y: 0, height: bandHeight, size, labels: true }),
    stripEvents(run, clock, { y: bandHeight, size, plot }),
    ...axis(frame, curves),
    ...curves.marks,
    ...stripMeasures(run, { x0: plot.x1 + 12, x1: width, plot, size, cursor_s }),
    ...stripFoot(run, clock, { width, plot, size, cursor_s }),
    ...(cursor_s === undefined ? [] : cursorMarks(clock.x(cursor_s), plot, curves.dots(cursor_s))),
  ]
}

function axis({ clock, plot, size }: Frame, curves: CurveSet): Mark[] {
  const y = plot.y1 + size + 5
  const ticks = clock.ticks(textWidth('000', size) + 26)
  const labels = ticks.map((tick, i) =>
    textMark(tick.x, y, i === 0 ? `${tick.minutes} min` : String(tick.minutes), {
      size,
      colour: 'soft',
      anchor: 'middle',
    }),
  )
  return [
    ...curves.grid,
    mark('path', {
      class: 'line s-rule',
      d: ticks.map((tick) => `M${round(tick.x)} ${round(plot.y1)}v4`).join(''),
      'stroke-width': 1,
    }),
    ...labels,
    ...clock.breaks.map((gap) => {
      const x = (gap.x0 + gap.x1) / 2
      const mid = plot.y1
      return mark('path', {
        class: 'line s-soft',
        d: `M${round(x - 5)} ${round(mid + 5)}l6 -10M${round(x)} ${round(mid + 5)}l6 -10`,
        'stroke-width': 1,
      })
    }),
  ]
}

function cursorMarks(x: number, plot: Box, dots: readonly Mark[]): Mark[] {
  return [
    mark('path', { class: 'line s-ink', d: `M${round(x)} 0V${round(plot.y1 + 4)}`, 'stroke-width': 1.2 }),
    mark('path', { class: 'f-ink', d: `M${round(x - 4)} 0h8l-4 5z` }),
    ...dots,
  ]
}

function compactStrip(run: Run, { width, height, cursor_s }: StripOptions, frame: Frame): Mark[] {
  const { clock, bandHeight, size } = frame
  const sentence = cursor_s === undefined ? totalSentence(run) : momentSentence(run, cursor_s)
  const x = cursor_s === undefined ? null : clock.x(cursor_s)
  return [
    stripBands(run, clock, { y: 3, height: bandHeight, size, labels: false }),
    ...(x === null
      ? []
      : [mark('path', { class: 'line s-ink', d: `M${round(x)} 0V${round(bandHeight + 6)}`, 'stroke-width': 2 })]),
    ...(height >= bandHeight + 24
      ? [
          textMark(0, bandHeight + size + 13, sentence, {
            face: 'serifItalic',
            size: Math.min(14, (14 * width) / Math.max(textWidth(sentence, 14, 'serifItalic'), width)),
            colour: 'soft',
          }),
        ]
      : []),
  ]
}
