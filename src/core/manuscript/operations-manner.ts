import { volumeOfUnit_m3 } from '../units/index.ts'
import { amountNumber } from './amount-number.ts'
import { unitAt } from './amount-units.ts'
import type { Said } from './operations-heat.ts'
import type { Operation } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'
import { readNumber, shareWord } from './times-numbers.ts'

// How an operation goes on: lid, stirring, scraping, batches, sides, how far to boil down, where, what to look for.

const wordAt = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

export type Lid = 'on' | 'off' | 'ajar'

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '))
const lidWords = set('ajar askew half-covered uncovered lidless uncov covered lid')

/** Lid words that say how it lies, apart from verbs: "covered", "lid off", "without the lid", "partially covered". */
export function readLid(tokens: readonly Token[], at: number, next: number, skip: readonly boolean[]): Lid | null {
  for (let i = at; i < next; i += 1) {
    const low = wordAt(tokens, i)
    if (!lidWords.has(low) || skip[i]) continue
    const before = wordAt(tokens, i - 1)
    const after = wordAt(tokens, i + 1)
    if (low === 'ajar' || low === 'askew' || low === 'half-covered') return 'ajar'
    if (low === 'uncovered' || low === 'lidless' || low === 'uncov') return 'off'
    if (
      low === 'covered' &&
      !/^(?:is|are|was|until|just|barely|be)$/u.test(before) &&
      !/^(?:with|by|in)$/u.test(after)
    ) {
      return /^(?:partially|partly|half|slightly|loosely)$/u.test(before) ? 'ajar' : 'on'
    }
    if (low === 'lid') {
      const before2 = wordAt(tokens, i - 2)
      if (before === 'without' || before2 === 'without') return 'off'
      if (after === 'off') return 'off'
      if (after === 'on' || (after === 'back' && wordAt(tokens, i + 2) === 'on')) return 'on'
      if (
        after === 'ajar' ||
        after === 'askew' ||
        (after === 'slightly' && /^(?:ajar|open)$/u.test(wordAt(tokens, i + 2)))
      )
        return 'ajar'
      if (/^(?:on|off)$/u.test(before2) && /^(?:the|its|your)$/u.test(before) && i - 2 > at) {
        if (/^(?:take|lift|with|leave)$/u.test(wordAt(tokens, i - 3)) || before2 === 'on') return before2 as Lid
      }
    }
  }
  return null
}

/** "stirring often", "while stirring"; not "without stirring", not "do not stir". */
export function readStirs(tokens: readonly Token[], at: number, next: number): boolean {
  for (let i = at; i < next; i += 1) {
    const low = wordAt(tokens, i)
    if (low !== 'stirring' && low !== 'whisking' && low !== 'tossing') continue
    const before = wordAt(tokens, i - 1)
    if (before === 'without' || before === 'not' || before === 'no') continue
    // "stirring in the cream" is an addition.
    if (/^(?:in|into)$/u.test(wordAt(tokens, i + 1))) continue
    return true
  }
  return false
}

const scrapers = set('scraping loosening scrape dislodging lifting deglazing dislodge loosen release')
const fondWords = /^(?:bits|bottom|base|browned|stuck|fond|sediment|residue|film|crust)$/u

/** "scraping up the browned bits". */
export function readScrapes(tokens: readonly Token[], at: number, next: number): boolean {
  for (let i = at; i < next; i += 1) {
    const low = wordAt(tokens, i)
    if (!scrapers.has(low)) continue
    for (let k = i + 1; k < Math.min(next, i + 9); k += 1) if (fondWords.test(wordAt(tokens, k))) return true
  }
  return false
}

const batchWords = set(
  'batch batches goes lots rounds instalments loads each ea apiece all total altogether side sides',
)

export interface Batches {
  readonly batches: number | null
  /** What the words say: true "per batch", false "in all", null nothing. */
  readonly each: boolean | null
  /** The time stands for one side: "4 minutes a side". */
  readonly perSide: boolean
}

