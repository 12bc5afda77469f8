import { requireRange } from '../numerics/index.ts'
import { steamTables } from '../steam/index.ts'

const gravity_m_per_s2 = 9.80665

/** Globe & Dropkin: a turbulent layer heated from below; RangeError outside 1.5e5 ≤ Ra ≤ 7e9, 0.02 ≤ Pr ≤ 8750. */
export function globeDropkin(p: { rayleigh: number; prandtl: number }): number {
  requireRange('Rayleigh number', p.rayleigh, 1.5e5, 7e9, '1')
  requireRange('Prandtl number', p.prandtl, 0.02, 8750, '1')
  return 0.069 * Math.cbrt(p.rayleigh) * p.prandtl ** 0.074
}

/** Hollands: the same layer from rest on; conduction alone below Ra = 1708. RangeError outside 0 ≤ Ra ≤ 1e6. */
export function hollands(rayleigh: number): number {
  requireRange('Rayleigh number', rayleigh, 0, 1e6, '1')
  const onset = Math.max(0, 1 - 1708 / Math.max(rayleigh, Number.MIN_VALUE))
  return 1 + 1.44 * onset + Math.max(0, Math.cbrt(rayleigh) / 18 - 1)
}

// The ranges that two textbooks give for Globe & Dropkin start at 1.5e5 and 3e5. Between them a power law leads from
// the end of one law to the start of the other, so that a solver meets no step and nothing falls.
const passFrom = 1.5e5
const passTo = 3e5

/**
 * Nusselt number of a layer heated from below: Hollands below Ra 1.5e5, Globe & Dropkin from 3e5 to 7e9.
 * Above 7e9 the one-third law is carried on to 1e13, beyond its source: the depth has dropped out of the film there,
 * and measurements in helium follow a power between 0.30 and 0.33 (memory). So is the power of Pr above 8750.
 * RangeError outside 0 ≤ Ra ≤ 1e13 and 0.5 ≤ Pr ≤ 1e9.
 */
export function layerNusseltExtrapolated(p: { rayleigh: number; prandtl: number }): number {
  requireRange('Rayleigh number', p.rayleigh, 0, 1e13, '1')
  requireRange('Prandtl number', p.prandtl, 0.5, 1e9, '1')
  if (p.rayleigh <= passFrom) return hollands(p.rayleigh)
  const turbulent = (rayleigh: number) => 0.069 * Math.cbrt(rayleigh) * p.prandtl ** 0.074
  if (p.rayleigh >= passTo) return turbulent(p.rayleigh)
  const share = Math.log(p.rayleigh / passFrom) / Math.log(passTo / passFrom)
  return hollands(passFrom) ** (1 - share) * turbulent(passTo) ** share
}

/**
 * Film between the pot's floor and the liquor above it, without boiling. Water's own properties but for the
 * viscosity, which may be that of a sauce.
 *
 * Shape    Hollands, then Globe & Dropkin, from the layer's depth and temperature difference
 * Range    274 ≤ liquor_K ≤ 433.15; 0 ≤ difference_dK ≤ 200; 1e-4 ≤ depth_m ≤ 1; water ≤ viscosity_Pas ≤ 1e5
 * Outside  RangeError; nothing is clamped. Above Ra 7e9 see layerNusseltExtrapolated
 * Error    of the laws ±15 %; for a thick liquor unknown
 * Source   globe-dropkin, hollands
 * Check    check/heat/convection.csv; conduction through the depth as the difference → 0
 */
export function naturalConvection_W_per_m2K(p: {
  liquor_K: number
  difference_dK: number
  depth_m: number
  viscosity_Pas?: number
}): number {
  requireRange('difference', p.difference_dK, 0, 200, 'K')
  requireRange('depth', p.depth_m, 1e-4, 1, 'm')
  const s = steamTables
  const water_Pas = s.liquidViscosity_Pas(p.liquor_K)
  const viscosity_Pas = p.viscosity_Pas ?? water_Pas
  requireRange('viscosity', viscosity_Pas, 0.99 * water_Pas, 1e5, 'Pa s')
  const k = s.liquidConductivity_W_per_mK(p.liquor_K)
  const cp = s.liquidHeatCapacity_J_per_kgK(p.liquor_K)
  const rho = s.liquidDensity_kg_per_m3(p.liquor_K)
  // Below 4 °C water is lighter above: no convection from below, and the layer conducts.
  const expansion = Math.max(0, s.liquidExpansion_per_K(p.liquor_K))
  const rayleigh =
    (gravity_m_per_s2 * expansion * p.difference_dK * p.depth_m ** 3 * rho * rho * cp) / (viscosity_Pas * k)
  return (layerNusseltExtrapolated({ rayleigh, prandtl: (viscosity_Pas * cp) / k }) * k) / p.depth_m
}
