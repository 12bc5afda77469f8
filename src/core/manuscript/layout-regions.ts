import { findFood } from '../larder/index.ts'
import { amountAt } from './amount.ts'
import { isAlmanac, noteKind } from './layout-headings.ts'
import type { Item } from './layout-items.ts'
import { isPromise } from './layout-promise.ts'
import type { Token } from './sentences-tokens.ts'
import { readTimes } from './times.ts'
import { bareVerb } from './verbs.ts'
import { wordsIn } from './words.ts'

/** What part of the recipe an item belongs to. */
export type Region = 'head' | 'list' | 'method' | 'note'
const regions: readonly Region[] = ['head', 'list', 'method', 'note']

/** How much an item looks like each region, in arbitrary points: evidence adds up, the best path through all wins. */
type Looks = Record<Region, number>

const word = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''
const openers =
  /^(?:in|when|while|once|after|meanwhile|if|for|to|as|using|before|with|on|over|first|then|next|finally|at|now|working|just|during|immediately|carefully|gently|slowly|lightly|thoroughly|gradually|optionally|have|be)$/
const tasty =
  /\bto taste\b|\boptional\b|\b(?:to|for) (?:serve|serving|garnish|greasing|frying|the pan|dusting)\b|\bas needed\b/

/** The tokens a judgement rests on: enough of a long paragraph to know it by. */
const headTokens = (reading: string, item: Item): Token[] =>
  wordsIn(reading, { from: item.from, to: Math.min(item.to, item.from + 320) })

