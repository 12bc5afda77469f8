import { apparentViscosity_Pas, boilingCoefficient_W_per_m2K3, serumViscosityFactor } from '../heat/index.ts'
import { linearTable } from '../numerics/index.ts'
import { steamTables as steam } from '../steam/index.ts'
import type { FloorMedium } from './floor.ts'
import { serum_kg } from './liquor.ts'
import { liquorVolume_m3, type Vessel } from './vessel.ts'

const span = { low: 273.2, high: 433, step: 0.2 }

/** Rohsenow's flux of water at 1 K of superheat, by saturation temperature. */
const boilingOfWater = linearTable((T) => boilingCoefficient_W_per_m2K3(T), { low: 300, high: 433, step: 0.2 })

/** Globe-Dropkin's film of water at 1 K difference; Nu ~ Ra^(1/3), so the depth drops out. */
const convectionOfWater = linearTable((T) => {
  const k = steam.liquidConductivity_W_per_mK(T)
  const cp = steam.liquidHeatCapacity_J_per_kgK(T)
  const mu = steam.liquidViscosity_Pas(T)
  const rho = steam.liquidDensity_kg_per_m3(T)
  const beta = Math.max(1e-5, steam.liquidExpansion_per_K(T))
  const prandtl = (cp * mu) / k
  return 0.069 * k * Math.cbrt((9.80665 * beta * rho * rho * cp) / (mu * k)) * prandtl ** 0.074
}, span)

/** Beyond this the viscosity law has no say: a paste so dry no longer flows, and 0.6 already reads as a solid floor. */
const mostSolids = 0.6
const mostStarch = 0.5
const mostSugar = 0.85
const mostGelatin = 0.3

/** Shares of the serum that thicken it, and the viscosity the bulk shows at low shear. */
export function bulkViscosity_Pas(v: Vessel, temperature_K = Math.max(273.2, Math.min(433, v.liquor_K))): number {
  const serum = serum_kg(v.liquor)
  if (!(serum > 0)) return steam.liquidViscosity_Pas(temperature_K)
  return apparentViscosity_Pas({
    temperature_K,
    gelatin_kg_per_kg: Math.min(mostGelatin, v.liquor.gelatin / serum),
    starch_kg_per_kg: Math.min(mostStarch, v.liquor.starchSwollen / serum),
    suspended_kg_per_kg: Math.min(mostSolids, v.liquor.suspended / serum),
    sugar_kg_per_kg: Math.min(mostSugar, v.liquor.sugar / serum),
  })
}

export function floorViscosity_Pas(v: Vessel): number {
  const serum = serum_kg(v.liquor)
  const temperature_K = Math.max(273.2, Math.min(433, v.liquor_K))
  if (!(serum > 0)) return steam.liquidViscosity_Pas(temperature_K)
  const solids = v.liquor.suspended + v.liquor.starchSwollen
  const share = solids > 0 ? v.liquor.starchSwollen / solids : 0
  return apparentViscosity_Pas({
    temperature_K,
    gelatin_kg_per_kg: Math.min(mostGelatin, v.liquor.gelatin / serum),
    starch_kg_per_kg: Math.min(mostStarch, v.floorSolids * share),
    suspended_kg_per_kg: Math.min(mostSolids, v.floorSolids * (1 - share)),
    sugar_kg_per_kg: Math.min(mostSugar, v.liquor.sugar / serum),
  })
}

type Writable<T> = { -readonly [K in keyof T]: T[K] }

/** What the floor meets now: films and boiling for this liquor at this pressure, and for plain water in its place. */
export function meetFloor(
  v: Vessel,
  saturation_K: number,
  out: Writable<FloorMedium>,
  water: Writable<FloorMedium>,
): void {
  const T = Math.min(430, Math.max(274, v.liquor_K))
  const thinner = steam.liquidViscosity_Pas(T)
  const ratio = Math.max(1, floorViscosity_Pas(v) / thinner)
  // Ra^(1/3) Pr^0.074 with the viscosity in both: 1/3 − 0.074.
  out.convection_W_per_m2K = convectionOfWater.inner(T) * ratio ** -0.259
  const depth_m = Math.max(1e-3, liquorVolume_m3(v) / v.card.baseArea_m2)
  out.conduction_W_per_m2K = steam.liquidConductivity_W_per_mK(T) / depth_m
  const serum = serum_kg(v.liquor)
  const factor =
    serum > 0
      ? Math.min(
          v.c.boilViscosityCap,
          serumViscosityFactor({
            gelatin_kg_per_kg: Math.min(mostGelatin, v.liquor.gelatin / serum),
            sugar_kg_per_kg: v.liquor.sugar / serum,
          }),
        )
      : 1
  const sat = Math.min(432, Math.max(301, saturation_K))
  // Rohsenow with the Prandtl number to the power 3 n = 3: flux falls with viscosity to the second power.
  out.boiling_W_per_m2 = boilingOfWater.inner(sat) / factor ** 2
  out.liquor_K = v.liquor_K
  out.saturation_K = saturation_K
  water.convection_W_per_m2K = convectionOfWater.inner(T)
  water.conduction_W_per_m2K = out.conduction_W_per_m2K
  water.boiling_W_per_m2 = boilingOfWater.inner(sat)
}
