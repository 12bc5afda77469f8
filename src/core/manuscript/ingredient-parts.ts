import type { Span } from '../findings/index.ts'
import type { Token } from './sentences-tokens.ts'

/** Word of token `i`, empty behind the last. */
export const word = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

/** A line cut at its commas, stops and spaced dashes, with the brackets taken out. */
export interface LineParts {
  readonly segments: readonly (readonly Token[])[]
  /** What stands in brackets, without them, and the number of segments begun before. */
  readonly brackets: readonly { readonly tokens: readonly Token[]; readonly segment: number }[]
}

const opens = new Set(['(', '[', '{'])
const closes = new Set([')', ']', '}'])

/** A stop ends a thought unless it belongs to an abbreviation in mid phrase ("veg. stock"). */
function stopCuts(tokens: readonly Token[], i: number): boolean {
  const next = tokens[i + 1]
  if (!next) return true
  if (next.joined) return false
  const before = tokens[i - 1]
  return !(before && before.to - before.from <= 3 && tokens[i]!.joined && next.kind === 'word')
}

function cuts(tokens: readonly Token[], i: number): boolean {
  const { low, joined } = tokens[i]!
  if (low === ',' || low === ';' || low === ':' || low === '•') return true
  if (low === '.') return stopCuts(tokens, i)
  if (low === '-' || low === '—' || low === '->')
    return !joined && tokens[i + 1] !== undefined && !tokens[i + 1]!.joined
  return low === '—'
}

/** Cuts tokens `from` to `to` of a line into segments and brackets. An unclosed bracket runs to the end. */
export function lineParts(tokens: readonly Token[], from: number, to: number): LineParts {
  const segments: Token[][] = [[]]
  const brackets: { tokens: Token[]; segment: number }[] = []
  let depth = 0
  for (let i = from; i < to; i += 1) {
    const token = tokens[i]!
    if (opens.has(token.low)) {
      if (depth === 0) brackets.push({ tokens: [], segment: segments.length - 1 })
      depth += 1
    } else if (closes.has(token.low)) {
      if (depth > 0) depth -= 1
    } else if (depth > 0) brackets.at(-1)!.tokens.push(token)
    else if (token.kind === 'mark' && cuts(tokens, i)) {
      if (segments.at(-1)!.length > 0) segments.push([])
    } else segments.at(-1)!.push(token)
  }
  if (segments.length > 1 && segments.at(-1)!.length === 0) segments.pop()
  return { segments, brackets }
}

/** Words of a phrase, joined as they were written: "beer/dark ale", "90%". */
export function phrase(tokens: readonly Token[]): string {
  let words = ''
  for (const [i, token] of tokens.entries()) words += i > 0 && !token.joined ? ` ${token.low}` : token.low
  return words.replace(/ ,/g, ',')
}

/** Where tokens stand, first to last. */
export const placeOf = (tokens: readonly Token[]): Span | null =>
  tokens.length === 0
    ? null
    : { from: Math.min(...tokens.map((t) => t.from)), to: Math.max(...tokens.map((t) => t.to)) }

/** Text of tokens as it was written. */
export function written(text: string, tokens: readonly Token[]): string {
  const place = placeOf(tokens)
  return place ? text.slice(place.from, place.to).replace(/\s+/g, ' ').trim() : ''
}
