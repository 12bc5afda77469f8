import type { Token } from './sentences-tokens.ts'
import type { VerbEntry } from './verbs.ts'
import {
  auxiliaries,
  conjunctions,
  determiners,
  leadAdverbs,
  prepositions,
  pronouns,
  strongMarks,
  subordinators,
} from './verbs-words.ts'

// Where in a sentence an order begins. English leaves it to the place and the neighbours whether "brown", "salt" or
// "rest" is a verb; the rules here look at both.

/** One order of a sentence: the verb and everything that belongs to it. Places are token places, half-open. */
export interface Clause {
  readonly at: number
  readonly next: number
  /** Place of the verb; for a clause without verb the word that stands for it ("in", "HP"); -1 when there is none. */
  readonly head: number
  readonly verb: VerbEntry | null
  /** Verbless clauses of telegraphic style: what the word at `head` says. */
  readonly nominal: 'in' | 'out' | 'bare' | null
  /** "or chill for 3 hours": one of two ways. */
  readonly alternative: boolean
  /** "If you like peas, add …". */
  readonly condition: boolean
}

export interface Sight {
  readonly tokens: readonly Token[]
  readonly look: (i: number) => string
  /** Tokens in brackets. */
  readonly aside: readonly boolean[]
}

/** Where a word stands. */
export interface Place {
  readonly i: number
  /** Last token before it that is no adverb and no bracketed aside; -1 for none. */
  readonly prev: number
  readonly prevLow: string
  /** Behind a comma or a conjunction. */
  readonly joins: boolean
  readonly sentenceStart: boolean
}

/** The clause that is open when the word comes. */
export interface OpenClause {
  readonly start: number
  readonly head: number
  readonly verb: VerbEntry | null
  readonly telling: boolean
  readonly tellingFront: boolean
}

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '))
const heatLevels = set('low medium high medium-low medium-high lowest highest gentle moderate fierce brisk slow')
/** Nouns that "brown" is only the colour of. */
const brownThings = set(
  'sugar rice onion onions mustard bits lentil lentils butter stock sauce bread crust gravy ale beer basmati',
)
const seasonings = set('salt pepper oil sugar butter flour cream')
const vessels = set('pot pan skillet saucepan oven bowl wok casserole cooker dish oil butter kettle processor blender')

/** Place of the last token before `i` that is no adverb and no bracketed aside; -1 when the sentence starts here. */
export function before({ tokens, aside }: Sight, i: number): number {
  let k = i - 1
  while (
    k >= 0 &&
    (aside[k] || tokens[k]!.low === ')' || (tokens[k]!.kind === 'word' && leadAdverbs.has(tokens[k]!.low)))
  )
    k -= 1
  return k
}

/** Brackets are asides; an unclosed one is none. */
export function bracketed(tokens: readonly Token[]): boolean[] {
  const aside = new Array<boolean>(tokens.length).fill(false)
  let open = -1
  for (let i = 0; i < tokens.length; i += 1) {
    const low = tokens[i]!.low
    if ((low === '(' || low === '[') && open < 0) open = i
    else if ((low === ')' || low === ']') && open >= 0) {
      aside.fill(true, open, i + 1)
      open = -1
    }
  }
  return aside
}

const opensObject = (token: Token | undefined): boolean =>
  token !== undefined &&
  (token.kind === 'number' || determiners.has(token.low) || pronouns.has(token.low) || token.low === 'half')

/** Does a subordinator at `i` open a told part? "so" and "as" often do not. */
export function tellsMore({ look }: Sight, i: number, prevLow: string, head: number): boolean {
  const low = look(i)
  const next = look(i + 1)
  if (!subordinators.has(low)) return false
  if (low === 'so') return /^(?:that|it|they|the|you)$/u.test(next)
  if (low === 'that') return /(?:ing|s)$/u.test(prevLow)
  if (low === 'once') return !/^(?:halfway|or|every|a|more|again)$/u.test(next)
  if (low === 'as') return !/^(?:per|for|desired|directed|needed|above|low|much|many|possible)$/u.test(next)
  if (low === 'before' || low === 'after') return !(head >= 0 && look(i - 1) === 'day')
  return true
}

/** "in", "back in", "out" at the end of a group without a verb: "Harissa + cumin in". `from` is where the group begins. */
export function verblessAt({ tokens, look }: Sight, i: number, from: number): Clause['nominal'] {
  const low = look(i)
  const ends = i + 1 >= tokens.length || strongMarks.has(look(i + 1)) || look(i + 1) === ','
  if (i === from) return low === 'in' && /^go(?:es)?$/u.test(look(i + 1)) ? 'in' : null
  if (/^(?:lid|heat|burner|gas|flame|valve|oven|cooker|lids)$/u.test(look(i - 1))) return null
  if (low === 'in' && ends) return 'in'
  if (low === 'back' && /^(?:in|to|into)$/u.test(look(i + 1))) return 'in'
  return low === 'out' && ends ? 'out' : null
}

/** Short-hand and fixed phrases that open a group of their own: "HP 7 min", "natural release", "fridge o/n". */
export function opensBare(look: (i: number) => string, i: number): boolean {
  const low = look(i)
  const next = look(i + 1)
  if (/^(?:hp|lp|nr|npr|qr|qpr|fridge|freezer|walk-in)$/u.test(low)) return true
  if (low === 'manual') return /^(?:high|low|mode|,|:)$/u.test(next)
  if (/^(?:natural|quick|fast|rapid)$/u.test(low)) return /^(?:release|pressure|steam)$/u.test(next)
  if (/^(?:high|low|full)$/u.test(low)) return next === 'pressure'
  if (low === 'ice') return next === 'bath'
  return /^(?:o\/n|overnight)$/u.test(low) && /^(?:in|at|fridge|chilled)$/u.test(next)
}