export function readBatches(tokens: readonly Token[], at: number, next: number): Batches {
  let batches: number | null = null
  let each: boolean | null = null
  let perSide = false
  for (let i = at; i < next; i += 1) {
    const low = wordAt(tokens, i)
    if (!batchWords.has(low)) continue
    const before = wordAt(tokens, i - 1)
    if (/^(?:batch|batches|goes|lots|rounds|instalments|loads)$/u.test(low)) {
      const ranged = /^(?:or|to|-)$/u.test(wordAt(tokens, i - 2)) ? readNumber(tokens, i - 3) : null
      const number =
        ranged ??
        readNumber(tokens, i - 1) ??
        (wordAt(tokens, i - 1).match(/^(?:small|separate|equal|even)$/u) ? readNumber(tokens, i - 2) : null)
      const said = number && number.low !== null && Number.isInteger(number.low) ? number.low : null
      if (low !== 'batch' && said !== null && said > 1 && said <= 20) batches = said
      if (/^(?:per|each|a|every|\/)$/u.test(before) && low === 'batch') {
        const before2 = wordAt(tokens, i - 2)
        // "for each batch", "a batch" behind a time; not "brown a batch".
        if (before !== 'a' || /^(?:min|mins|minutes|minute|sec|secs|seconds|\.)$/u.test(before2)) each = true
      }
    } else if (low === 'each' || low === 'ea' || low === 'apiece') {
      if (/^(?:min|mins|minutes|minute|\.)$/u.test(before) && !/^side/u.test(wordAt(tokens, i + 1))) each = each ?? true
    } else if (/^(?:all|total)$/u.test(low) && before === 'in') {
      each = false
    } else if (low === 'altogether') {
      each = false
    }
    if ((low === 'side' || low === 'sides') && /^(?:per|a|each|every|\/)$/u.test(before)) perSide = true
  }
  return { batches, each, perSide }
}

const reducers = set(
  'reduce reduced reduces reducing down boil boiled evaporate evaporated evaporates concentrated simmer',
)

/** "by half" leaves 0.5, "by two-thirds" leaves a third, "to about 300 ml", "to 3 cups", "to half its volume", "boil away completely". */
export function readReduceTo(
  text: string,
  tokens: readonly Token[],
  at: number,
  next: number,
): Said<NonNullable<Operation['reduceTo']>> | null {
  let on = false
  for (let i = at; i < next; i += 1) {
    const low = wordAt(tokens, i)
    if (!on && reducers.has(low)) on = true
    if (!on) continue
    if (low === 'away' || low === 'evaporates' || low === 'evaporated' || low === 'gone') {
      if (low === 'away' && !/^(?:boil|boils|boiled|cook|bubble|simmer|all|it)$/u.test(wordAt(tokens, i - 1))) continue
      if (
        low === 'gone' ||
        /^(?:completely|entirely|all)$/u.test(wordAt(tokens, i + 1)) ||
        /^(?:all|completely|fully|liquid|wine|juices)$/u.test(wordAt(tokens, i - 1)) ||
        low === 'away'
      ) {
        return { value: { share: 0, volume_m3: null }, from: tokens[i]!.from, to: tokens[i]!.to }
      }
    }
    if (low !== 'by' && low !== 'to') continue
    let k = i + 1
    while (
      /^(?:about|around|roughly|approximately|nearly|almost|approx|abt|~|at|least|\.)$/u.test(wordAt(tokens, k)) &&
      k < i + 4
    )
      k += 1
    const number = amountNumber(tokens, k) ?? readNumber(tokens, k)
    const value = number?.low ?? null
    if (number && value !== null) {
      const high = number.high ?? value
      const unit = unitAt(text, tokens, number.next)
      if (unit?.kind === 'volume' && unit.code && low === 'to') {
        const unit_m3 = volumeOfUnit_m3(unit.code)
        if (unit_m3 !== null) {
          const volume_m3 = ((value + high) / 2) * unit.factor * unit_m3
          return { value: { share: null, volume_m3 }, from: tokens[i]!.from, to: tokens[unit.next - 1]!.to }
        }
      }
      const fraction =
        value < 1 &&
        (tokens[k]!.kind === 'number' ||
          shareWord(wordAt(tokens, k)) !== undefined ||
          /^(?:a|one|two|three)$/u.test(wordAt(tokens, k)))
      if (fraction) {
        const share = low === 'by' ? 1 - value : value
        return { value: { share, volume_m3: null }, from: tokens[i]!.from, to: tokens[number.next - 1]!.to }
      }
      if (tokens[k]!.kind === 'number' && wordAt(tokens, k + 1) === '%') {
        const share = low === 'by' ? 1 - value / 100 : value / 100
        if (share > 0 && share < 1)
          return { value: { share, volume_m3: null }, from: tokens[i]!.from, to: tokens[k + 1]!.to }
      }
    }
  }
  return null
}

