import { linearTable } from '../numerics/index.ts'

// Rates for inner loops: ln k by tables of 0.1 K would need an exponential each time; k itself, linear over 0.1 K,
// is within (0.1 K · ln10/z)²/8 of the truth: 1.5e-5 for z = 21 K.

export const low_K = 203.15
export const high_K = 473.15

/** Reads `rate` from a table of 0.1 K, built at the first call; RangeError outside 203.15–473.15 K. */
export function rateTable(rate: (temperature_K: number) => number): (temperature_K: number) => number {
  let read: ((x: number) => number) | undefined
  return (T) => {
    read ??= linearTable(rate, { low: low_K, high: high_K, step: 0.1, name: 'temperature in K' }).at
    return read(T)
  }
}
