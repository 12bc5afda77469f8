import type { Use } from './recipe.ts'
import type { Draft } from './steps-draft.ts'
import {
  type Account,
  type Book,
  crumb,
  type Focus,
  isMeans,
  low,
  openBook,
  pourAwayWater,
  putsIn,
  touch,
  type Unlisted,
} from './uses-book.ts'
import { carriedUses, pronounAt } from './uses-carry.ts'
import { chosen, isVague } from './uses-choose.ts'
import { groupUses } from './uses-groups.ts'
import { type Mention, needsNoLine, type Pantry } from './uses-match.ts'
import { type Portion, portionBefore } from './uses-portions.ts'

export interface Touches {
  /** Uses of every draft, by its place. */
  readonly uses: readonly (readonly Use[])[]
  /** By ingredient. */
  readonly accounts: readonly Account[]
  readonly unlisted: readonly Unlisted[]
  /** Named by orders without an operation ("Rinse the lentils"). */
  readonly handled: ReadonlySet<number>
}

/** What every operation touches, and how much of it. Goes through the method once, keeping what is left of each line. */
export function resolveUses(
  drafts: readonly Draft[],
  pantry: Pantry,
  text: string,
  groupOf: (ingredient: number) => string,
): Touches {
  const book = openBook(text, pantry, groupOf)
  const places = new Map<Draft, number>()
  const uses: Use[][] = []
  drafts.forEach((draft, index) => {
    places.set(draft, index)
    noteHandled(book, draft)
    uses.push(repeatedUses(book, drafts, uses, index, places) ?? usesOf(book, draft, index))
  })
  return { uses, accounts: book.accounts, unlisted: book.unlisted, handled: book.handled }
}

/** "Pat the pork dry": nothing is done to it that counts, but "it" is the pork from here on. */
function noteHandled(book: Book, draft: Draft): void {
  for (const { mentions, tokens } of draft.handled) {
    const isObject = (mention: Mention): boolean => {
      for (let i = mention.at - 1; i >= 0 && i > mention.at - 5; i -= 1) {
        if (/^(?:under|in|with|on|from)$/u.test(tokens[i]!.low)) return false
        if (tokens[i]!.kind === 'mark') return true
      }
      return true
    }
    const objects = mentions.filter(isObject).flatMap((mention) => mention.found.slice(0, 1))
    for (const ingredient of objects) {
      if (book.where[ingredient] === 'list') book.where[ingredient] = 'bench'
      book.handled.add(ingredient)
    }
    if (objects.length > 0) book.focus = objects.map((ingredient) => ({ ingredient, share: 1 }))
  }
}

/** "Repeat with the remaining beef": what is named is browned, the rest is done with it as before. */
function repeatedUses(
  book: Book,
  drafts: readonly Draft[],
  uses: readonly Use[][],
  index: number,
  places: ReadonlyMap<Draft, number>,
): Use[] | null {
  const draft = drafts[index]!
  if (!draft.repeats) return null
  const before = drafts[index - 1]
  const first = !before?.repeats || before.sentence !== draft.sentence
  const names = draft.raw.slots.mentions.some((mention) => mention.found.length > 0)
  if (first && names) return null
  const old = uses[places.get(draft.repeats) ?? -1] ?? []
  return old.map((use) => {
    const now = book.focus.find((one) => one.ingredient === use.ingredient)
    return { ...use, share: now && !first ? now.share : use.share, from: draft.from, to: draft.to }
  })
}

/** Place of "with" behind the verb: what follows is the means, not the object. */
function meansFrom(draft: Draft): number {
  const { clause } = draft.raw
  for (let i = clause.head + 1; i < clause.next; i += 1)
    if (low(draft, i) === 'with' || low(draft, i) === 'w/') return i
  return clause.next
}

function usesOf(book: Book, draft: Draft, index: number): Use[] {
  const means = meansFrom(draft)
  const { found, direct, groups, excepted } = namedUses(book, draft, index, means)
  for (const mention of groups) {
    for (const use of groupUses(book, draft, index, mention, excepted)) {
      if (found.some((one) => one.ingredient === use.ingredient)) continue
      found.push(use)
      direct.push({ ingredient: use.ingredient, share: use.share })
    }
  }
  found.push(...bySeasoningVerb(book, draft, index, found))
  found.push(...ofMixture(book, draft, index, found))
  if (draft.verb === 'drain') pourAwayWater(book)
  if (direct.length === 0) found.push(...carriedUses(book, draft, found, means))
  else if (draft.verb !== 'heat') book.focus = direct
  if (draft.verb === 'mix' && found.length > 1) book.mixture = found.map((use) => use.ingredient)
  // "a third of the soup": what "it" stands for from here on is no listed thing.
  if (direct.length === 0 && pronounAt(draft) === null && namesMade(draft)) book.focus = []
  return found
}

interface Named {
  readonly found: Use[]
  /** Objects of the verb, not its means. */
  readonly direct: Focus[]
  readonly groups: readonly Mention[]
  readonly excepted: ReadonlySet<number>
}

const restOnly = { share: null, amount: null, rest: true, vague: false, allBut: false } as const

