import { findFood } from '../larder/index.ts'
import { type Amount, amountAt } from './amount.ts'
import { type ItemFound, readItem } from './ingredient-item.ts'
import { lineParts, word } from './ingredient-parts.ts'
import { sortedName } from './ingredient-sorted.ts'
import { isPreparation } from './ingredient-words.ts'
import type { Cell, IngredientLine } from './layout.ts'
import type { Measure } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'
import { wordsIn } from './words.ts'

/** An ingredient before larder and cut are looked up. */
export interface LineRead {
  readonly from: number
  readonly to: number
  readonly amount: Amount | null
  readonly amountFrom: number | null
  readonly amountTo: number | null
  readonly low: number | null
  readonly high: number | null
  readonly unit: Measure['unit']
  readonly unitWord: string | null
  readonly pack: Measure | null
  readonly also: readonly Measure[]
  readonly found: ItemFound
  readonly size: string | null
  /** Only the juice or the rind of what is counted. */
  readonly taken: 'juice' | 'zest' | null
}

/** "(optional) 6 artichokes": the remark before the amount. */
function skipRemark(tokens: readonly Token[]): number {
  if (word(tokens, 0) === '(' && /^optional/.test(word(tokens, 1)) && word(tokens, 2) === ')') return 3
  if (/^optional/.test(word(tokens, 0)) && /^[:-]$/.test(word(tokens, 1))) return 2
  return 0
}

const notBeforeAmount = /^(?:by|into|in|from|of|for|cut|every|no|number|step|page|serves|x|plus|or|at|to|-)$/

/** An amount behind the food ("Lemon juice 1 tbsp", "Onions 2 medium-sized, minced"). */
function amountBehind(text: string, tokens: readonly Token[], from: number): Amount | null {
  let depth = 0
  for (let i = from + 1; i < tokens.length; i += 1) {
    const low = word(tokens, i)
    if (low === '(') depth += 1
    else if (low === ')') depth -= 1
    if (depth > 0 || tokens[i]!.kind === 'mark') continue
    const about = /^(?:about|around|approx|approximately|roughly|abt)$/.test(low) && tokens[i + 1]?.kind === 'number'
    if (tokens[i]!.kind !== 'number' && !about) continue
    // "CHICKEN,8 PC CUT": a figure of the name.
    if (word(tokens, i - 1) === ',' && tokens[i]!.joined) continue
    if (
      notBeforeAmount.test(word(tokens, i - 1)) &&
      !(word(tokens, i - 1) === '-' && !tokens[i - 1]!.joined) &&
      word(tokens, i - 2) !== '/'
    )
      continue
    const amount = amountAt(text, tokens, i)
    if (!amount || word(tokens, amount.next) === '%') continue
    const after = tokens[amount.next]
    const counted = amount.unit === null && amount.word === null && amount.pack === null
    // "Ginger 2 inch piece": a length is an amount only where it ends the phrase.
    if (amount.kind === 'length' && after && !/^[,;.()]$/.test(after.low)) continue
    // A bare number counts the food only where the phrase ends with it.
    if (counted && after && !/^[,;.()]$/.test(after.low) && !isPreparation(after.low)) continue
    return amount
  }
  return null
}

const squeezed = /^(?:juice|zest|rind|peel|yolks?|whites?)$/

/** "juice of 2 lemons", "grated zest and juice of 1 lime": amount of the fruit, and what is taken of it. */
function taken(
  text: string,
  tokens: readonly Token[],
  from: number,
): { what: string[]; of: number; at: number } | null {
  let at = from
  while (/^(?:the|finely|freshly|grated|squeezed|pared|thinly)$/.test(word(tokens, at))) at += 1
  const start = at
  const what: string[] = []
  while (squeezed.test(word(tokens, at))) {
    what.push(word(tokens, at))
    at += 1
    if (/^(?:and|&|\+|,|\/)$/.test(word(tokens, at)) && squeezed.test(word(tokens, at + 1).replace('grated', '')))
      at += 1
  }
  if (what.length === 0) return null
  const of = /^(?:of|from)$/.test(word(tokens, at)) ? at + 1 : tokens[at]?.kind === 'number' ? at : -1
  const amount = of < 0 ? null : amountAt(text, tokens, of)
  return amount && amount.unit === null ? { what, of, at: start } : null
}

