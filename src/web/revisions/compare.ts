export interface Part {
  readonly kind: 'same' | 'gone' | 'new'
  readonly text: string
}

/** Above this the table of the comparison would not fit in memory, and line by line has to do. */
const table_cells = 4_000_000

/**
 * What changed between two texts, word by word: the longest common sequence of words, spaces and line ends. Common
 * start and end are set aside first, so that an ordinary edit compares a few dozen words.
 */
export function compare(from: string, to: string): Part[] {
  return joined(compareTokens(words(from), words(to)))
}

const words = (text: string): string[] => text.match(/\n|[^\S\n]+|[\p{L}\p{N}½¼¾⅓⅔⅛.]+|[^\s\p{L}\p{N}]/gu) ?? []
const lines = (tokens: readonly string[]): string[] => tokens.join('').match(/[^\n]*\n|[^\n]+$/g) ?? []

function compareTokens(a: readonly string[], b: readonly string[], byLine = false): Part[] {
  let head = 0
  while (head < a.length && head < b.length && a[head] === b[head]) head++
  let tail = 0
  while (tail < a.length - head && tail < b.length - head && a[a.length - 1 - tail] === b[b.length - 1 - tail]) tail++
  const middleA = a.slice(head, a.length - tail)
  const middleB = b.slice(head, b.length - tail)
  return [
    ...a.slice(0, head).map((text) => ({ kind: 'same' as const, text })),
    ...middle(middleA, middleB, byLine),
    ...a.slice(a.length - tail).map((text) => ({ kind: 'same' as const, text })),
  ]
}

function middle(a: readonly string[], b: readonly string[], byLine: boolean): Part[] {
  if (a.length * b.length <= table_cells) return alongTable(a, b)
  if (!byLine) return compareTokens(lines(a), lines(b), true)
  return [...a.map((text) => ({ kind: 'gone' as const, text })), ...b.map((text) => ({ kind: 'new' as const, text }))]
}

function alongTable(a: readonly string[], b: readonly string[]): Part[] {
  const width = b.length + 1
  // longest[i * width + j]: length of the longest sequence common to a from i on and b from j on.
  const longest = new Uint32Array((a.length + 1) * width)
  for (let i = a.length - 1; i >= 0; i--)
    for (let j = b.length - 1; j >= 0; j--)
      longest[i * width + j] =
        a[i] === b[j]
          ? longest[(i + 1) * width + j + 1] + 1
          : Math.max(longest[(i + 1) * width + j], longest[i * width + j + 1])
  const parts: Part[] = []
  let i = 0
  let j = 0
  while (i < a.length || j < b.length) {
    if (i < a.length && j < b.length && a[i] === b[j]) {
      parts.push({ kind: 'same', text: a[i] })
      i++
      j++
    } else if (j >= b.length || (i < a.length && longest[(i + 1) * width + j] >= longest[i * width + j + 1])) {
      parts.push({ kind: 'gone', text: a[i++] })
    } else parts.push({ kind: 'new', text: b[j++] })
  }
  return parts
}

/** Neighbours of one kind as one. */
function joined(parts: readonly Part[]): Part[] {
  const out: Part[] = []
  for (const part of parts) {
    const last = out.at(-1)
    if (last?.kind === part.kind) out[out.length - 1] = { kind: part.kind, text: last.text + part.text }
    else out.push(part)
  }
  return out
}
