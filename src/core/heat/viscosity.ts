import { requireRange } from '../numerics/index.ts'
import { steamTables } from '../steam/index.ts'

/** A constant that no source gives, with the range it may move in. */
export interface AssumedValue {
  readonly value: number
  readonly low: number
  readonly high: number
  readonly unit: string
  readonly source: 'assumed'
  readonly what: string
}

const a = (value: number, low: number, high: number, unit: string, what: string): AssumedValue => ({
  value,
  low,
  high,
  unit,
  source: 'assumed',
  what,
})

/** How liquors thicken. Shares are kg per kg of serum (what is not fat). */
export const viscosityAssumptions = {
  brothFactor: a(1.05, 1, 1.3, '1', 'thin broth over water, for what is dissolved in every liquor'),
  gelatin_per_share: a(39, 30, 50, 'kg/kg', 'growth of ln viscosity with gelatin'),
  sugar_per_share: a(2.2, 2, 2.6, 'kg/kg', 'growth of ln viscosity with sugar, dilute'),
  sugarCrowding: a(0.75, 0.6, 0.9, 'kg/kg', 'how sugar crowds itself: ln viscosity = a s / (1 − b s)'),
  starchPacking: a(0.048, 0.04, 0.06, 'kg/kg', 'share of swollen starch at which its granules touch'),
  starchPower: a(2, 1.6, 2.5, '1', 'power of the distance to that share'),
  starchPasteFactor: a(2300, 1000, 5000, '1', 'paste of 5 % swollen starch over water'),
  starchPastePower: a(3, 2, 4, '1', 'power of starch in a paste'),
  tomatoK_Pas: a(0.449, 0.25, 0.8, 'Pa s^0.43', 'consistency of tomato at 10 % solids and 383 K'),
  tomatoPower: a(2.75, 2.4, 3, '1', 'power of the solids in it'),
  tomatoFlow: a(0.43, 0.4, 0.6, '1', 'power of the shear rate (0.4 in the source, 0.4–0.6 in others)'),
  tomatoActivation_J_per_mol: a(10e3, 6e3, 16e3, 'J/mol', 'fall of the consistency with temperature'),
  lowShear_per_s: a(3, 1, 10, '1/s', 'shear rate of slow convection over the floor'),
  serumMost: a(3, 2, 5, '1', 'most that sugar and gelatin raise the viscosity that boiling feels'),
} as const satisfies Record<string, AssumedValue>

export interface Thickeners {
  readonly gelatin_kg_per_kg?: number
  readonly sugar_kg_per_kg?: number
  /** Starch that has swollen; raw starch does not thicken. */
  readonly starch_kg_per_kg?: number
  /** Solids of puree and paste, reckoned as tomato. */
  readonly suspended_kg_per_kg?: number
}

const v = viscosityAssumptions
// A pot boiled dry ends at a share of 1, but for rounding.
const most = 1 + 1e-9
const gas_J_per_molK = 8.314462618

/** Factor of sugar and gelatin together over water: both stay between the solids and reach a bubble's root. */
function dissolvedFactor(gelatin: number, sugar: number): number {
  requireRange('gelatin', gelatin, 0, most, 'kg/kg')
  requireRange('sugar', sugar, 0, most, 'kg/kg')
  return Math.exp(
    v.gelatin_per_share.value * gelatin + (v.sugar_per_share.value * sugar) / (1 - v.sugarCrowding.value * sugar),
  )
}

/** Factor of swollen starch over the serum: Krieger and Dougherty until the granules touch, then a paste. */
export function starchFactor(starch_kg_per_kg: number): number {
  requireRange('starch', starch_kg_per_kg, 0, most, 'kg/kg')
  const crowding = starch_kg_per_kg / v.starchPacking.value
  const suspension = crowding < 1 ? (1 - crowding) ** -v.starchPower.value : Infinity
  if (crowding < 0.8) return suspension
  return Math.min(suspension, v.starchPasteFactor.value * (starch_kg_per_kg / 0.05) ** v.starchPastePower.value)
}

/**
 * How much sugar and gelatin raise the viscosity that nucleate boiling feels, over water; at most 3, because a
 * bubble's root is fed by water that comes in from all sides. Take the bulk's viscosity here and a puree would read
 * 215 °C.
 */
export function serumViscosityFactor(t: Pick<Thickeners, 'gelatin_kg_per_kg' | 'sugar_kg_per_kg'>): number {
  return Math.min(v.serumMost.value, dissolvedFactor(t.gelatin_kg_per_kg ?? 0, t.sugar_kg_per_kg ?? 0))
}

/**
 * Viscosity that a liquor shows to slow convection.
 *
 * Shape    water × broth × sugar and gelatin × starch, plus tomato's power law K·shear^(n−1)
 * Range    273.15 ≤ temperature_K ≤ 433.15; every share 0–1; 0.01 ≤ shear_per_s ≤ 1000
 * Outside  RangeError; nothing is clamped
 * Error    of the model a factor of 2 up to 10 % gelatin, 60 % sugar, 6 % starch, 30 % tomato solids; beyond, a sign
 *          that it is thick and no more
 * Source   iapws-viscosity-2008, harper-tomato, krieger-dougherty, assumed
 * Check    check/heat/viscosity.csv; grows with every thickener; falls with temperature
 */
export function apparentViscosity_Pas(p: Thickeners & { temperature_K: number; shear_per_s?: number }): number {
  const solids = p.suspended_kg_per_kg ?? 0
  requireRange('suspended solids', solids, 0, most, 'kg/kg')
  const thin =
    steamTables.liquidViscosity_Pas(p.temperature_K) *
    v.brothFactor.value *
    dissolvedFactor(p.gelatin_kg_per_kg ?? 0, p.sugar_kg_per_kg ?? 0) *
    starchFactor(p.starch_kg_per_kg ?? 0)
  if (solids === 0) return thin
  return (
    thin +
    tomatoViscosity_Pas({
      solids_kg_per_kg: solids,
      temperature_K: p.temperature_K,
      shear_per_s: p.shear_per_s ?? v.lowShear_per_s.value,
    })
  )
}

/**
 * Apparent viscosity of tomato by its solids.
 *
 * Shape    K·shear^(n−1), K grows with solids^2.75 and falls with temperature
 * Range    0 ≤ solids_kg_per_kg ≤ 1; 273.15 ≤ temperature_K ≤ 433.15; 0.01 ≤ shear_per_s ≤ 1000
 * Outside  RangeError; nothing is clamped
 * Error    a factor of 2 between crops and breaks
 * Source   harper-tomato, assumed
 * Check    check/heat/viscosity.csv
 */
export function tomatoViscosity_Pas(p: {
  solids_kg_per_kg: number
  temperature_K: number
  shear_per_s: number
}): number {
  requireRange('solids', p.solids_kg_per_kg, 0, most, 'kg/kg')
  requireRange('temperature', p.temperature_K, 273.15, 433.15, 'K')
  requireRange('shear rate', p.shear_per_s, 0.01, 1000, '1/s')
  const warmth = Math.exp((v.tomatoActivation_J_per_mol.value / gas_J_per_molK) * (1 / p.temperature_K - 1 / 383.15))
  const K = v.tomatoK_Pas.value * (p.solids_kg_per_kg / 0.1) ** v.tomatoPower.value * warmth
  return K * p.shear_per_s ** (v.tomatoFlow.value - 1)
}
