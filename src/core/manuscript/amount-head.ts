import { bracketMeasures } from './amount-bracket.ts'
import type { AmountNumber } from './amount-number.ts'
import { low, type Part, part, sized, skipSizes } from './amount-part.ts'
import { type UnitWord, unitAt } from './amount-units.ts'
import type { Token } from './sentences-tokens.ts'

// Measures that are orders too: "Drizzle the oil", "Squeeze the lemon".
const orders = new Set('drop splash squeeze drizzle glug grating grind dollop sprinkle shot spoonful ladle'.split(' '))
const vague = new Set('plenty lots little bit lot enough sufficient touch'.split(' '))

/** Roast and eye follow a rib that is no rib of celery; a hyphen makes the unit part of a longer word. */
function isFoodWord(tokens: readonly Token[], unit: UnitWord & { next: number }): boolean {
  const after = low(tokens, unit.next)
  return (unit.code === 'rib' && /^(?:roast|eye|eyes|steaks?|chops?|of)$/.test(after) && after !== 'of') || false
}

/** The first measure of an amount. */
export interface Head {
  count: AmountNumber
  next: number
  size: string | null
  unit: UnitWord | null
  pack: Part | null
}

/** Count, pack and holder, or number and unit: the first measure. */
export function head(text: string, tokens: readonly Token[], count: AmountNumber): Head {
  let at = count.next
  // "1/2 a teaspoonful", "2/3 of a pineapple", "1/4 of the"
  if (count.low !== null && count.low < 1) {
    if (low(tokens, at) === 'of' && /^(?:an?|the)$/.test(low(tokens, at + 1))) at += 2
    else if (/^an?$/.test(low(tokens, at))) at += 1
  }
  const times = /^(?:x|×)$/.test(low(tokens, at))
  if (times) at += 1
  // "1 No. 10 can": the trade's number for its size.
  if (low(tokens, at) === 'no' || low(tokens, at) === '#') {
    const figure = low(tokens, at + 1) === '.' ? at + 2 : at + 1
    const holder = tokens[figure]?.kind === 'number' ? unitAt(text, tokens, figure + 1) : null
    if (holder?.kind === 'holder') return { count, next: holder.next, size: null, unit: holder, pack: null }
  }
  const before = skipSizes(tokens, at, true)
  // "2 (14-oz) cans", "1 (2-inch) piece", "4 (6-ounce) chicken breasts"
  const bracket = bracketMeasures(text, tokens, before.next)
  if (bracket?.whole && bracket.parts.length >= 1 && sized(bracket.parts[0]!.kind)) {
    const after = skipSizes(tokens, bracket.next, false)
    const holder = unitAt(text, tokens, after.next)
    const held = holder && (holder.kind === 'holder' || holder.kind === 'part' || holder.kind === 'lump')
    // "4 (6-ounce) breasts" weigh 6 ounces each, "2 large (about 500 g) aubergines" weigh 500 g together.
    const inside = tokens.slice(before.next, bracket.next)
    const together =
      before.size !== null ||
      inside.some((t) => /^(?:about|around|approx|approximately|roughly|abt|circa|ca|~|total)$/.test(t.low))
    if (!held && together && !bracket.each && !inside.some((t) => t.low === '-')) {
      return { count, next: before.next, size: before.size, unit: null, pack: null }
    }
    return {
      count,
      next: held ? holder.next : after.next,
      size: before.size ?? after.size,
      unit: held ? holder : null,
      pack: bracket.parts[0]!,
    }
  }
  // "1 15oz can", "1 x 400g tin", "1 - 14 oz can", "2 33cl bottles", "4 6-ounce fillets"
  const dash = low(tokens, at) === '-' && tokens[at + 1]?.kind === 'number'
  const inner =
    tokens[dash ? at + 1 : before.next]?.kind === 'number' ? part(text, tokens, dash ? at + 1 : before.next) : null
  if (inner && sized(inner.kind)) {
    const after = skipSizes(tokens, inner.next, false)
    const holder = unitAt(text, tokens, after.next)
    const held = holder !== null && (holder.kind === 'holder' || holder.kind === 'part')
    if (held || !dash) {
      return {
        count,
        next: held ? holder.next : inner.next,
        size: before.size ?? after.size,
        unit: held ? holder : null,
        pack: inner,
      }
    }
  }
  const hyphen = low(tokens, at) === '-' ? 1 : 0
  const unit = unitAt(text, tokens, hyphen ? at + 1 : before.next)
  if (unit && !isFoodWord(tokens, unit)) {
    const size = hyphen ? null : before.size
    if (sized(unit.kind)) {
      // "400 g can", "14-ounce can": one can of that pack. "3 cm piece" is a length.
      const after = skipSizes(tokens, unit.next, false)
      const holder = unitAt(text, tokens, after.next)
      // "1-14 oz can" is one can of 14 ounces: nobody buys a can of one to fourteen.
      const dashed =
        holder?.kind === 'holder' && count.low !== null && count.high !== null && count.high > 3 * count.low
      if (dashed && tokens.slice(count.next - 2, count.next).some((t) => t.low === '-')) {
        const pack = { ...unit, low: count.high! * unit.factor, high: count.high! * unit.factor }
        return { count: { ...count, high: count.low }, next: holder.next, size: after.size, unit: holder, pack }
      }
      if (holder?.kind === 'holder' && count.low !== null && count.high !== null && unit.kind !== 'length') {
        const pack = { ...unit, low: count.low * unit.factor, high: count.high * unit.factor }
        return { count: { ...count, low: 1, high: 1 }, next: holder.next, size: after.size, unit: holder, pack }
      }
      if (
        holder &&
        /^(?:piece|knob|thumb)$/.test(holder.word) &&
        (unit.kind === 'length' || low(tokens, holder.next) === 'of')
      ) {
        return { count, next: holder.next, size, unit, pack: null }
      }
    }
    return { count, next: unit.next, size, unit, pack: null }
  }
  const plainSizes = skipSizes(tokens, at, false)
  return { count, next: plainSizes.next, size: plainSizes.size, unit: null, pack: null }
}

