import type { Span } from '../findings/index.ts'
import type { Character } from '../larder/index.ts'
import type { Use, VerbCode } from './recipe.ts'
import type { Draft } from './steps-draft.ts'
import type { Known, Mention, Pantry } from './uses-match.ts'
import { type Portion, shareOfListed } from './uses-portions.ts'

/** Something the method handles that no line lists. */
export interface Unlisted extends Span {
  readonly draft: number
  readonly head: string
  readonly water: boolean
}

/** One taking of a listed ingredient, as the words have it. */
export interface Taking extends Span {
  readonly draft: number
  readonly share: number | null
  readonly portion: Portion | null
  /** Share that was still unspent before. */
  readonly leftBefore: number
  readonly again: boolean
  /** The taking lessens what is left of the list's amount. */
  readonly spends: boolean
}

export interface Account {
  /** Share of the listed amount still unspent. */
  left: number
  readonly takings: Taking[]
}

/** On the list only, handled on the bench, in a vessel, or lifted out of one. */
type Where = 'list' | 'bench' | 'vessel' | 'aside'

type Mutable<T> = { -readonly [K in keyof T]: T[K] }

export interface Focus {
  readonly ingredient: number
  readonly share: number | null
}

/** What is known while the method is gone through: what is left of each line, where it is, what "it" stands for. */
export interface Book {
  readonly text: string
  readonly pantry: Pantry
  /** Heading of the list that an ingredient stands under, or an empty string. */
  readonly groupOf: (ingredient: number) => string
  readonly accounts: Account[]
  readonly where: Where[]
  /** What was handled last, for "it", "them" and verbs without an object. */
  focus: readonly Focus[]
  /** What was mixed together last, outside the pot. */
  mixture: readonly number[]
  /** Uses of water since the last draining. */
  readonly water: Mutable<Use>[]
  readonly unlisted: Unlisted[]
  /** Named by an order without an operation. */
  readonly handled: Set<number>
}

export function openBook(text: string, pantry: Pantry, groupOf: (ingredient: number) => string): Book {
  return {
    text,
    pantry,
    groupOf,
    accounts: pantry.known.map(() => ({ left: 1, takings: [] })),
    where: pantry.known.map(() => 'list' as const),
    focus: [],
    mixture: [],
    water: [],
    unlisted: [],
    handled: new Set(),
  }
}

/** Shares closer than this to nothing or to all are nothing or all. */
export const crumb = 0.01

/** Verbs that put what they name into a vessel or onto other food. */
const putting: readonly VerbCode[] = [
  'add',
  'heat',
  'brown',
  'sweat',
  'fry',
  'bloom',
  'deglaze',
  'boil',
  'simmer',
  'bake',
  'thicken',
  'hold',
  'serve',
  'reduce',
]
export const putsIn: ReadonlySet<VerbCode> = new Set(putting)

export const low = (draft: Draft, i: number): string => draft.tokens[i]?.low ?? ''

/** Does any word of the clause match? */
export function says(draft: Draft, pattern: RegExp): boolean {
  const { clause } = draft.raw
  for (let i = clause.at; i < clause.next; i += 1) if (pattern.test(low(draft, i))) return true
  return false
}

/** "fry in the oil", "brown in butter": the fat is the means. */
export function isMeans(draft: Draft, mention: Mention): boolean {
  if (draft.verb === 'add' || draft.verb === 'lift') return false
  for (let i = mention.at - 1; i > draft.raw.clause.head && i > mention.at - 5; i -= 1) {
    if (/^(?:in|with)$/u.test(low(draft, i))) return true
    if (/^(?:and|,)$/u.test(low(draft, i))) return false
  }
  return false
}

const seasonings: ReadonlySet<Character> = new Set([
  'salt',
  'spice',
  'seasoning',
  'herb',
  'fat',
  'acid',
] as const satisfies readonly Character[])

const clean = (share: number): number => Math.round(share * 1e6) / 1e6

export const isWater = (known: Known): boolean => known.heads.has('water')

export interface Touch {
  readonly draft: Draft
  /** Place of the draft. */
  readonly index: number
  readonly ingredient: number
  readonly portion: Portion | null
  readonly mention: Mention
  /** Behind "with": it goes onto something else. */
  readonly behind: boolean
}

