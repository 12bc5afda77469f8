import {
  before,
  bracketed,
  type Clause,
  isModalOrder,
  isOrder,
  isOrderInFlow,
  opensBare,
  type Sight,
  tellsMore,
  verblessAt,
} from './operations-heads.ts'
import { passiveBefore, tellings } from './operations-tellings.ts'
import type { Token } from './sentences-tokens.ts'
import { bareVerb, gerund, type VerbEntry } from './verbs.ts'
import { conjunctions, leadAdverbs, prepositions, strongMarks, subordinators } from './verbs-words.ts'

export type { Clause } from './operations-heads.ts'

export interface SplitSentence {
  readonly clauses: readonly Clause[]
  /** Tokens inside a time or relative clause with its own subject: told, not ordered. */
  readonly told: readonly boolean[]
  /** Told tokens that stand before their order: "When the timer beeps, …". */
  readonly fronted: readonly boolean[]
  /** "Meanwhile", "While the rice cooks, …". */
  readonly meanwhile: boolean
  /** False when nothing is ordered and operations are only told: "may be first parboiled". */
  readonly ordered: boolean
}

/** The clause being read and how far the reading of told parts has come. */
interface Reading extends Sight {
  readonly clauses: Clause[]
  readonly told: boolean[]
  readonly fronted: boolean[]
  start: number
  /** Place behind the last comma or strong mark. */
  segment: number
  head: number
  verb: VerbEntry | null
  nominal: Clause['nominal']
  alternative: boolean
  condition: boolean
  /** The condition holds for every order up to the next strong mark. */
  conditionNext: boolean
  telling: boolean
  tellingFront: boolean
  meanwhile: boolean
}

function begin(tokens: readonly Token[]): Reading {
  return {
    tokens,
    look: (i) => tokens[i]?.low ?? '',
    aside: bracketed(tokens),
    clauses: [],
    told: new Array<boolean>(tokens.length).fill(false),
    fronted: new Array<boolean>(tokens.length).fill(false),
    start: 0,
    segment: 0,
    head: -1,
    verb: null,
    nominal: null,
    alternative: false,
    condition: false,
    conditionNext: false,
    telling: false,
    tellingFront: false,
    meanwhile: false,
  }
}

/** Splits a sentence into its orders. Every token is looked at a fixed number of times. */
export function splitClauses(tokens: readonly Token[]): SplitSentence {
  const reading = begin(tokens)
  for (let i = 0; i < tokens.length; i += 1) i += readToken(reading, i)
  close(reading, tokens.length)
  const { clauses, told, fronted, meanwhile } = reading
  const split = { clauses, told, fronted, meanwhile, ordered: true }
  const firstHead = clauses.find((clause) => clause.head >= 0)?.head ?? tokens.length
  if (firstHead < tokens.length && !passiveBefore(tokens, told, firstHead)) return split
  const told2 = tellings(tokens, told)
  return told2.length === 0 ? split : { ...split, clauses: told2, ordered: false }
}

/** Reads one token; says how many further tokens it took with it. */
function readToken(reading: Reading, i: number): number {
  const { tokens, look } = reading
  const token = tokens[i]!
  if (reading.aside[i]) return 0
  if (token.kind === 'mark') {
    readMark(reading, i)
    return 0
  }
  if (reading.telling) reading.told[i] = true
  if (reading.tellingFront) reading.fronted[i] = true
  if (token.kind !== 'word') return 0

  const low = token.low
  const prev = before(reading, i)
  const prevLow = prev >= 0 ? look(prev) : ''
  // "now and then" joins nothing.
  const idiom = prevLow === 'then' && look(prev - 1) === 'and' && look(prev - 2) === 'now'
  const joins = prevLow === ',' || conjunctions.has(prevLow)
  const sentenceStart = prev < 0 || strongMarks.has(prevLow)
  const coordinated = !idiom && (sentenceStart || joins)
  if (low === 'meanwhile' || (low === 'while' && sentenceStart)) reading.meanwhile = true

  if (tellsMore(reading, i, prevLow, reading.head)) {
    startTelling(reading, i, prev, sentenceStart)
    return 0
  }
  if (readVerbless(reading, i)) return 0
  const compound = compoundVerb(reading, i)
  if (compound && coordinated && (!reading.telling || low !== 'pressure')) {
    open(reading, i, compound)
    return 1
  }
  const entry = bareVerb(low)
  const place = { i, prev, prevLow, joins, sentenceStart }
  const { start, telling, tellingFront, head, verb } = reading
  if (entry) {
    const clause = { start, telling, tellingFront, head, verb }
    if (coordinated && !(telling && tellingFront && prevLow !== ',') && isOrder(reading, entry, place, clause))
      open(reading, i, entry)
    else if (isOrderInFlow(reading, entry, place, clause)) open(reading, i, entry)
    else if (isModalOrder(reading, entry, place)) {
      open(reading, i, entry)
      if (/^(?:could|might)$/u.test(prevLow) || /^(?:also|optionally|instead|alternatively)$/u.test(look(i - 1)))
        reading.alternative = true
    }
  } else if (sentenceStart) {
    // "Resealing the pot, bring it back": only lids are closed this way.
    const closing = low.endsWith('ing') ? gerund(low) : undefined
    if (closing?.frame === 'lid' && closing.code === 'lock') open(reading, i, closing)
  }
  return 0
}

