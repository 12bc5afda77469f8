import { iceZero_K } from './definitions.ts'

// A level ("350 °F") and a difference ("25 °F lower") convert by different functions: the zero counts only for levels.
// Source: 0 °C = 273.15 K and 1 °F = 5/9 K, from the SI brochure and NIST SP 811 B.8.

const kelvin_per_fahrenheitDegree = 5 / 9
const fahrenheitAtIce = 32

/** Kelvin from a level in degrees Celsius. */
export const kelvinFromCelsius = (celsius: number): number => celsius + iceZero_K
/** Level in degrees Celsius from kelvin. */
export const celsiusFromKelvin = (temperature_K: number): number => temperature_K - iceZero_K
/** Level in degrees Celsius from degrees Fahrenheit. */
export const celsiusFromFahrenheit = (fahrenheit: number): number =>
  (fahrenheit - fahrenheitAtIce) * kelvin_per_fahrenheitDegree
/** Level in degrees Fahrenheit from degrees Celsius. */
export const fahrenheitFromCelsius = (celsius: number): number =>
  celsius / kelvin_per_fahrenheitDegree + fahrenheitAtIce
/** Kelvin from a level in degrees Fahrenheit. */
export const kelvinFromFahrenheit = (fahrenheit: number): number => kelvinFromCelsius(celsiusFromFahrenheit(fahrenheit))
/** Level in degrees Fahrenheit from kelvin. */
export const fahrenheitFromKelvin = (temperature_K: number): number =>
  fahrenheitFromCelsius(celsiusFromKelvin(temperature_K))

/** Difference in kelvin from a step in degrees Celsius: they are the same. */
export const dKelvinFromCelsiusStep = (step: number): number => step
/** Difference in kelvin from a step in degrees Fahrenheit. */
export const dKelvinFromFahrenheitStep = (step: number): number => step * kelvin_per_fahrenheitDegree
/** Step in degrees Fahrenheit from a difference in kelvin. */
export const fahrenheitStepFromDKelvin = (difference_dK: number): number => difference_dK / kelvin_per_fahrenheitDegree

/**
 * Oven temperature of a British gas mark, in K; null when there is no such mark.
 *
 * Shape    mark 1 = 275 °F and 25 °F a mark; marks 1/2 and 1/4 are 250 and 225 °F
 * Range    1/4, 1/2, and whole or half marks from 1 to 10
 * Outside  null
 * Error    ovens differ by 10 K and more; cookbooks print the value rounded to 10 °C
 * Source   common practice, no source
 * Check    check/units/temperature.csv
 */
export function gasMark_K(mark: number): number | null {
  if (mark === 0.25) return kelvinFromFahrenheit(225)
  if (mark === 0.5) return kelvinFromFahrenheit(250)
  if (!(mark >= 1 && mark <= 10 && Number.isInteger(mark * 2))) return null
  return kelvinFromFahrenheit(250 + 25 * mark)
}
