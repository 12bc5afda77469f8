import type { Character, Food } from '../larder/index.ts'
import { unitOfWord } from './amount-units.ts'
import type { Ingredient } from './recipe.ts'
import { type Token, tokenise } from './sentences-tokens.ts'
import { timeUnit_s } from './times.ts'
import {
  canonical,
  derived,
  equipment,
  flavoured,
  formWords,
  type Group,
  generic,
  groupWord,
  lending,
} from './uses-words.ts'
import { bareVerb, gerund, participle } from './verbs.ts'
import {
  auxiliaries,
  conjunctions,
  determiners,
  leadAdverbs,
  looseAdverbs,
  prepositions,
  pronouns,
  subordinators,
} from './verbs-words.ts'

/** An ingredient as the method may call it. */
export interface Known {
  readonly ingredient: Ingredient
  /** Its entry in the larder; null when the larder does not know it. */
  readonly food: Food | null
  readonly character: Character | null
  /** Every naming word of the item, canonical. */
  readonly words: ReadonlySet<string>
  /** The naming words as written, without the pieces of hyphened ones. */
  readonly own: ReadonlySet<string>
  /** Last word of each food in the item: "salt" and "pepper" of "salt and pepper". */
  readonly heads: ReadonlySet<string>
  /** "half thinly sliced and half juiced": it goes in by halves. */
  readonly halves: boolean
  /** What the larder calls it besides: "beef" for a chuck roast, "wine" for a Burgundy. */
  readonly aliases: ReadonlySet<string>
  /** Words of the rest of the line, "soaking" of "for soaking": they break ties. */
  readonly aside: ReadonlySet<string>
}

/** A run of words in the method that names something. */
export interface Mention {
  readonly at: number
  readonly next: number
  /** Indices into the ingredients; several for "the vegetables" or "both soy sauces". */
  readonly found: readonly number[]
  /** Weaker candidates, for when the best is used up. */
  readonly others?: readonly number[]
  readonly group: Group | null
  /** Behind "adding": it joins what is cooking already. */
  readonly late?: boolean
  /** The naming word, canonical; for what is not listed. */
  readonly head: string
  readonly plural: boolean
}

export interface Pantry {
  readonly known: readonly Known[]
  readonly byWord: ReadonlyMap<string, readonly number[]>
  /** "garl", "frk": written short by a cook in a hurry; only then are short forms looked for. */
  readonly telegraphic: boolean
}

const foodWords = (words: string): string[][] =>
  words
    .replace(/\s(?:in|with|for|from|packed)\s.*$/u, '')
    .split(/\s+(?:or|and|&|\+)\s+|[,/]/u)
    .map((part) => tokenise(part, 0, part.length))
    .map((tokens) =>
      tokens
        .filter((token) => token.kind === 'word' && !prepositions.has(token.low))
        .map((token) => canonical(token.low)),
    )
    .filter((part) => part.length > 0)

/** Tags of the larder by which cooks call a food. */
const tagNames: ReadonlySet<string> = new Set(
  'beef pork lamb veal goat chicken turkey duck goose rabbit wine tomato fish'.split(' '),
)

function aliasesOf(food: Food | null, words: ReadonlySet<string>): Set<string> {
  const aliases = new Set<string>()
  if (!food) return aliases
  for (const tag of food.tags ?? []) if (tagNames.has(tag)) aliases.add(tag)
  if (food.tags?.includes('poultry')) aliases.add('bird')
  const last = canonical(food.name.split(/[\s,]+/u).at(-1) ?? '')
  if (!generic.has(last) && !flavoured.has(last)) aliases.add(last)
  for (const name of food.also) {
    const alias = canonical(name)
    if (!/[^a-z-]/u.test(alias) && !generic.has(alias) && !flavoured.has(alias)) aliases.add(alias)
  }
  for (const word of words) aliases.delete(word)
  return aliases
}

