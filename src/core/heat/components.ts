import { requireRange } from '../numerics/index.ts'

/** The substances whose properties are known; a food is a mixture of them. */
export type Component = 'water' | 'ice' | 'protein' | 'fat' | 'carbohydrate' | 'fibre' | 'ash' | 'alcohol'

export interface ComponentProperties {
  readonly k_W_per_mK: number
  readonly rho_kg_per_m3: number
  readonly cp_J_per_kgK: number
}

type Polynomial = readonly [number, number, number]

// Tables 1 and 2 of Choi & Okos as printed by ASHRAE: k in W/(m K), rho in kg/m3, cp in kJ/(kg K), t in °C.
// Water's heat capacity starts from 4.1762, not from the 4.1289 that stands in one edition: that is 1.3 % low.
// Alcohol is not theirs: ethanol, handbook values from memory.
const table: Record<Component, { k: Polynomial; rho: Polynomial; cp: Polynomial }> = {
  water: {
    k: [5.7109e-1, 1.7625e-3, -6.7036e-6],
    rho: [997.18, 3.1439e-3, -3.7574e-3],
    cp: [4.1762, -9.0864e-5, 5.4731e-6],
  },
  ice: { k: [2.2196, -6.2489e-3, 1.0154e-4], rho: [916.89, -0.13071, 0], cp: [2.0623, 6.0769e-3, 0] },
  protein: {
    k: [1.7881e-1, 1.1958e-3, -2.7178e-6],
    rho: [1329.9, -0.5184, 0],
    cp: [2.0082, 1.2089e-3, -1.3129e-6],
  },
  fat: { k: [1.8071e-1, -2.7604e-4, -1.7749e-7], rho: [925.59, -0.41757, 0], cp: [1.9842, 1.4733e-3, -4.8008e-6] },
  carbohydrate: {
    k: [2.0141e-1, 1.3874e-3, -4.3312e-6],
    rho: [1599.1, -0.31046, 0],
    cp: [1.5488, 1.9625e-3, -5.9399e-6],
  },
  fibre: { k: [1.8331e-1, 1.2497e-3, -3.1683e-6], rho: [1311.5, -0.36589, 0], cp: [1.8459, 1.8306e-3, -4.6509e-6] },
  ash: { k: [3.2962e-1, 1.4011e-3, -2.9069e-6], rho: [2423.8, -0.28063, 0], cp: [1.0926, 1.8896e-3, -3.6817e-6] },
  alcohol: { k: [0.173, -2.7e-4, 0], rho: [806, -0.86, 0], cp: [2.3, 6e-3, 0] },
}

/** Water that has not frozen below 0 °C has a heat capacity of its own. */
const supercooledWater: Polynomial = [4.0817, -5.3062e-3, 9.9516e-4]

const at = ([a, b, c]: Polynomial, t: number) => a + t * (b + t * c)

/**
 * Conductivity, density and heat capacity of one substance; RangeError outside 233.15–423.15 K (−40…150 °C).
 * Water below 0 °C is supercooled; ice above 0 °C is refused.
 */
export function componentProperties(component: Component, temperature_K: number): ComponentProperties {
  requireRange('temperature', temperature_K, 233.15, component === 'ice' ? 273.15 : 423.15, 'K')
  const t = temperature_K - 273.15
  const row = table[component]
  const cp = component === 'water' && t < 0 ? supercooledWater : row.cp
  return { k_W_per_mK: at(row.k, t), rho_kg_per_m3: at(row.rho, t), cp_J_per_kgK: at(cp, t) * 1e3 }
}
