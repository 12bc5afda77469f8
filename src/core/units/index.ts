// Exact conversions, kitchen measures.
export { type UnitCode, unitCodes } from './codes.ts'
export { gravity_m_per_s2, iceZero_K, inch_m, pound_kg } from './definitions.ts'
export { feetFromMetres, type LengthUnit, lengthOf_m, lengthOfUnit_m, metresFromFeet } from './length.ts'
export { massOfUnit_kg } from './mass.ts'
export {
  atmosphere_Pa,
  bar_Pa,
  type GaugePa,
  gaugeFromPressure,
  gaugePa,
  inchOfMercury_Pa,
  pascalFromPsi,
  pressureFromGauge_Pa,
  psi_Pa,
  psiFromPascal,
} from './pressure.ts'
export {
  celsiusFromFahrenheit,
  celsiusFromKelvin,
  dKelvinFromCelsiusStep,
  dKelvinFromFahrenheitStep,
  fahrenheitFromCelsius,
  fahrenheitFromKelvin,
  fahrenheitStepFromDKelvin,
  gasMark_K,
  kelvinFromCelsius,
  kelvinFromFahrenheit,
} from './temperature.ts'
export { labelVolumeOfUnit_m3, type MeasureSystem, measureSystems, volumeOfUnit_m3 } from './volume.ts'
