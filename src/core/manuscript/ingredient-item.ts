import type { Span } from '../findings/index.ts'
import { findFood } from '../larder/index.ts'
import { type Amount, isSizeWord } from './amount.ts'
import { type UnitWord, unitOfWord } from './amount-units.ts'
import { measuresIn, type SaidMeasure } from './ingredient-measures.ts'
import { lineParts, phrase, placeOf, word, written } from './ingredient-parts.ts'
import { endsFood, foodFollows, nounPhrase, workChain } from './ingredient-phrase.ts'
import { invertedName } from './ingredient-sorted.ts'
import { countsParts, isAdverb, isDropped, isKind, isModifier, isPreparation } from './ingredient-words.ts'
import type { Token } from './sentences-tokens.ts'

/** The food of a line, told apart from what is done to it. */
export interface ItemFound {
  readonly item: string
  readonly span: Span | null
  readonly prep: string | null
  /** Measures said behind the food: "about 1 1/4 pounds". */
  readonly measures: readonly SaidMeasure[]
  /** Unit behind the food: "garlic cloves". */
  readonly part: UnitWord | null
  readonly size: string | null
  /** Work named before the food, done when it is measured: "chopped" in "1 cup chopped onion". */
  readonly form: string | null
}

const starts =
  /^(?:in|for|to|at|with|without|from|into|on|if|plus|or|about|abt|around|approx|preferably|ideally|each|any|such|optional|divided|not|no|until|as|more|half|then|when|but|use|see|use|feel|you|it|excess|skin|rind|top|tops|stems|stem|seeds|leaves|fat|cloves|zest|white|depending|well|halves|separately|using|bought|store-bought|homemade|home-made|e|i|whole)$/

/** Is a segment about what is done, not about another food? */
function isWork(tokens: readonly Token[]): boolean {
  if (tokens.length === 0) return true
  return (
    starts.test(word(tokens, 0)) ||
    isAdverb(word(tokens, 0)) ||
    tokens[0]!.kind === 'number' ||
    tokens.some((t) => isPreparation(t.low)) ||
    tokens.every((t) => isSizeWord(t.low))
  )
}

const isJoin = (low: string): boolean => low === 'and' || low === '&' || low === 'or'

/** Foods listed with commas as one ("beef, veal and pork"): how many segments belong to the name. */
function listed(segments: readonly (readonly Token[])[], unmeasured: boolean): number {
  let count = 1
  // "boneless, skinless chicken thighs": no food yet.
  while (count < segments.length && segments[count - 1]!.every((t) => isModifier(t.low) || isDropped(t.low))) {
    if (isWork(segments[count]!) && !segments[count]!.some((t) => !isModifier(t.low) && !isPreparation(t.low))) break
    count += 1
  }
  for (let i = count; i < segments.length && i < count + 5; i += 1) {
    const segment = segments[i]!
    const first = word(segment, 0)
    const closing = isJoin(first)
    const tail = segment.findIndex((t, k) => k > 0 && endsFood.has(t.low))
    const rest = (tail < 0 ? segment : segment.slice(0, tail)).slice(closing ? 1 : 0)
    // "Kosher salt, freshly ground pepper": work with a food behind it is another food.
    const work = workChain(rest, 0, isPreparation)
    const another = unmeasured && work > 0 && work === rest.length - 1 && foodFollows(rest, work)
    if (another) {
      count = i + 1
      continue
    }
    if (rest.length === 0 || rest.length > 4 || isWork(rest) || isModifier(word(rest, rest.length - 1))) return count
    // "sugar, or honey" is a choice; "beef, veal, or pork" is a list.
    if (closing) return first === 'or' && i === count ? count : i + 1
    // "Salt, pepper, oregano": foods without an amount, each known by itself.
    if (unmeasured && findFood(phrase(rest))) {
      count = i + 1
      continue
    }
    // "cayenne, black pepper and salt": only where no amount ties the first food down.
    const inner = segment.findIndex((t) => isJoin(t.low))
    if (inner > 0 && unmeasured) return i + 1
  }
  return count
}

const startsOptional = /^(?:optional|optionally)$/
const remark =
  /^(?:optional|see|or|if|keeps|depends|alternatively|can|you|use|i|this|spice|about|to|for|from|such|e|like|whatever|similar|go)$/

/** "(white fish)" names the kind of "fish fillet"; "(dried green split)" the kind of peas. */
function kindIn(bracket: readonly Token[], food: readonly Token[]): readonly Token[] | null {
  if (bracket.length === 0 || bracket.length > 4 || bracket.some((t) => t.kind !== 'word')) return null
  if (bracket.every((t) => isKind(t.low))) return bracket
  const last = bracket.at(-1)!.low
  const front = bracket.slice(0, -1)
  if (front.length > 0 && food.some((t) => t.low === last) && front.every((t) => isKind(t.low))) return front
  return null
}

