import type { Phase, PieceVerdict, Run } from '../core/cook/index.ts'
import { bySeverityThenPlace, type Finding } from '../core/findings/index.ts'
import type { Recipe } from '../core/manuscript/index.ts'
import { baseSentence, duration, outcomeSentence, percent, shortNames, terminalChart } from '../core/press/index.ts'
import { clock, place } from './figures.ts'
import { findingLines } from './findings-text.ts'
import { paragraph, table } from './layout.ts'
import type { Terminal } from './terminal.ts'
import { section } from './text-read.ts'

export interface CookWords {
  readonly recipe: Recipe
  readonly run: Run
  readonly findings: readonly Finding[]
  readonly altitudeFrom: 'asked' | 'manuscript' | 'default'
  /** False for terminals that show only ASCII. */
  readonly unicode: boolean
}

/** The run as a cook can read it aloud: where, when, how it comes out, where the water went, what to look at. */
export function cookText({ recipe, run, findings, altitudeFrom, unicode }: CookWords, out: Terminal): string {
  const paint = (text: string, ink: string) =>
    ink === 'base' || ink === 'trip' || ink === 'hold'
      ? out.heat(text)
      : ink === 'liquor'
        ? out.water(text)
        : ink === 'soft'
          ? out.soft(text)
          : text
  const parts = [
    [
      ...paragraph(recipe.title?.text ?? '(no title)', out.columns).map(out.bold),
      ...paragraph(whereWords(run, altitudeFrom), out.columns),
      ...paragraph(outcomeSentence(run), out.columns).map(run.base.trips ? out.heat : (line) => line),
    ],
    section('The clock', clockLines(run, out), out),
    run.phases.length > 0 ? terminalChart(run, { columns: out.columns, unicode, paint }).split('\n') : [],
    section('In the end', endLines(run, out), out),
    section('The water', waterLines(run, out), out),
    section(
      findings.length === 0 ? 'Nothing to settle' : 'To settle',
      findingLines(recipe.text, [...findings].sort(bySeverityThenPlace), out, true),
      out,
    ),
  ]
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`
}

const fromWords = {
  asked: 'as asked',
  manuscript: 'from the manuscript',
  default: 'since nothing else is said',
} as const

function whereWords(run: Run, altitudeFrom: CookWords['altitudeFrom']): string {
  const { pot, potFrom, altitude_m } = run.plan
  const article = /^[aeiou8]/.test(pot.name) ? 'an' : 'a'
  const named = potFrom === altitudeFrom ? '' : `, ${fromWords[potFrom]}`
  return `Cooked in ${article} ${pot.name}${named}, ${place(altitude_m)}, ${fromWords[altitudeFrom]}.`
}

function clockLines(run: Run, out: Terminal): string[] {
  const rows = run.phases.map((phase) => [
    clock(phase.start_s),
    phase.label,
    duration(phase.end_s - phase.start_s),
    phase.handsOn ? 'by hand' : '',
  ])
  const end = run.phases.at(-1)
  return table(
    [...rows, ...(end ? [[clock(end.end_s), 'done', '', '']] : [])],
    [{ side: 'right' }, { most: Math.max(16, out.columns - 34) }, { side: 'right' }, {}],
    out.columns,
  )
}

function endLines(run: Run, out: Terminal): string[] {
  if (run.phases.length === 0) return []
  const names = shortNames(run.plan)
  const rows = run.pieces.map((piece) => [names[piece.load], piece.word, pieceWords(piece)])
  const { sauce } = run
  const ml = Math.round(sauce.volume_m3 * 1e6)
  const body = [
    sauce.gelatin_share > 0.002 ? `${(sauce.gelatin_share * 100).toFixed(1)} % gelatin` : '',
    sauce.starch_share > 0.002 ? `${(sauce.starch_share * 100).toFixed(1)} % starch` : '',
    sauce.salt_share > 0.0005 ? `${(sauce.salt_share * 100).toFixed(1)} % salt` : '',
    sauce.fat_kg > 0.002 ? `${Math.round(sauce.fat_kg * 1000)} g of fat to skim` : '',
  ].filter((part) => part !== '')
  const lines = table(rows, [{ most: 24 }, { most: 12 }, {}], out.columns)
  const sealed = run.clock.comeUp_s !== null || run.base.trips
  return [
    ...lines,
    ...paragraph(
      ml > 0 ? `Sauce: ${ml} ml${body.length > 0 ? `, ${body.join(', ')}` : ''}.` : 'No sauce is left.',
      out.columns,
      2,
    ),
    ...(sealed
      ? paragraph(
          `${baseSentence(run)} At its fullest the pot is ${percent(run.fill.fraction)} full; the limit is ${percent(run.fill.limit)}.`,
          out.columns,
          2,
        )
      : []),
  ]
}

function pieceWords(piece: PieceVerdict): string {
  const done =
    piece.tender !== null
      ? `${percent(piece.tender)} of the collagen melted${piece.tenderBand ? ` (${percent(piece.tenderBand[0])} to ${percent(piece.tenderBand[1])})` : ''}`
      : piece.firm !== null
        ? `${percent(piece.firm)} of its firmness left`
        : ''
  const water = Math.round(piece.waterLost_kg * 1000)
  return [
    done,
    `coldest ${Math.round(piece.coldest_K - 273.15)} °C`,
    water > 0 ? `${water} g of water given up` : water < 0 ? `${-water} g of water taken up` : '',
  ]
    .filter((part) => part !== '')
    .join(', ')
}

function waterLines(run: Run, out: Terminal): string[] {
  const { water_kg } = run.account
  if (!(water_kg.in > 0)) return []
  const g = (kg: number) => `${Math.round(kg * 1000)} g`
  const rows = [
    ['went in', g(water_kg.in), 'with the food and what was poured'],
    ['boiled off', g(water_kg.evaporated), 'lid off or ajar'],
    ['vented', g(water_kg.vented), 'as steam through the valve'],
    ['lifted out', g(water_kg.lifted), 'with what left the pot'],
    ['in the food', g(water_kg.inPieces + water_kg.absorbed), ''],
    ['in the sauce', g(water_kg.inLiquor + water_kg.inHeadspace), ''],
  ].filter((row, i) => i === 0 || row[1] !== '0 g')
  const open = Math.abs(water_kg.closure_share)
  return [
    ...table(rows, [{ most: 14 }, { side: 'right' }, {}], out.columns),
    ...(open > 0.001
      ? paragraph(
          `The books do not close: ${(open * 100).toFixed(2)} % is missing. Do not trust this run.`,
          out.columns,
          2,
        ).map(out.heat)
      : []),
  ]
}

export type { Phase }
