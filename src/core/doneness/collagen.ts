import { type Spread, zRate_per_s } from './kinetics.ts'
import { rateTable } from './rate-table.ts'

// Collagen to gelatin: first order, from kitchen practice. No paper was found that gives a rate constant and an
// activation energy for 90–120 °C: every figure here is a calibration, marked as assumed wherever it is shown. z comes
// from about 60 h at 60 °C against 3 h at 95 °C (27 K) and 2–2.5 h of simmering against 35–45 min at 117 °C (28–31 K).

export type Cut = 'chuck' | 'short-rib' | 'pork-shoulder' | 'lamb-shoulder' | 'chicken-thigh'

const perMinute = (value: number): Spread => ({ value: value / 60, low: (value * 0.8) / 60, high: (value * 1.25) / 60 })

/** Rate at 100 °C, 1/s. The band is the spread between animals and between cooks' ideas of tender. */
export const collagenAt100: Readonly<Record<Cut, Spread>> = {
  chuck: perMinute(0.0127),
  'short-rib': perMinute(0.0115),
  'pork-shoulder': perMinute(0.016),
  'lamb-shoulder': perMinute(0.016),
  'chicken-thigh': perMinute(0.045),
}

export const collagenZ_dK: Spread = { value: 28, low: 26, high: 31 }

const cuts = Object.keys(collagenAt100) as Cut[]

/** Rate for any constants: for kitchens and calibration. One table serves one set of constants. */
export function collagenTable(c: { at100_per_s: number; z_dK: number }): (temperature_K: number) => number {
  return rateTable((temperature_K) =>
    zRate_per_s({ reference_per_s: c.at100_per_s, reference_K: 373.15, z_dK: c.z_dK, temperature_K }),
  )
}

const tables = Object.fromEntries(
  cuts.map((cut) => [cut, collagenTable({ at100_per_s: collagenAt100[cut].value, z_dK: collagenZ_dK.value })]),
) as Record<Cut, (temperature_K: number) => number>

/**
 * Rate at which collagen of a cut turns to gelatin.
 *
 * Shape    first order, 10^((T − 100 °C)/28 K), read from a table of 0.1 K
 * Range    203.15 ≤ temperature_K ≤ 473.15
 * Outside  RangeError; nothing is clamped
 * Error    ±25 % at 100 °C, ±10 K in z; of the table 1e-5
 * Source   assumed
 * Check    check/doneness/collagen.csv
 */
export function collagenRate_per_s(temperature_K: number, cut: Cut): number {
  return tables[cut](temperature_K)
}

/** Share turned to gelatin after an exposure (the integral of the rate). */
export function collagenTurned(exposure: number): number {
  return -Math.expm1(-exposure)
}

/** What a share turned would be for the toughest and the tenderest animal of the band. */
export function collagenBand(turned: number, cut: Cut): readonly [low: number, high: number] {
  const { value, low, high } = collagenAt100[cut]
  // Same history, other rate: the exposure grows in proportion.
  const left = Math.max(0, 1 - turned)
  return [1 - left ** (low / value), 1 - left ** (high / value)]
}

export type MeatWord = 'tough' | 'chewy' | 'tender' | 'falls apart'

/**
 * The words along the turning of collagen at the piece's coldest, each with the share from which it holds. The 70 %
 * line is tight (a tenth less in the rate moves a braise across it): show the band beside it. Assumed.
 */
export const meatWords: readonly { readonly from: number; readonly word: MeatWord }[] = [
  { from: 0, word: 'tough' },
  { from: 0.35, word: 'chewy' },
  { from: 0.7, word: 'tender' },
  { from: 0.9, word: 'falls apart' },
]

/** Share turned from which a cut counts as tender. */
export const tenderFrom = 0.7

/** The word for a share turned. */
export function meatWord(turned: number): MeatWord {
  let word: MeatWord = 'tough'
  for (const step of meatWords) if (turned >= step.from) word = step.word
  return word
}
