import type { Span } from '../findings/index.ts'
import { amountNumber } from './amount-number.ts'
import type { StatedTime } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'
import { readTimes } from './times.ts'
import { wordsIn } from './words.ts'

export interface Promises {
  total: StatedTime | null
  active: StatedTime | null
  cooking: StatedTime | null
}

const low = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

const kinds: readonly [keyof Promises | null, RegExp][] = [
  // Waiting that is stated apart is neither.
  [null, /\b(?:inactive|soak(?:ing)?|marinat\w+|resting|chilling|rising|cooling|proofing)\b/],
  ['active', /\b(?:active|hands[- ]on|prep|preparation|preparing|working)\b/],
  ['cooking', /\b(?:cook|cooking|bake|baking|simmer|pressure|braise|braising|under pressure)\b/],
  [
    'total',
    /\b(?:total|ready in|start to finish|takes|on the table|in all|all in|overall|altogether|time|mostly unattended|from start|unattended)\b/,
  ],
]

/** Pieces of a head line that each say one thing: cut at bars, spaced slashes, wide gaps and the next label. */
function pieces(reading: string, place: Span): Span[] {
  const text = reading.slice(place.from, place.to)
  const cut =
    /\s*[|•·]\s*|\s+\/\s+|[ ]{3,}|\n|;\s|(?<=[a-z\d]{3})\.\s+(?=[A-Z])|\s+(?=(?:total|active|prep|preparation|cook|cooking|inactive)(?: time)?\s*[:\d])/gi
  const out: Span[] = []
  let at = 0
  for (const found of text.matchAll(cut)) {
    out.push({ from: place.from + at, to: place.from + found.index })
    at = found.index + found[0].length
  }
  out.push({ from: place.from + at, to: place.to })
  return out.filter((p) => p.to > p.from)
}

const leads =
  /^(?:\W*)(?:total|active|hands[- ]on|prep|preparation|cook|cooking|bake|baking|time|times|ready|takes|start to finish|on the table|allow|needs)\b/

/** Times that a head line promises, put into `found` where nothing stands yet. */
export function promisedTimes(reading: string, place: Span, found: Promises): void {
  for (const piece of pieces(reading, place)) {
    const words = reading.slice(piece.from, piece.to).toLowerCase()
    if (words.length > 160) continue
    const tokens = wordsIn(reading, piece)
    const times = readTimes(tokens)
    const leading = leads.test(words)
    let first = times[0]
    // The label says what the time is; only without one do the words behind it.
    const label = first ? reading.slice(piece.from, first.from).toLowerCase() : words
    const kind =
      kinds.find(([, test]) => test.test(label)) ??
      (/\p{L}{3}/u.test(label) ? undefined : kinds.find(([, test]) => test.test(words)))
    let { low: low_s, high: high_s } = { low: first?.low_s ?? 0, high: first?.high_s ?? 0 }
    if (!first) {
      // "Prep time: 20" means minutes.
      const i = tokens.findIndex((t) => t.kind === 'number')
      const number = i < 0 ? null : amountNumber(tokens, i)
      if (!leading || !number || number.low === null || number.next < tokens.length || !/time/.test(words)) continue
      low_s = number.low * 60
      high_s = number.high! * 60
      first = {
        from: tokens[i]!.from,
        to: tokens.at(-1)!.to,
        at: i,
        next: tokens.length,
        low_s,
        high_s,
        every: false,
        within: false,
        moment: false,
      }
    } else if (!leading && (first.at > 2 || tokens.length > 14)) continue
    // "plus 4 hours for soaking"
    const second = times[1]
    if (second && /^(?:plus|\+|and)$/.test(low(tokens, second.at - 1))) {
      low_s += second.low_s
      high_s += second.high_s
    }
    const what = kind ? kind[0] : leading || tokens.length <= 10 ? 'total' : null
    if (what === null || found[what] !== null) continue
    found[what] = { from: leading ? tokens[0]!.from : first.from, to: second ? second.to : first.to, low_s, high_s }
  }
}

/** Preparation and cooking stated apart promise their sum. */
export function withSum(found: Promises): Promises {
  const { active, cooking } = found
  if (found.total !== null || active === null || cooking === null) return found
  return {
    ...found,
    total: {
      from: Math.min(active.from, cooking.from),
      to: Math.max(active.to, cooking.to),
      low_s: active.low_s + cooking.low_s,
      high_s: active.high_s + cooking.high_s,
    },
  }
}
