import { lengthOf_m, massOfUnit_kg, pound_kg } from '../units/index.ts'
import { amountNumber } from './amount-number.ts'
import { unitAt } from './amount-units.ts'
import type { Cut, Range } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'
import { wordsIn } from './words.ts'

const word = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

const shapeWords: readonly [Cut['shape'], string][] = [
  ['halves', 'halved halves half split butterflied'],
  [
    'pieces',
    'pieces piece chunks chunk wedges wedge quartered quarters quarter lengths length segments florets floret eighths sixths jointed torn squares joints',
  ],
  ['cubes', 'cubes cube cubed diced dice brunoise dices'],
  [
    'slices',
    'sliced slices slice rounds round rings ring coins coin half-moons half-moon discs disks steaks shaved thick',
  ],
  ['sticks', 'sticks stick batons bâtons baton matchsticks matchstick julienne julienned batonnets'],
  ['strips', 'strips strip ribbons ribbon chiffonade chiff shreds'],
  ['chopped', 'chopped chop crumbled flaked coarsely-chopped'],
  ['minced', 'minced mince crushed pressed finely-chopped'],
  ['shredded', 'shredded grated zested'],
  ['ground', 'ground'],
  ['whole', 'whole'],
]
const shapeOf = new Map<string, Cut['shape']>(
  shapeWords.flatMap(([shape, words]) => words.split(' ').map((w) => [w, shape] as const)),
)

interface Sized {
  readonly size_m: Range
  readonly at: number
  readonly next: number
}

/** A length at token `i`, or the smallest of several ("1 by 1/4 inch by 1/4 inch", "2.5cm/1in"). */
function lengthAt(text: string, tokens: readonly Token[], i: number): Sized | null {
  let at = i
  let best: Range | null = null
  let next = i
  for (let guard = 0; guard < 4; guard += 1) {
    const number = amountNumber(tokens, at)
    if (!number || number.article || number.low === null || number.high === null) break
    let after = number.next
    if (word(tokens, after) === '-') after += 1
    const unit = unitAt(text, tokens, after)
    const bare = /^(?:by|x|×)$/.test(word(tokens, number.next))
    if (unit?.kind === 'length') {
      const unit_m = lengthOf_m(unit.code === 'inch' ? 'inch' : 'cm') * unit.factor
      const size = { low: number.low * unit_m, high: number.high * unit_m }
      // The same length in other units is one size; another dimension counts when it is smaller.
      if (!best || size.low < 0.8 * best.low) best = size
      next = unit.next
    } else if (bare) next = number.next
    else break
    if (/^-$/.test(word(tokens, next))) next += 1
    if (/^(?:by|x|×|\/)$/.test(word(tokens, next))) at = next + 1
    else if (word(tokens, next) === '(' && guard === 0) at = next + 1
    else break
  }
  return best && best.low >= 5e-4 && best.high <= 0.6 ? { size_m: best, at: i, next } : null
}

/** "60 g dice": a cube of that weight, taken as dense as meat (1,050 kg/m3, assumed). */
function weightAt(text: string, tokens: readonly Token[], i: number): Sized | null {
  const number = amountNumber(tokens, i)
  if (!number || number.article || number.low === null || number.high === null) return null
  const after = word(tokens, number.next) === '-' ? number.next + 1 : number.next
  const unit = unitAt(text, tokens, after)
  const unit_kg = unit?.kind === 'mass' && unit.code ? massOfUnit_kg(unit.code) : null
  if (!unit || unit_kg === null) return null
  const follows = shapeOf.get(word(tokens, unit.next))
  if (follows !== 'cubes' && follows !== 'pieces') return null
  if (number.high * unit_kg > pound_kg) return null
  const edge = (n: number) => Math.cbrt((n * unit_kg) / 1050)
  return { size_m: { low: edge(number.low), high: edge(number.high) }, at: i, next: unit.next }
}

/**
 * The cut that the words between two places give, wherever they say it: "cut into 1 1/2- to 2-inch pieces", "2cm rounds",
 * "sliced 1/4 inch thick", "finely chopped". A cut with a size is preferred; of several without, the last is what goes
 * into the pot. Null when the words give none.
 */