function countWords(reading: string, item: Item): number {
  let words = 0
  let inside = false
  const end = Math.min(item.to, item.from + 600)
  for (let i = item.from; i < end; i += 1) {
    const is = /[\p{L}\p{N}]/u.test(reading[i]!)
    if (is && !inside) words += 1
    inside = is || (inside && /['-]/.test(reading[i]!))
  }
  return words
}

/** Does an order begin here? 2 for a verb that is nothing else, 1 for one that may be a noun, 0 for none. */
export function orderAt(tokens: readonly Token[], i: number): 0 | 1 | 2 {
  const verb = bareVerb(word(tokens, i))
  if (!verb) return 0
  const next = word(tokens, i + 1)
  // "Drop biscuits", "Cream of tartar", "Salt": the noun stands alone or takes "of".
  if (verb.noun !== 'never' && (next === 'of' || next === '' || tokens[i + 1]?.kind === 'mark')) return 0
  return verb.noun === 'never' ? 2 : verb.noun === 'seldom' ? 1 : /^(?:the|it|them|a|an|with)$/.test(next) ? 1 : 0
}

/** Amount at the head of an item: 4 with a unit, 3 for a count of something, 2 for "a head of garlic", 0 for none. */
function amountPoints(reading: string, tokens: readonly Token[]): number {
  let at = 0
  if (word(tokens, 0) === '(' && word(tokens, 2) === ')') at = 3
  const amount = amountAt(reading, tokens, at)
  if (!amount) return 0
  const next = tokens[amount.next]
  if (amount.low === null) return 1
  if (amount.kind === 'length' && !next) return 0
  if (
    /^(?:minutes?|mins?|hours?|hrs?|seconds?|days?|weeks?|servings?|portions?|people|persons|times|%|°|degrees)$/.test(
      next?.low ?? '',
    )
  )
    return 0
  if (amount.unit !== null || amount.word !== null || amount.pack !== null) return amount.article ? 2 : 4
  // "A shin of beef" is an entry, "A pantry dinner" is not.
  if (amount.article)
    return next &&
      tokens.length <= 12 &&
      findFood(
        tokens
          .slice(amount.next)
          .map((t) => t.low)
          .join(' '),
      )
      ? 2
      : 0
  if (next?.kind !== 'word') return 1
  // "1 Cook beef and onions" is a numbered step without its stop.
  const capital = (token: Token): boolean => /\p{Lu}/u.test(reading[token.from]!)
  // "1 brown onion" and "1 Brown Onion" are not: there the verb is part of a name.
  const order = orderAt(tokens, amount.next)
  const sentence = capital(next) && (order === 2 || !capital(tokens[amount.next + 1] ?? next))
  if (sentence && order > 0 && tokens.length > amount.next + 2) return 0
  // "1 batch = 8 L": a count of something that is no food.
  const end = tokens.findIndex((t, i) => i > amount.next && t.kind === 'mark' && t.low !== '-')
  return findFood(
    tokens
      .slice(amount.next, end < 0 ? undefined : end)
      .map((t) => t.low)
      .join(' '),
  )
    ? 3
    : 1.5
}

/** "WATER 25-1/8 lbs", "Lemon juice 1 tbsp": an amount with a unit behind a short name; 3 points when it is a food's. */
function pointsBehind(reading: string, tokens: readonly Token[]): number {
  if (tokens.length > 60) return 0
  for (let i = 1; i < Math.min(tokens.length, 14); i += 1) {
    if (tokens[i]!.kind !== 'number') continue
    if (/^(?:by|into|in|from|of|for|to|at|step|no|x)$/.test(word(tokens, i - 1))) return 0
    const amount = amountAt(reading, tokens, i)
    if (!amount || (amount.unit === null && amount.word === null) || amount.kind === 'length') return 0
    const name = tokens
      .slice(0, i)
      .filter((t) => t.kind === 'word')
      .map((t) => t.low)
    return findFood(name.join(' ')) ? 3 : 1
  }
  return 0
}

function looks(reading: string, item: Item, first: boolean, alone: boolean, runsOn: boolean): Looks {
  const tokens = headTokens(reading, item)
  const words = countWords(reading, item)
  const text = reading.slice(item.from, Math.min(item.to, item.from + 320))
  const lower = text.toLowerCase()
  const amount = amountPoints(reading, tokens)
  const behind = amount === 0 ? pointsBehind(reading, tokens) : 0
  let start = 0
  if (word(tokens, 0) === '(' && tokens.findIndex((t) => t.low === ')') > 0)
    start = tokens.findIndex((t) => t.low === ')') + 1
  if (tokens[start]?.kind === 'number' && item.mark === null && amount === 0) start += 1
  if (/ly$|^(?:then|now|next|first|second|finally|meanwhile|and|please)$/.test(word(tokens, start))) {
    start += word(tokens, start + 1) === ',' ? 2 : 1
  }
  const order = orderAt(tokens, start)
  const sentences = (text.match(/\p{L}{3,}[)"]?[.!?](?=\s|$)/gu) ?? []).length
  const timed = readTimes(tokens).length > 0
  const promise = isPromise(text)
  const look: Looks = { head: 0, list: 0, method: 0, note: -0.5 }
  // list
  look.list += amount > 0 ? amount : behind > 0 ? behind : words <= 4 && order === 0 ? 1 : words > 8 ? -1.5 : 0
  if (tasty.test(lower) && words <= 14) look.list += 2
  if (amount === 0) look.list -= order === 2 ? 4 : order === 1 ? 2 : 0
  if (words > 25) look.list -= 3
  if (words > 45) look.list -= 4
  if (sentences >= 2) look.list -= 1.5
  if (/[.!?]$/.test(text) && words > 8) look.list -= 1
  if (timed && amount === 0) look.list -= 2
  if (item.mark === 'bullet') look.list += 0.5
  // Set on the line of the word "Ingredients", a paragraph is the list, however long.
  if (runsOn) look.list += 12
  // method
  look.method += order === 2 ? 4 : order === 1 ? 2.5 : openers.test(word(tokens, start)) && words >= 6 ? 1.5 : 0
  if (timed) look.method += 1.5
  if (words >= 10) look.method += 1
  if (sentences >= 1 && words >= 6) look.method += 1
  if (amount > 0 && words <= 20) look.method -= 2.5
  if (words <= 4 && order === 0) look.method -= 1.5
  if (item.mark === 'number') look.method += 1.5
  // Orders further in count too: "The night before, cover the beans", "My quick chilli: brown the mince, then add".
  if (words >= 10) {
    const inner = tokens.filter(
      (_, i) => i > 0 && /^(?:,|\.|;|:|and|then)$/.test(word(tokens, i - 1)) && orderAt(tokens, i) > 0,
    ).length
    look.method += Math.min(4, 1.5 * inner)
  }
  // head
  if (promise) look.head += 6
  if (words >= 6 && sentences >= 1) look.head += 0.5
  if (amount > 0) look.head -= 3
  look.head -= order
  if (item.mark === 'number') look.head -= 2
  // The first line names the dish, even one that begins like an order ("Chop suey", "Stewed beans").
  if (first) look.head += words <= 10 && sentences === 0 && !timed && (amount === 0 || alone) ? 8 : 3
  if (promise) {
    look.list -= 6
    look.method -= 6
  }
  // note
  if (noteKind(text) !== null) {
    look.note += 9
    look.method -= 6
    look.list -= 2
  }
  if (promise && !first) look.note += 3
  if (isAlmanac(text)) look.note += 7
  if (amount > 0) look.note -= 2
  look.note -= order / 2
  return look
}

// Cost of going from one region (row) to the next (column): recipes run head, list, method, notes.
const step: Record<Region, Looks> = {
  head: { head: 0, list: 0.5, method: 1.5, note: 3 },
  list: { head: 4, list: 0, method: 0.5, note: 1.5 },
  method: { head: 6, list: 3, method: 0, note: 0.5 },
  note: { head: 6, list: 4, method: 2.5, note: 0 },
}

const opened = { ingredients: 'list', method: 'method', notes: 'note' } as const
/** Trust in a heading's word against the look of what follows it. */
const trust: Record<Region, number> = { head: 0, list: 3, method: 4, note: 5 }

/** The region of every item that is no heading, by the likeliest path through the text; null for headings. */
export function regionsOf(reading: string, items: readonly Item[]): (Region | null)[] {
  const best: (readonly { score: number; from: number }[] | null)[] = []
  const index = (r: Region): number => regions.indexOf(r)
  let before: number[] | null = null
  let section: Region | null = null
  let changed = false
  let headed = false
  let sign = ''
  let first = true
  for (const [i, item] of items.entries()) {
    if (item.heading !== null) {
      const named = item.heading === 'group' ? null : opened[item.heading]
      if (named) {
        section = named
        changed = true
      }
      // A new chapter of the text ends a list or method that a heading of the same weight had opened.
      headed = true
      first = first && item.heading === 'group' && item.number === null
      best.push(null)
      continue
    }
    const runsOn = i > 0 && items[i - 1]!.heading === 'ingredients' && items[i - 1]!.runIn
    // Set apart from what follows: a name with a number in it is still a name ("Five spice pork").
    const after = items[i + 1]
    const look = looks(reading, item, first, after !== undefined && (after.heading !== null || after.apart), runsOn)
    first = false
    const prior = (r: Region): number => (section === null ? 0 : r === section ? trust[r] : section === 'note' ? -1 : 0)
    const scores: number[] = []
    const row: { score: number; from: number }[] = []
    for (const region of regions) {
      const own = look[region] + prior(region)
      if (before === null) {
        row.push({ score: own - step.head[region], from: -1 })
      } else {
        let top = Number.NEGATIVE_INFINITY
        let from = 0
        for (const last of regions) {
          let cost = step[last][region]
          if (last !== region) {
            if (changed && region === section) cost = 0
            else if (headed) cost *= 0.6
            else if (!item.apart && item.sign === sign) cost += 1.5
          }
          const score = before[index(last)]! - cost + own
          if (score > top) {
            top = score
            from = index(last)
          }
        }
        row.push({ score: top, from })
      }
      scores.push(row.at(-1)!.score)
    }
    best.push(row)
    before = scores
    changed = false
    headed = false
    sign = item.sign
  }
  const path: (Region | null)[] = items.map(() => null)
  let at = before === null ? 0 : before.indexOf(before.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY))
  for (let i = items.length - 1; i >= 0; i -= 1) {
    const row = best[i]
    if (!row) continue
    path[i] = regions[at]!
    at = row[at]!.from
  }
  return path
}
