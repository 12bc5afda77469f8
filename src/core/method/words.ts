import type { Span } from '../findings/index.ts'
import type { Cut, Operation, Range, Recipe } from '../manuscript/index.ts'
import { lengthOfUnit_m } from '../units/index.ts'

// Small readings of words that the reader leaves to the cook: sizes in a cutting order, "on top", "a third of".

const spelled: Record<string, number> = {
  a: 1,
  an: 1,
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
  twelve: 12,
}
const glyphs: Record<string, number> = { '¼': 0.25, '½': 0.5, '¾': 0.75, '⅓': 1 / 3, '⅔': 2 / 3, '⅛': 0.125 }

/** A number as a cook writes it: "3", "1 1/2", "¾", "two". Null when it is none. */
export function numberOf(word: string): number | null {
  const text = word.trim().toLowerCase()
  if (text in spelled) return spelled[text]
  const parts = /^(\d+(?:[.,]\d+)?)?\s*-?\s*(?:(\d+)\s*\/\s*(\d+)|([¼½¾⅓⅔⅛]))?$/.exec(text)
  if (!parts || text === '') return null
  const whole = parts[1] ? Number(parts[1].replace(',', '.')) : 0
  if (parts[2]) {
    const low = Number(parts[3])
    // "3/4" is a fraction; "3 1/2" has a whole part before it.
    return low > 0 ? whole + Number(parts[2]) / low : null
  }
  return whole + (parts[4] ? glyphs[parts[4]] : 0)
}

const number = String.raw`(?:\d+(?:[.,]\d+)?(?:\s*-?\s*\d+\/\d+)?|\d+\/\d+|\d*\s*[¼½¾⅓⅔⅛])`
const size = new RegExp(
  String.raw`(${number})(?:\s*(?:to|-|–|or)\s*(${number}))?\s*-?\s*(cm|mm|inch(?:es)?|in\b|")`,
  'i',
)

/** First length named in the words, in m. */
export function lengthIn(words: string): Range | null {
  const found = size.exec(words)
  if (!found) return null
  // "1-1/2" reads as one and a half, so try the pair as one number before taking it for a range.
  const low = numberOf(found[1].replace(/(\d)-(\d)/, '$1 $2'))
  const high = found[2] ? numberOf(found[2]) : low
  if (low === null || high === null) return null
  const unit = found[3].toLowerCase()
  const unit_m = unit === 'mm' ? 1e-3 : (lengthOfUnit_m(unit === 'cm' ? 'cm' : 'inch') ?? Number.NaN)
  const range = { low: Math.min(low, high) * unit_m, high: Math.max(low, high) * unit_m }
  return range.low > 5e-4 && range.high < 0.6 ? range : null
}

const shapes: readonly (readonly [RegExp, Cut['shape']])[] = [
  [/\b(mince[ds]?|minced|crushed|grated|pressed)\b/, 'minced'],
  [/\b(ground|mince)\b/, 'ground'],
  [/\b(shred(ded)?|flaked?|pulled)\b/, 'shredded'],
  [/\b(cubed?s?|diced?|dice|brunoise)\b/, 'cubes'],
  [/\b(sliced?s?|rounds?|half-moons|rings|ribbons)\b/, 'slices'],
  [/\b(sticks|batons|matchsticks|julienned?|lengths?)\b/, 'sticks'],
  [/\b(strips)\b/, 'strips'],
  [/\b(halved?|halves|in half|split)\b/, 'halves'],
  [/\b(chopped|chop|chiff\w*|torn)\b/, 'chopped'],
  [/\b(pieces|chunks|wedges|quartered|quarters|cut (?:up|small|into|in)|cut)\b/, 'pieces'],
  [/\bwhole\b/, 'whole'],
]

/** How the words say to cut; null when they do not. */
export function cutIn(words: string): Pick<Cut, 'shape' | 'size_m'> | null {
  const text = words.toLowerCase()
  const hit = shapes.find(([pattern]) => pattern.test(text))
  return hit ? { shape: hit[1], size_m: lengthIn(text) } : null
}

/** "in 4 pieces", "into six big chunks": into how many; null when not said. */
export function piecesNamed(words: string): number | null {
  const found =
    /\bin(?:to)?\s+(\d+|two|three|four|five|six|eight|ten|twelve)\s+(?:\w+\s+){0,2}(?:pieces|chunks|portions|parts)\b/i.exec(
      words,
    )
  return found ? numberOf(found[1]) : null
}

/** A share said in words: "a third of the soup", "half". Null when none is. */
export function shareIn(words: string): number | null {
  const text = words.toLowerCase()
  if (/\btwo[- ]thirds\b|⅔/.test(text)) return 2 / 3
  if (/\bthree[- ]quarters\b|¾/.test(text)) return 0.75
  if (/\b(a|one)[- ]third\b|⅓/.test(text)) return 1 / 3
  if (/\b(a|one)[- ]quarter\b/.test(text)) return 0.25
  if (/\bhalf\b/.test(text)) return 0.5
  return null
}

/** The sentence that a place stands in, cut at full stops, semicolons and line ends. */
export function sentenceAround(text: string, span: Span): string {
  let from = span.from
  let to = span.to
  const ends = (at: number) =>
    text[at] === '\n' || text[at] === ';' || (/[.!?]/.test(text[at]) && /\s/.test(text[at + 1] ?? ' '))
  while (from > 0 && !ends(from - 1)) from--
  while (to < text.length && !ends(to)) to++
  return text.slice(from, to)
}

/** The words of the method alone, lower case, so that a pot named in an ingredient line does not count. */
export const methodWords = (recipe: Recipe): string =>
  recipe.steps
    .map((step) => step.text)
    .join('\n')
    .toLowerCase()

/** The time of an operation, when it is one that can be spent. */
export function timeOf(op: Operation): Range | null {
  const time = op.time_s
  return time && time.low >= 0 && time.high > 0 && Number.isFinite(time.high) ? time : null
}

/** Middle of a range. */
export const mid = (range: Range): number => (range.low + range.high) / 2

/** A range about one value. */
export const about = (value: number, share = 0): Range => ({ low: value * (1 - share), high: value * (1 + share) })

export const sumOf = (ranges: readonly Range[]): Range =>
  ranges.reduce((sum, range) => ({ low: sum.low + range.low, high: sum.high + range.high }), { low: 0, high: 0 })

/** Minutes as a label prints them: "35 minutes", "30 seconds", "1.5 to 2 hours". */
export function spoken(time: Range): string {
  const [unit_s, unit, step] =
    time.high < 90 ? [1, 'second', 1] : time.high < 7200 ? [60, 'minute', 1] : [3600, 'hour', 0.1]
  const figure = (s: number) => Math.round(s / unit_s / step) * step
  const neat = (x: number) => String(Math.round(x * 10) / 10)
  const low = neat(figure(time.low))
  const high = neat(figure(time.high))
  return `${low === high ? high : `${low} to ${high}`} ${unit}${high === '1' ? '' : 's'}`
}
