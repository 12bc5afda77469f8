import { amountNumber } from './amount-number.ts'
import { low, measure, type Part, part, skipApproximate, skipSizes, sum } from './amount-part.ts'
import type { Token } from './sentences-tokens.ts'

/**
 * The measures in a bracket that opens at `i` ("(900 g)", "(about 2 3/4 lb./1.25 kg)", "(15 oz each)"), and where
 * reading goes on: behind the bracket when nothing else is in it, else at the first word of the rest.
 */
export function bracketMeasures(
  text: string,
  tokens: readonly Token[],
  i: number,
): { readonly parts: readonly Part[]; readonly each: boolean; readonly next: number; readonly whole: boolean } | null {
  if (low(tokens, i) !== '(') return null
  const parts: Part[] = []
  let at = i + 1
  let each = false
  const alternative = low(tokens, at) === 'or'
  if (alternative || low(tokens, at) === '=') at += 1
  for (;;) {
    const found = part(text, tokens, at)
    if (found) {
      // "1 lb 2 oz" adds, "10 oz/280 g" says it twice.
      const before = at === parts.at(-1)?.next ? parts.at(-1) : undefined
      const added = before ? sum({ ...measure(before), kind: before.kind }, found) : null
      if (before && added) parts[parts.length - 1] = { ...before, low: added.low, high: added.high, next: found.next }
      else parts.push(found)
      at = found.next
    } else {
      const bare = bareCount(tokens, at)
      if (!bare) break
      parts.push(bare)
      at = bare.next
    }
    if (/^(?:each|ea|apiece)$/.test(low(tokens, at))) {
      each = true
      at += 1
    }
    if (/^(?:total|drained|net|in)$/.test(low(tokens, at)) && /^(?:\)|weight|total|all)$/.test(low(tokens, at + 1))) {
      at += low(tokens, at + 1) === ')' ? 1 : 2
    }
    if (/^(?:\/|,|;|or|-)$/.test(low(tokens, at)) && part(text, tokens, at + 1)) at += 1
  }
  const closed = low(tokens, at) === ')'
  if (parts.length === 0 || (alternative && !closed)) return null
  return { parts, each, next: closed ? at + 1 : at, whole: closed }
}

/** "(about 6)", "(2 large)": a count that fills its bracket. */
function bareCount(tokens: readonly Token[], i: number): Part | null {
  const number = amountNumber(tokens, skipApproximate(tokens, i))
  if (!number || number.article || number.low === null || number.high === null) return null
  const { next } = skipSizes(tokens, number.next, false)
  if (low(tokens, next) !== ')') return null
  return { low: number.low, high: number.high, next, code: null, factor: 1, kind: 'part', word: '' }
}
