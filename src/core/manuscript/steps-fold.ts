import type { Span } from '../findings/index.ts'
import type { RawKind, RawOperation } from './operations-raw.ts'
import { chosenTemperature } from './operations-temperature.ts'
import type { VerbCode } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'
import { isWet, type PotState } from './steps-context.ts'
import type { Draft, Handled } from './steps-draft.ts'
import type { Pantry } from './uses-match.ts'

/** What is carried from sentence to sentence. */
export interface Fold extends PotState {
  readonly pantry: Pantry
  /** Does the manuscript cook under pressure at all? */
  readonly pressed: boolean
  readonly drafts: Draft[]
  sentence: number
  /** "Set to high pressure." said before the hold it is for. */
  pendingPressure: Draft['pressure']
  /** Lid put on in this sentence or the one before, to become a lock when pressure follows. */
  lidOrder: LidOrder | null
  /** Named by orders without an operation since the last draft. */
  handled: Handled[]
  readonly twoVessels: Span[]
  /** Tokens of the sentence before, of the same step. */
  before: readonly Token[]
}

export interface LidOrder {
  readonly raw: RawOperation
  /** Place among the drafts where the lock belongs. */
  readonly at: number
  readonly tokens: readonly Token[]
  readonly step: number
  readonly sentence: number
}

/** One sentence while its operations are taken into the fold. */
export interface Context {
  readonly fold: Fold
  readonly tokens: readonly Token[]
  readonly step: number
  /** Place of the first draft of this sentence. */
  readonly first: number
  readonly operations: RawOperation[]
  readonly meanwhile: boolean
  /** The sentence tells and does not order. */
  readonly tells: boolean
  /** "or chill for 3 hours and serve": from the "or" on everything is the other way. */
  alternative: boolean
}

const under: readonly VerbCode[] = [
  'heat',
  'brown',
  'sweat',
  'fry',
  'bloom',
  'boil',
  'simmer',
  'reduce',
  'thicken',
  'bake',
  'hold',
]
const heatedKinds: ReadonlySet<RawKind> = new Set<RawKind>([...under, 'cook', 'sauté'])

/** Does it take place under heat, so that a heat word or a time that stands apart may be its own? */
export const isHeated = (raw: RawOperation): boolean => heatedKinds.has(raw.kind)

const lastingCodes: readonly VerbCode[] = [
  ...under,
  'release',
  'rest',
  'soak',
  'marinate',
  'chill',
  'pickle',
  'mix',
  'settle',
]
export const lasts: ReadonlySet<VerbCode> = new Set(lastingCodes)

/** Does any word of the clause match? */
export function says({ tokens }: Context, raw: RawOperation, pattern: RegExp): boolean {
  for (let i = raw.clause.at; i < raw.clause.next; i += 1) if (pattern.test(tokens[i]!.low)) return true
  return false
}

const span = (place: Span | null): Span | null => place && { from: place.from, to: place.to }

/** Writes an operation down at the end of the drafts. */
export function draft(context: Context, raw: RawOperation, verb: VerbCode): Draft {
  const made = draftOf(context, raw, verb)
  context.fold.handled = []
  context.fold.drafts.push(made)
  return made
}

