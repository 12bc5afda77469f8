import type { Finding, Severity, Span } from '../findings/index.ts'

/** Findings of this room: what was missing and how it was filled in. Codes are stable. */
export const methodCodes = [
  'amount-assumed',
  'food-unknown',
  'unlisted-assumed',
  'to-cover-assumed',
  'size-not-said',
  'time-assumed',
  'level-assumed',
  'release-assumed',
  'oven-assumed',
  'pot-cannot-hold',
  'pot-cannot-bake',
  'gauge-ignored',
  'nothing-to-cook',
] as const
export type MethodCode = (typeof methodCodes)[number]

export function finding(
  code: MethodCode,
  severity: Severity,
  span: Span | null,
  title: string,
  message: string,
  advice: string | null = null,
  source = 'assumed',
): Finding {
  return {
    code,
    severity,
    span: span ? { from: span.from, to: span.to } : null,
    title,
    message,
    source,
    advice,
    cure: null,
  }
}

/** "320 g", "1.2 kg", "2 g". */
export const grams = (mass_kg: number): string =>
  mass_kg >= 1
    ? `${Math.round(mass_kg * 100) / 100} kg`
    : mass_kg >= 0.02
      ? `${Math.round(mass_kg * 1000)} g`
      : `${Math.round(mass_kg * 1e4) / 10} g`