const singular = (name: string): string => name.replace(/([^s])s$/, '$1')

/** Places where a line names a second food with its own amount: "8 cups broth + 2 cups water". */
function seams(text: string, tokens: readonly Token[], from: number): number[] {
  const cuts: number[] = []
  let depth = 0
  let commas = 0
  const first = amountAt(text, tokens, from)
  if (!first || first.low === null) return cuts
  for (let i = first.next + 1; i < tokens.length - 1; i += 1) {
    const low = word(tokens, i)
    if (low === '(') depth += 1
    else if (low === ')') depth -= 1
    else if (low === ',') commas += 1
    if (depth > 0 || !/^(?:\+|plus|and|&|,)$/.test(low)) continue
    const weak = low !== '+' && low !== 'plus'
    if ((low === 'and' || low === '&') && commas > cuts.length) continue
    const amount = amountAt(text, tokens, i + 1)
    if (!amount || amount.low === null || amount.article || amount.next >= tokens.length) continue
    if (amount.kind === 'length') continue
    const next = tokens[amount.next]!
    // "plus 1 tablespoon for the pan", "1 sliced and 1 diced": more of the same food.
    const start = next.low === 'of' ? amount.next + 1 : amount.next
    const found = readItem(text, tokens, start, tokens.length, amount)
    if (next.kind !== 'word' || /^(?:for|to|more|extra|if|in|into|each|at)$/.test(next.low) || found.item === '')
      continue
    if (found.item === found.prep || /ed$/.test(found.item)) continue
    // Behind a comma or "and" a number may still be about the food before it; a food of its own settles that.
    if (weak && !findFood(found.item)) continue
    cuts.push(i)
  }
  return cuts
}

function trimmedEnd(tokens: readonly Token[], to: number): number {
  let end = to
  while (end > 0 && /^(?:[,;:.\-—|=]|about)$/.test(word(tokens, end - 1))) end -= 1
  return end
}

/** Reads one run of tokens as one food with its amount. */
function readOne(text: string, tokens: readonly Token[], from: number): LineRead {
  const fruit = taken(text, tokens, from)
  const lead = amountAt(text, tokens, fruit ? fruit.of : from)
  let amount = lead && (lead.low !== null || lead.next > from) ? lead : null
  let found: ItemFound
  if (amount) {
    let start = amount.next
    const nothing = (i: number): boolean => {
      const parts = lineParts(tokens, i, tokens.length)
      return parts.segments[0]!.length === 0 || (tokens[i]?.kind === 'mark' && tokens[i]!.low !== '(')
    }
    // "3 cloves": the spice, for nothing is there that they could be cloves of.
    if (amount.kind === 'part' && amount.word !== 'each' && nothing(start)) {
      start = amount.afterNumber
      amount = { ...amount, unit: null, kind: null, word: null, next: start }
    }
    if (word(tokens, start) === ',') start += 1
    // "1 tsp each cumin and coriander"
    if (word(tokens, start) === 'each') start += 1
    found = readItem(text, tokens, start, tokens.length, amount)
    if (fruit) {
      const name = found.item
      const item =
        fruit.what.length === 1 ? `${singular(name)} ${fruit.what[0] === 'rind' ? 'zest' : fruit.what[0]}` : name
      found = { ...found, item, prep: [`${fruit.what.join(' and ')} of`, found.prep].filter(Boolean).join(', ') }
    }
  } else {
    amount = amountBehind(text, tokens, from)
    if (amount) {
      const rest = tokens.slice(word(tokens, amount.next) === ',' ? amount.next + 1 : amount.next)
      found = readItem(text, tokens, from, trimmedEnd(tokens, amount.at), amount, rest)
    } else found = readItem(text, tokens, from, tokens.length, null)
  }
  const [first, second] = fruit?.what ?? []
  const only =
    second !== undefined ? null : first === 'juice' ? 'juice' : /^(?:zest|rind|peel)$/.test(first ?? '') ? 'zest' : null
  return { ...finish(tokens, amount, found), taken: only }
}