export function draftOf(context: Context, raw: RawOperation, verb: VerbCode): Draft {
  const { fold, tokens, step } = context
  const { slots, clause } = raw
  const { time, heat, cue } = slots
  const { batches, each, perSide } = slots.batches
  const temperature = chosenTemperature(slots.temperatures)
  context.alternative ||= clause.alternative
  const restates = context.tells && fold.drafts.some((one) => one.verb === verb && one.sentence < fold.sentence)
  return {
    verb,
    from: raw.from,
    to: raw.to,
    time: time && { low: time.low_s, high: time.high_s },
    timeSpan: span(time),
    raw,
    tokens,
    step,
    sentence: fold.sentence,
    temperature_K: temperature && { low: temperature.low_K, high: temperature.high_K },
    heat: heat?.value ?? null,
    heatSpan: span(heat),
    pressure: null,
    pressureSpan: null,
    release: null,
    releaseTime_s: null,
    cue: cue?.value ?? null,
    cueSpan: span(cue),
    lid: slots.lid,
    scrapes: slots.scrapes || verb === 'deglaze',
    stirs: slots.stirs,
    batches,
    // "in two batches, 6 minutes" is read as 6 minutes each, as most cooks would.
    perBatch: batches !== null && batches > 1 ? each !== false && time !== null : each === true && !perSide,
    perSide,
    reduceTo: slots.reduceTo?.value ?? null,
    place: slots.place,
    aside: restates ? 'restated' : clause.condition ? 'condition' : context.alternative ? 'alternative' : null,
    meanwhile: context.meanwhile,
    handled: fold.handled,
    repeats: null,
  }
}

/** The lid is open again, and nothing is held. */
export function unlock(fold: Fold): void {
  fold.locked = false
  fold.held = false
  fold.lid = null
  fold.pendingPressure = null
}

const boilsOrBakes = /^(?:boil|simmer|bake|rest|reduce|fry|sweat|soak|thicken)$/u

/** What an operation does to the state of the pot, and what the state of the pot adds to it. */
export function settle(fold: Fold, made: Draft): void {
  const { verb, raw } = made
  const { mentions } = raw.slots
  const found = mentions.flatMap((mention) => [...mention.found])
  if (found.length > 0 && verb !== 'lift' && verb !== 'serve') fold.lastAdded = found
  settleLiquid(fold, made, found)
  if (/^(?:add|mix|deglaze|thicken|lift|strain|heat)$/u.test(verb) || made.place === 'fridge' || made.place === 'bowl')
    fold.lid = null
  if (/^(?:brown|sweat|fry|bloom)$/u.test(verb)) fold.oven = false
  // What simmers under a lid is not yet locked in.
  if (/^(?:boil|simmer)$/u.test(verb) && made.time) fold.lidOrder = null
  if (raw.slots.lid) fold.lid = raw.slots.lid
  const inPot = made.place === null || made.place === 'oven' || made.place === 'pot'
  if (inPot && boilsOrBakes.test(verb)) made.lid ??= fold.lid
}

function settleLiquid(fold: Fold, made: Draft, found: readonly number[]): void {
  const { verb, raw } = made
  const { mentions } = raw.slots
  if (/^(?:add|mix|deglaze|thicken)$/u.test(verb)) {
    if (made.place !== 'bowl' && (isWet(mentions, fold.pantry) || goesIntoLiquid(made))) fold.wet = true
  } else if (/^(?:brown|sweat|fry|bloom)$/u.test(verb)) {
    const objects = mentions.filter((mention) => !/^(?:in|with)$/u.test(made.tokens[mention.at - 1]?.low ?? ''))
    fold.wet = isWet(objects, fold.pantry)
  } else if (verb === 'boil' || verb === 'simmer') fold.wet = true
  else if (verb === 'drain' || (verb === 'reduce' && made.reduceTo?.share === 0)) fold.wet = false
  else if (verb === 'heat') {
    // Fat is heated in a dry pot.
    const fat = found.length > 0 && found.every((index) => fold.pantry.known[index]!.character === 'fat')
    if (fat || made.place === 'pan') fold.wet = false
  }
}

/** "to the sauce", "into the soup" */
function goesIntoLiquid({ raw, tokens }: Draft): boolean {
  for (let i = raw.clause.head + 1; i + 1 < raw.clause.next; i += 1) {
    if (!/^(?:to|into)$/u.test(tokens[i]!.low)) continue
    if (/^(?:sauce|soup|stew|gravy|liquid|juices|broth|curry)$/u.test(tokens[i + 2]?.low ?? '')) return true
  }
  return false
}
