import { requireRange } from '../numerics/index.ts'
import { type Component, componentProperties } from './components.ts'

/** Mass fractions of a food. They have to sum to 1 within 2 % and are scaled to 1. Ice counts beside water. */
export interface Fractions {
  readonly water: number
  readonly protein: number
  readonly fat: number
  readonly carbohydrate: number
  readonly fibre: number
  readonly ash: number
  readonly alcohol?: number
  readonly ice?: number
}

export interface ThermalProperties {
  /** Recommended conductivity, see `levy`. */
  readonly k_W_per_mK: number
  /** Upper bound: heat runs along the layers. */
  readonly kParallel_W_per_mK: number
  /** Lower bound: heat crosses the layers. */
  readonly kPerpendicular_W_per_mK: number
  readonly rho_kg_per_m3: number
  readonly cp_J_per_kgK: number
  readonly alpha_m2_per_s: number
}

const order = [
  'water',
  'protein',
  'fat',
  'carbohydrate',
  'fibre',
  'ash',
  'alcohol',
  'ice',
] as const satisfies Component[]

/** What the fractions sum to, or a RangeError that prints it: every function here scales by it. */
function sumOf(f: Fractions): number {
  let sum = 0
  for (const component of order) {
    const share = f[component] ?? 0
    requireRange(component, share, 0, 1.02, 'kg/kg')
    sum += share
  }
  // Tables print to a tenth of a per cent and salt may be counted twice: a little slack, no more.
  requireRange('sum of the fractions', sum, 0.98, 1.02, 'kg/kg')
  return sum
}

/**
 * Conductivity of a mixture of two phases after Levy: the Maxwell–Eucken law with the volume share bent so that it
 * does not matter which phase is called continuous. W/(m K).
 *
 * Why this one: heat does not run along or across neat layers in meat or carrot, and the truth measured for chicken
 * lies between the two bounds, nearer the upper. Maxwell–Eucken alone needs to be told which phase is continuous and
 * jumps when fat overtakes water; Levy's law has no such choice. Fresh lamb, offal and fat from −40 to 30 °C are
 * within ±10 % of it.
 */
export function levy(p: { k1_W_per_mK: number; k2_W_per_mK: number; volumeShare2: number }): number {
  const { k1_W_per_mK: k1, k2_W_per_mK: k2, volumeShare2: r2 } = p
  requireRange('volume share', r2, 0, 1, 'm3/m3')
  if (k1 === k2) return k1
  const g = (k1 - k2) ** 2 / ((k1 + k2) ** 2 + (k1 * k2) / 2)
  const a = 2 / g - 1 + 2 * r2
  const f = (a - Math.sqrt(a * a - (8 * r2) / g)) / 2
  return (k1 * (2 * k1 + k2 - 2 * (k1 - k2) * f)) / (2 * k1 + k2 + (k1 - k2) * f)
}

/**
 * Thermal properties of a food from what it consists of, at a temperature in K (233.15–423.15). Densities add by
 * volume without voids, heat capacities by mass. Solids conduct side by side among themselves; with water, then with
 * ice, they follow `levy`. Latent heat is not in cp: see `freezingModel`.
 */
export function thermalProperties(food: Fractions, temperature_K: number): ThermalProperties {
  const sum = sumOf(food)
  // Volume, parallel and serial sums of three phases: liquid, solid, ice. A plain loop, because every load of every
  // simulated kitchen passes here.
  let specificVolume = 0
  let cp_J_per_kgK = 0
  let resistance = 0
  let liquidV = 0
  let liquidKV = 0
  let solidV = 0
  let solidKV = 0
  let iceV = 0
  let iceKV = 0
  for (const component of order) {
    const share = (food[component] ?? 0) / sum
    if (share === 0) continue
    const p = componentProperties(component, temperature_K)
    const v = share / p.rho_kg_per_m3
    const kv = v * p.k_W_per_mK
    specificVolume += v
    cp_J_per_kgK += share * p.cp_J_per_kgK
    resistance += v / p.k_W_per_mK
    if (component === 'ice') {
      iceV += v
      iceKV += kv
    } else if (component === 'water' || component === 'alcohol') {
      liquidV += v
      liquidKV += kv
    } else {
      solidV += v
      solidKV += kv
    }
  }
  const rho_kg_per_m3 = 1 / specificVolume
  const thawedV = liquidV + solidV
  const thawed = joined(liquidV, liquidKV, solidV, solidKV)
  const k_W_per_mK = joined(thawedV, thawed * thawedV, iceV, iceKV)
  return {
    k_W_per_mK,
    kParallel_W_per_mK: (liquidKV + solidKV + iceKV) / specificVolume,
    kPerpendicular_W_per_mK: specificVolume / resistance,
    rho_kg_per_m3,
    cp_J_per_kgK,
    alpha_m2_per_s: k_W_per_mK / (rho_kg_per_m3 * cp_J_per_kgK),
  }
}

/** Levy's conductivity of two phases given by their volume and volume × conductivity; of one alone, its own. */
function joined(v1: number, kv1: number, v2: number, kv2: number): number {
  if (v2 === 0) return v1 === 0 ? 0 : kv1 / v1
  if (v1 === 0) return kv2 / v2
  return levy({ k1_W_per_mK: kv1 / v1, k2_W_per_mK: kv2 / v2, volumeShare2: v2 / (v1 + v2) })
}
