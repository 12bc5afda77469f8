import { readFileSync } from 'node:fs'
import { expect } from 'vitest'

/**
 * Reads a table of published values from check/. Comment lines start with #; two of them are required: "# source:" and
 * "# why tolerance:". The last column is the promised error: `rel`, `abs`, or `place` (units in the last printed
 * place, so 0.51 means "rounds to what is printed").
 */
export interface Published {
  readonly file: string
  readonly source: string
  readonly rows: readonly Row[]
}

export interface Row {
  readonly line: number
  readonly text: (column: string) => string
  readonly number: (column: string) => number
  /** Fails when `actual` misses the printed value of `column` by more than the row's tolerance. */
  readonly agrees: (column: string, actual: number) => void
}

export function published(path: string): Published {
  const file = new URL(`../../check/${path}`, import.meta.url)
  const lines = readFileSync(file, 'utf8').split('\n')
  const note = (name: string) => {
    const found = lines.filter((l) => l.startsWith(`# ${name}:`)).map((l) => l.slice(name.length + 3).trim())
    if (found.length === 0) throw new Error(`check/${path}: a line "# ${name}: …" is missing`)
    return found.join(' ')
  }
  const source = note('source')
  note('why tolerance')
  const body = lines.map((text, i) => ({ text: text.trim(), line: i + 1 })).filter((l) => l.text && l.text[0] !== '#')
  const header = body[0].text.split(',')
  const kind = header[header.length - 1]
  if (!['rel', 'abs', 'place'].includes(kind)) {
    throw new Error(`check/${path}: the last column has to be rel, abs or place, not ${kind}`)
  }
  if (body.length < 2) throw new Error(`check/${path}: no rows`)
  const rows = body.slice(1).map(({ text, line }): Row => {
    const cells = text.split(',')
    const where = `check/${path}:${line}`
    if (cells.length !== header.length) throw new Error(`${where}: ${cells.length} cells for ${header.length} columns`)
    const cell = (column: string) => {
      const i = header.indexOf(column)
      if (i < 0) throw new Error(`${where}: no column ${column}`)
      return cells[i]
    }
    const number = (column: string) => {
      const x = Number(cell(column))
      if (!Number.isFinite(x)) throw new Error(`${where}: ${column} = ${cell(column)} is no number`)
      return x
    }
    const tolerance = (column: string): number => {
      const t = number(kind)
      const value = number(column)
      const size = kind === 'rel' ? t * Math.abs(value) : kind === 'abs' ? t : t * 10 ** -placesOf(cell(column))
      // A check that would pass with a tenth of the value gone checks nothing.
      if (!(t > 0) || (value !== 0 && size > 0.1 * Math.abs(value) && kind !== 'place')) {
        throw new Error(`${where}: a tolerance of ${size} on ${value} is refused`)
      }
      return size
    }
    return {
      line,
      text: cell,
      number,
      agrees: (column, actual) => {
        const size = tolerance(column)
        const miss = Math.abs(actual - number(column))
        expect(miss, `${where}: ${column} is ${cell(column)}, computed ${actual}`).toBeLessThanOrEqual(size)
      },
    }
  })
  return { file: path, source, rows }
}

/** Decimal places of a number as printed, its exponent counted: 2.816e-4 has seven. */
function placesOf(printed: string): number {
  const [digits, exponent = '0'] = printed.toLowerCase().split('e')
  const point = digits.indexOf('.')
  return (point < 0 ? 0 : digits.length - point - 1) - Number(exponent)
}