/** Sorts the measures found behind the food into amount, pack and also. */
function finish(tokens: readonly Token[], amount: Amount | null, found: ItemFound): LineRead {
  let low = amount?.low ?? null
  let high = amount?.high ?? null
  let unit = amount?.unit ?? found.part?.code ?? null
  let unitWord = amount?.word ?? found.part?.word ?? null
  let pack = amount?.pack ?? null
  const also = [...(amount?.also ?? [])]
  for (const { each, word: said, bare, ...measure } of found.measures) {
    if (bare && low !== null) continue
    const weighs =
      measure.unit !== null && !/^(?:packet|can|jar|piece|slice|bunch|stick|head|clove)$/.test(measure.unit)
    if (low === null) {
      low = measure.low
      high = measure.high
      unit = measure.unit
      unitWord = said
    } else if (pack === null && weighs && (each || amount?.kind === 'holder')) pack = measure
    else also.push(measure)
  }
  const first = tokens[0]!
  const last = tokens.at(-1)!
  return {
    from: first.from,
    to: last.to,
    amount,
    amountFrom: amount ? tokens[amount.at]!.from : null,
    amountTo: amount ? tokens[Math.max(amount.at, amount.next - 1)]!.to : null,
    low,
    high,
    unit,
    unitWord,
    pack,
    also,
    found,
    size: amount?.size ?? found.size,
    taken: null,
  }
}

/** A row of a table: the columns say which words are food, which are measures. */
function readRow(text: string, cells: readonly Cell[]): LineRead | null {
  const of = (test: (cell: Cell) => boolean): Token[] => cells.filter(test).flatMap((c) => wordsIn(text, c))
  const name = of((c) => c.column === 'item')
  const first = name[0]
  if (!first) return null
  const columns = cells.filter((c) => c.column === 'weight' || c.column === 'measure')
  const amounts = columns.map((c) => ({ cell: c, tokens: wordsIn(text, c) })).filter((c) => c.tokens.length > 0)
  const found = amounts.map((a) => ({ tokens: a.tokens, amount: amountAt(text, a.tokens, 0) }))
  const told = found.filter((a) => a.amount !== null && a.amount.low !== null)
  const read = told.map((a) => a.amount as Amount)
  const main = read[0] ?? null
  const lead = main ? null : amountAt(text, name, 0)
  const item = lead
    ? readItem(text, name, lead.next, name.length, lead)
    : sortedName(text, lineParts(name, 0, name.length).segments)
  const note = of((c) => c.column === 'note')
  const remark = note.length > 0 ? text.slice(note[0]!.from, note.at(-1)!.to) : null
  const amount = main ?? lead
  const also = read.slice(1).flatMap((a) => [{ low: a.low!, high: a.high!, unit: a.unit }, ...a.also])
  const prep = [item.prep, remark].filter(Boolean).join(', ') || null
  const place = told[0]?.tokens
  const all = [...name, ...amounts.flatMap((a) => a.tokens), ...note]
  return {
    from: Math.min(...all.map((t) => t.from)),
    to: Math.max(...all.map((t) => t.to)),
    amount,
    amountFrom: place ? place[0]!.from : lead ? first.from : null,
    amountTo: place ? place[Math.max(0, main!.next - 1)]!.to : lead ? name[lead.next - 1]!.to : null,
    low: amount?.low ?? null,
    high: amount?.high ?? null,
    unit: amount?.unit ?? null,
    unitWord: amount?.word ?? null,
    pack: amount?.pack ?? null,
    also: [...(amount?.also ?? []), ...also],
    found: { ...item, prep },
    size: amount?.size ?? item.size,
    taken: null,
  }
}

/** The foods one line of the list names: nearly always one. */
export function readLine(reading: string, line: Pick<IngredientLine, 'from' | 'to' | 'cells'>): LineRead[] {
  if (line.cells) {
    const row = readRow(reading, line.cells)
    if (row) return [{ ...row, from: line.from, to: line.to }]
  }
  const tokens = wordsIn(reading, line)
  if (tokens.length === 0) return []
  const lead = Math.min(skipRemark(tokens), tokens.length - 1)
  const cuts = seams(reading, tokens, lead)
  if (cuts.length === 0) return [{ ...readOne(reading, tokens, lead), from: line.from, to: line.to }]
  const pieces: LineRead[] = []
  let from = 0
  for (const cut of [...cuts, tokens.length]) {
    const piece = tokens.slice(from, trimmedEnd(tokens, cut))
    if (piece.length > 0) pieces.push(readOne(reading, piece, from === 0 ? lead : 0))
    from = cut + 1
  }
  return pieces
}