function readMark(reading: Reading, i: number): void {
  const { tokens, look, head } = reading
  const low = look(i)
  if (low === ',') {
    reading.tellingFront &&= !reading.telling
    reading.telling = false
    reading.segment = i + 1
    return
  }
  // "Plate: freekeh, neck, sauce": the list belongs to the verb before the colon.
  const list = low === ':' && (tokens[i + 1]?.kind === 'number' || (head >= 0 && head === i - 1))
  if (!strongMarks.has(low) || list) return
  if (low === ':' && head < 0 && !reading.nominal) reading.start = i + 1
  else close(reading, i + 1)
  reading.telling = false
  reading.tellingFront = false
  reading.conditionNext = false
  reading.condition = false
  reading.segment = i + 1
}

/** "until the onion is soft", "When the timer beeps,": from here on something is told. */
function startTelling(reading: Reading, i: number, prev: number, sentenceStart: boolean): void {
  const { look } = reading
  const prevLow = prev >= 0 ? look(prev) : ''
  reading.telling = true
  reading.told[i] = true
  const joined = conjunctions.has(prevLow) && prevLow !== 'or'
  if (reading.head < 0 || sentenceStart || joined) {
    reading.tellingFront = true
    reading.fronted[i] = true
    if (joined && reading.head >= 0) close(reading, prev + 1)
  }
  if (look(i) === 'if' && reading.tellingFront) {
    reading.conditionNext = true
    reading.condition = true
  }
}

/** "Harissa + cumin in", "HP 7 min": orders of telegraphic style. */
function readVerbless(reading: Reading, i: number): boolean {
  const { look, head, segment, start } = reading
  if (reading.telling) return false
  const opens = i === segment || /^(?:then|and|&)$/u.test(look(i - 1))
  const bare = opens && opensBare(look, i)
  const busy = head >= 0 || reading.nominal !== null
  const found = bare ? 'bare' : head >= segment ? null : verblessAt(reading, i, busy ? segment : start)
  if (!found) return false
  const cut = bare && i > segment ? i : segment
  if (busy || (bare && cut > start)) close(reading, cut)
  reading.nominal = found
  reading.head = i
  reading.verb = null
  return true
}

/** "Pressure cook on high", "stir fry", "slow cook", "quick release". */
function compoundVerb({ look }: Reading, i: number): VerbEntry | null {
  const pair = `${look(i)} ${look(i + 1)}`
  if (/^pressure cook/u.test(pair)) return bareVerb('pressure-cook')!
  if (pair === 'stir fry') return bareVerb('fry')!
  if (pair === 'slow cook') return bareVerb('slow-cook')!
  return /^(?:quick|fast|quickly|rapid|manually) releas/u.test(pair) ? bareVerb('quick-release')! : null
}

function close(reading: Reading, next: number): void {
  const { look, start, head } = reading
  let end = next
  const idiom = (k: number): boolean => look(k) === 'then' && look(k - 1) === 'and' && look(k - 2) === 'now'
  while (end > start && (/^[,;:.!?&+]$/u.test(look(end - 1)) || conjunctions.has(look(end - 1))) && !idiom(end - 1))
    end -= 1
  while (end > start && leadAdverbs.has(look(end - 1)) && end - 1 > head && conjunctions.has(look(end - 2))) end -= 2
  const { verb, nominal, alternative, condition } = reading
  if (end > start) reading.clauses.push({ at: start, next: end, head, verb, nominal, alternative, condition })
  reading.start = next
  reading.head = -1
  reading.verb = null
  reading.nominal = null
  reading.alternative = false
  reading.condition = reading.conditionNext
}

function open(reading: Reading, i: number, entry: VerbEntry): void {
  const { look, start } = reading
  if (
    reading.head < 0 &&
    !reading.nominal &&
    look(i - 1) === ',' &&
    !subordinators.has(look(start)) &&
    !prepositions.has(look(start))
  ) {
    // "frk + stk + salt, seal": what stands before the verb with a plus sign is put in.
    let plus = false
    for (let k = start; k < i; k += 1) if (look(k) === '+') plus = true
    if (plus) {
      reading.head = start
      reading.nominal = 'in'
    }
  }
  if (reading.head >= 0 || reading.nominal) {
    const link = before(reading, i)
    const linked = link >= 0 && (conjunctions.has(look(link)) || look(link) === ',')
    close(reading, Math.max(linked ? link + 1 : i, start))
    reading.alternative = link >= 0 && look(link) === 'or'
  }
  reading.head = i
  reading.verb = entry
  reading.telling = false
  reading.tellingFront = false
}
