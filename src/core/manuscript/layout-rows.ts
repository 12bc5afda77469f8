import type { Span } from '../findings/index.ts'
import { amountAt } from './amount.ts'
import { unitAt } from './amount-units.ts'
import type { Cell } from './layout.ts'
import { orderAt } from './layout-regions.ts'
import { wordsIn } from './words.ts'

/**
 * Cells of a line that is set in columns by tabs, bars or wide gaps, empty ones too where bars or tabs keep their place;
 * one cell when it is set in none.
 */
export function cellsOf(reading: string, line: Span): Span[] {
  const text = reading.slice(line.from, line.to)
  const bars = /\s\|\s|\|$|^\|/.test(text)
  const cut = text.includes('\t') ? /[^\S\t]*\t[^\S\t]*/g : bars ? /\s*\|\s*/g : /[ ]{4,}/g
  const out: Span[] = []
  let at = 0
  for (const found of text.matchAll(cut)) {
    out.push({ from: line.from + at, to: line.from + found.index })
    at = found.index + found[0].length
  }
  out.push({ from: line.from + at, to: line.to })
  // The bars at both ends part nothing.
  if (bars && text.startsWith('|')) out.shift()
  if (bars && text.endsWith('|') && out.length > 1) out.pop()
  return out.map((cell) => (cell.to < cell.from ? { from: cell.from, to: cell.from } : cell))
}

/** "--- | :---: | ---" under the heads of a table. */
export const isRule = (words: string): boolean => /^[\s|:+=-]*-{2,}[\s|:+=-]*$/.test(words)

const columnNames: readonly [Cell['column'], RegExp][] = [
  ['item', /ingredient|item|food|product/],
  ['issue', /issue|purchas|^a\.?p\.?$/],
  ['note', /note|prep|method|comment|remark/],
  ['weight', /weight|grams|metric|^g$|^kg$/],
  // An empty head matches too: a torn table still has columns.
  ['measure', /^/],
]

/** What the columns under these heads hold. */
export const columnsOf = (reading: string, heads: readonly Span[]): Cell['column'][] =>
  heads.map((head) => {
    const name = reading.slice(head.from, head.to).toLowerCase().trim()
    return columnNames.find(([, test]) => test.test(name))![0]
  })

/** Is the whole cell a measure, or a unit whose number stands in the cell before? */
function measures(reading: string, cell: Span): 'amount' | 'unit' | 'words' {
  const tokens = wordsIn(reading, cell)
  const amount = amountAt(reading, tokens, 0)
  if (amount && !amount.article && amount.next >= tokens.length) return 'amount'
  const unit = unitAt(reading, tokens, 0)
  return unit && unit.next >= tokens.length ? 'unit' : 'words'
}

/** Number and unit in columns of their own are one measure. */
function withUnits(reading: string, cells: readonly Cell[]): Cell[] {
  const row: Cell[] = []
  for (const cell of cells) {
    const last = row.at(-1)
    const unit =
      cell.column === 'measure' &&
      (measures(reading, cell) === 'unit' || /^(?:each|ea)\.?$/i.test(reading.slice(cell.from, cell.to)))
    if (unit && last?.column === 'measure') row[row.length - 1] = { ...last, to: cell.to }
    else row.push(cell)
  }
  return row
}

/** A row whose food stands before its measures; null for a line that reads on from left to right. */
export function rowOf(reading: string, line: Span, columns: readonly Cell['column'][] | null): Cell[] | null {
  const placed = cellsOf(reading, line)
  if (placed.length < 2) return null
  const kept = /[\t|]/.test(reading.slice(line.from, line.to))
  if (columns && kept && placed.length <= columns.length && columns[0] === 'item') {
    const named = placed.map((cell, i) => ({ ...cell, column: columns[i]! })).filter((cell) => cell.to > cell.from)
    return withUnits(reading, named)
  }
  const cells = placed.filter((cell) => cell.to > cell.from)
  const kinds = cells.map((cell) => measures(reading, cell))
  if (kinds[0] !== 'words') return null
  if (!kinds.some((k) => k === 'amount')) return null
  const row: Cell[] = [{ ...cells[0]!, column: 'item' }]
  for (const [i, cell] of cells.entries()) {
    if (i === 0) continue
    const last = row.at(-1)!
    if (kinds[i] === 'unit' && last.column === 'measure') row[row.length - 1] = { ...last, to: cell.to }
    else row.push({ ...cell, column: kinds[i] === 'words' ? 'note' : 'measure' })
  }
  return row
}

/** "2 cups flour<TAB>1 tsp salt" and "1 cup rice<TAB>Rinse the rice": two columns of a page read as one line. */
export function besideEachOther(reading: string, line: Span): Span[] | null {
  const cells = cellsOf(reading, line).filter((cell) => cell.to > cell.from)
  if (cells.length !== 2) return null
  const [left, right] = cells as [Span, Span]
  const a = wordsIn(reading, left)
  const b = wordsIn(reading, right)
  const first = amountAt(reading, a, 0)
  if (!first || first.low === null || first.article || first.next >= a.length) return null
  const second = amountAt(reading, b, 0)
  const both =
    second !== null && second.low !== null && !second.article && second.unit !== null && second.next < b.length
  return both || (orderAt(b, 0) > 0 && b.length >= 4) ? [left, right] : null
}
