import type { Constants } from './assumptions.ts'

// The floor of the pot: from the metal through what sticks to it into the liquor. Two ways carry the heat on:
// convection, driven by surface minus liquor, and nucleate boiling, driven by surface minus saturation. Boiling
// therefore starts below the bulk boiling point and never helps before it. A pot's floor stays at a fiftieth of the
// critical heat flux; a hot dry floor that liquid is poured on passes it for a second, which no step here resolves.

export interface FloorMedium {
  /** Convection coefficient at 1 K difference; times the cube root of the difference it is the film, W/m2K. */
  readonly convection_W_per_m2K: number
  /** Lower bound of the film: conduction through the depth of liquor, W/m2K. */
  readonly conduction_W_per_m2K: number
  /** Boiling flux at 1 K of superheat; it grows with the cube, W/m2. */
  readonly boiling_W_per_m2: number
  readonly liquor_K: number
  readonly saturation_K: number
}

export interface FloorFlux {
  surface_K: number
  flux_W_per_m2: number
  boilingFlux_W_per_m2: number
  /** d flux / d base temperature, W/m2K. */
  slope_W_per_m2K: number
}

/** Heat that the floor surface passes on at a given surface temperature, with its slope. */
function passed(m: FloorMedium, surface_K: number, out: { q: number; dq: number; boiling: number }): void {
  const over_dK = surface_K - m.liquor_K
  let q = 0
  let dq = 0
  const size = Math.abs(over_dK)
  const film = Math.max(m.conduction_W_per_m2K, m.convection_W_per_m2K * Math.cbrt(size))
  q = film * over_dK
  dq = film === m.conduction_W_per_m2K ? film : (4 / 3) * film
  let boiling = 0
  const superheat_dK = surface_K - m.saturation_K
  if (superheat_dK > 0) {
    boiling = m.boiling_W_per_m2 * superheat_dK ** 3
    q += boiling
    dq += 3 * m.boiling_W_per_m2 * superheat_dK ** 2
  }
  out.q = q
  out.dq = Math.max(dq, 1)
  out.boiling = boiling
}

const scratch = { q: 0, dq: 0, boiling: 0 }

/** Flux from the metal at `base_K` through `resistance_m2K_per_W` into the medium. Newton from above: the law is convex. */
export function floorFlux(m: FloorMedium, base_K: number, resistance_m2K_per_W: number, out: FloorFlux): FloorFlux {
  let surface_K = base_K
  if (resistance_m2K_per_W > 0) {
    for (let i = 0; i < 40; i++) {
      passed(m, surface_K, scratch)
      const miss = surface_K + resistance_m2K_per_W * scratch.q - base_K
      const step = miss / (1 + resistance_m2K_per_W * scratch.dq)
      surface_K -= step
      if (Math.abs(step) < 1e-4) break
    }
  }
  passed(m, surface_K, scratch)
  out.surface_K = surface_K
  out.flux_W_per_m2 = scratch.q
  out.boilingFlux_W_per_m2 = scratch.boiling
  out.slope_W_per_m2K = scratch.dq / (1 + resistance_m2K_per_W * scratch.dq)
  return out
}

/** Metal temperature at which the floor passes on a given flux: the inverse of `floorFlux`. */
export function baseForFlux_K(m: FloorMedium, flux_W_per_m2: number, resistance_m2K_per_W: number): number {
  let surface_K = Math.max(m.liquor_K, m.saturation_K) + Math.cbrt(Math.max(0, flux_W_per_m2) / m.boiling_W_per_m2)
  for (let i = 0; i < 40; i++) {
    passed(m, surface_K, scratch)
    const step = (scratch.q - flux_W_per_m2) / scratch.dq
    surface_K -= step
    if (Math.abs(step) < 1e-4) break
  }
  return surface_K + resistance_m2K_per_W * flux_W_per_m2
}

/** Share of the floor that free liquor wets, 0..1. */
export function wettedShare(freeLiquor_m3: number, area_m2: number, c: Constants): number {
  return Math.max(0, Math.min(1, freeLiquor_m3 / area_m2 / c.fullWetting_m))
}

/**
 * How far the middle of the largest dry patch stands above the wetted floor once it has settled, in K: a disc fed
 * evenly and drained at its rim by conduction along the base, q r² / (4 k t).
 */
export function dryPatch_dK(flux_W_per_m2: number, dryShare: number, area_m2: number, c: Constants): number {
  return (Math.max(0, flux_W_per_m2) * dryShare * area_m2) / Math.PI / (4 * c.baseSpreading_W_per_K)
}

/** Time in which such a patch follows, s: its heat capacity over the conduction to its rim, r² C'' / (5.78 k t). */
export function dryPatchTime_s(dryShare: number, area_m2: number, base_J_per_K: number, c: Constants): number {
  return Math.max(1, (((dryShare * area_m2) / Math.PI) * (base_J_per_K / area_m2)) / (5.78 * c.baseSpreading_W_per_K))
}
