import type { Span } from '../findings/index.ts'
import { readOperations } from './operations.ts'
import type { RawOperation } from './operations-raw.ts'
import type { VerbCode } from './recipe.ts'
import { splitSentences } from './sentences.ts'
import { type Token, tokenise } from './sentences-tokens.ts'
import { cookedAs } from './steps-context.ts'
import type { Draft } from './steps-draft.ts'
import { type Context, draft, type Fold, isHeated, says, settle, unlock } from './steps-fold.ts'
import { batchesForLast, cook, forwardHeat, repeat, sauté, setHeat, timeForLast } from './steps-heat.ts'
import { comeUp, hold, lock, moveLid, release } from './steps-pressure.ts'
import type { Pantry } from './uses-match.ts'
import { bareVerb, gerund } from './verbs.ts'
import { determiners, leadAdverbs, prepositions, subordinators } from './verbs-words.ts'

// The state of the pot carried through the method: locked, in the oven, wet or dry, lid on or off. It decides what
// "cook for 35 minutes" means.

export interface MethodText {
  /** Plain reading of the manuscript, as long as it. */
  readonly reading: string
  readonly steps: readonly Span[]
  readonly pantry: Pantry
  readonly pressed: boolean
}

export interface Drafted {
  readonly drafts: readonly Draft[]
  /** "Cover it" behind a sentence with two vessels. */
  readonly twoVessels: readonly Span[]
}

