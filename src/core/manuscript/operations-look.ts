import type { Clause, SplitSentence } from './operations-clauses.ts'
import type { RawKind, Slots } from './operations-raw.ts'
import type { Token } from './sentences-tokens.ts'
import { bareVerb, gerund, type VerbEntry } from './verbs.ts'

/** One clause under the lens: its words, its slots, and the questions that the frames of verbs ask of it. */
export interface Look {
  readonly tokens: readonly Token[]
  readonly split: SplitSentence
  readonly clause: Clause
  readonly slots: Slots
  readonly verb: VerbEntry | null
  /** Place of the verb that is asked about; the inner one in "let it simmer". */
  readonly head: number
  readonly lemma: string
}

/** How the meaning of an inner verb is found: "leave to soak" means what "soak" means. */
export type Meaning = (look: Look) => RawKind[]

export const wordAt = (look: Look, i: number): string => look.tokens[i]?.low ?? ''

/** The k-th word behind the verb, empty beyond the clause. */
export const after = (look: Look, k: number): string =>
  look.head + k < look.clause.next ? wordAt(look, look.head + k) : ''

/** Does any word of the clause match that is neither its verb nor told? */
export function has(look: Look, pattern: RegExp): boolean {
  const { clause, split } = look
  for (let i = clause.at; i < clause.next; i += 1) {
    if (i === clause.head || split.fronted[i] || (split.told[i] && i > clause.head)) continue
    if (pattern.test(wordAt(look, i))) return true
  }
  return false
}

/** Is the object right behind the verb one of these words? "reduce the heat", not "reduce over low heat". */
export function objectIs(look: Look, pattern: RegExp): boolean {
  for (let k = 1; k <= 4; k += 1) {
    const low = after(look, k)
    if (pattern.test(low)) return true
    if (/^(?:over|on|in|into|to|with|by|for|until|at|of|onto|)$/u.test(low)) return false
  }
  return false
}

/** Names the clause, between two places, anything of the list or a group of it? */
export function named(look: Look, from = look.clause.at, to = look.clause.next): boolean {
  return look.slots.mentions.some(
    (mention) => mention.at >= from && mention.at < to && (mention.found.length > 0 || mention.group !== null),
  )
}

export interface Inner {
  readonly entry: VerbEntry
  readonly at: number
}

/** The verb inside another: "let simmer", "continue cooking", "an hour's slow boiling". */
export function innerVerb(look: Look): Inner | null {
  const { tokens, clause, split } = look
  for (let i = look.head + 1; i < clause.next; i += 1) {
    if (split.told[i] || tokens[i]!.kind !== 'word') continue
    const low = wordAt(look, i)
    const before = wordAt(look, i - 1)
    const asNoun = /^(?:the|a|an|of|on|over|with|at|medium|high|low|in|into)$/u.test(before)
    if (asNoun && !low.endsWith('ing')) continue
    const entry = bareVerb(low) ?? (low.endsWith('ing') ? gerund(low) : undefined)
    if (!entry || entry.noun === 'often' || entry.frame === 'dial') continue
    if (entry.code !== null || entry.frame === 'keep') return { entry, at: i }
  }
  return null
}

/** "to soak", "to brown": the first infinitive of an operation in the clause. */
export function infinitive(look: Look): Inner | null {
  const { clause, split } = look
  for (let i = look.head + 2; i < clause.next; i += 1) {
    if (split.told[i] || wordAt(look, i - 1) !== 'to') continue
    const entry = bareVerb(wordAt(look, i))
    if (entry?.code && entry.noun !== 'often' && entry.frame !== 'dial') return { entry, at: i }
  }
  return null
}

/** The same clause seen from its inner verb. */
export const within = (look: Look, inner: Inner): Look => ({
  ...look,
  verb: inner.entry,
  head: inner.at,
  lemma: inner.entry.lemma,
})

/** "to a boil", "to a good rolling boil", "to boil", "to a simmer". */
export function boilWord(look: Look): 'boil' | 'simmer' | null {
  for (let i = look.head + 1; i < look.clause.next; i += 1) {
    const low = wordAt(look, i)
    if (!/^(?:boil|boiling|bubble|simmer)$/u.test(low)) continue
    for (let k = 1; k <= 5 && i - k > look.head; k += 1) {
      if (/^(?:to|the|a)$/u.test(wordAt(look, i - k))) return low === 'simmer' ? 'simmer' : 'boil'
    }
  }
  return null
}

export const dishes =
  /^(?:plate|plates|platter|bowl|bowls|board|tray|rack|dish|towel|towels|paper|cutting|side|sheet)$/u

/** "to the soup pot", "to a plate": the naming word behind the last leading word. */
export function destination(look: Look, leads = /^(?:to|into|onto)$/u): string | null {
  const { tokens, clause } = look
  for (let i = clause.next - 1; i > look.head; i -= 1) {
    if (!leads.test(wordAt(look, i))) continue
    let last: string | null = null
    for (let k = i + 1; k < Math.min(clause.next, i + 6); k += 1) {
      if (tokens[k]!.kind !== 'word' || /^(?:with|and|to|in|for)$/u.test(wordAt(look, k))) break
      last = wordAt(look, k)
      if (dishes.test(last)) return last
    }
    return last
  }
  return null
}

/** "put on the lid", "take the lid off": is it the lid that is moved? */
export function movesLid(look: Look): boolean {
  for (let k = 1; k <= 4; k += 1) {
    const low = after(look, k)
    if (lids.test(low)) return true
    if (/^(?:of|with|in|into|onto|over)$/u.test(low)) return false
  }
  return false
}

export const lids = /^(?:lid|cover|lids)$/u
export const coverings = /^(?:foil|plate|cloth|paper|wrap|towel|parchment|cartouche|lid|cling|film|plastic|leaves)$/u
export const fats = /^(?:fat|scum|foam|grease|froth|impurities|drippings|oil)$/u
export const servings = /^(?:bowls|plates|platter|tortillas|buns|rolls|tacos|table|toast)$/u
export const settings =
  /^(?:heat|flame|flames|gas|fire|burner|sauté|saute|s\/té|setting|cooker|button|function|mode|timer|program|programme|hob|knob|temperature|browning|light|dial|manual|pressure-cook|menu|pot)$/u
export const fond = /^(?:bottom|base|bits|fond|brown|browned|sediment|pot|pan|residue|crust|stuck)$/u
export const sieves = /^(?:sieve|colander|strainer|mill|muslin|filter)$/u
