import type { Token } from './sentences-tokens.ts'
import { readNumber } from './times-numbers.ts'

/** A number or range of an amount; null bounds for "a few". `next` is the token after it. */
export interface AmountNumber {
  readonly low: number | null
  readonly high: number | null
  readonly next: number
  /** True when it is only an article: "a shin of beef". */
  readonly article: boolean
}

const wordAt = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

/** "11/2" is 1 1/2 with the blank lost when the last figure fits a kitchen fraction and the whole would be odd. */
function value(token: Token): number {
  const lost = /^([1-9])([1-7])\/([2348])$/.exec(token.low)
  if (lost && Number(lost[2]) < Number(lost[3])) return Number(lost[1]) + Number(lost[2]) / Number(lost[3])
  return token.value
}

function number(tokens: readonly Token[], i: number): AmountNumber | null {
  const token = tokens[i]
  if (!token || token.kind === 'mark') return null
  const found = readNumber(tokens, i)
  if (!found) return null
  const { low, high, next } = found
  // "two dozen"
  if (token.kind === 'word' && low !== null && high !== null && wordAt(tokens, next) === 'dozen') {
    return { low: low * 12, high: high * 12, next: next + 1, article: false }
  }
  // "1 and 1/2" is one token; "one and a half", "2 and a half" are not.
  if (low !== null && low === high && wordAt(tokens, next) === 'and') {
    const article = /^(?:a|an|one)$/.test(wordAt(tokens, next + 1)) ? 1 : 0
    const share = readNumber(tokens, next + article + 1)
    const word = wordAt(tokens, next + article + 1)
    if (
      share &&
      share.low !== null &&
      share.low < 1 &&
      (article === 1 || /^(?:half|one-half|three-quarters|two-thirds)$/.test(word))
    ) {
      return { low: low + share.low, high: low + share.low, next: share.next, article: false }
    }
  }
  const single = low !== null && low === high
  const exact = single && token.kind === 'number' ? value(token) : Number.NaN
  const changed = single && token.kind === 'number' && low === token.value && exact !== token.value
  return {
    low: changed ? exact : low,
    high: changed ? exact : high,
    next,
    article: next === i + 1 && /^an?$/.test(token.low),
  }
}

const link = /^(?:-|–|—|~|to|or|through)$/

/**
 * "1 1/2- to 2", "2–3", "two or three", "between 2 and 3", "1 1/2", "a": the number at token `i`, null when none stands
 * there.
 */
export function amountNumber(tokens: readonly Token[], i: number): AmountNumber | null {
  const between = wordAt(tokens, i) === 'between'
  const first = number(tokens, between ? i + 1 : i)
  if (!first || first.low === null || first.high === null || first.high > first.low) return first
  let at = first.next
  const suspended = wordAt(tokens, at) === '-' && /^(?:to|or)$/.test(wordAt(tokens, at + 1))
  if (suspended) at += 1
  const joins = between ? wordAt(tokens, at) === 'and' : link.test(wordAt(tokens, at))
  if (!joins) return first
  at += 1
  while (/^(?:about|even|~|as|many|much)$/.test(wordAt(tokens, at))) at += 1
  const second = number(tokens, at)
  // "1 or a few" is no range, nor "4 to a pound".
  if (!second || second.article || second.low === null || second.high === null || !(second.high > first.low))
    return first
  return { low: first.low, high: second.high, next: second.next, article: false }
}
