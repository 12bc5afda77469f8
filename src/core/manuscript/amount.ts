import type { UnitCode } from '../units/index.ts'
import { bracketMeasures } from './amount-bracket.ts'
import { head, implied, unsaid } from './amount-head.ts'
import { amountNumber } from './amount-number.ts'
import { approximate, low, measure, type Part, part, sized, skipApproximate, sum } from './amount-part.ts'
import { type UnitKind, unitAt } from './amount-units.ts'
import type { Measure } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'

export { isSizeWord } from './amount-part.ts'

/** An amount as written at one place of a line. Token places are half-open: `at` to `next`. */
export interface Amount {
  readonly at: number
  readonly next: number
  readonly low: number | null
  readonly high: number | null
  readonly unit: UnitCode | null
  readonly kind: UnitKind | null
  /** Unit word in the singular, also where the contract has no code for it ("glass"). */
  readonly word: string | null
  readonly pack: Measure | null
  readonly also: readonly Measure[]
  /** "large", "medium-sized": size of what is counted. */
  readonly size: string | null
  /** True when the number is only an article: "a shin of beef". */
  readonly article: boolean
  /** Place of the first token behind the number itself. */
  readonly afterNumber: number
}

/**
 * The amount that begins at token `i`; null when none does. Reads number, range, pack and holder, size of what is
 * counted, further measures behind a slash, in a bracket or set beside it, and adds what adds ("1 lb 2 oz",
 * "1 cup plus 2 tablespoons").
 */
export function amountAt(text: string, tokens: readonly Token[], i: number): Amount | null {
  let from = skipApproximate(tokens, i)
  // "a scant cup", "a good 2 tablespoons"
  if (
    from === i &&
    /^an?$/.test(low(tokens, i)) &&
    approximate.has(low(tokens, i + 1)) &&
    tokens[i + 2]?.kind === 'number'
  ) {
    from = i + 2
  }
  const vagueness = unsaid(tokens, from)
  const count = vagueness ?? amountNumber(tokens, from)
  // "5% fat yogurt", "00 flour": figures of the name.
  if (count && (low(tokens, count.next) === '%' || count.high === 0)) return null
  const start = count ? head(text, tokens, count) : implied(text, tokens, from)
  if (!start) return null
  const { unit } = start
  const factor = unit?.factor ?? 1
  const scale = (value: number | null): number | null => (value === null ? null : value * factor)
  let main: { low: number | null; high: number | null } = { low: scale(start.count.low), high: scale(start.count.high) }
  let kind = unit?.kind ?? null
  let code = unit?.code ?? null
  let word = unit?.word ?? null
  let pack = start.pack ? measure(start.pack) : null
  const also: (Measure & { kind: UnitKind })[] = []
  let at = start.next
  const addTo = (piece: Part): boolean => {
    const last = also.at(-1)
    if (last) {
      const added = sum(last, piece)
      if (added) also[also.length - 1] = { ...added, kind: last.kind }
      return added !== null
    }
    if (kind === null || main.low === null || main.high === null) return false
    const added = sum({ low: main.low, high: main.high, unit: code, kind }, piece)
    if (added) main = { low: added.low, high: added.high }
    return added !== null
  }
  const take = (piece: Part) => {
    if (kind === 'holder' && pack === null && sized(piece.kind)) pack = measure(piece)
    else also.push({ ...measure(piece), kind: piece.kind })
  }
  for (let guard = 0; guard < 12; guard += 1) {
    const sign = low(tokens, at)
    if (/^(?:each|ea)$/.test(sign) && kind === null && main.low !== null) {
      // "100 each": the column's way to say a count.
      at += 1
      word = 'each'
      continue
    }
    if (sign === '(') {
      const bracket = main.low === null ? null : bracketMeasures(text, tokens, at)
      if (!bracket?.whole || (kind === null && bracket.parts.some((p) => p.word === ''))) break
      for (const piece of bracket.parts) {
        if (bracket.each && pack === null && sized(piece.kind) && !sized(kind)) pack = measure(piece)
        else take(piece)
      }
      at = bracket.next
      continue
    }
    // "a pound and a half"
    if (
      sign === 'and' &&
      /^(?:an?|one)$/.test(low(tokens, at + 1)) &&
      /^(?:half|quarter)$/.test(low(tokens, at + 2)) &&
      sized(kind) &&
      main.low !== null
    ) {
      const share = (low(tokens, at + 2) === 'half' ? 0.5 : 0.25) * factor
      main = { low: main.low + share, high: main.high! + share }
      at += 3
      continue
    }
    if (/^(?:\/|=|\||or|plus|\+|and|&|to|-|,)$/.test(sign)) {
      const piece = part(text, tokens, at + 1)
      if (!piece || !(sized(piece.kind) || piece.word === word) || (kind === null && sign !== '/')) break
      if (sign === 'or' && piece.code === code) break
      if (/^(?:to|-)$/.test(sign)) {
        if (piece.code !== code || main.low === null || !(piece.high > main.low)) break
        main = { low: main.low, high: piece.high }
      } else if (/^(?:plus|\+|and|&)$/.test(sign)) {
        if (!addTo(piece)) break
      } else if (sign === ',') {
        // "500 g, 1 lb" is two measures; "2 cups, 1 tablespoon" is not.
        if (piece.kind === kind && !(piece.kind === 'mass' && piece.code !== code)) break
        if (!sized(kind)) break
        take(piece)
      } else take(piece)
      at = piece.next
      // "400g/14oz can": one can, its content said twice.
      const holder = sign === '/' && sized(kind) && kind !== 'length' ? unitAt(text, tokens, at) : null
      if (holder?.kind === 'holder' && pack === null && main.low !== null && main.high !== null) {
        pack = { low: main.low, high: main.high, unit: code }
        main = { low: 1, high: 1 }
        kind = holder.kind
        code = holder.code
        word = holder.word
        at = holder.next
      }
      continue
    }
    // Set beside it: "1 lb 2 oz", and the columns of a card: weight, measure, issue.
    if (tokens[at]?.kind === 'number' && kind !== null) {
      const piece = part(text, tokens, at)
      if (piece) {
        if (!addTo(piece)) {
          const known = [kind, ...also.map((m) => m.kind)]
          // A second weight behind the measure is the weight as bought: not an amount that goes into the pot.
          if (!known.includes(piece.kind)) take(piece)
        }
        at = piece.next
        continue
      }
      const number = amountNumber(tokens, at)
      if (number && number.low !== null && number.high !== null && /^(?:each|ea)$/.test(low(tokens, number.next))) {
        also.push({ low: number.low, high: number.high, unit: null, kind: 'part' })
        at = number.next + 1
        continue
      }
    }
    break
  }
  return {
    at: i,
    next: at,
    low: main.low,
    high: main.high,
    unit: code,
    kind,
    word,
    pack,
    also: also.map(({ low: a, high: b, unit: u }) => ({ low: a, high: b, unit: u })),
    size: start.size,
    article: start.count.article && unit === null,
    afterNumber: start.count.next,
  }
}
