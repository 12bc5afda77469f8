import type { UnitCode } from './codes.ts'
import { imperialGallon_m3, usDryGallon_m3, usGallon_m3 } from './definitions.ts'

/** Whose cups and spoons a manuscript means. */
export type MeasureSystem = 'us' | 'imperial' | 'metric' | 'australian'
export const measureSystems = ['us', 'imperial', 'metric', 'australian'] as const satisfies readonly MeasureSystem[]

type Volumes = Partial<Record<UnitCode, number>>

const litre: Volumes = { ml: 1e-6, l: 1e-3 }

/** Pinch, dash and drop follow the teaspoon. Common practice, no source: 1/16 and 1/8 teaspoon, 1/100 for a drop. */
const byTeaspoon = (tsp_m3: number): Volumes => ({
  tsp: tsp_m3,
  dessertspoon: 2 * tsp_m3,
  dash: tsp_m3 / 8,
  pinch: tsp_m3 / 16,
  drop: tsp_m3 / 100,
})

/** A teacup is the gill of its country, a quarter of a pint or four US fluid ounces: old household tables. */
const us: Volumes = {
  ...litre,
  ...byTeaspoon(usGallon_m3 / 768),
  tbsp: usGallon_m3 / 256,
  floz: usGallon_m3 / 128,
  gill: usGallon_m3 / 32,
  teacup: usGallon_m3 / 32,
  // A stick is half a cup of butter, printed so on its wrapper.
  stick: usGallon_m3 / 32,
  cup: usGallon_m3 / 16,
  pint: usGallon_m3 / 8,
  quart: usGallon_m3 / 4,
  gallon: usGallon_m3,
  peck: 2 * usDryGallon_m3,
}

const imperial: Volumes = {
  ...litre,
  // British measuring spoons are 5 and 15 mL since metrication; older books meant about as much.
  ...byTeaspoon(5e-6),
  tbsp: 15e-6,
  floz: imperialGallon_m3 / 160,
  gill: imperialGallon_m3 / 32,
  teacup: imperialGallon_m3 / 32,
  cup: imperialGallon_m3 / 16,
  pint: imperialGallon_m3 / 8,
  quart: imperialGallon_m3 / 4,
  gallon: imperialGallon_m3,
  peck: 2 * imperialGallon_m3,
}

// Countries with the metric cup had imperial measures before, so their pints and fluid ounces are imperial.
const metric: Volumes = { ...imperial, cup: 250e-6 }
const australian: Volumes = { ...metric, tbsp: 20e-6 }

const volumes: Record<MeasureSystem, Volumes> = { us, imperial, metric, australian }

/**
 * Volume of one unit in m3; null when the unit is not a unit of volume.
 *
 * Shape    a table of exact definitions
 * Range    every unit code; system 'us', 'imperial', 'metric' or 'australian'
 * Outside  null: a pound or a clove has no volume of its own
 * Error    none for defined units; pinch, dash, drop, teacup and dessertspoon are household measures
 * Source   NIST Handbook 44, appendix C; UK Weights and Measures Act 1985; AS 1325 for the 20 mL spoon (from memory)
 * Check    check/units/volume.csv
 */
export const volumeOfUnit_m3 = (unit: UnitCode, system: MeasureSystem = 'us'): number | null =>
  volumes[system][unit] ?? null

const label: Volumes = { ...us, tsp: 5e-6, tbsp: 15e-6, floz: 30e-6, cup: 240e-6 }

/**
 * Volume of one unit in m3 as a US nutrition label rounds it: cup 240 mL, tablespoon 15, teaspoon 5, fluid ounce 30.
 *
 * Shape    a table fixed by regulation
 * Range    every unit code
 * Outside  null when the unit is not a unit of volume
 * Error    none
 * Source   21 CFR 101.9(b)(5)(viii)
 * Check    check/units/volume.csv
 */
export const labelVolumeOfUnit_m3 = (unit: UnitCode): number | null => label[unit] ?? null