function knownOf(ingredient: Ingredient, food: Food | null): Known {
  const parts = foodWords(ingredient.item)
  const words = new Set(parts.flat())
  const own = new Set(words)
  const heads = new Set<string>()
  for (const part of parts) {
    heads.add(part.at(-1)!)
    // "chicken thighs", "cumin seeds": the word before the form names the food as well.
    for (let i = part.length - 1; i > 0 && formWords.has(part[i]!); i -= 1) heads.add(part[i - 1]!)
  }
  for (const word of [...words])
    for (const piece of word.split('-'))
      if (piece.length > 3 && word.includes('-') && !/^(?:bone|skin|style|free|sodium|salt|fat)$/u.test(piece))
        words.add(canonical(piece))
  // "2 sticks celery" and "4 cloves": a unit may be the only name.
  if (words.size === 0 && ingredient.unit) {
    words.add(ingredient.unit)
    heads.add(ingredient.unit)
  }
  const aside = new Set<string>()
  for (const token of tokenise(ingredient.line, 0, Math.min(ingredient.line.length, 200))) {
    const word = canonical(token.low)
    if (token.kind === 'word' && !words.has(word)) aside.add(word)
  }
  // A purse of stock is no beef, whatever the larder files it under.
  const aliases = [...heads].some((head) => flavoured.has(head)) ? new Set<string>() : aliasesOf(food, words)
  const halves = /\bhalf\b[^;]*\band half\b/iu.test(ingredient.line)
  return { ingredient, food, halves, character: food?.character ?? null, words, own, heads, aliases, aside }
}

const mostLines = 24

/** What the method's nouns are looked up in. */
export function stockPantry(
  ingredients: readonly Ingredient[],
  foodOf: (ingredient: Ingredient) => Food | null,
  telegraphic: boolean,
): Pantry {
  const known = ingredients.map((ingredient) => knownOf(ingredient, foodOf(ingredient)))
  const byWord = new Map<string, number[]>()
  const enter = (word: string, index: number) => {
    const list = byWord.get(word)
    if (!list) byWord.set(word, [index])
    // A word that names dozens of lines tells none from the other; the bound keeps long lists linear.
    else if (list.length < mostLines && list.at(-1) !== index) list.push(index)
  }
  known.forEach((one, index) => {
    for (const word of one.words) if (!generic.has(word) || one.heads.has(word)) enter(word, index)
    for (const word of one.aliases) enter(word, index)
  })
  return { known, byWord, telegraphic }
}

const stops = (low: string): boolean =>
  determiners.has(low) ||
  prepositions.has(low) ||
  conjunctions.has(low) ||
  auxiliaries.has(low) ||
  subordinators.has(low) ||
  pronouns.has(low) ||
  leadAdverbs.has(low) ||
  looseAdverbs.has(low) ||
  (low.endsWith('ly') && low.length > 5)

// Words that are verbs and foods; in a list they are foods.
const alsoFood = new Set(
  'salt pepper oil butter cream flour water spice season stew soup sauce stock juice zest brown dice mince seed slice rib steak roast pickle crisp toast top cube core ham'.split(
    ' ',
  ),
)

/** Does the word at `i` name something, inside a clause whose verb stands elsewhere? */
function names(tokens: readonly Token[], i: number, head: number): boolean {
  const token = tokens[i]!
  if (token.kind !== 'word' || i === head) return false
  const low = token.low
  if (low === 'everything') return true
  if (stops(low)) return false
  if (timeUnit_s(low) !== undefined) return false
  return true
}

function shortFor(pantry: Pantry, low: string): number[] {
  if (!pantry.telegraphic || low.length < 2 || low.length > 5 || bareVerb(low)) return []
  const hits: number[] = []
  pantry.known.forEach((one, index) => {
    for (const word of one.words) {
      if (word.length <= low.length || word[0] !== low[0] || generic.has(word)) continue
      let k = 0
      for (const char of word) if (char === low[k]) k += 1
      if (k === low.length) {
        hits.push(index)
        break
      }
    }
  })
  return hits
}

interface Scored {
  index: number
  score: number
}