export function readCut(text: string, from: number, to: number): Cut | null {
  const tokens = wordsIn(text, { from, to })
  let sized: Cut | null = null
  let last: Cut | null = null
  const make = (shape: Cut['shape'], size_m: Range | null, a: number, b: number): Cut => ({
    shape,
    size_m,
    from: tokens[a]!.from,
    to: tokens[b - 1]!.to,
  })
  for (let i = 0; i < tokens.length; i += 1) {
    const size = tokens[i]!.kind === 'mark' ? null : (lengthAt(text, tokens, i) ?? weightAt(text, tokens, i))
    if (size) {
      // The shape stands right behind the size, or before it: "cubes of about 3 cm", "sliced 5 mm thick".
      let shape: Cut['shape'] | null = null
      let end = size.next
      for (let k = size.next; k < Math.min(tokens.length, size.next + 5); k += 1) {
        if (/^[,;.]$/.test(word(tokens, k))) break
        // "3 cm piece ginger" is how much, not how it is cut.
        if (/^(?:piece|knob|thumb)$/.test(word(tokens, k))) {
          shape = null
          end = -1
          break
        }
        const named = shapeOf.get(word(tokens, k))
        if (named && named !== 'whole' && !(named === 'halves' && word(tokens, k) === 'half')) {
          if (shape === null || word(tokens, k) !== 'thick') shape = named
          end = k + 1
          if (word(tokens, k) !== 'thick') break
        }
      }
      let start = size.at
      if (end < 0) {
        i = Math.max(i, size.next - 1)
        continue
      }
      if (shape === null || word(tokens, end - 1) === 'thick') {
        for (let k = size.at - 1; k >= Math.max(0, size.at - 5); k -= 1) {
          if (/^[,;]$/.test(word(tokens, k))) break
          const named = shapeOf.get(word(tokens, k))
          if (named) {
            shape = named
            start = k
            break
          }
        }
      }
      if (shape === null && /^(?:cut|into|in)$/.test(word(tokens, size.at - 1))) shape = 'pieces'
      if (shape !== null && sized === null) sized = make(shape, size.size_m, start, end)
      i = Math.max(i, size.next - 1)
      continue
    }
    const shape = shapeOf.get(word(tokens, i))
    if (!shape || word(tokens, i) === 'thick' || !isCut(tokens, i)) continue
    // "whole" is what is left when nothing is cut.
    if (shape === 'whole' && last !== null) continue
    last = make(shape, null, i, i + 1)
  }
  return sized ?? last
}

const measureNouns = /^(?:slices?|pieces?|piece|sticks?|strips?|half|quarter|length|round|ring|dice|cube|joint)$/
/** Is the word said of a cut? "2 slices of ham" and "half a lemon" count, "cut in half" and "in slices" cut. */
function isCut(tokens: readonly Token[], i: number): boolean {
  const low = word(tokens, i)
  const before = word(tokens, i - 1)
  if (low === 'half' || low === 'quarter') return before === 'in' && !/^(?:an?|the|of)$/.test(word(tokens, i + 1))
  if (low === 'round' || low === 'length' || low === 'ring' || low === 'joint') return false
  if (low === 'dice') return before !== 'to'
  if (/^(?:shreds|steaks|squares|joints|sticks?|strips?|slices?|pieces?|cubes?|rings|rounds|wedges?)$/.test(low)) {
    // Behind a number or an article it is what is counted, unless the number says how many to cut it into.
    let k = i - 1
    while (
      k > 0 &&
      /^(?:thin|thick|large|small|big|fine|even|equal|bite-sized|bite-size|good-sized|rough|chunky|medium|generous)$/.test(
        word(tokens, k),
      )
    )
      k -= 1
    const lead = word(tokens, k)
    if (/^(?:into|in)$/.test(lead)) return true
    if (tokens[k]?.kind === 'number') return /^(?:into|in)$/.test(word(tokens, k - 1))
    return false
  }
  if (measureNouns.test(low)) return /^(?:into|in|fine|large|small)$/.test(before)
  return true
}
