import { requireRange } from '../numerics/index.ts'
import { rateTable } from './rate-table.ts'

/** First-order rate at which meat reaches the water it can hold, 1/s. Assumed. */
export const meatWaterRate_per_s = 0.0016
export const meatWaterRateBand = { value: meatWaterRate_per_s, low: 0.0008, high: 0.003 } as const

/** Raw water for which the curve below is drawn. */
export const meatWaterRaw = 0.7

const held = rateTable((T) => meatWaterRaw - 0.345 / (1 + 30 * Math.exp(-0.25 * (T - 325.15))))

/**
 * Water that meat can hold at a temperature, kg per kg of raw meat with 0.70 water: scale by its own water / 0.70.
 * Half of what will ever leave has left at 65.6 °C; braised chuck then yields 64–71 %. The form is remembered from a
 * published curve, its start moved from 0.745 to fit measured yields. RangeError outside 203.15–473.15 K.
 */
export function meatWaterHeld(temperature_K: number): number {
  return held(temperature_K)
}

// The paper's pre-factor belongs to the gas constant it was fitted with, 8.314: with today's the rate would be 0.6 % off.
const myoglobin = rateTable((T) => (7.98e43 / 60) * Math.exp(-290e3 / (8.314 * Math.min(T, 383.15))))

/**
 * Rate at which the red of beef turns: myoglobin denatures.
 *
 * Shape    first order, Arrhenius with 7.98e43/min and 290 kJ/mol, read from a table of 0.1 K
 * Range    273.15 ≤ temperature_K ≤ 383.15 (measured 55–65 °C: beyond, it is over in seconds)
 * Outside  RangeError; nothing is clamped
 * Error    ±20 % at 60 °C; not known for other meats. Colour is no proof of safety
 * Source   myoglobin-geileskey
 * Check    check/doneness/meat.csv
 */
export function myoglobinRate_per_s(temperature_K: number): number {
  requireRange('temperature', temperature_K, 273.15, 383.15, 'K')
  return myoglobin(temperature_K)
}