function score(known: Known, run: readonly string[], plural: boolean): number {
  const last = run.at(-1)!
  // Cold water is not the hot water of the list.
  if (
    last === 'water' &&
    run.includes('cold') &&
    (known.words.has('hot') || known.words.has('boiling') || known.aside.has('hot') || known.aside.has('boiling'))
  )
    return 0
  let points = 0
  let named = 0
  for (const word of run) {
    if (known.words.has(word)) {
      const weight = generic.has(word) ? 0.6 : 1
      points += weight
      if (!generic.has(word) || known.heads.has(word)) named += 1
    } else if (known.aliases.has(word)) {
      points += 0.8
      named += 1
    } else if (known.aside.has(word)) points += 0.5
    else if (!generic.has(word)) points -= 1
  }
  if (named === 0) return 0
  if (known.heads.has(last)) points += 2
  else if (known.aliases.has(last)) points += 1
  else if (known.words.has(last)) {
    const heads = [...known.heads]
    const lends = heads.some((head) => flavoured.has(head))
    if (lends && lending.has(last)) return 0
    points -= lends ? 0.6 : 0.2
  } else if (
    !generic.has(last) &&
    !formWords.has(last) &&
    !/^(?:mixture|mix|layer|slurry|paste|zest|juice|half|wedge|round|length|top)$/u.test(last)
  ) {
    // The naming word itself is not in the item: "tomato salad" is not the tomatoes.
    return 0
  }
  // Words of the item that the mention leaves out: "onion" is rather the onion than the spring onions.
  let missing = 0
  for (const word of known.own) if (!run.includes(word) && !generic.has(word) && !flavoured.has(word)) missing += 1
  points -= Math.min(missing, 4) * 0.15
  if (known.words.has('pepper') && run.length === 1 && last === 'pepper') {
    const spice =
      known.character === 'spice' ||
      known.character === 'seasoning' ||
      known.words.has('salt') ||
      known.words.has('black') ||
      known.words.has('white')
    points += plural === spice ? -0.4 : 0.4
  }
  return points
}

/** Everything named among tokens `at` to `next`. `head` is the place of the verb, which names nothing. */
export function readMentions(
  pantry: Pantry,
  tokens: readonly Token[],
  at: number,
  next: number,
  head: number,
): Mention[] {
  const mentions: Mention[] = []
  let i = at
  while (i < next) {
    if (!names(tokens, i, head)) {
      // "on + garl": the shortest of short forms looks like a preposition.
      const plus = tokens[i + 1]?.low === '+' || tokens[i - 1]?.low === '+'
      if (tokens[i]?.low === 'on' && plus && pantry.telegraphic) {
        const hits = shortFor(pantry, 'on')
        if (hits.length > 0)
          mentions.push({ at: i, next: i + 1, found: hits.slice(0, 1), group: null, head: 'on', plural: false })
      }
      i += 1
      continue
    }
    if (isMeasure(tokens, i)) {
      i += 1
      continue
    }
    let end = i + 1
    while (end < next && names(tokens, end, head) && end - i < 8) end += 1
    mentions.push(...readRun(pantry, tokens, i, end))
    i = end
  }
  return mentions
}

/** "1 teaspoon salt", "a pinch of salt": the measure names nothing. */
function isMeasure(tokens: readonly Token[], i: number): boolean {
  const unit = unitOfWord(tokens[i]!.low)
  if (!unit) return false
  if (tokens[i + 1]?.low === 'of') return true
  const before = tokens[i - 1]
  const counted =
    before !== undefined &&
    (before.kind === 'number' || /^(?:a|an|another|half|remaining|last|one|two|three|four)$/u.test(before.low))
  return counted && tokens[i + 1]?.kind === 'word' && !stops(tokens[i + 1]!.low)
}