/** Openings of sentences that tell how a dish keeps: from there on a step orders nothing. */
const storing =
  /^(?:to (?:store|freeze|reheat|make ahead|serve later|do ahead)\b|make[- ]ahead\b|storage\b|leftovers?\b|keeps\b|freezes\b|reheats?\b|(?:even )?better (?:made|the next|next|if)\b|good for\b|(?:cook's )?notes?\s*:|tips?\s*:|variations?\b|substitutions?\b)/iu

/** Everything the method asks for, in order; what each operation touches is added by uses.ts. */
export function draftOperations({ reading, steps, pantry, pressed }: MethodText): Drafted {
  const fold: Fold = {
    pantry,
    pressed,
    drafts: [],
    sentence: 0,
    locked: false,
    held: false,
    oven: false,
    lid: null,
    wet: false,
    lastAdded: [],
    pendingPressure: null,
    lidOrder: null,
    handled: [],
    twoVessels: [],
    before: [],
  }
  steps.forEach((step, index) => {
    fold.before = []
    for (const sentence of splitSentences(reading, step.from, step.to)) {
      if (storing.test(reading.slice(sentence.from, sentence.from + 24))) break
      const tokens = withoutLabel(reading, tokenise(reading, sentence.from, sentence.to))
      if (tokens.length > 0) readSentence(fold, reading, tokens, index)
      fold.before = tokens
      fold.sentence += 1
    }
  })
  return { drafts: fold.drafts, twoVessels: fold.twoVessels }
}

/** "Release: Let the pressure …", "Marinate the chicken: In a bowl, …": a heading that shares the line. */
function withoutLabel(reading: string, tokens: readonly Token[]): readonly Token[] {
  const colon = tokens.findIndex((token) => token.low === ':')
  const next = tokens[colon + 1]
  if (colon < 1 || colon > 6 || next?.kind !== 'word' || !/\p{Lu}/u.test(reading[next.from]!)) return tokens
  // "Plate: Freekeh, neck" is a list, "Release: Let …" a sentence.
  const { low } = next
  const opens = [prepositions, subordinators, determiners, leadAdverbs].some((closed) => closed.has(low))
  const sentence = opens || bareVerb(low) !== undefined || gerund(low) !== undefined
  return sentence && tokens[colon + 2]?.low !== ',' ? tokens.slice(colon + 1) : tokens
}

function readSentence(fold: Fold, reading: string, tokens: readonly Token[], step: number): void {
  const { split, operations } = readOperations(reading, tokens, fold.pantry)
  if (fold.lidOrder && fold.lidOrder.sentence < fold.sentence - 1) fold.lidOrder = null
  const context: Context = {
    fold,
    tokens,
    step,
    first: fold.drafts.length,
    operations,
    meanwhile: split.meanwhile,
    tells: !split.ordered,
    alternative: false,
  }
  for (let i = 0; i < operations.length; i += 1) take(context, operations[i]!, i)
}

/** Takes one raw operation into the fold. */
function take(context: Context, raw: RawOperation, i: number): void {
  const { fold, tokens } = context
  const { slots, kind } = raw
  switch (kind) {
    case 'none':
      if (slots.mentions.some((mention) => mention.found.length > 0))
        fold.handled.push({ mentions: slots.mentions, tokens })
      if (slots.batches.batches !== null) batchesForLast(fold, slots.batches.batches)
      return
    case 'time':
      if (slots.batches.batches !== null) batchesForLast(fold, slots.batches.batches)
      timeForLast(context, raw)
      return
    case 'lid':
      moveLid(context, raw, i)
      return
    case 'open':
      if (fold.locked) unlock(fold)
      fold.lid = null
      return
    case 'off-heat':
      return
    case 'oven-in':
    case 'oven-out':
      fold.oven = kind === 'oven-in'
      return
    case 'set':
      setHeat(context, raw, i)
      return
    case 'repeat':
      repeat(context, raw)
      return
    case 'lock':
      lock(context, raw)
      return
    case 'hold':
      hold(context, raw)
      return
    case 'release':
      release(context, raw)
      return
    case 'cook':
      cook(context, raw, i)
      return
    case 'sauté':
      sauté(context, raw)
      return
    default:
      takePlain(context, raw, i, kind)
  }
}

/** An operation that means what its verb says. */
function takePlain(context: Context, raw: RawOperation, i: number, kind: VerbCode): void {
  const { fold } = context
  const { slots, verb } = raw
  if (
    kind === 'heat' &&
    (slots.pressure || (verb?.frame !== 'plain' && says(context, raw, /^(?:pressure|psi|hp|lp)$/u)))
  ) {
    comeUp(context, raw)
    return
  }
  // A wait with the lid locked after the hold is the pressure going down by itself.
  if (kind === 'rest' && fold.locked && fold.held && slots.time) {
    const made = draft(context, raw, 'release')
    made.release = 'natural'
    made.releaseTime_s = slots.time.low_s
    return
  }
  if (fold.locked && fold.held && kind !== 'rest' && kind !== 'chill') unlock(fold)
  const last = fold.drafts.at(-1)
  // "scrape, scrape, scrape"
  if (kind === 'deglaze' && last?.verb === 'deglaze' && last.sentence === fold.sentence) {
    last.to = raw.to
    return
  }
  const cooksLater = context.operations.slice(i + 1, i + 8).some((one) => isHeated(one) && one.kind !== 'heat')
  const made = draft(context, raw, asPotStands(context, raw, kind, cooksLater))
  if (kind === 'add' && made.heat && cooksLater && forwardHeat(context, i, slots.heat)) {
    made.heat = null
    made.heatSpan = null
  }
  settle(fold, made)
}

/** "In go the garlic for 1 minute" fries it; "braise for 2 hours" in the oven bakes. */
function asPotStands(context: Context, raw: RawOperation, kind: VerbCode, cooksLater: boolean): VerbCode {
  const { fold } = context
  const { slots, verb } = raw
  if (kind === 'add' && slots.time && !cooksLater) return cookedAs(fold, slots, fold.pantry)
  if (kind === 'bake') fold.oven = true
  const onHob =
    says(context, raw, /^(?:hob|stove|stovetop|burner|stove-top)$/u) ||
    /^(?:boil|simmer|bubble)$/u.test(verb?.lemma ?? '')
  if (/^(?:boil|simmer|reduce)$/u.test(kind) && slots.place === null && onHob) fold.oven = false
  const braises = kind === 'simmer' && verb?.lemma === 'braise' && slots.place === null && !slots.heat
  return braises && fold.oven ? 'bake' : kind
}