/** Uses of what the clause names one by one. */
function namedUses(book: Book, draft: Draft, index: number, means: number): Named {
  const { slots, clause } = draft.raw
  const found: Use[] = []
  const direct: Focus[] = []
  const groups: Mention[] = []
  const excepted = new Set<number>()
  let excepting = false
  let restUntil = Number.NEGATIVE_INFINITY
  for (const mention of slots.mentions) {
    excepting ||= isExcepted(draft, mention)
    if (excepting && mention.found.length > 0) {
      for (const one of mention.found) excepted.add(one)
      continue
    }
    if (mention.group) {
      groups.push(mention)
      continue
    }
    const floor = clause.head >= clause.at && clause.head < mention.at ? clause.head + 1 : clause.at
    let portion: Portion | null = portionBefore(book.text, draft.tokens, floor, mention.at)
    // "the remaining oil and pork": the rest of both.
    if (!portion && mention.at - restUntil <= 2 && /^(?:and|&|\+)$/u.test(low(draft, mention.at - 1)))
      portion = { ...restOnly, at: mention.at }
    restUntil = portion?.rest && !portion.amount ? mention.next : Number.NEGATIVE_INFINITY
    if (mention.found.length === 0) {
      noteUnlisted(book, draft, index, mention)
      continue
    }
    if (!portion?.rest && isVague(book, draft, mention)) continue
    const behind = mention.at > means
    for (const ingredient of chosen(book, mention, portion, draft)) {
      // "the pineapple with its juice", "salt and pepper" on one line: once is enough.
      if (!portion && found.some((one) => one.ingredient === ingredient)) continue
      const use = touch(book, { draft, index, ingredient, portion, mention, behind })
      if (!use) continue
      found.push(use)
      if (!behind && !mention.late && !isMeans(draft, mention)) direct.push({ ingredient, share: use.share })
    }
  }
  return { found, direct, groups, excepted }
}

/** "everything but the salt", "all ingredients except the cream". */
function isExcepted(draft: Draft, mention: Mention): boolean {
  for (let i = Math.max(draft.raw.clause.at, mention.at - 3); i < mention.at; i += 1) {
    const word = low(draft, i)
    if (word === 'except' || word === 'excluding' || (word === 'but' && low(draft, i - 1) !== 'all')) return true
  }
  return false
}

/** "Salt the lamb": the verb is the ingredient. */
function bySeasoningVerb(book: Book, draft: Draft, index: number, found: readonly Use[]): Use[] {
  const lemma = draft.raw.verb?.lemma
  if (draft.verb !== 'season' || (lemma !== 'salt' && lemma !== 'pepper')) return []
  const ingredient = (book.pantry.byWord.get(lemma) ?? []).find(
    (i) => book.accounts[i]!.left > crumb && !found.some((use) => use.ingredient === i),
  )
  if (ingredient === undefined) return []
  const at = draft.raw.clause.head
  const mention: Mention = { at, next: at + 1, found: [ingredient], group: null, head: lemma, plural: false }
  const use = touch(book, { draft, index, ingredient, portion: null, mention, behind: true })
  return use ? [use] : []
}

const mixtures = /^(?:marinade|mixture|batter|slurry|filling|dressing|dredge|rub)$/u

/** "the goat with its marinade", "the cornstarch mixture": what was mixed before and has not gone in yet. */
function ofMixture(book: Book, draft: Draft, index: number, found: readonly Use[]): Use[] {
  if (!putsIn.has(draft.verb)) return []
  const mention = draft.raw.slots.mentions.find((one) => one.found.length === 0 && mixtures.test(one.head))
  if (!mention) return []
  return book.mixture
    .filter((i) => book.where[i] === 'bench' && !found.some((use) => use.ingredient === i))
    .flatMap((ingredient) => touch(book, { draft, index, ingredient, portion: null, mention, behind: false }) ?? [])
}

/** Names the clause something that was made on the way? */
function namesMade(draft: Draft): boolean {
  const made = /^(?:soup|stew|sauce|gravy|liquid|liquor|mixture|broth|juice|curry|fat|puree|paste)$/u
  return draft.raw.slots.mentions.some((mention) => mention.found.length === 0 && made.test(mention.head))
}

function noteUnlisted(book: Book, draft: Draft, index: number, mention: Mention): void {
  const water = mention.head === 'water' || mention.head === 'ice'
  // "stir into the chili": the pot, not a purchase.
  const to = low(draft, mention.at - 1) === 'the' ? mention.at - 2 : mention.at - 1
  if (/^(?:to|into|over|onto)$/u.test(low(draft, to))) return
  if (inBrackets(draft, mention.at) || (!water && needsNoLine(mention.head))) return
  const { from } = draft.tokens[mention.at]!
  book.unlisted.push({ from, to: draft.tokens[mention.next - 1]!.to, draft: index, head: mention.head, water })
}

function inBrackets(draft: Draft, at: number): boolean {
  let open = false
  for (let i = draft.raw.clause.at; i < at; i += 1) {
    if (low(draft, i) === '(') open = true
    else if (low(draft, i) === ')') open = false
  }
  return open
}
