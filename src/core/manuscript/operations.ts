import { type Clause, type SplitSentence, splitClauses } from './operations-clauses.ts'
import { lidAfter } from './operations-dial.ts'
import { interpret } from './operations-frames.ts'
import { readHeat, readPressure } from './operations-heat.ts'
import type { Look } from './operations-look.ts'
import { readBatches, readCue, readLid, readPlace, readReduceTo, readScrapes, readStirs } from './operations-manner.ts'
import type { RawOperation, Slots } from './operations-raw.ts'
import { type ReleaseCue, readRelease } from './operations-release.ts'
import { readTemperatures } from './operations-temperature.ts'
import type { Token } from './sentences-tokens.ts'
import { readTimes } from './times.ts'
import { type Mention, type Pantry, readMentions } from './uses-match.ts'
import { bareVerb } from './verbs.ts'

// From the orders of a sentence to what they ask for. Only the sentence is looked at here; the state of the pot is not
// known yet (steps.ts knows it).

export interface ReadSentence {
  readonly split: SplitSentence
  readonly operations: RawOperation[]
}

/** Reads one sentence. */
export function readOperations(text: string, tokens: readonly Token[], pantry: Pantry): ReadSentence {
  const split = splitClauses(tokens)
  const operations = split.clauses.flatMap((clause) => readClause(text, tokens, split, clause, pantry))
  mergeStirring(operations)
  operations.push(...byTheWay(text, tokens, split, operations))
  return { split, operations }
}

function readClause(
  text: string,
  tokens: readonly Token[],
  split: SplitSentence,
  clause: Clause,
  pantry: Pantry,
): RawOperation[] {
  const { verb } = clause
  const slots = slotsOf(text, tokens, split, clause, pantry)
  const base = { ...spanOf(tokens, clause), clause, verb, slots, lidTo: null, release: null, told: split.told }
  const release = readRelease(tokens, clause.at, clause.next, verb?.lemma ?? '', split.fronted)
  if (release) return releases(base, release)
  const look: Look = { tokens, split, clause, slots, verb, head: clause.head, lemma: verb?.lemma ?? '' }
  const kinds = interpret(look)
  return kinds.map((kind, k) => ({
    ...base,
    kind,
    lidTo: kind === 'lid' || kind === 'lock' ? lidAfter(look) : null,
    release: kind === 'release' ? 'vented' : null,
    // "add beef to brown for 5 minutes": the time goes with the last, the food with the first.
    slots: k > 0 ? { ...slots, mentions: [] } : kinds.length > 1 ? { ...slots, time: null, cue: null } : slots,
  }))
}

/** "Cook for 45 minutes on high with natural steam release" is both; "naturally …, before venting" is two releases. */
function releases(base: Omit<RawOperation, 'kind'>, cue: ReleaseCue): RawOperation[] {
  const { verb, slots } = base
  const first = cue.iced ? 'iced' : cue.natural ? 'natural' : 'vented'
  const holds = verb?.lemma === 'pressure-cook' || (verb?.frame === 'cook' && verb.lemma !== 'hold')
  if (holds) {
    const bare = { ...slots, time: null, pressure: null, heat: null, mentions: [], cue: null }
    return [
      { ...base, kind: 'hold' },
      { ...base, slots: bare, kind: 'release', release: first },
    ]
  }
  const release: RawOperation = { ...base, kind: 'release', release: first }
  return cue.natural && cue.vented ? [release, { ...base, kind: 'release', release: 'vented' }] : [release]
}

function slotsOf(text: string, tokens: readonly Token[], split: SplitSentence, clause: Clause, pantry: Pantry): Slots {
  const { at, next, verb } = clause
  const skip = split.fronted
  const times = readTimes(tokens, at, next).filter(
    (time) => !skip[time.at] && !time.every && !time.moment && !time.within,
  )
  return {
    time: times[0] ?? null,
    temperatures: readTemperatures(tokens, at, next),
    heat: readHeat(tokens, at, next, skip),
    pressure: readPressure(tokens, at, next, skip, verb?.lemma === 'pressure-cook'),
    cue: readCue(text, tokens, at, next, split.told, skip),
    lid: readLid(tokens, at, next, skip),
    stirs: readStirs(tokens, at, next),
    scrapes: readScrapes(tokens, at, next),
    batches: readBatches(tokens, at, next),
    reduceTo: readReduceTo(text, tokens, at, next),
    place: readPlace(tokens, at, next, skip),
    mentions: mentionsOf(tokens, split, clause, pantry),
  }
}

