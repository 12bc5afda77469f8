import type { Run } from '../cook/index.ts'
import { clockScale } from './clock-scale.ts'
import { doneScales } from './done-words.ts'
import { isClosed, momentOf } from './moment.ts'
import { shortNames } from './names.ts'
import { totalSentence } from './strip-words.ts'
import { shortened } from './words.ts'

export type ChartInk = 'base' | 'liquor' | 'coldest' | 'trip' | 'soft' | 'hold'

export interface ChartOptions {
  /** Width of the terminal; 40 at least. */
  readonly columns: number
  /** Rows of the temperature field. */
  readonly rows?: number
  /** False for terminals that know only ASCII. */
  readonly unicode?: boolean
  /** Colours a piece of text; left out, the chart is plain. */
  readonly paint?: (text: string, ink: ChartInk) => string
}

interface Cell {
  readonly glyph: string
  readonly ink: ChartInk
}

const gutter = 5

/** A small chart of a run in characters: bands of work, temperatures over time, the total. Lines never exceed `columns`. */
export function terminalChart(
  run: Run,
  { columns, rows = 11, unicode = true, paint = (text) => text }: ChartOptions,
): string {
  const width = Math.max(40, Math.floor(columns)) - gutter - 1
  const clock = clockScale(run, 0, width)
  const glyphs = unicode
    ? { base: '•', liquor: '~', coldest: 'o', trip: '╌', bar: '│', corner: '└', axis: '─', mark: '┬', tick: '┤' }
    : { base: '*', liquor: '~', coldest: 'o', trip: '-', bar: '|', corner: '+', axis: '-', mark: '+', tick: '|' }
  const limit_K = run.plan.pot.trip_K ?? run.plan.pot.scorch_K
  const main = doneScales(run)[0]?.load ?? run.series.groups[0]?.load
  const mainId = main === undefined ? null : run.plan.loads[main]?.id

  let high = limit_K - 273.15 + 5
  for (const value of run.series.baseHot_K) high = Math.max(high, value - 273.15)
  const top = Math.ceil(high / 50) * 50
  const row = (celsius: number) => Math.round(((top - celsius) / top) * (rows - 1))

  const field: (Cell | null)[][] = Array.from({ length: rows }, () => new Array<Cell | null>(width).fill(null))
  const put = (column: number, temperature_K: number, glyph: string, ink: ChartInk) => {
    const r = row(temperature_K - 273.15)
    if (Number.isFinite(temperature_K) && r >= 0 && r < rows) field[r][column] = { glyph, ink }
  }
  for (let c = 0; c < width; c++) {
    const m = momentOf(run, clock.time_s(c + 0.5))
    // Later marks cover earlier ones: the piece matters most, then the liquor, then the base.
    if (m.closed) put(c, limit_K, glyphs.trip, 'trip')
    if (m.baseHot_K > 303) put(c, m.baseHot_K, glyphs.base, 'base')
    if (m.wet) put(c, m.liquor_K, glyphs.liquor, 'liquor')
    const group = m.groups.find((g) => g.load.id === mainId)
    if (group && group.where !== 'away') put(c, group.coldest_K, glyphs.coldest, 'coldest')
  }

  const labels = new Map<number, string>()
  for (let t = 0; t <= top; t += 50) labels.set(row(t), String(t))
  const lines = [
    bandLine(run, clock, width, glyphs.bar, paint),
    ...field.map((cells, r) => {
      const label = labels.get(r)
      const left = `${(label ?? '').padStart(gutter - 2)} ${label ? glyphs.tick : glyphs.bar}`
      return (
        paint(left, 'soft') +
        cells
          .map((cell) => (cell ? paint(cell.glyph, cell.ink) : ' '))
          .join('')
          .trimEnd()
      )
    }),
    ...axisLines(clock, width, glyphs, paint),
  ]
  const name = main === undefined ? null : shortNames(run.plan)[main]
  const key = [
    paint(`${glyphs.base.repeat(2)} base`, 'base'),
    paint(`${glyphs.liquor.repeat(2)} liquor`, 'liquor'),
    ...(name ? [paint(`${glyphs.coldest.repeat(2)} coldest ${name}`, 'coldest')] : []),
    ...(run.series.lid.some((_, i) => isClosed(run, i))
      ? [paint(`${glyphs.trip.repeat(2)} ${run.plan.pot.trip_K === null ? 'scorches' : 'trip'}`, 'trip')]
      : []),
  ]
  lines.push(`${' '.repeat(gutter)}${key.join('  ')}  ${paint('°C, minutes', 'soft')}`)
  lines.push(`${' '.repeat(gutter)}${totalSentence(run)}`)
  return lines.join('\n')
}

type Paint = (text: string, ink: ChartInk) => string

function bandLine(run: Run, clock: ReturnType<typeof clockScale>, width: number, bar: string, paint: Paint): string {
  let line = ' '.repeat(gutter)
  let at = 0
  for (const phase of run.phases) {
    const from = Math.max(at, Math.round(clock.x(phase.start_s)))
    const to = Math.min(width, Math.round(clock.x(phase.end_s)))
    // A sliver shows as blank: its words would not fit and its bars would crowd.
    if (to - from < 4) continue
    line += ' '.repeat(from - at)
    const room = to - from - 1
    const words = shortened(phase.label, (part) => part.length <= room) ?? ''
    line += paint(bar, 'soft') + paint(words.padEnd(room), phase.kind === 'hold' ? 'hold' : 'soft')
    at = to
  }
  return line.trimEnd()
}

function axisLines(
  clock: ReturnType<typeof clockScale>,
  width: number,
  glyphs: Record<'corner' | 'axis' | 'mark', string>,
  paint: Paint,
): string[] {
  const axis = new Array<string>(width).fill(glyphs.axis)
  const words = new Array<string>(width + 6).fill(' ')
  for (const tick of clock.ticks(7)) {
    const c = Math.min(width - 1, Math.round(tick.x))
    axis[c] = glyphs.mark
    const text = String(tick.minutes)
    if (c + text.length <= width) words.splice(c, text.length, ...text)
  }
  return [
    paint(`${' '.repeat(gutter - 1)}${glyphs.corner}${axis.join('')}`, 'soft'),
    paint(`${' '.repeat(gutter)}${words.join('').trimEnd()}`, 'soft'),
  ]
}