/** A run of naming words may hold two names with nothing between ("mustard cream"): it is cut where both halves are known. */
function readRun(pantry: Pantry, tokens: readonly Token[], at: number, next: number): Mention[] {
  let from = at
  let to = next
  const isVerbLike = (low: string): boolean =>
    gerund(low) !== undefined && low.endsWith('ing') && !pantry.byWord.has(canonical(low))
  while (from < to && isVerbLike(tokens[from]!.low) && to - from > 1) from += 1
  // Trailing adverbs and forms: "butter cold", "steak medium".
  while (
    to - from > 1 &&
    (generic.has(tokens[to - 1]!.low) ||
      participle(tokens[to - 1]!.low) !== undefined ||
      /ly$/u.test(tokens[to - 1]!.low)) &&
    !pantry.byWord.has(canonical(tokens[to - 1]!.low))
  )
    to -= 1
  if (from >= to) return []
  const run = tokens.slice(from, to).map((token) => canonical(token.low))
  const last = run.at(-1)!
  const lowLast = tokens[to - 1]!.low
  const plural = lowLast !== last && /s$/u.test(lowLast)
  const candidates = new Set<number>()
  for (const word of run) for (const index of pantry.byWord.get(word) ?? []) candidates.add(index)
  const base = { at: from, next: to, head: last, plural }
  if (to - from === 1 && lowLast.includes('-') && candidates.size === 0) {
    const pieces = lowLast.split('-').flatMap((piece) => pantry.byWord.get(canonical(piece))?.slice(0, 1) ?? [])
    if (pieces.length > 1)
      return [
        { ...base, found: [pieces[0]!], group: null },
        { ...base, found: [pieces[1]!], group: null },
      ]
  }
  const scored: Scored[] = []
  for (const index of candidates) {
    const points = score(pantry.known[index]!, run, plural)
    if (points > 0) scored.push({ index, score: points })
  }
  scored.sort((a, b) => b.score - a.score || a.index - b.index)
  if (/^(?:side|skin|top|bottom|base)$/u.test(last) && to - from > 1) return readRun(pantry, tokens, from, to - 1)
  // "coffee filter": a thing of the kitchen, whatever stands before it.
  if (isEquipment(lowLast) && !pantry.known.some((one) => one.heads.has(last))) return []
  if (to - from === 1 && bareVerb(lowLast) && !pantry.byWord.has(last) && !alsoFood.has(lowLast)) return []
  // Juices run out of what cooks; lemon juice is never in the plural.
  if (lowLast === 'juices') return [{ ...base, found: [], group: null }]
  if (scored.length > 0) {
    const best = scored[0]!.score
    return [
      {
        ...base,
        found: scored.filter((one) => one.score >= best - 0.05).map((one) => one.index),
        others: scored.filter((one) => one.score < best - 0.05).map((one) => one.index),
        group: null,
      },
    ]
  }
  const group = groupWord(last)
  if (group) return [{ ...base, found: [], group }]
  // Two foods side by side, or a known food followed by something else: try the front part alone.
  for (let cut = to - 1; cut > from; cut -= 1) {
    const front = readKnown(pantry, tokens, from, cut)
    if (front) return [front]
  }
  if (run.length === 1) {
    const short = shortFor(pantry, lowLast)
    if (short.length > 0) return [{ ...base, found: short.slice(0, 1), group: null }]
  }
  if (equipment.has(last) || equipment.has(lowLast)) return []
  if (gerund(lowLast) || participle(lowLast)) return []
  return [{ ...base, found: [], group: null }]
}

function readKnown(pantry: Pantry, tokens: readonly Token[], at: number, next: number): Mention | null {
  const run = tokens.slice(at, next).map((token) => canonical(token.low))
  const last = run.at(-1)!
  const lowLast = tokens[next - 1]!.low
  const plural = lowLast !== last && /s$/u.test(lowLast)
  let best: Scored | null = null
  for (const word of run) {
    for (const index of pantry.byWord.get(word) ?? []) {
      const points = score(pantry.known[index]!, run, plural)
      if (points > 0.5 && (!best || points > best.score)) best = { index, score: points }
    }
  }
  return best ? { at, next, found: [best.index], group: null, head: last, plural } : null
}

/** Is the word a thing of the kitchen? */
export const isEquipment = (low: string): boolean => equipment.has(low) || equipment.has(canonical(low))

/** Is the word something of the kitchen or made on the way, so that it needs no line in the list? */
export const needsNoLine = (head: string): boolean => equipment.has(head) || derived.has(head) || generic.has(head)