const untils = set("until till untill 'til til")

/** "until deep golden", "to nappe": the cue that ends an operation, as written. */
export function readCue(
  text: string,
  tokens: readonly Token[],
  at: number,
  next: number,
  told: readonly boolean[],
  fronted: readonly boolean[],
): Said<string> | null {
  for (let i = at; i < next; i += 1) {
    const low = wordAt(tokens, i)
    if (fronted[i]) continue
    if (untils.has(low)) {
      let end = i + 1
      while (
        end < next &&
        (told[end] || tokens[end]!.kind === 'mark') &&
        !/^[.;:!?—(]$/u.test(wordAt(tokens, end)) &&
        wordAt(tokens, end) !== ',' &&
        !(wordAt(tokens, end) === '-' && !tokens[end]!.joined)
      )
        end += 1
      // "or until" joins on: "until soft or until golden" is one cue.
      if (end > i + 1)
        return {
          value: text.slice(tokens[i]!.from, tokens[end - 1]!.to),
          from: tokens[i]!.from,
          to: tokens[end - 1]!.to,
        }
    }
    if (low === 'nappe' || low === 'nappé') {
      const from = /^(?:a|to)$/u.test(wordAt(tokens, i - 1)) ? i - 1 : i
      return { value: text.slice(tokens[from]!.from, tokens[i]!.to), from: tokens[from]!.from, to: tokens[i]!.to }
    }
  }
  return null
}

const bowls = /^(?:bowl|bowls|jug|basin|jar|bag|blender|processor|mixer|dish|measuring|grinder|beaker|mortar)$/u
const pans = /^(?:skillet|frying-pan|frypan|wok|griddle)$/u
const fridges = /^(?:fridge|refrigerator|freezer|walk-in|icebox|cooler|larder|ice)$/u

const places = set(
  'oven broiler grill salamander fridge refrigerator freezer walk-in icebox cooler larder ice bowl bowls jug basin jar bag blender processor mixer ' +
    'dish measuring grinder beaker mortar skillet frying-pan frypan wok griddle pan saucepan rack trivet basket',
)

export type PlaceWord = Operation['place']

/** Where it happens, by the vessel words of the clause; a pot is the main vessel and needs no word. */
export function readPlace(tokens: readonly Token[], at: number, next: number, skip: readonly boolean[]): PlaceWord {
  for (let i = at; i < next; i += 1) {
    const low = wordAt(tokens, i)
    if (!places.has(low) || skip[i]) continue
    if (low === 'oven' && !/^(?:dutch|french)$/u.test(wordAt(tokens, i - 1)) && !/^dish$/u.test(wordAt(tokens, i + 1)))
      return 'oven'
    if (/^(?:broiler|grill|salamander)$/u.test(low) && /^(?:the|a|under|hot)$/u.test(wordAt(tokens, i - 1)))
      return 'oven'
    if (fridges.test(low)) return low === 'ice' && !/^bath$/u.test(wordAt(tokens, i + 1)) ? null : 'fridge'
    const led =
      /^(?:in|into|onto|to|the|a|an|large|small|medium|heatproof|another|separate|mixing|food|deep|clean|pudding|second|same|frying|saute|sauté|wide|heavy|nonstick|non-stick|hot|dry)$/u.test(
        wordAt(tokens, i - 1),
      )
    if (!led) continue
    if (bowls.test(low)) return 'bowl'
    if (pans.test(low)) return 'pan'
    if (
      low === 'pan' &&
      /^(?:frying|saute|sauté|small|separate|another|second|nonstick|non-stick|dry|sauce)$/u.test(wordAt(tokens, i - 1))
    )
      return 'pan'
    if (low === 'saucepan' && /^(?:small|separate|another|second)$/u.test(wordAt(tokens, i - 1))) return 'pan'
    if (low === 'rack' || low === 'trivet' || low === 'basket') {
      if (/^(?:on|onto|in)$/u.test(wordAt(tokens, i - 2))) return 'rack'
    }
  }
  return null
}