/**
 * Reads the food in tokens `from` to `to` of a line whose amount has been taken out. `behind` are tokens that follow an
 * amount in the middle of the line ("Onions 2, minced"): they are never the food.
 */
export function readItem(
  text: string,
  tokens: readonly Token[],
  from: number,
  to: number,
  amount: Amount | null,
  behind: readonly Token[] = [],
): ItemFound {
  const inverted = behind.length > 0 || from > 0 ? null : invertedName(text, tokens, from, to)
  if (inverted) return inverted
  const { segments, brackets } = lineParts(tokens, from, to)
  const held = amount?.kind === 'holder'
  const weighed = amount?.kind === 'mass'
  const count = listed(segments, amount === null || amount.low === null)
  const head: Token[] = []
  for (const [i, segment] of segments.slice(0, count).entries()) {
    const comma = head.at(-1)
    if (i > 0 && comma) head.push({ ...comma, from: comma.to, to: comma.to, kind: 'mark', low: ',', joined: true })
    head.push(...segment)
  }
  const split = nounPhrase(text, head, held, weighed)
  let food = split.food.filter((t) => !/^(?:good|high|best)-quality$/.test(t.low))
  const prep: string[] = split.before.map((work) => written(text, work))
  const measures: SaidMeasure[] = []
  let size: string | null = null
  const takeRest = (rest: readonly Token[]) => {
    if (rest.length === 0) return
    const found = measuresIn(text, rest)
    if (found) {
      measures.push(...found.measures)
      takeRest(found.rest)
    } else if (rest.every((t) => isSizeWord(t.low))) size ??= rest[0]!.low
    else if (!startsOptional.test(word(rest, 0)) && !/^(?:plus|or|if|more|extra|to|for)$/.test(word(rest, 0)))
      prep.push(written(text, rest))
  }
  takeRest(split.behind)
  for (const [i, bracket] of brackets.entries()) {
    if (bracket.segment > 0 && i > 8) break
    const kind = bracket.segment < count ? kindIn(bracket.tokens, food) : null
    if (kind) {
      food = [...kind, ...food]
      continue
    }
    const found = measuresIn(text, bracket.tokens)
    if (found) {
      measures.push(...found.measures)
      if (found.rest.length > 0) prep.push(written(text, found.rest))
    } else if (
      bracket.tokens.length > 0 &&
      !remark.test(word(bracket.tokens, 0)) &&
      isWork(bracket.tokens) &&
      bracket.tokens[0]!.kind === 'word'
    ) {
      const end = workChain(bracket.tokens, 0, isPreparation)
      prep.push(
        written(text, end > 0 && foodFollows(bracket.tokens, end) ? bracket.tokens.slice(0, end) : bracket.tokens),
      )
    }
  }
  for (const segment of segments.slice(count)) {
    // "2 peppers, red"; "Chickpeas, dried".
    if (
      segment.every((t) => isKind(t.low) && !isSizeWord(t.low) && !/^(?:split|ground|cooked|whole)$/.test(t.low)) &&
      prep.length === split.before.length
    )
      food = [...segment, ...food]
    else takeRest(segment)
  }
  const rest = lineParts(behind, 0, behind.length)
  for (const segment of rest.segments) takeRest(segment)
  for (const bracket of rest.brackets) if (!remark.test(word(bracket.tokens, 0))) takeRest(bracket.tokens)
  // Behind-the-food units: "2 garlic cloves".
  let part: UnitWord | null = null
  const last = food.at(-1)
  if (amount && amount.unit === null && amount.word === null && amount.low !== null && last && food.length > 1) {
    const unit = unitOfWord(last.low)
    if (
      unit &&
      countsParts(
        unit.word,
        food.slice(0, -1).map((t) => t.low),
      )
    ) {
      part = unit
      food = food.slice(0, -1)
    }
  }
  // "Onion, large": a size behind the food, also in the name of a column.
  while (food.length > 0 && (word(food, food.length - 1) === ',' || isJoin(word(food, food.length - 1)))) food.pop()
  return {
    item: phrase(food).replace(/^(?:of|the|an?) /, ''),
    span: placeOf(food.filter((t) => t.to > t.from)),
    prep: prep.filter((p) => p !== '').join(', ') || null,
    measures,
    part,
    size,
    form: split.before.map((work) => written(text, work)).join(', ') || null,
  }
}
