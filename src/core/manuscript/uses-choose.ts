import type { Draft } from './steps-draft.ts'
import { type Book, crumb, low, putsIn, says } from './uses-book.ts'
import type { Mention } from './uses-match.ts'
import { type Portion, shareOfListed } from './uses-portions.ts'

// Of several lines that a word may name, the one that is meant here.

/** "the sauce", "the mixture" alone: the bottle in the list only while that has not been used. */
export function isVague(book: Book, draft: Draft, mention: Mention): boolean {
  if (!/^(?:sauce|mixture|mix|liquid|soup|stew)$/u.test(mention.head) || mention.next - mention.at > 1) return false
  // "the following sauce" is the one that is about to be made.
  if (low(draft, mention.at - 1) === 'following') return true
  return mention.found.every((index) => book.where[index] !== 'list') && draft.verb !== 'serve'
}

/** Indices of the ingredients that a mention means; more than one only for "both soy sauces". */
export function chosen(book: Book, mention: Mention, portion: Portion | null, draft: Draft): readonly number[] {
  const { found } = mention
  const alike = handledAlike(book, draft, found)
  if (alike !== null) return [alike]
  const spare = spareLine(book, mention, portion, draft)
  if (spare !== null) return [spare]
  if (found.length < 2) return found
  for (let i = Math.max(0, mention.at - 2); i < mention.at; i += 1) {
    if (/^(?:both|all|each)$/u.test(low(draft, i))) return found
  }
  // An amount that is the listed one points at its line.
  const amount = portion?.amount
  const exact = amount
    ? found.find((index) => Math.abs((shareOfListed(book.pantry.known[index]!.ingredient, amount) ?? 0) - 1) < 0.02)
    : undefined
  if (exact !== undefined) return [exact]
  // Lines of the same part of the list stay together: the salt of the grain goes with the grain.
  const parts = draft.raw.slots.mentions.flatMap((other) =>
    other.found.length === 1 ? [book.groupOf(other.found[0]!)] : [],
  )
  const near = found.filter((index) => parts.includes(book.groupOf(index)))
  const pool = near.length > 0 ? near : found
  const untouched = pool.find((index) => book.accounts[index]!.takings.length === 0)
  const open = pool.find((index) => book.accounts[index]!.left > crumb)
  const begun = pool.find((index) => book.accounts[index]!.takings.length > 0 && book.accounts[index]!.left > crumb)
  if (portion?.rest) return [begun ?? open ?? pool[0]!]
  return [untouched ?? open ?? pool.at(-1)!]
}

/** Only what was handled before can be lifted out: "the mushrooms" are the soaked ones, not those still to come. */
function handledAlike(book: Book, draft: Draft, found: readonly number[]): number | null {
  if (!/^(?:lift|strain|drain|mash)$/u.test(draft.verb) || found.length === 0) return null
  if (found.some((index) => book.where[index] !== 'list')) return null
  const kind = book.pantry.known[found[0]!]!.character
  if (kind === null) return null
  const alike = book.pantry.known.findIndex((one, index) => one.character === kind && book.where[index] !== 'list')
  return alike < 0 ? null : alike
}

/** The best name is used up, another line of nearly that name is not. */
function spareLine(book: Book, mention: Mention, portion: Portion | null, draft: Draft): number | null {
  const { found, others } = mention
  if (found.length !== 1 || !others || !putsIn.has(draft.verb) || portion?.rest) return null
  if (book.accounts[found[0]!]!.left > crumb || book.where[found[0]!] !== 'vessel') return null
  if (says(draft, /^(?:return|back|again)$/u)) return null
  return others.find((index) => book.accounts[index]!.takings.length === 0) ?? null
}
