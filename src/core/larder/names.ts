import { rows } from '../../../data/larder/foods.ts'
import type { Food } from './food.ts'
import { foods } from './foods.ts'
import { isContent, isNeutral, isTelling, type Phrase, phraseOf, plain } from './words.ts'

/** One way to write one food. */
export interface Name {
  readonly food: Food
  readonly words: readonly string[]
  readonly head: string
  /** Written with "and" in it: "peas and carrots". Only such names answer a phrase that joins two things. */
  readonly joined: boolean
  /** What matching it is worth against leaving its words over. */
  readonly worth: number
}

interface Index {
  /** Every name under its rarest word, so that few are looked at for a phrase. */
  readonly byRarest: ReadonlyMap<string, readonly Name[]>
  /** Names that only the plural tells apart, as written. */
  readonly asWritten: ReadonlyMap<string, Food>
  readonly words: ReadonlySet<string>
}

let built: Index | null = null
/** Built at the first question, not when the room is opened: who only reads figures need not wait for it. */
const index = (): Index => (built ??= build())

function build(): Index {
  const byRarest = new Map<string, Name[]>()
  const asWritten = new Map<string, Food>()
  const names: Name[] = []
  const count = new Map<string, number>()
  rows.forEach(([, name, also], i) => {
    for (const each of [name, ...also]) {
      if (each.startsWith('=')) {
        asWritten.set(each.slice(1), foods[i])
        continue
      }
      const phrase = phraseOf(plain(each))
      if (!phrase) continue
      const words = [...new Set([...phrase.main, ...phrase.after, ...phrase.beside])]
      names.push({ food: foods[i], words, head: phrase.head, joined: / and /.test(each), worth: worthOf(words) })
      for (const word of words) count.set(word, (count.get(word) ?? 0) + 1)
    }
  })
  for (const name of names) {
    const rarest = name.words.reduce((a, b) => ((count.get(a) ?? 0) <= (count.get(b) ?? 0) ? a : b))
    const list = byRarest.get(rarest)
    if (list) list.push(name)
    else byRarest.set(rarest, [name])
  }
  return { byRarest, asWritten, words: new Set(count.keys()) }
}

/** A matched word earns what it says of the food and saves what leaving it over would cost. */
function worthOf(words: readonly string[]): number {
  return words.reduce((sum, word) => sum + (isNeutral(word) ? 0.3 : isTelling(word) ? 0.9 : 1.5), 0)
}

export const isKnownWord = (word: string): boolean => index().words.has(word)
export const knownWords = (): Iterable<string> => index().words

export interface Match {
  readonly food: Food
  readonly words: readonly string[]
  /** Words of the phrase that say what the food is and that the name lacks. */
  readonly left: readonly string[]
}

/**
 * The best name for a phrase: all its words must stand in the phrase, and the phrase's head must be one of them.
 * `must` is a word the name has to have.
 */
export function bestName(phrase: Phrase, { joined = false, must = '' } = {}): Match | null {
  const { byRarest, asWritten } = index()
  const exact = must === '' && phrase.after.length === 0 ? asWritten.get(phrase.raw) : undefined
  if (exact) return { food: exact, words: phrase.main, left: [] }
  let best: Name | null = null
  let bestWorth = 0
  for (const words of [phrase.main, phrase.after, phrase.beside])
    for (const word of words) for (const name of byRarest.get(word) ?? []) best = better(name)
  if (!best) return null
  const { words } = best
  return { food: best.food, words, left: phrase.main.filter((word) => isContent(word) && !words.includes(word)) }

  function better(name: Name): Name | null {
    if (name.joined !== joined || name.worth + 0.5 <= bestWorth || !name.words.includes(phrase.head)) return best
    if (must !== '' && !name.words.includes(must)) return best
    if (name.head !== phrase.head && !phrase.after.includes(name.head)) return best
    for (const word of name.words) {
      if (!phrase.main.includes(word) && !phrase.after.includes(word) && !phrase.beside.includes(word)) return best
    }
    const worth = name.worth + (name.head === phrase.head ? 0.5 : 0)
    if (worth <= bestWorth) return best
    bestWorth = worth
    return name
  }
}
