import type { Character } from '../larder/index.ts'
import type { Use } from './recipe.ts'
import { isMeat } from './steps-context.ts'
import type { Draft } from './steps-draft.ts'
import { type Book, crumb, low, putsIn, says, touch } from './uses-book.ts'
import type { Mention } from './uses-match.ts'
import { portionBefore } from './uses-portions.ts'
import type { Group } from './uses-words.ts'

// Words for many ingredients at once: "the vegetables", "everything", "the rest of the ingredients".

const characters: Readonly<Record<Exclude<Group, 'meat' | 'all' | 'rest'>, readonly Character[]>> = {
  vegetables: ['firm vegetable', 'soft vegetable', 'leafy vegetable', 'aromatic', 'mushroom', 'starch'],
  herbs: ['herb'],
  spices: ['spice'],
  aromatics: ['aromatic'],
  greens: ['leafy vegetable', 'herb'],
  seasonings: ['spice', 'seasoning', 'salt', 'herb'],
  pasta: ['pasta'],
  beans: ['pulse', 'cooked pulse'],
  grains: ['grain'],
  nuts: ['nut'],
  fish: ['fish'],
  mushrooms: ['mushroom'],
  fat: ['fat'],
  liquids: ['thin liquid'],
}

function inGroup(group: Group, character: Character | null): boolean {
  if (character === null) return false
  if (group === 'meat') return isMeat(character)
  return group === 'all' || group === 'rest' || characters[group].includes(character)
}

/** Uses of every member of a group that a mention stands for. */
export function groupUses(
  book: Book,
  draft: Draft,
  index: number,
  mention: Mention,
  excepted: ReadonlySet<number>,
): Use[] {
  const { clause } = draft.raw
  const words: string[] = []
  for (let i = Math.max(clause.at, mention.at - 4); i < mention.next; i += 1) words.push(low(draft, i))
  const rest = words.some((word) => /^(?:other|remaining|rest|remainder)$/u.test(word))
  const all = book.pantry.known.map((_, i) => i).filter((i) => !excepted.has(i))
  const pool =
    mention.group === 'all'
      ? everything(book, draft, mention, all, words, excepted.size > 0)
      : members(book, draft, mention.group!, all, rest)
  const portion = mention.group === 'all' ? null : portionBefore(book.text, draft.tokens, clause.at, mention.at)
  const said = portion && !portion.amount && !rest ? portion : null
  return pool.flatMap(
    (ingredient) => touch(book, { draft, index, ingredient, portion: said, mention, behind: false }) ?? [],
  )
}

/** Members of a part of the list whose heading has one of the words: "the other marinade ingredients", "the spices". */
function ofSection(book: Book, all: readonly number[], words: readonly string[]): number[] {
  const telling = words.filter(
    (word) =>
      word.length > 3 && word !== 'ingredients' && word !== 'ingredient' && word !== 'other' && word !== 'remaining',
  )
  return all.filter((i) => {
    const heading = book.groupOf(i).toLowerCase()
    return heading !== '' && telling.some((word) => heading.includes(word.replace(/s$/u, '')))
  })
}

function everything(
  book: Book,
  draft: Draft,
  mention: Mention,
  all: readonly number[],
  words: readonly string[],
  excepting: boolean,
): number[] {
  const section = ofSection(book, all, words)
  const started = all.some((i) => book.where[i] === 'vessel')
  // "turn everything over": what is in the pot already.
  const others = excepting || low(draft, mention.next) === 'else'
  if (low(draft, mention.next - 1) === 'everything' && started && !others && section.length === 0) return []
  return (section.length > 0 ? section : all).filter(
    (i) =>
      book.accounts[i]!.left > crumb &&
      (book.where[i] === 'list' || book.where[i] === 'bench') &&
      !book.pantry.known[i]!.ingredient.optional,
  )
}

function members(book: Book, draft: Draft, group: Group, all: readonly number[], rest: boolean): number[] {
  const { known } = book.pantry
  // "check the seasoning": salt, and what is added to taste.
  const tasting = group === 'seasonings' && draft.verb === 'season'
  const section = ofSection(book, all, [group])
  const listed = all.filter((i) =>
    tasting
      ? known[i]!.character === 'salt' || known[i]!.ingredient.toTaste
      : inGroup(group, known[i]!.character) || section.includes(i),
  )
  const aside = listed.filter((i) => book.where[i] === 'aside')
  if (!putsIn.has(draft.verb)) {
    const handled = listed.filter((i) => book.where[i] !== 'list')
    return handled.length > 0 ? handled : listed
  }
  if (aside.length > 0 && !rest && (group === 'meat' || says(draft, /^(?:return|back|again)$/u))) return aside
  const isUsed = (i: number): boolean => book.accounts[i]!.takings.length > 0 && book.accounts[i]!.left < crumb
  const fresh = listed.filter((i) => !isUsed(i) && book.where[i] !== 'vessel')
  return fresh.length > 0 || rest ? fresh : aside
}
