import type { Span } from '../findings/index.ts'
import type { RawOperation } from './operations-raw.ts'
import type { Operation, VerbCode } from './recipe.ts'
import type { Token } from './sentences-tokens.ts'
import type { Mention } from './uses-match.ts'

/** Why an operation stands beside the course of the method. */
export type Aside = NonNullable<Operation['aside']>

export interface Handled {
  readonly mentions: readonly Mention[]
  readonly tokens: readonly Token[]
}

/** An operation while its sentence is read: what it asks for is known, what it touches is not yet. */
export interface Draft {
  verb: VerbCode
  from: number
  to: number
  time: { low: number; high: number } | null
  timeSpan: Span | null
  raw: RawOperation
  tokens: readonly Token[]
  /** Index of the step. */
  step: number
  /** Index of the sentence, counted through the manuscript. */
  sentence: number
  temperature_K: { low: number; high: number } | null
  heat: Operation['heat']
  heatSpan: Span | null
  pressure: Operation['pressure']
  pressureSpan: Span | null
  release: Operation['release']
  releaseTime_s: number | null
  cue: string | null
  cueSpan: Span | null
  lid: Operation['lid']
  scrapes: boolean
  stirs: boolean
  batches: number | null
  perBatch: boolean
  perSide: boolean
  reduceTo: Operation['reduceTo']
  place: Operation['place']
  aside: Aside | null
  meanwhile: boolean
  /** What orders without an operation named since the last operation ("Pat the pork dry"), with their tokens. */
  handled: readonly Handled[]
  /** Copy of an earlier operation ("Repeat with the remaining beef"). */
  repeats: Draft | null
}
