import type { Span } from '../findings/index.ts'
import type { Token } from './sentences-tokens.ts'
import { opensNumber, readNumber } from './times-numbers.ts'

/** A length of time as said in running text. `at` and `next` are token places, half-open. */
export interface SaidTime extends Span {
  readonly at: number
  readonly next: number
  readonly low_s: number
  readonly high_s: number
  /** "every 10 minutes": how often, not how long. */
  readonly every: boolean
  /** "for the last 15 minutes": a part of another time. */
  readonly within: boolean
  /** "after 10 minutes": a moment, not a length. */
  readonly moment: boolean
}

const minute_s = 60
const hour_s = 3600
const unit_s = new Map<string, number>([
  ...['second', 'seconds', 'sec', 'secs'].map((word) => [word, 1] as const),
  ...['minute', 'minutes', 'min', 'mins', "minutes'", "minute's"].map((word) => [word, minute_s] as const),
  ...['hour', 'hours', 'hr', 'hrs', 'h', "hour's", "hours'"].map((word) => [word, hour_s] as const),
  ...['day', 'days'].map((word) => [word, 24 * hour_s] as const),
  ...['week', 'weeks'].map((word) => [word, 7 * 24 * hour_s] as const),
  ...['month', 'months', 'mo', 'mos'].map((word) => [word, 30 * 24 * hour_s] as const),
])
/** Time units of a manuscript, in seconds. */
export const timeUnit_s = (low: string): number | undefined => unit_s.get(low)

/** "overnight" by the labelling rule of the house: 8 to 12 hours. */
export const overnight_s = { low: 480 * minute_s, high: 720 * minute_s } as const

// Words that may stand between the number and its unit without changing it.
const fillers = new Set(
  'more extra further additional another good full whole long short or-so other last solid quick active'.split(' '),
)

const wordAt = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

interface Piece {
  low: number | null
  high: number | null
  next: number
}

/** "1 hour 15 minutes", "an hour and a half", "a minute or two", from token `i`. */
function piece(tokens: readonly Token[], i: number): Piece | null {
  const number = readNumber(tokens, i)
  if (!number) return null
  let next = number.next
  let skipped = 0
  while (skipped < 2 && (fillers.has(wordAt(tokens, next)) || wordAt(tokens, next) === '-')) {
    next += 1
    skipped += 1
  }
  const unit = unit_s.get(wordAt(tokens, next))
  if (unit === undefined) return null
  next += 1
  if (wordAt(tokens, next) === '.' && tokens[next]?.joined) next += 1
  let low = number.low === null ? null : number.low * unit
  let high = number.high === null ? null : number.high * unit
  // "an hour and a half"
  if (wordAt(tokens, next) === 'and' && /^(?:a|one)$/u.test(wordAt(tokens, next + 1))) {
    const part = wordAt(tokens, next + 2)
    const extra = part === 'half' ? 0.5 : part === 'quarter' ? 0.25 : null
    if (extra !== null && low !== null && high !== null)
      return { low: low + extra * unit, high: high + extra * unit, next: next + 3 }
  }
  // "a minute or two"
  if (wordAt(tokens, next) === 'or' && wordAt(tokens, next + 1) === 'two' && low === unit) {
    return { low, high: 2 * unit, next: next + 2 }
  }
  // "1 hour 15 minutes", "1 hour and 15 minutes", "1h30"
  if (unit >= hour_s && low !== null && high !== null) {
    let from = next
    if (wordAt(tokens, from) === 'and' || wordAt(tokens, from) === ',') from += 1
    const rest = tokens[from]?.kind === 'number' || from === next ? readNumber(tokens, from) : null
    if (rest && rest.low !== null && rest.high !== null) {
      const small = unit_s.get(wordAt(tokens, rest.next))
      if (small !== undefined && small < unit) {
        low += rest.low * small
        high += rest.high * small
        next = rest.next + 1
      } else if (small === undefined && wordAt(tokens, i + 1) === 'h' && tokens[from]!.joined && rest.high < 60) {
        low += rest.low * minute_s
        high += rest.high * minute_s
        next = rest.next
      }
    }
  }
  return { low, high, next }
}

const nights = new Set(['overnight', 'o/n', 'over', 'all'])

function overnight(tokens: readonly Token[], i: number): Piece | null {
  const low = wordAt(tokens, i)
  const after = wordAt(tokens, i + 1)
  const two = (low === 'over' && after === 'night') || (low === 'all' && after === 'night')
  if (low !== 'overnight' && low !== 'o/n' && !two) return null
  return { low: overnight_s.low, high: overnight_s.high, next: i + (two ? 2 : 1) }
}

/** Lengths of time among tokens `from` to `to`, in order. "a few minutes" says none. */
export function readTimes(tokens: readonly Token[], from = 0, to = tokens.length): SaidTime[] {
  const times: SaidTime[] = []
  for (let i = from; i < to; i += 1) {
    const token = tokens[i]!
    if (token.kind === 'mark') continue
    const found = nights.has(token.low)
      ? (overnight(tokens, i) ?? piece(tokens, i))
      : opensNumber(token)
        ? piece(tokens, i)
        : null
    if (!found) continue
    const next = Math.min(found.next, to)
    if (found.low !== null && found.high !== null) {
      let { low, high } = found
      // "20 min to 1 hour", "at least 2 hours or overnight"
      let end = next
      let link = end
      while (
        /^(?:,|or|to|-|and|up|preferably|ideally|even)$/u.test(wordAt(tokens, link)) &&
        link < to &&
        link - end < 4
      )
        link += 1
      const more = link > end && link < to ? (overnight(tokens, link) ?? piece(tokens, link)) : null
      const joins =
        /^(?:or|to|-)$/u.test(wordAt(tokens, end)) ||
        (wordAt(tokens, end) === 'and' && wordAt(tokens, end + 1) === 'up') ||
        (wordAt(tokens, end) === ',' && wordAt(tokens, end + 1) === 'or')
      if (more && joins && more.low !== null && more.high !== null && more.high > high && more.next <= to) {
        high = more.high
        end = more.next
      }
      const before = wordAt(tokens, i - 1)
      const before2 = wordAt(tokens, i - 2)
      times.push({
        from: token.from,
        to: tokens[end - 1]!.to,
        at: i,
        next: end,
        low_s: low,
        high_s: high,
        every: before === 'every' || (before2 === 'every' && /^(?:about|~)$/u.test(before)),
        within: /^(?:last|final|first)$/u.test(before) || /^(?:last|final)$/u.test(before2),
        moment:
          before === 'after' ||
          (before2 === 'after' && /^(?:about|around|the)$/u.test(before)) ||
          /^(?:beforehand|ahead|earlier|later|ago)$/u.test(wordAt(tokens, end)),
      })
      i = end - 1
    } else {
      i = next - 1
    }
  }
  return times
}
