import type { Clause } from './operations-heads.ts'
import type { Token } from './sentences-tokens.ts'
import { timeUnit_s } from './times.ts'
import { bareVerb, gerund, participle, type VerbEntry } from './verbs.ts'

// Sentences that say what is done without ordering it: "the lentils may be first parboiled for half an hour",
// "2 hours to stew the tails", "1/2 rump stewed gently from 4 to 5 hours".

/** Is the order told in the passive before any bare verb at `head`? */
export function passiveBefore(tokens: readonly Token[], told: readonly boolean[], head: number): boolean {
  for (let i = 1; i < head; i += 1) {
    if (told[i] || tokens[i]!.low !== 'be' || !/^(?:may|should|must|might|can)$/u.test(tokens[i - 1]!.low)) continue
    for (let k = i + 1; k < Math.min(i + 4, tokens.length); k += 1) if (participle(tokens[k]!.low)?.code) return true
  }
  return false
}

const lasting: ReadonlySet<string> = new Set(
  'simmer boil bake fry hold soak brown sweat reduce chill marinate rest'.split(' '),
)

interface Told {
  readonly i: number
  readonly entry: VerbEntry
  readonly passive: boolean
}

/** Clauses of a sentence that only tells; none when it tells of no operation. */
export function tellings(tokens: readonly Token[], told: readonly boolean[]): Clause[] {
  const found: Told[] = []
  let passive = false
  let timed = false
  let finite = false
  for (let i = 0; i < tokens.length; i += 1) {
    const low = tokens[i]!.low
    if (tokens[i]!.kind !== 'word') continue
    timed ||= timeUnit_s(low) !== undefined
    if (told[i]) continue
    finite ||= isStatement(low) && tokens[i + 1]?.low !== 'be'
    passive ||= low === 'be' && /^(?:may|should|must|can|might|to|shall|first)$/u.test(tokens[i - 1]?.low ?? '')
    const entry = toldVerb(tokens, i, passive)
    if (entry) found.push(entry)
  }
  const usable = found.filter((one) => one.passive || (timed && !finite && lasting.has(one.entry.code ?? '')))
  return usable.map((one, k) => ({
    at: k === 0 ? 0 : one.i,
    next: usable[k + 1]?.i ?? tokens.length,
    head: one.i,
    verb: one.entry,
    nominal: null,
    alternative: false,
    condition: false,
  }))
}

/** A verb with a subject of its own makes a statement, not an order. */
const isStatement = (low: string): boolean =>
  /^(?:must|keeps?|takes?|will|freezes?|lasts?|is|are|was|were|reheats?|serves?|makes?)$/u.test(low)

function toldVerb(tokens: readonly Token[], i: number, passive: boolean): Told | null {
  const low = tokens[i]!.low
  const before = tokens[i - 1]?.low ?? ''
  const done = participle(low)
  if (done?.code && done.lemma !== 'concentrate') {
    // "a chopped onion" describes; "put into fresh water" orders only in the passive.
    if (done.frame === 'move' ? passive : passive || !/^(?:the|a|an|with|of)$/u.test(before))
      return { i, entry: done, passive }
  }
  const bare = before === 'to' ? bareVerb(low) : undefined
  if (bare) return bare.code ? { i, entry: bare, passive: false } : null
  if (passive || !/^(?:boil|simmer|stew|cook|soak|brais)\w*ing$/u.test(low)) return null
  if (/^(?:water|milk|stock)$/u.test(tokens[i + 1]?.low ?? '')) return null
  const going = gerund(low)
  return going?.code ? { i, entry: going, passive: false } : null
}
