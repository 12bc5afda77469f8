import type { Span } from '../findings/index.ts'
import type { Clause } from './operations-clauses.ts'
import type { Said } from './operations-heat.ts'
import type { Batches, Lid, PlaceWord } from './operations-manner.ts'
import type { SaidTemperature } from './operations-temperature.ts'
import type { HeatWord, Operation, PressureWord, VerbCode } from './recipe.ts'
import type { SaidTime } from './times.ts'
import type { Mention } from './uses-match.ts'
import type { VerbEntry } from './verbs.ts'

/** What the words around a verb say, before it is known what the verb means here. */
export interface Slots {
  readonly time: SaidTime | null
  readonly temperatures: readonly SaidTemperature[]
  readonly heat: Said<HeatWord> | null
  readonly pressure: Said<PressureWord> | null
  readonly cue: Said<string> | null
  readonly lid: Lid | null
  readonly stirs: boolean
  readonly scrapes: boolean
  readonly batches: Batches
  readonly reduceTo: Said<NonNullable<Operation['reduceTo']>> | null
  readonly place: PlaceWord
  readonly mentions: readonly Mention[]
}

/**
 * What an order asks for. Besides the codes of the contract:
 * cook = the pot decides which; set = heat or pressure is set for what comes next; lid, open, off-heat, oven-in,
 * oven-out = a change of the pot without an operation; time = a length of time for what was said before;
 * repeat = the last operations once more; none = an order without an operation.
 */
export type RawKind =
  | VerbCode
  | 'cook'
  | 'sauté'
  | 'set'
  | 'lid'
  | 'open'
  | 'off-heat'
  | 'oven-in'
  | 'oven-out'
  | 'time'
  | 'repeat'
  | 'none'

export interface RawOperation extends Span {
  readonly kind: RawKind
  readonly clause: Clause
  readonly verb: VerbEntry | null
  readonly slots: Slots
  /** Lid after the order, when it moves the lid. */
  readonly lidTo: Lid | null
  /** Release: what the clause says of it. */
  readonly release: 'natural' | 'vented' | 'iced' | null
  /** Tokens of the sentence that are told, not ordered. */
  readonly told: readonly boolean[]
}
