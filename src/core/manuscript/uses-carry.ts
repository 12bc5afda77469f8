import type { Use, VerbCode } from './recipe.ts'
import type { Draft } from './steps-draft.ts'
import { type Book, low, moveTo, putsIn } from './uses-book.ts'
import { prepositions } from './verbs-words.ts'

// What an operation touches without naming it: "lift it onto a plate", "Drain.", "toss with the salt".

/** Verbs that go on with what was handled last when they name nothing. */
const carrying: readonly VerbCode[] = [
  'lift',
  'brown',
  'drain',
  'cut',
  'marinate',
  'soak',
  'chill',
  'strain',
  'fry',
  'sweat',
  'bloom',
]
const carries: ReadonlySet<VerbCode> = new Set(carrying)

/** What was made on the way is an object too: "pour off the fat". */
const made = /^(?:fat|scum|soup|stew|sauce|gravy|liquid|liquor|mixture|juice|water|everything)$/u

const vessels = /^(?:basin|bowl|pot|pan|casserole|cooker|trivet|rack|basket|lid|pudding|saucepan|skillet|sling|foil)$/u

/** Place of a pronoun that stands for food: "lift it onto a plate". */
export function pronounAt(draft: Draft): number | null {
  const { clause, slots, told } = draft.raw
  if (/^(?:boil|hold|heat|lock|release|reduce)$/u.test(draft.verb)) return null
  for (let i = clause.head + 1; i < clause.next; i += 1) {
    const word = low(draft, i)
    if ((word !== 'it' && word !== 'them') || told[i]) continue
    if (!slots.mentions.some((mention) => mention.at < i && mention.found.length > 0)) return i
  }
  return null
}

/** A verb without an object goes on with what was handled; not when its object is a vessel ("Lift out the basin"). */
function goesOn(book: Book, draft: Draft): boolean {
  const { clause, slots } = draft.raw
  const blocks = slots.mentions.some(
    (mention) => mention.found.length > 0 || mention.group !== null || made.test(mention.head),
  )
  if (!carries.has(draft.verb) || blocks) return false
  if (draft.verb === 'marinate' || draft.verb === 'chill') {
    return (
      draft.place === 'bowl' ||
      book.focus.every((one) => book.where[one.ingredient] === 'bench' || book.where[one.ingredient] === 'list')
    )
  }
  for (let i = clause.head + 1; i < clause.next; i += 1) {
    const word = low(draft, i)
    if (vessels.test(word)) return false
    if (prepositions.has(word) && !/^(?:out|up|off)$/u.test(word)) return true
  }
  return true
}

/** "put back", "Return to pot": what was handled last. */
function putsBack(draft: Draft): boolean {
  const { clause, slots, verb } = draft.raw
  if (draft.verb !== 'add' || verb === null) return false
  if (slots.mentions.some((mention) => mention.found.length > 0 || mention.head !== 'water')) return false
  return /^(?:back|to|into|in)$/u.test(low(draft, clause.head + 1))
}

/** "toss with 1 teaspoon of the salt": what is tossed was named before. */
function wantsObject(book: Book, draft: Draft, found: readonly Use[], means: number): boolean {
  const { slots, verb } = draft.raw
  if (!/^(?:mix|season)$/u.test(draft.verb) || found.length === 0) return false
  if (verb?.frame === 'taste' || verb?.lemma === 'salt' || verb?.lemma === 'pepper') return false
  return (
    slots.mentions.every((mention) => mention.at > means) &&
    book.focus.every((one) => book.where[one.ingredient] !== 'vessel')
  )
}

/** Uses of what was handled last, where the words ask for it. */
export function carriedUses(book: Book, draft: Draft, found: readonly Use[], means: number): Use[] {
  if (book.focus.length === 0) return []
  const pronoun = pronounAt(draft)
  if (pronoun === null && !goesOn(book, draft) && !putsBack(draft) && !wantsObject(book, draft, found, means)) return []
  const { from, to } = pronoun === null ? draft : draft.tokens[pronoun]!
  return book.focus
    .filter((one) => !found.some((use) => use.ingredient === one.ingredient))
    .map((one) => {
      const where = book.where[one.ingredient]
      const again = draft.verb === 'add' && (where === 'aside' || where === 'vessel')
      // What was only handled on the bench is spent when "it" goes into the pot.
      const account = book.accounts[one.ingredient]!
      if (putsIn.has(draft.verb)) account.left = Math.max(0, account.left - (one.share ?? 0))
      moveTo(book, one.ingredient, draft.verb)
      return { ingredient: one.ingredient, share: one.share, again, from, to }
    })
}