/** Does the touch lessen what is left of the line? A piece of meat that is cut is still all there. */
function lessens({ draft, portion, mention, behind }: Touch, character: Character | null): boolean {
  const part = portion !== null && (portion.amount !== null || portion.share !== null) && draft.verb === 'mix'
  const seasons = draft.verb === 'season' && character !== null && seasonings.has(character)
  return part || portion?.rest === true || putsIn.has(draft.verb) || behind || isMeans(draft, mention) || seasons
}

/** Writes down that an operation touches an ingredient; null when the words cannot mean the listed one. */
export function touch(book: Book, it: Touch): Use | null {
  const { draft, ingredient, portion, mention } = it
  const known = book.pantry.known[ingredient]!
  const account = book.accounts[ingredient]!
  const leftBefore = account.left
  const where = book.where[ingredient]!
  const ofListed = portion?.amount ? shareOfListed(known.ingredient, portion.amount) : null
  // More than the list has is not the list's: water that pasta is boiled in.
  if (isWater(known) && ofListed !== null && ofListed > 1.05) return null
  const wasIn = (where === 'aside' || where === 'vessel') && /^(?:add|mix|simmer|heat|serve)$/u.test(draft.verb)
  const returns = where === 'aside' && !portion?.rest && says(draft, /^(?:return|back|again|reserved)$/u)
  const again = wasIn && ((!portion && leftBefore < crumb) || returns)
  const tastes = draft.raw.verb?.frame === 'taste'
  const lessening = lessens(it, known.character)
  const share =
    again && !portion
      ? 1
      : shareOf(it, { ofListed, leftBefore, tastes, lessening, lifted: where === 'aside', halves: known.halves })
  // Named once more without a portion when all of it is in: nothing is spent twice.
  const spends = lessening && !(portion === null && leftBefore < crumb)
  const span = { from: draft.tokens[portion ? portion.at : mention.at]!.from, to: draft.tokens[mention.next - 1]!.to }
  if (draft.verb === 'drain') pourAwayWater(book)
  account.takings.push({ ...span, draft: it.index, share, portion, leftBefore, again, spends })
  if (spends && !again && !tastes) account.left = Math.max(0, leftBefore - (share ?? 0))
  moveTo(book, ingredient, draft.verb)
  const use = { ingredient, share, again, ...span }
  if (isWater(known)) book.water.push(use)
  return use
}

interface ShareAsk {
  readonly ofListed: number | null
  readonly leftBefore: number
  readonly tastes: boolean
  readonly lessening: boolean
  readonly lifted: boolean
  readonly halves: boolean
}

function shareOf({ draft, portion }: Touch, ask: ShareAsk): number | null {
  if (portion?.amount) return ask.ofListed === null ? null : Math.min(ask.ofListed, 1)
  if (portion && portion.share !== null) return portion.share
  if (portion?.rest) return clean(ask.leftBefore)
  if (portion?.vague || ask.tastes) return null
  // "1 lemon, half sliced and half juiced"
  if (!portion && ask.lessening && ask.halves) return Math.min(0.5, clean(ask.leftBefore))
  if (/^(?:lift|drain|strain)$/u.test(draft.verb) || ask.lifted) return 1
  if (ask.lessening && ask.leftBefore < 1 - crumb && ask.leftBefore > crumb) return clean(ask.leftBefore)
  return 1
}

/** Where an ingredient is after an operation. */
export function moveTo(book: Book, ingredient: number, verb: VerbCode): void {
  if (verb === 'lift' || verb === 'strain') book.where[ingredient] = 'aside'
  else if (putsIn.has(verb)) book.where[ingredient] = 'vessel'
  else if (book.where[ingredient] === 'list') book.where[ingredient] = 'bench'
}

/** Water that food was blanched or washed in without an amount is poured away: the listed water is still to come. */
export function pourAwayWater(book: Book): void {
  for (const use of book.water.splice(0)) {
    const account = book.accounts[use.ingredient]!
    if (account.takings.some((taking) => taking.portion !== null) || account.left > crumb) continue
    if (/\bsoak/iu.test(book.pantry.known[use.ingredient]!.ingredient.line)) continue
    account.left = 1
    book.where[use.ingredient] = 'list'
    use.share = null
  }
}
