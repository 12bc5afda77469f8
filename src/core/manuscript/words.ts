import type { Span } from '../findings/index.ts'
import { type Token, tokenise } from './sentences-tokens.ts'

interface Known {
  readonly text: string
  readonly tokens: readonly Token[]
}

// The text read last with its tokens: a manuscript is asked for the same words many times over.
let known: Known = { text: '', tokens: [] }

/** Tokens of a whole text, line by line, so that no number runs over the end of its line. */
function allTokens(text: string): readonly Token[] {
  if (known.text === text) return known.tokens
  const tokens: Token[] = []
  let from = 0
  while (from < text.length) {
    let to = text.indexOf('\n', from)
    if (to < 0) to = text.length
    if (to > from) {
      const line = text.slice(from, to)
      for (const token of tokenise(line, 0, line.length)) {
        tokens.push(from === 0 ? token : { ...token, from: token.from + from, to: token.to + from })
      }
    }
    from = to + 1
  }
  known = { text, tokens }
  return tokens
}

/** Place of the first token that begins at `at` or behind it. */
function firstFrom(tokens: readonly Token[], at: number): number {
  let low = 0
  let high = tokens.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (tokens[middle]!.from < at) low = middle + 1
    else high = middle
  }
  return low
}

/** Words, numbers and marks that lie between two places of a text. */
export function wordsIn(text: string, place: Span): Token[] {
  const tokens = allTokens(text)
  const first = firstFrom(tokens, place.from)
  let end = firstFrom(tokens, place.to)
  while (end > first && tokens[end - 1]!.to > place.to) end -= 1
  return tokens.slice(first, end)
}
