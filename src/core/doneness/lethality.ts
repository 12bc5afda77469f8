import { requireRange } from '../numerics/index.ts'
import { zRate_per_s } from './kinetics.ts'

// Published times that kill what has to be killed, as rates that can be integrated along the coldest point. A dose of
// 1 is the standard's whole requirement. Below the lowest row the standard gives nothing, and nothing is counted.
// None of this is permission to can, and a pot's manual and the local food code come first.

export type LethalityColumn = 'meat-7-log' | 'meat-6.5-log' | 'poultry-lean' | 'poultry-fat'

const fromF = (t: number) => (t - 32) / 1.8 + 273.15
const seconds = (rows: readonly (readonly [F: number, time_s: number])[]) =>
  rows.map(([F, time_s]) => ({ temperature_K: fromF(F), time_s }))

// Chicken, 7 log. Lean (1 % fat): read as single points. Fat (12 %): remembered, except 140 °F which was read.
const points = {
  'poultry-lean': seconds([
    [140, 25.2 * 60],
    [145, 8.4 * 60],
    [150, 2.7 * 60],
    [155, 44.2],
    [160, 13.7],
  ]),
  'poultry-fat': seconds([
    [136, 81.4 * 60],
    [140, 35 * 60],
    [145, 13 * 60],
    [150, 4.2 * 60],
    [155, 54.4],
    [160, 16.9],
  ]),
}

/** Coldest temperature at which a column starts to count, K. */
export const lethalityFrom_K: Readonly<Record<LethalityColumn, number>> = {
  'meat-7-log': fromF(130),
  'meat-6.5-log': fromF(130),
  'poultry-lean': fromF(140),
  'poultry-fat': fromF(136),
}

/**
 * Time that meets a lethality standard at a steady temperature.
 *
 * Shape    beef: 12 min · 10^((140 °F − T)/10 °F), times 6.5/7 in that column; poultry: log-linear between rows
 * Range    from the column's lowest row (54.4 °C; poultry 60.0 or 57.8 °C) to 433.15 K; above 158 °F (beef) and
 *          160 °F (poultry), where the tables say instant, the last row's time stays
 * Outside  RangeError; nothing is clamped below
 * Error    7 % of the printed beef rows, which are rounded; poultry between its rows 5 %
 * Source   fsis-appendix-a, fsis-poultry
 * Check    check/doneness/fsis-beef.csv; check/doneness/fsis-poultry.csv
 */
export function lethalTime_s(temperature_K: number, column: LethalityColumn): number {
  requireRange('temperature', temperature_K, lethalityFrom_K[column] - 1e-9, 433.15, 'K')
  if (column === 'meat-7-log' || column === 'meat-6.5-log') {
    const T = Math.min(temperature_K, fromF(158))
    const sevenLog_s = 720 * 10 ** ((fromF(140) - T) / (10 / 1.8))
    return column === 'meat-7-log' ? sevenLog_s : (sevenLog_s * 6.5) / 7
  }
  const rows = points[column]
  const last = rows[rows.length - 1]
  if (temperature_K >= last.temperature_K) return last.time_s
  let i = 0
  while (i < rows.length - 2 && temperature_K > rows[i + 1].temperature_K) i++
  const share = (temperature_K - rows[i].temperature_K) / (rows[i + 1].temperature_K - rows[i].temperature_K)
  return rows[i].time_s * (rows[i + 1].time_s / rows[i].time_s) ** share
}

/**
 * Share of a lethality standard that one second at a temperature adds; 1 in all is the whole requirement.
 *
 * Shape    1 / lethalTime_s, zero below the column's lowest row
 * Range    203.15 ≤ temperature_K ≤ 433.15
 * Outside  RangeError; nothing is clamped
 * Error    as lethalTime_s
 * Source   fsis-appendix-a, fsis-poultry
 * Check    check/doneness/fsis-beef.csv; zero below the lowest row
 */
export function lethalityRate_per_s(temperature_K: number, column: LethalityColumn): number {
  requireRange('temperature', temperature_K, 203.15, 433.15, 'K')
  return temperature_K < lethalityFrom_K[column] ? 0 : 1 / lethalTime_s(temperature_K, column)
}

/** Lethality of spores relative to 121.1 °C (z 10 K): for a page on physics only, never as permission to can. */
export function sporeRate(temperature_K: number): number {
  return zRate_per_s({ reference_per_s: 1, reference_K: 394.25, z_dK: 10, temperature_K })
}
