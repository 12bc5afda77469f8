import { requireRange } from '../numerics/index.ts'
import { arrheniusRate_per_s, type Spread } from './kinetics.ts'
import { rateTable } from './rate-table.ts'

// Firmness of plants: two first-order mechanisms side by side. 80–97 % of it goes fast, the rest 30–170 times slower;
// without the second a carrot would vanish.

export type Tissue = 'carrot' | 'potato' | 'onion' | 'fibrous' | 'bean'

export interface TissueKinetics {
  /** Rate of the fast mechanism at 100 °C, 1/s. */
  readonly at100_per_s: Spread
  readonly activation_J_per_mol: Spread
  readonly source: string
  readonly basis: string
}

const spread = (value: number, low: number, high: number, unit: number): Spread => ({
  value: value * unit,
  low: low * unit,
  high: high * unit,
})

export const tissues: Readonly<Record<Tissue, TissueKinetics>> = {
  carrot: {
    at100_per_s: spread(0.1, 0.05, 0.22, 1 / 60),
    activation_J_per_mol: spread(117, 92, 159, 1e3),
    source: 'texture-review',
    basis: 'geometric mean and median of nine first-order and fractional values',
  },
  potato: {
    at100_per_s: spread(0.26, 0.15, 0.4, 1 / 60),
    activation_J_per_mol: spread(63, 31, 100, 1e3),
    source: 'potato-hiroshima',
    basis: 'one paper, exponent of its pre-factor corrected: low confidence',
  },
  onion: {
    at100_per_s: spread(0.15, 0.08, 0.25, 1 / 60),
    activation_J_per_mol: spread(71, 55, 100, 1e3),
    source: 'texture-review',
    basis: 'no onion found: cabbage as proxy',
  },
  fibrous: {
    at100_per_s: spread(0.09, 0.06, 0.15, 1 / 60),
    activation_J_per_mol: spread(92, 71, 103, 1e3),
    source: 'texture-review',
    basis: 'between asparagus butt and cabbage: proxy for fennel, celery, leek',
  },
  bean: {
    at100_per_s: spread(0.023, 0.015, 0.04, 1 / 60),
    activation_J_per_mol: spread(131, 104, 163, 1e3),
    source: 'silva-beans',
    basis: 'soaked dry beans; activation energy confirmed by van-loey. Easy- and hard-to-cook lots differ more',
  },
}

/** Share of the firmness that goes fast, and how many times slower the rest goes. */
export const fastShare: Spread = { value: 0.9, low: 0.8, high: 0.97 }
export const slowTimes: Spread = { value: 71, low: 30, high: 170 }

/** Rate for any constants: for kitchens and calibration. One table serves one set of constants. */
export function plantTable(c: {
  at100_per_s: number
  activation_J_per_mol: number
}): (temperature_K: number) => number {
  return rateTable((temperature_K) =>
    arrheniusRate_per_s({
      reference_per_s: c.at100_per_s,
      reference_K: 373.15,
      activation_J_per_mol: c.activation_J_per_mol,
      temperature_K,
    }),
  )
}

const tables = Object.fromEntries(
  (Object.keys(tissues) as Tissue[]).map((tissue) => [
    tissue,
    plantTable({
      at100_per_s: tissues[tissue].at100_per_s.value,
      activation_J_per_mol: tissues[tissue].activation_J_per_mol.value,
    }),
  ]),
) as Record<Tissue, (temperature_K: number) => number>

/**
 * Rate of the fast mechanism by which a plant tissue softens.
 *
 * Shape    first order, Arrhenius from 100 °C, read from a table of 0.1 K
 * Range    203.15 ≤ temperature_K ≤ 473.15; measured between 70 and 121 °C
 * Outside  RangeError; nothing is clamped
 * Error    a factor of 2 between varieties; see `tissues`; of the table 2e-5 at 100 °C, 6e-5 at 0 °C
 * Source   texture-review, silva-beans, potato-hiroshima
 * Check    check/doneness/beans.csv; check/doneness/tissues.csv
 */
export function plantRate_per_s(temperature_K: number, tissue: Tissue): number {
  return tables[tissue](temperature_K)
}

/** Firmness left of raw, 0..1, after an exposure: the integral of the fast mechanism's rate. */
export function plantFirmness(exposure: number, fast = fastShare.value, times = slowTimes.value): number {
  return fast * Math.exp(-exposure) + (1 - fast) * Math.exp(-exposure / times)
}

/** Firmness for the firmest and the softest lot of the band. */
export function plantBand(exposure: number, tissue: Tissue): readonly [low: number, high: number] {
  const { value, low, high } = tissues[tissue].at100_per_s
  return [plantFirmness((exposure * high) / value), plantFirmness((exposure * low) / value)]
}

/**
 * How much faster tissue softens in an acid or alkaline liquor than at pH 6: 0.35 at 4, 2 at 8. Common practice and one
 * finding (soda halves the time of beans); the curve between is assumed. RangeError outside pH 2–10.
 */
export function acidPace(pH: number): number {
  requireRange('pH', pH, 2, 10, '1')
  if (pH < 6) return 0.35 ** ((6 - Math.max(pH, 3)) / 2)
  return 2 ** ((Math.min(pH, 9) - 6) / 2)
}

export type PlantWord = 'raw' | 'crisp' | 'tender' | 'soft' | 'gone'

/** A word and the share of the way (firmness lost, or collagen turned) from which it holds. */
export interface WordFrom<Word extends string> {
  readonly from: number
  readonly word: Word
}

const scale = (crisp: number, tender: number, soft: number, gone: number): readonly WordFrom<PlantWord>[] => [
  { from: 0, word: 'raw' },
  { from: crisp, word: 'crisp' },
  { from: tender, word: 'tender' },
  { from: soft, word: 'soft' },
  { from: gone, word: 'gone' },
]

// Assumed. A carrot is tender after 11 to 29 min at 100 °C, gone after three quarters of an hour at 117 °C; beans keep
// their skins, and what would be tender in a carrot is still a hard bean: theirs is 70 to 130 min at 100 °C.
const plantScale = scale(0.25, 0.6, 0.85, 0.92)
const beanScale = scale(0.25, 0.72, 0.86, 0.93)

/** The words along the loss of firmness, each with the share lost from which it holds. */
export function plantWords(tissue?: Tissue): readonly WordFrom<PlantWord>[] {
  return tissue === 'bean' ? beanScale : plantScale
}

/** The word for a firmness left. */
export function plantWord(firmness: number, tissue?: Tissue): PlantWord {
  const lost = 1 - firmness
  let word: PlantWord = 'raw'
  for (const step of plantWords(tissue)) if (lost >= step.from) word = step.word
  return word
}
