import { gravity_m_per_s2, inch_m, pound_kg } from './definitions.ts'

declare const kind: unique symbol
type Kind<N extends string> = number & { readonly [kind]: N }

/** What a cooker's label or dial prints: pressure above the air outside, in Pa. */
export type GaugePa = Kind<'gauge Pa'>
export const gaugePa = (over_Pa: number): GaugePa => over_Pa as GaugePa

/** 1 pound-force per square inch, in Pa. */
export const psi_Pa = (pound_kg * gravity_m_per_s2) / inch_m ** 2
/** 1 standard atmosphere, in Pa (exact). */
export const atmosphere_Pa = 101_325
/** 1 bar, in Pa (exact). */
export const bar_Pa = 1e5
/** 1 inch of mercury at 0 °C, in Pa: 13.5951 g/mL by the conventional millimetre of mercury. */
export const inchOfMercury_Pa = 13_595.1 * gravity_m_per_s2 * inch_m

/** Pa from pounds per square inch. A gauge reading stays a gauge reading, an absolute one absolute. */
export const pascalFromPsi = (psi: number): number => psi * psi_Pa
/** Pounds per square inch from Pa. */
export const psiFromPascal = (pressure_Pa: number): number => pressure_Pa / psi_Pa

/** Absolute pressure in Pa from a gauge reading and the pressure of the air outside. */
export const pressureFromGauge_Pa = (over: GaugePa, ambient_Pa: number): number => over + ambient_Pa
/** Gauge reading from an absolute pressure and the pressure of the air outside. */
export const gaugeFromPressure = (pressure_Pa: number, ambient_Pa: number): GaugePa => gaugePa(pressure_Pa - ambient_Pa)
