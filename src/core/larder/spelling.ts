import { isKnownWord, knownWords } from './names.ts'
import { isNeutral, isNoise, isTelling } from './words.ts'

const shortest = 6

/** Known words by themselves less one letter, for slips of one letter left out, put in or swapped with its neighbour. */
let deletions: Map<string, string> | null = null

function byDeletion(): Map<string, string> {
  if (deletions) return deletions
  deletions = new Map()
  for (const word of knownWords()) {
    if (word.length < shortest) continue
    // The first letter is hardly ever wrong, and words that differ in it are other words: twine is no wine.
    for (let i = 1; i < word.length; i++) {
      const less = word.slice(0, i) + word.slice(i + 1)
      if (!deletions.has(less)) deletions.set(less, word)
    }
  }
  return deletions
}

const isFamiliar = (word: string): boolean => isKnownWord(word) || isNeutral(word) || isTelling(word) || isNoise(word)

/** The words with slips mended: compounds joined or parted as the larder writes them, one wrong letter put right. */
export function mended(words: readonly string[]): string[] {
  const out: string[] = []
  for (let i = 0; i < words.length; i++) {
    const word = words[i]
    const next = words[i + 1]
    if (isFamiliar(word) && (next === undefined || isFamiliar(next))) out.push(word)
    else if (next !== undefined && isKnownWord(word + next)) {
      out.push(word + next)
      i++
    } else out.push(...(isFamiliar(word) ? [word] : (parted(word) ?? [slip(word) ?? word])))
  }
  return out
}

function parted(word: string): string[] | null {
  for (let i = 3; i <= word.length - 3; i++) {
    const [a, b] = [word.slice(0, i), word.slice(i)]
    if (isKnownWord(a) && isKnownWord(b)) return [a, b]
  }
  return null
}

function slip(word: string): string | null {
  if (word.length < shortest) return null
  const missing = byDeletion().get(word)
  if (missing) return missing
  for (let i = 1; i < word.length; i++) {
    const less = word.slice(0, i) + word.slice(i + 1)
    if (isKnownWord(less)) return less
    const swapped = word.slice(0, i) + (word[i + 1] ?? '') + word[i] + word.slice(i + 2)
    if (i + 1 < word.length && isKnownWord(swapped)) return swapped
  }
  return null
}