/** "dash cinnamon", "small bunch parsley", "can of beans": one, without the number. */
export function implied(text: string, tokens: readonly Token[], i: number): Head | null {
  const before = skipSizes(tokens, i, true)
  const unit = unitAt(text, tokens, before.next)
  if (!unit || (sized(unit.kind) && unit.kind !== 'volume') || tokens[before.next]!.kind === 'mark') return null
  // "Can of beans", but "Leaf lettuce" and "Stick cinnamon" are foods; "cup" alone is more likely a word.
  if (orders.has(unit.word) && low(tokens, unit.next) !== 'of') return null
  if (unit.kind !== 'lump' && unit.code !== 'sprig' && low(tokens, unit.next) !== 'of') return null
  // "strips of salt pork": more than one, and nobody says how many.
  const several = tokens[before.next]!.low !== unit.word && /s$/.test(tokens[before.next]!.low)
  const one = several ? null : 1
  const count = { low: one, high: one, next: before.next, article: true }
  return { count, next: unit.next, size: before.size, unit, pack: null }
}

/** "plenty of", "a little", "a few": an amount is spoken of and not given. */
export function unsaid(tokens: readonly Token[], i: number): AmountNumber | null {
  let at = i
  if (/^an?$/.test(low(tokens, at))) at += 1
  if (/^(?:good|generous)$/.test(low(tokens, at))) at += 1
  if (!vague.has(low(tokens, at))) return null
  at += 1
  if (low(tokens, at) === 'of') at += 1
  else if (!/^(?:little|enough|sufficient)$/.test(low(tokens, at - 1))) return null
  return { low: null, high: null, next: at, article: false }
}
