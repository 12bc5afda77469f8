import type { Cure, Finding, Severity, Span } from '../findings/index.ts'
import type { Layout } from './layout.ts'
import type { Ingredient, Recipe } from './recipe.ts'
import type { Draft } from './steps-draft.ts'
import type { Touches } from './uses.ts'
import type { Pantry } from './uses-match.ts'

/** What the rules look at: the manuscript as laid out and as understood. */
export interface Understood {
  readonly text: string
  readonly reading: string
  readonly layout: Layout
  readonly kind: Recipe['kind']
  readonly ingredients: readonly Ingredient[]
  readonly pantry: Pantry
  readonly drafts: readonly Draft[]
  readonly touches: Touches
  /** Does it cook under pressure? */
  readonly pressed: boolean
  /** "Cover it": the places where "it" may be one of two vessels. */
  readonly twoVessels: readonly Span[]
}

export interface Query {
  readonly code: string
  readonly severity: Severity
  readonly span: Span | null
  readonly title: string
  readonly message: string
  readonly advice?: string
  readonly source?: string
  readonly cure?: Cure
}

/** A query in the shape of a finding. */
export function finding(query: Query): Finding {
  return {
    code: query.code,
    severity: query.severity,
    span: query.span && { from: query.span.from, to: query.span.to },
    title: query.title,
    message: query.message,
    source: query.source ?? 'the words',
    advice: query.advice ?? null,
    cure: query.cure ?? null,
  }
}

/** The span of a list in order of place that holds another span; undefined for none. */
export function containing<T extends Span>(spans: readonly T[], span: Span): T | undefined {
  let low = 0
  let high = spans.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (spans[middle]!.from <= span.from) low = middle + 1
    else high = middle
  }
  const found = spans[low - 1]
  return found && span.to <= found.to ? found : undefined
}

export const wordsAt = (text: string, span: Span): string => text.slice(span.from, span.to).replace(/\s+/gu, ' ')

const tidy = (value: number, digits: number): string => String(Number(value.toFixed(digits)))

/** "1 hour 35 minutes", "12 minutes", "30 seconds". */
export function timeWords(time_s: number): string {
  if (time_s < 60) return `${tidy(time_s, 0)} seconds`
  const minutes = Math.round(time_s / 60)
  const hours = Math.floor(minutes / 60)
  const rest = minutes % 60
  const parts = []
  if (hours > 0) parts.push(hours === 1 ? '1 hour' : `${hours} hours`)
  if (rest > 0) parts.push(rest === 1 ? '1 minute' : `${rest} minutes`)
  return parts.join(' ')
}

/** An amount for people: no more figures than a kitchen needs. */
export const figure = (value: number): string =>
  value >= 100 ? tidy(value, 0) : value >= 10 ? tidy(value, 1) : tidy(value, 2)
