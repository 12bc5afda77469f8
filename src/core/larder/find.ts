import type { Food } from './food.ts'
import { bestName, isKnownWord, type Match } from './names.ts'
import { mended } from './spelling.ts'
import { headOf, isState, type Phrase, phraseOf, plain } from './words.ts'

/** What else the line says that settles which of two foods is meant: "1 can" of tomatoes, "2 sprigs" of thyme. */
export interface FindHint {
  /** Null is a bare count ("1 chicken"); leave it out when nothing is known of the amount. */
  readonly unit?: string | null
}

/**
 * The food a cook's words name, or null when the larder does not know it.
 *
 * The name that covers most of the words wins; the head noun must be among them ("chicken stock" is no chicken, and a
 * "tomato bredie" is nothing the larder knows). Words of cut and size count for nothing, words that change what a thing
 * is (dried, ground, smoked, tinned, boneless) count. Of alternatives ("butter or oil") the first that is known is meant.
 */
export function findFood(words: string, hint: FindHint = {}): Food | null {
  const key = `${hint.unit === undefined ? '' : (hint.unit ?? 'each')}|${words}`
  const known = seen.get(key)
  if (known !== undefined) return known
  const text = plain(words)
  const food = text === '' ? null : ((match(text, hint) ?? among(text, hint))?.food ?? null)
  // A manuscript being typed asks the same phrases again and again; what is asked once and never again must not pile up.
  if (seen.size >= remembered) seen.clear()
  seen.set(key, food)
  return food
}

const remembered = 5000
const seen = new Map<string, Food | null>()

/** A whole phrase, spelling mended where words are unknown. */
function match(text: string, hint: FindHint): Match | null {
  const phrase = phraseOf(text)
  if (!phrase) return null
  if (joins.test(text)) {
    const pair = bestName(phrase, { joined: true })
    return pair?.left.length === 0 ? pair : null
  }
  const hinted = withHint(phrase, hint.unit)
  if (hinted) return hinted
  const found = bestName(phrase)
  if (found?.left.every(isKnownWord)) return found
  const words = mended(phrase.main)
  const put = words.filter((word) => !phrase.main.includes(word))
  if (put.length === 0) return found
  const mending = bestName({ ...phrase, main: words, head: headOf(words) })
  // A mended word has to earn its keep: "kitchen twine" is not made a wine by leaving "kitchen" over.
  return mending && mending.left.length === 0 && put.every((word) => mending.words.includes(word)) ? mending : found
}

const joins = /\/|\b(?:or|and)\b/

/** "red or white wine vinegar", "salt and pepper": the first part, with the head of the last where that makes sense. */
function among(text: string, hint: FindHint): Match | null {
  if (!joins.test(text)) return null
  const parts = text
    .split(/\s*(?:\/|\b(?:and|or)\b)\s*/)
    .map((part) => part.replace(/^[\s,]+|[\s,]+$/g, ''))
    .filter(Boolean)
  const tail = (parts.at(-1) ?? '').split(',')[0].split(' ')
  for (const part of parts) {
    const alone = match(part, hint)
    for (let from = 1; part !== parts.at(-1) && from < tail.length; from++) {
      const together = match(`${part.split(',')[0]} ${tail.slice(from).join(' ')}`, hint)
      const covered = together !== null && together.left.length <= (alone?.left.length ?? 0)
      if (covered && together.words.length > (alone?.words.length ?? 0)) return together
    }
    if (alone) return alone
  }
  return null
}

const said: Readonly<Record<string, readonly string[]>> = {
  each: ['whole'],
  can: ['tinned'],
  jar: ['tinned'],
  stick: ['stick'],
  sprig: ['fresh'],
  bunch: ['fresh'],
  handful: ['fresh'],
  stalk: ['fresh'],
  leaf: ['fresh'],
  tsp: ['ground', 'dried', 'concentrated'],
  tbsp: ['concentrated'],
  pinch: ['ground', 'dried'],
  dash: ['ground', 'dried'],
}

/** The unit may say what the words leave open; it is heard only where a name takes it up. */
function withHint(phrase: Phrase, unit: string | null | undefined): Match | null {
  if (unit === undefined || phrase.main.some(isState)) return null
  for (const word of said[unit ?? 'each'] ?? []) {
    const found = bestName({ ...phrase, main: [word, ...phrase.main] }, { must: word })
    if (found && heard(word, found, phrase)) return found
  }
  return null
}

function heard(word: string, found: Match, phrase: Phrase): boolean {
  if (word === 'tinned' || word === 'concentrated' || word === 'stick') return found.left.length === 0
  // "1 chicken" is a bird, but "pepper" without a measure is no peppercorn.
  if (word === 'whole') return found.food.tags?.includes('whole-bird') === true
  // A teaspoon of garlic is not garlic powder: only what is a herb or a spice either way.
  const herbal = (food: Food | undefined) => food === undefined || ['herb', 'spice'].includes(food.character)
  return herbal(found.food) && herbal(bestName(phrase)?.food)
}
