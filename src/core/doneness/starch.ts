import { requireRange } from '../numerics/index.ts'
import { arrheniusRate_per_s } from './kinetics.ts'
import { rateTable } from './rate-table.ts'

export type StarchKind = 'wheat' | 'potato' | 'rice' | 'maize' | 'legume'

/** Where swelling starts and ends in plenty of water, K. From memory of textbooks; legumes about 60 °C, found. */
export const swelling: Readonly<Record<StarchKind, { readonly from_K: number; readonly to_K: number }>> = {
  wheat: { from_K: 325.15, to_K: 336.15 },
  potato: { from_K: 331.15, to_K: 339.15 },
  rice: { from_K: 334.15, to_K: 351.15 },
  maize: { from_K: 335.15, to_K: 345.15 },
  legume: { from_K: 333.15, to_K: 348.15 },
}

/** Most starch that a temperature lets swell, 0..1: a smooth step over the range of its kind. */
export function starchSwells(temperature_K: number, kind: StarchKind): number {
  requireRange('temperature', temperature_K, 203.15, 473.15, 'K')
  const { from_K, to_K } = swelling[kind]
  const x = (temperature_K - from_K) / (to_K - from_K)
  if (x <= 0) return 0
  return x >= 1 ? 1 : x * x * (3 - 2 * x)
}

/** Pace at which granules that may swell do so, 1/s: a minute at most once they are wet and hot. Assumed. */
export const starchSwellRate_per_s = 0.03

/** One step of swelling: the share swollen after a time at a temperature. It never goes back on cooling. */
export function starchStep(p: { swollen: number; temperature_K: number; step_s: number; kind: StarchKind }): number {
  const most = starchSwells(p.temperature_K, p.kind)
  if (most <= p.swollen) return p.swollen
  return most - (most - p.swollen) * Math.exp(-starchSwellRate_per_s * p.step_s)
}

const break_K = 378.15

/** Rate of rice at 100 °C, 1/s: done (90 %) in about 15 min of boiling. Assumed; its activation energies are published. */
export const riceAt100 = { value: 0.15 / 60, low: 0.1 / 60, high: 0.2 / 60 } as const

const rice = rateTable((temperature_K) => {
  const below = (T: number) =>
    arrheniusRate_per_s({
      reference_per_s: riceAt100.value,
      reference_K: 373.15,
      activation_J_per_mol: 71.1e3,
      temperature_K: T,
    })
  if (temperature_K <= break_K) return below(temperature_K)
  return arrheniusRate_per_s({
    reference_per_s: below(break_K),
    reference_K: break_K,
    activation_J_per_mol: 37.7e3,
    temperature_K,
  })
})

/**
 * Rate at which rice cooks through, first order in what is left uncooked.
 *
 * Shape    Arrhenius with 71.1 kJ/mol below 105 °C and 37.7 above, where water's way in becomes the slower part
 * Range    203.15 ≤ temperature_K ≤ 473.15
 * Outside  RangeError; nothing is clamped
 * Error    the level is assumed (15 min of boiling), the break is remembered as 100–110 °C
 * Source   rice-kinetics, assumed
 * Check    check/doneness/starch.csv
 */
export function riceRate_per_s(temperature_K: number): number {
  return rice(temperature_K)
}
