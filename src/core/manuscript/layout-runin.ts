import type { Span } from '../findings/index.ts'
import { findFood } from '../larder/index.ts'
import { amountAt } from './amount.ts'
import { isAdverb, isPreparation } from './ingredient-words.ts'
import type { Token } from './sentences-tokens.ts'
import { wordsIn } from './words.ts'

const word = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

/** Places of the commas or semicolons that stand in no bracket. */
function separators(tokens: readonly Token[], from: number, to: number, marks: ReadonlySet<string>): number[] {
  const places: number[] = []
  let depth = 0
  for (let i = from; i < to; i += 1) {
    const low = word(tokens, i)
    if (low === '(' || low === '[') depth += 1
    else if (low === ')' || low === ']') depth = Math.max(0, depth - 1)
    else if (depth === 0 && marks.has(low) && i + 1 < to) places.push(i)
  }
  return places
}

/** "... and a tin of chickpeas. Also 1 tbsp oil": joins and stops before another food with its amount. */
function joints(reading: string, tokens: readonly Token[]): number[] {
  const places: number[] = []
  let depth = 0
  for (let i = 1; i + 1 < tokens.length; i += 1) {
    const low = word(tokens, i)
    if (low === '(') depth += 1
    else if (low === ')') depth = Math.max(0, depth - 1)
    if (depth > 0 || !/^(?:and|&|\.|also|plus|\+)$/.test(low)) continue
    const amount = amountAt(reading, tokens, i + 1)
    const next = amount ? tokens[amount.next] : undefined
    const measured =
      amount && (amount.unit !== null || amount.word !== null || !amount.article || findFood(next?.low ?? ''))
    if (
      measured &&
      next?.kind === 'word' &&
      !isPreparation(next.low) &&
      amount.kind !== 'length' &&
      !/^\d/.test(next.low)
    )
      places.push(i)
    else if (low === '.' && /^(?:also|plus)$/.test(word(tokens, i + 1)) && !tokens[i + 1]!.joined) places.push(i)
  }
  return places
}

const joins = /^(?:and|&|or|also|plus)$/
/** A part that only goes on about the food before it: "chopped", "peeled and cored", "in slices". */
function goesOn(reading: string, tokens: readonly Token[], from: number, to: number): boolean {
  const low = word(tokens, from)
  if (joins.test(low)) return goesOn(reading, tokens, from + 1, to)
  if (
    /^(?:in|for|to|with|without|cut|about|abt|or|plus|if|at|on|from|preferably|optional|divided|each|well|not|into|skin|rind|half|then)$/.test(
      low,
    )
  )
    return true
  for (let i = from; i < to; i += 1)
    if (isPreparation(word(tokens, i)) && i >= to - 3 && !amountAt(reading, tokens, from)) return true
  return isAdverb(low)
}

/**
 * Cuts a list that runs on in a paragraph into its foods: "4 lbs. of mutton, 3 carrots, pepper and salt to taste; 1
 * gill of port". Semicolons part foods where there are several; else a comma does, unless what follows is about the
 * food before it.
 */
export function runOnFoods(reading: string, place: Span): Span[] {
  const tokens = wordsIn(reading, place)
  if (tokens.length === 0) return []
  const strong = separators(tokens, 0, tokens.length, new Set([';']))
  const places = strong.length >= 2 ? strong : separators(tokens, 0, tokens.length, new Set([',', ';']))
  const pieces: { from: number; to: number }[] = []
  let from = 0
  const all = [...new Set([...places, ...joints(reading, tokens)])].sort((a, b) => a - b)
  for (const at of [...all, tokens.length]) {
    if (at > from) pieces.push({ from, to: at })
    from = at + 1
  }
  const foods: { from: number; to: number; amount: boolean }[] = []
  for (const piece of pieces) {
    const amount = amountAt(reading, tokens, piece.from)
    const measured = amount !== null && amount.kind !== 'length'
    const last = foods.at(-1)
    const comma = last !== undefined && strong.length < 2
    if (comma && !measured && goesOn(reading, tokens, piece.from, piece.to)) {
      last.to = piece.to
      continue
    }
    // "cayenne, black pepper and salt to taste": one seasoning, named by its parts.
    const tasted = word(tokens, piece.to - 1) === 'taste'
    if (comma && !measured && !last.amount && tasted && last.to - last.from <= 2) {
      last.to = piece.to
      continue
    }
    foods.push({ ...piece, amount: measured })
  }
  return foods.map(({ from: a, to: b }) => {
    const first = joins.test(word(tokens, a)) && b > a + 1 ? a + 1 : a
    let last = b - 1
    while (last > first && /^[.,;]$/.test(word(tokens, last)) && last === tokens.length - 1) last -= 1
    return { from: tokens[first]!.from, to: tokens[last]!.to }
  })
}

/** Does one line name several foods, each with its amount? */
export function isRunOn(reading: string, place: Span): boolean {
  const tokens = wordsIn(reading, { from: place.from, to: Math.min(place.to, place.from + 800) })
  const places = separators(tokens, 0, tokens.length, new Set([',', ';']))
  let amounts = 0
  for (const at of [-1, ...places, ...joints(reading, tokens)]) {
    const amount = amountAt(reading, tokens, at + 1)
    if (!amount || amount.low === null || amount.kind === 'length') continue
    const next = tokens[amount.next]
    if (amount.article && !findFood(next?.low ?? '')) continue
    if (next?.kind === 'word' && !isPreparation(next.low)) amounts += 1
  }
  return amounts >= 3
}
