import { readFileSync } from 'node:fs'

/** Rows of a CSV file with a header, quoted fields and doubled quotes (RFC 4180). */
export function readCsv(path: string): Record<string, string>[] {
  const [header, ...rows] = cells(readFileSync(path, 'utf8'))
  return rows
    .filter((row) => row.length > 1)
    .map((row) => Object.fromEntries(header.map((name, i) => [name, row[i] ?? ''])))
}

function cells(text: string): string[][] {
  const rows: string[][] = []
  let row: string[] = []
  let cell = ''
  let quoted = false
  for (let i = 0; i < text.length; i++) {
    const c = text[i]
    if (quoted) {
      if (c !== '"') cell += c
      else if (text[i + 1] === '"') cell += text[++i]
      else quoted = false
    } else if (c === '"') quoted = true
    else if (c === ',') {
      row.push(cell)
      cell = ''
    } else if (c === '\n') {
      row.push(cell)
      rows.push(row)
      row = []
      cell = ''
    } else if (c !== '\r') cell += c
  }
  if (cell || row.length) rows.push([...row, cell])
  return rows
}
