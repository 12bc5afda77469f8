import { amountAt, isSizeWord } from './amount.ts'
import { word } from './ingredient-parts.ts'
import {
  isAdverb,
  isBoughtSo,
  isDropped,
  isFoodStart,
  isHandWork,
  isPreparation,
  isShape,
  isTemperature,
  isWarmable,
} from './ingredient-words.ts'
import type { Token } from './sentences-tokens.ts'

/** "finely chopped", "peeled, cored and roughly chopped": place behind the chain of work that starts at `i`; `i` for none. */
export function workChain(tokens: readonly Token[], i: number, test: (w: string) => boolean): number {
  let at = i
  let end = i
  for (;;) {
    while (isAdverb(word(tokens, at)) || (word(tokens, at) === 'medium' && test(word(tokens, at + 1)))) at += 1
    if (!test(word(tokens, at))) return end
    at += 1
    end = at
    if (/^(?:and|or|&|\/|,|\+|then)$/.test(word(tokens, at))) at += 1
    else if (!test(word(tokens, at)) && !isAdverb(word(tokens, at))) return end
  }
}

/** Does food follow at `i`? "chopped parsley" yes, "chopped fine" and "chopped into" no. */
export function foodFollows(tokens: readonly Token[], i: number): boolean {
  const token = tokens[i]
  if (token?.kind !== 'word' || !isFoodStart(token.low)) return false
  if (isSizeWord(token.low) || token.low === 'rough') return foodFollows(tokens, i + 1)
  return true
}

const owner =
  /^(?:their|its|the|juices?|liquid|liquor|skins?|bones?|seeds?|rind|tops?|leaves|stems|fat|shells?|peel|greens|syrup)$/
/** Words that end the name of a food. */
export const endsFood: ReadonlySet<string> = new Set(
  (
    'into for if to that which until per plus preferably ideally like such including from at without depending weighing each ' +
    'approximately approx totalling totaling but enough more extra-for as optional made stuck about whichever because so when'
  ).split(' '),
)

/** Does something begin at `i` that is no longer the food? */
function foodEnds(text: string, tokens: readonly Token[], i: number): boolean {
  const low = word(tokens, i)
  const next = word(tokens, i + 1)
  if (endsFood.has(low)) return !(low === 'like' && next === '')
  if (low === 'in')
    return (
      tokens[i + 1]?.kind === 'number' ||
      isShape(next) ||
      /^(?:an?|the|their|its|one|two|four|small|large|thick|thin)$/.test(next)
    )
  if (low === 'on') return /^(?:the)$/.test(next) && word(tokens, i + 2) !== 'bone'
  if (low === 'with') return owner.test(next)
  if (low === 'of') return /^(?:your|choice|any)$/.test(next)
  if (low === 'around' || low === '~' || low === '@') return true
  if (low === '+' || low === '=') return true
  if (low === 'or') {
    if (
      /^(?:as|more|less|to|so|enough|other|another|similar|any|use|substitute|equivalent|about|around|even|if|your)$/.test(
        next,
      )
    )
      return true
    const amount = amountAt(text, tokens, i + 1)
    return amount !== null && (amount.unit !== null || tokens[i + 1]?.kind === 'number')
  }
  return false
}

/** A phrase cut into the food and what is said of it. */
export interface Phrase {
  readonly food: readonly Token[]
  readonly before: readonly (readonly Token[])[]
  readonly behind: readonly Token[]
}

/** Splits one phrase into the food, work and temperature before it, and whatever follows it. */
export function nounPhrase(text: string, tokens: readonly Token[], held: boolean, weighed: boolean): Phrase {
  let i = 0
  while (i < tokens.length - 1 && isDropped(word(tokens, i))) i += 1
  const food: Token[] = []
  const before: Token[][] = []
  while (i < tokens.length) {
    const end = workChain(tokens, i, isPreparation)
    if (end > i) {
      const follows = foodFollows(tokens, end)
      if (!follows && food.length > 0) break
      const hand = workChain(tokens, i, isHandWork)
      if (follows && hand > i) {
        const rest = foodBehind(text, tokens, hand)
        const work = tokens.slice(i, hand).map((t) => t.low)
        if (isBoughtSo(work, rest, held, weighed)) food.push(...tokens.slice(i, hand))
        else before.push(tokens.slice(i, hand))
        i = hand
        continue
      }
      // "freshly ground pepper", or nothing but work: it is all the name there is. In "cooked, shredded chicken" only the
      // second is work.
      let stop = i + 1
      while (stop < end && !(follows && isHandWork(word(tokens, stop)))) stop += 1
      let to = stop
      while (stop < end && to > i + 1 && /^(?:and|or|&|,|\+)$/.test(word(tokens, to - 1))) to -= 1
      food.push(...tokens.slice(i, to))
      i = stop
      continue
    }
    if (food.length > 0 && foodEnds(text, tokens, i)) break
    if (isTemperature(word(tokens, i)) && isWarmable(foodBehind(text, tokens, i + 1).at(-1) ?? '')) {
      const soft =
        word(tokens, i) === 'soft' && !/^(?:butter|cheese|margarine)$/.test(foodBehind(text, tokens, i + 1).at(-1)!)
      if (!soft) {
        before.push([tokens[i]!])
        i += 1
        continue
      }
    }
    food.push(tokens[i]!)
    i += 1
  }
  return partsBehind({ food, before, behind: tokens.slice(i) })
}

const foodPart =
  /^(?:and|or|&|white|green|whites|greens|skins?|bones?|seeds?|stems?|leaves|tops?|tails?|ends?|rind|fat|peel|pale|light|dark|parts?|only)$/
/** "scallions white and green separated", "prawns tails removed": of what is behind the food, its parts come first. */
function partsBehind({ food, before, behind }: Phrase): Phrase {
  const done = /^(?:removed|separated|reserved|discarded|trimmed|attached|on|off)$/.test(word(behind, 0))
  const only = word(food, food.length - 1) === 'only'
  if (!done && !only) return { food, before, behind }
  let end = food.length
  // "collard greens" is a food of its own.
  while (
    end > 1 &&
    foodPart.test(word(food, end - 1)) &&
    (word(food, end - 1) !== 'greens' || /^(?:and|&)$/.test(word(food, end - 2)))
  )
    end -= 1
  return { food: food.slice(0, end), before, behind: [...food.slice(end), ...behind] }
}

/** Words of the food from `i` on, up to where it ends. */
function foodBehind(text: string, tokens: readonly Token[], i: number): string[] {
  const words: string[] = []
  for (let at = i; at < tokens.length; at += 1) {
    if (
      words.length > 0 &&
      (foodEnds(text, tokens, at) || (isPreparation(word(tokens, at)) && !foodFollows(tokens, at + 1)))
    )
      break
    words.push(word(tokens, at))
  }
  return words
}
