// Text in columns, for terminals and pipes: aligned, no boxes, nothing wider than the window.

/** Characters a terminal gives to a text; combining marks take none, East Asian wide letters two. */
export function columnsOf(text: string): number {
  let columns = 0
  for (const letter of text) {
    if (/\p{M}|[\u200b-\u200f\u202a-\u202e\u2060-\u2069]/u.test(letter)) continue
    columns +=
      /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe4f\uff00-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}/u.test(
        letter,
      )
        ? 2
        : 1
  }
  return columns
}

export function padded(text: string, columns: number, side: 'left' | 'right' = 'left'): string {
  const gap = ' '.repeat(Math.max(0, columns - columnsOf(text)))
  return side === 'left' ? text + gap : gap + text
}

/** The text in lines of at most `width`, broken at blanks; words longer than a line are cut. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(/\s+/).filter((one) => one !== '')) {
    let rest = word
    while (columnsOf(rest) > width) {
      if (line !== '') lines.push(line)
      line = ''
      const head = headOf(rest, width)
      lines.push(head)
      rest = rest.slice(head.length)
    }
    if (line === '') line = rest
    else if (columnsOf(line) + 1 + columnsOf(rest) <= width) line += ` ${rest}`
    else {
      lines.push(line)
      line = rest
    }
  }
  if (line !== '') lines.push(line)
  return lines
}

/** As many letters as fit the width, one at least. */
function headOf(word: string, width: number): string {
  let head = ''
  for (const letter of word) {
    if (head !== '' && columnsOf(head + letter) > width) break
    head += letter
  }
  return head
}

/** A paragraph with every line but the first set in by `indent`. */
export function paragraph(text: string, width: number, indent = 0, first = indent): string[] {
  return wrap(text, width - indent).map((line, i) => ' '.repeat(i === 0 ? first : indent) + line)
}

export interface Column {
  readonly side?: 'left' | 'right'
  /** Widest it may become; longer cells are wrapped. */
  readonly most?: number
}

/** Rows set in columns two blanks apart. The last column takes what is left of the width; cells wrap inside theirs. */
export function table(
  rows: readonly (readonly string[])[],
  columns: readonly Column[],
  width: number,
  indent = 2,
): string[] {
  const wanted = columns.map((column, c) =>
    Math.min(column.most ?? Number.POSITIVE_INFINITY, Math.max(0, ...rows.map((row) => columnsOf(row[c] ?? '')))),
  )
  const used = indent + wanted.slice(0, -1).reduce((sum, w) => sum + (w > 0 ? w + 2 : 0), 0)
  wanted[wanted.length - 1] = Math.min(wanted[wanted.length - 1], Math.max(12, width - used))
  return rows.flatMap((row) => {
    const cells = wanted.map((w, c) => (w === 0 ? [] : wrap(row[c] ?? '', w)))
    const height = Math.max(1, ...cells.map((cell) => cell.length))
    return Array.from({ length: height }, (_, line) => {
      const parts = wanted.flatMap((w, c) => (w === 0 ? [] : [padded(cells[c][line] ?? '', w, columns[c].side)]))
      return (' '.repeat(indent) + parts.join('  ')).trimEnd()
    })
  })
}