/** Told parts name things that are looked at, not handled: "until the onion is soft". */
function mentionsOf(tokens: readonly Token[], split: SplitSentence, clause: Clause, pantry: Pantry): Mention[] {
  const head = clause.verb === null ? -1 : clause.head
  // "cook for 10 minutes, adding the garlic for the last one"
  let joining = clause.head + 1
  while (joining < clause.next && !/^(?:adding|topping|sprinkling|scattering)$/u.test(tokens[joining]!.low))
    joining += 1
  return readMentions(pantry, tokens, clause.at, clause.next, head)
    .filter((mention) => !split.told[mention.at])
    .map((mention) => (mention.at > joining ? { ...mention, late: true } : mention))
}

/** "cook and stir for 5 minutes": the stirring is how, not what. */
function mergeStirring(operations: RawOperation[]): void {
  for (let i = operations.length - 1; i > 0; i -= 1) {
    const stirs = operations[i]!
    const cooks = operations[i - 1]!
    const { time, cue, heat, mentions } = stirs.slots
    if (stirs.verb?.frame !== 'stir' || stirs.kind !== 'mix' || mentions.length > 0 || (!time && !cue)) continue
    if (!/^(?:cook|sauté|fry|simmer|sweat|boil|heat|brown)$/u.test(cooks.kind) || cooks.slots.time || cooks.slots.cue)
      continue
    const slots = { ...cooks.slots, time, cue, stirs: true, heat: cooks.slots.heat ?? heat }
    operations.splice(i - 1, 2, { ...cooks, slots, to: stirs.to })
  }
}

const emptyPantry: Pantry = { known: [], byWord: new Map(), telegraphic: false }

/** "and skimming off any foam", "before ladling out": operations that are only mentioned. */
function byTheWay(
  text: string,
  tokens: readonly Token[],
  split: SplitSentence,
  operations: readonly RawOperation[],
): RawOperation[] {
  const last = operations.at(-1)
  if (!last) return []
  const found: RawOperation[] = []
  const mention = (kind: 'skim' | 'serve', at: number, next: number, head: number): void => {
    if (operations.some((one) => one.kind === kind)) return
    const clause: Clause = { ...last.clause, at, next, head, verb: bareVerb(kind)!, nominal: null }
    const slots = slotsOf(text, tokens, split, clause, emptyPantry)
    found.push({
      ...last,
      kind,
      clause,
      verb: clause.verb,
      slots,
      lidTo: null,
      release: null,
      ...spanOf(tokens, clause),
    })
  }
  const skims = tokens.findIndex((token, i) => token.low === 'skimming' && !split.told[i])
  if (skims >= 0) mention('skim', skims, Math.min(skims + 4, tokens.length), skims)
  const serves = tokens.findIndex(
    (token, i) =>
      token.low === 'before' &&
      !split.fronted[i] &&
      /^(?:serving|ladling|eating|dishing)$/u.test(tokens[i + 1]?.low ?? ''),
  )
  if (serves >= 0) mention('serve', serves, serves + 2, serves + 1)
  return found
}

/** Span of a clause without the marks at its ends. */
function spanOf(tokens: readonly Token[], clause: Clause): { from: number; to: number } {
  let a = clause.at
  let b = clause.next
  if (tokens[a]!.low === '(') {
    // "(Optional) Finish …": the aside in front is not part of the order.
    const close = tokens.findIndex((token, i) => i > a && token.low === ')')
    if (close > 0 && close < b - 1) a = close + 1
  }
  while (a < b - 1 && tokens[a]!.kind === 'mark') a += 1
  while (b > a + 1 && tokens[b - 1]!.kind === 'mark' && !/^[)%"°\]]$/u.test(tokens[b - 1]!.low)) b -= 1
  return { from: tokens[a]!.from, to: tokens[b - 1]!.to }
}