/** Is the verb at a coordinated place an order? */
export function isOrder(sight: Sight, entry: VerbEntry, place: Place, clause: OpenClause): boolean {
  const { look, tokens } = sight
  const { i, prevLow, joins, sentenceStart } = place
  const low = look(i)
  const next = tokens[i + 1]
  if (isSetting(entry, look(i + 1)) || isParticiple(sight, entry, place, clause)) return false
  if (low === 'brown' && brownThings.has(look(i + 1))) return false
  if (low === 'rest' && look(i + 1) === 'of') return false
  if (low === 'time') return next?.kind === 'number'
  if (joins && seasonings.has(low) && !opensObject(next)) return false
  const asNoun = entry.noun === 'often' && joins && !opensObject(next)
  const led = /^(?:top|flavou?r|dish)$/u.test(low) && /^(?:with|up)$/u.test(look(i + 1))
  const ladles = /^(?:spoon|ladle)$/u.test(low) && prepositions.has(look(i + 1))
  if (asNoun && !led && !ladles) return false
  if (clause.telling) {
    const bare = entry.noun === 'never' && next?.kind === 'word' && !auxiliaries.has(next.low)
    return opensObject(next) || low === 'serve' || bare
  }
  if (entry.noun === 'never') return true
  if (entry.noun === 'seldom') return isSeldomOrder(low, next)
  return isOftenOrder(low, next, sentenceStart || (prevLow !== 'and' && !joins))
}

function isSeldomOrder(low: string, next: Token | undefined): boolean {
  if (low === 'heat' && (next?.low === 'to' || next?.low === 'off')) return false
  return !(next?.kind === 'word' && auxiliaries.has(next.low) && next.low !== 'not')
}

/** A word that is mostly a noun wants an object, or begins its sentence: "Salt lamb". */
function isOftenOrder(low: string, next: Token | undefined, start: boolean): boolean {
  if (next && opensObject(next) && next.kind !== 'number') return true
  if (/^(?:top|dish|flavou?r)$/u.test(low)) return next?.low === 'with' || next?.low === 'up'
  if (low === 'spoon' || low === 'ladle') return next !== undefined && (prepositions.has(next.low) || start)
  if (low === 'plate') return start && (next === undefined || /^(?::|up|and)$/u.test(next.low))
  if (!next) return false
  if (/^(?:salt|pepper|spice)$/u.test(low))
    return start && (next.kind === 'word' || conjunctions.has(next.low)) && next.low !== 'in'
  if (low === 'filter') return prepositions.has(next.low)
  return start && next.kind === 'word' && !prepositions.has(next.low) && !conjunctions.has(next.low)
}

/** "S/té high", "sauté, medium": a setting, not an order. */
const isSetting = (entry: VerbEntry, next: string): boolean =>
  entry.frame === 'cook' &&
  entry.code === 'sweat' &&
  /^(?:high|low|medium|med|hi|lo|mode|function|setting)$/u.test(next)

/** "potatoes, cut into cubes" is how they come; "drain, rinse and cut into cubes" is an order. */
function isParticiple({ look }: Sight, entry: VerbEntry, { i, prevLow }: Place, clause: OpenClause): boolean {
  if (entry.lemma !== 'cut' || clause.head < 0 || (prevLow !== ',' && prevLow !== 'both')) return false
  const cuts =
    clause.verb?.code === 'cut' ||
    clause.verb?.code === 'drain' ||
    clause.verb?.frame === 'none' ||
    clause.verb?.frame === 'take'
  return /^(?:in|into|small|large|to)$/u.test(look(i + 1)) && !cuts
}

/** Ends of told parts behind which an order may follow without a comma: "Once melted add your onions". */
const toldEnds =
  /(?:ed|en|done|soft|tender|hot|ready|brown|golden|boiling|smoking|dry|grey|gray|a bit|up|way|here|it|oil)$/u

/** "In a small skillet add 1 Tbsp of oil", "Once melted add your onions": an order without a mark before it. */
export function isOrderInFlow(
  { tokens, look }: Sight,
  entry: VerbEntry,
  { i, prev, prevLow }: Place,
  clause: OpenClause,
): boolean {
  if (clause.head >= 0 || entry.noun === 'often' || prev < 0 || tokens[prev]!.kind !== 'word') return false
  if (isSetting(entry, look(i + 1))) return false
  for (const closed of [determiners, prepositions, auxiliaries, pronouns, heatLevels])
    if (closed.has(prevLow)) return false
  const first = look(clause.start)
  if (!prepositions.has(first) && !clause.tellingFront && !leadAdverbs.has(first)) return false
  const next = tokens[i + 1]
  const loosely = vessels.has(prevLow) && /^(?:down|until|for|over|on|together)$/u.test(look(i + 1))
  if (entry.noun === 'never' ? next?.kind === 'mark' : !opensObject(next) && !loosely) return false
  return !clause.tellingFront || toldEnds.test(prevLow) || entry.frame === 'move'
}

/** "You can add", "you should stir", "you want to brown". */
export function isModalOrder({ look }: Sight, entry: VerbEntry, { prev, prevLow }: Place): boolean {
  const modal = /^(?:can|could|may|should|must|might)$/u.test(prevLow) && /^(?:you|we)$/u.test(look(prev - 1))
  const want = prevLow === 'to' && /^(?:want|need|have|like)$/u.test(look(prev - 1)) && look(prev - 2) === 'you'
  return (modal || want) && entry.code !== null && entry.frame !== 'wait' && look(prev - 2) !== 'as'
}
