import type { PotCard } from '../pots/index.ts'
import { standardPressure_Pa, steamTables } from '../steam/index.ts'
import type { Constants } from './assumptions.ts'
import { type Books, openBooks } from './books.ts'
import type { Group } from './group.ts'
import { emptyLiquor, heatCapacity_J_per_K, type Liquor, volume_m3 } from './liquor.ts'

/** The state of one vessel and of what waits beside it. Mutable: the loop writes in place. */
export interface Vessel {
  readonly card: PotCard
  readonly c: Constants
  readonly ambient_Pa: number
  readonly boil_K: number
  readonly room_K: number
  base_K: number
  /** What the guard under the floor feels: the mean of the wetted floor plus the hottest dry patch, at its peak. */
  hot_K: number
  patch_dK: number
  wall_K: number
  liquor_K: number
  liquor: Liquor
  /** Share of solids (suspended and swollen starch) in the liquor that touches the floor. */
  floorSolids: number
  air_kg: number
  vapour_kg: number
  fond_kg: number
  /** Solids dried on the floor, kg/m2. */
  layer_kg_per_m2: number
  /** Paste, starch or sugar lying on the floor, kg of solids. */
  deposit_kg: number
  /** 0 open, 1 lid on, 2 sealed. */
  lid: 0 | 1 | 2
  groups: Group[]
  books: Books
  power_W: number
}

export const reference_K = 273.15
export const room_K = 293.15

export function newVessel(card: PotCard, altitude_m: number, c: Constants): Vessel {
  const ambient_Pa = standardPressure_Pa(altitude_m)
  return {
    card,
    c,
    ambient_Pa,
    boil_K: steamTables.saturationTemp_K(ambient_Pa),
    room_K,
    base_K: room_K,
    hot_K: room_K,
    patch_dK: 0,
    wall_K: room_K,
    liquor_K: room_K,
    liquor: emptyLiquor(),
    floorSolids: 0,
    air_kg: 0,
    vapour_kg: 0,
    fond_kg: 0,
    layer_kg_per_m2: 0,
    deposit_kg: 0,
    lid: 0,
    groups: [],
    books: openBooks(),
    power_W: 0,
  }
}

export function liquorVolume_m3(v: Vessel): number {
  // Frying fat is far hotter than any water in the pan can be.
  return volume_m3(v.liquor, steamTables.liquidDensity_kg_per_m3(Math.max(273.2, Math.min(v.liquor_K, 430))))
}

/** Volume of the solids that lie in the pot now, m3. */
export function solidsVolume_m3(v: Vessel): number {
  let sum = 0
  for (const g of v.groups) if (g.where === 1 || g.where === 3) sum += g.mass_kg / g.density_kg_per_m3
  return sum
}

// Loosely heaped pieces fill about six tenths of the room they take.
const packing = 0.62

/** Height of the contents as a volume: liquor and solids together, or the heap where it stands out of the liquor. */
export function contentsVolume_m3(v: Vessel): number {
  const solids = solidsVolume_m3(v)
  return Math.max(liquorVolume_m3(v) + solids, solids / packing)
}

/** What is neither food nor liquor, m3; the lid's dome makes up for the brim. */
export function headspace_m3(v: Vessel): number {
  return Math.max(0.1 * v.card.capacity_m3, v.card.capacity_m3 - liquorVolume_m3(v) - solidsVolume_m3(v))
}

/** Liquor that is free to run to the floor: what clings to pieces and wall is not, and fat floats above it. */
export function freeLiquor_m3(v: Vessel): number {
  let surface_m2 = 2 * Math.sqrt(Math.PI * v.card.baseArea_m2) * 0.05
  for (const g of v.groups) if (g.where === 1) surface_m2 += g.surface_m2()
  // Small things lie on each other: they hold no more than a fifth of their own volume between them.
  const held = Math.min(surface_m2 * v.c.cling_m, 0.2 * solidsVolume_m3(v) + 1e-6)
  return Math.max(0, liquorVolume_m3(v) - v.liquor.fat / 890 - held)
}

/** Adds or takes liquor parts that carry the enthalpy of `at_K`, and mixes the temperature by heat. */
export function mixIn(v: Vessel, parts: Partial<Liquor>, at_K: number): void {
  const before = heatCapacity_J_per_K(v.liquor)
  const energy = before * (v.liquor_K - reference_K)
  for (const key of Object.keys(parts) as (keyof Liquor)[]) v.liquor[key] += parts[key] ?? 0
  const after = heatCapacity_J_per_K(v.liquor)
  const added = after - before
  if (after > 1e-9) v.liquor_K = reference_K + (energy + added * (at_K - reference_K)) / after
}

/** Water moving between liquor and pieces at a temperature; the hot path of the loop, without allocation. */
export function mixWater(v: Vessel, water_kg: number, at_K: number): void {
  const before = heatCapacity_J_per_K(v.liquor)
  v.liquor.water += water_kg
  const after = before + 4200 * water_kg
  if (after > 1e-9)
    v.liquor_K = reference_K + (before * (v.liquor_K - reference_K) + 4200 * water_kg * (at_K - reference_K)) / after
}

/** Heat held by everything in the pot over 0 °C, J: for the books. */
export function heatHeld_J(v: Vessel): number {
  let sum =
    v.card.base_J_per_K * (v.base_K - reference_K) +
    v.card.wall_J_per_K * (v.wall_K - reference_K) +
    heatCapacity_J_per_K(v.liquor) * (v.liquor_K - reference_K) +
    (v.vapour_kg > 0 ? v.vapour_kg * vapourEnthalpy_J_per_kg(v.liquor_K) : 0)
  for (const g of v.groups) sum += g.heat_J()
  return sum
}

/** Enthalpy of steam over liquid water at 0 °C, consistent with the constant heat capacity of the liquor. */
export function vapourEnthalpy_J_per_kg(temperature_K: number): number {
  return 4200 * (temperature_K - reference_K) + steamTables.latentHeat_J_per_kg(Math.min(temperature_K, 432))
}
