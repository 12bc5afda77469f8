import type { Token } from './sentences-tokens.ts'

// "an hour and a half" is the business of times; here it is "two and a half hours".
const halves = new Map<string, number>([
  ['half', 1 / 2],
  ['quarter', 1 / 4],
])

/** A number or range as said in running text, with the place of the token after it. Null bounds: "a few". */
export interface SaidNumber {
  readonly low: number | null
  readonly high: number | null
  readonly next: number
}

const words = new Map<string, number>(
  Object.entries({
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    ten: 10,
    eleven: 11,
    twelve: 12,
    fifteen: 15,
    eighteen: 18,
    twenty: 20,
    'twenty-five': 25,
    thirty: 30,
    'thirty-five': 35,
    forty: 40,
    'forty-five': 45,
    fifty: 50,
    sixty: 60,
    seventy: 70,
    eighty: 80,
    ninety: 90,
  }),
)
const shares = new Map<string, number>(
  Object.entries({
    half: 1 / 2,
    halves: 1 / 2,
    third: 1 / 3,
    thirds: 1 / 3,
    quarter: 1 / 4,
    quarters: 1 / 4,
    fourth: 1 / 4,
    fourths: 1 / 4,
    fifth: 1 / 5,
    'one-half': 1 / 2,
    'one-third': 1 / 3,
    'two-thirds': 2 / 3,
    'one-quarter': 1 / 4,
    'one-fourth': 1 / 4,
    'three-quarters': 3 / 4,
    'three-fourths': 3 / 4,
  }),
)
const few = new Set(['few', 'several', 'some'])

const openers = new Set([...words.keys(), ...shares.keys(), ...few, 'a', 'an', 'another', 'couple', 'dozen'])

/** May a number begin with this token? */
export const opensNumber = (token: Token): boolean =>
  token.kind === 'number' || (token.kind === 'word' && openers.has(token.low))

/** Share named by one word: "half", "two-thirds". */
export const shareWord = (low: string): number | undefined => shares.get(low)

const wordAt = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

/** One value with "and a half" behind it, if that stands there. */
function atom(tokens: readonly Token[], i: number): { value: number | null; next: number } | null {
  const found = plainAtom(tokens, i)
  if (!found || found.value === null || found.value < 1) return found
  const { next, value } = found
  const part = halves.get(wordAt(tokens, next + 2))
  if (
    wordAt(tokens, next) === 'and' &&
    wordAt(tokens, next + 1) === 'a' &&
    part !== undefined &&
    next > i &&
    tokens[i]!.low !== 'a'
  ) {
    return { value: value + part, next: next + 3 }
  }
  return found
}

/** "a quarter of an", "half a", "a", "two", "3/4 of an": one value, no range. Null value: "a few". */
function plainAtom(tokens: readonly Token[], i: number): { value: number | null; next: number } | null {
  const token = tokens[i]
  if (!token) return null
  const low = token.low
  if (token.kind === 'number') {
    // "2 dozen"; "3/4 of an hour".
    if (wordAt(tokens, i + 1) === 'dozen') return { value: token.value * 12, next: i + 2 }
    if (token.value < 1 && wordAt(tokens, i + 1) === 'of' && /^an?$/u.test(wordAt(tokens, i + 2)))
      return { value: token.value, next: i + 3 }
    if (token.value < 1 && /^an?$/u.test(wordAt(tokens, i + 1))) return { value: token.value, next: i + 2 }
    return { value: token.value, next: i + 1 }
  }
  if (low === 'half' && wordAt(tokens, i + 1) === 'a' && wordAt(tokens, i + 2) === 'dozen')
    return { value: 6, next: i + 3 }
  if (few.has(low)) return { value: null, next: i + 1 }
  if (low === 'a' || low === 'an' || low === 'another') {
    const after = wordAt(tokens, i + 1)
    if (few.has(after)) return { value: null, next: i + 2 }
    if (after === 'couple') return { value: 2, next: wordAt(tokens, i + 2) === 'of' ? i + 3 : i + 2 }
    if (after === 'dozen') return { value: 12, next: i + 2 }
    if (low === 'another' && tokens[i + 1]?.kind === 'number') return atom(tokens, i + 1)
    if (low === 'another' && words.has(after)) return { value: words.get(after)!, next: i + 2 }
    if (shares.has(after)) return share(tokens, i + 1, 1)
    return { value: 1, next: i + 1 }
  }
  if (low === 'couple') return { value: 2, next: wordAt(tokens, i + 1) === 'of' ? i + 2 : i + 1 }
  if (low === 'dozen') return { value: 12, next: i + 1 }
  if (words.has(low)) {
    if (shares.has(wordAt(tokens, i + 1))) return share(tokens, i + 1, words.get(low)!)
    return { value: words.get(low)!, next: i + 1 }
  }
  if (shares.has(low)) return share(tokens, i, 1)
  return null
}

/** "[three] quarters of an", "half a": from the share word on. */
function share(tokens: readonly Token[], i: number, count: number): { value: number; next: number } {
  let next = i + 1
  if (wordAt(tokens, next) === 'of' && /^an?$/u.test(wordAt(tokens, next + 1))) next += 2
  else if (/^an?$/u.test(wordAt(tokens, next))) next += 1
  return { value: count * shares.get(wordAt(tokens, i))!, next }
}

/** "2 1/2 to 3", "5 or 6", "10-12", "a couple of", "three or four", read from token `i`; null when no number stands there. */
export function readNumber(tokens: readonly Token[], i: number): SaidNumber | null {
  const first = atom(tokens, i)
  if (!first) return null
  const link = wordAt(tokens, first.next)
  if ((link === '-' || link === 'to' || link === 'or' || link === '—') && first.value !== null) {
    let from = first.next + 1
    if (wordAt(tokens, from) === 'even' || wordAt(tokens, from) === '~') from += 1
    const second = tokens[from]?.kind === 'number' || words.has(wordAt(tokens, from)) ? atom(tokens, from) : null
    if (second && second.value !== null && second.value > first.value)
      return { low: first.value, high: second.value, next: second.next }
  }
  return { low: first.value, high: first.value, next: first.next }
}
