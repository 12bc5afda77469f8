import { linearTable } from '../numerics/index.ts'
import type { WaterState } from './regions.ts'
import { saturatedLiquid, saturatedVapour } from './saturated.ts'
import { saturationPressure_Pa, saturationSlope_Pa_per_K, saturationTemp_K } from './saturation-line.ts'
import { saturatedLiquidConductivity_W_per_mK, surfaceTension_N_per_m, viscosity_Pas } from './transport.ts'

// The same properties for inner loops: read from tables of 0.1 K, a few nanoseconds each. Every reader refuses what
// lies outside 273.15–433.15 K, NaN included, because the test is nearly free. What they err by stands in
// docs/models/steam.md and is tested against the equations.

const low_K = 273.15
const high_K = 433.15

export interface SteamTables {
  readonly low_K: number
  readonly high_K: number
  readonly low_Pa: number
  readonly high_Pa: number
  readonly saturationPressure_Pa: (temperature_K: number) => number
  readonly saturationSlope_Pa_per_K: (temperature_K: number) => number
  readonly saturationTemp_K: (pressure_Pa: number) => number
  readonly latentHeat_J_per_kg: (temperature_K: number) => number
  readonly liquidEnthalpy_J_per_kg: (temperature_K: number) => number
  readonly vapourEnthalpy_J_per_kg: (temperature_K: number) => number
  readonly liquidEnergy_J_per_kg: (temperature_K: number) => number
  readonly vapourEnergy_J_per_kg: (temperature_K: number) => number
  readonly liquidDensity_kg_per_m3: (temperature_K: number) => number
  readonly vapourDensity_kg_per_m3: (temperature_K: number) => number
  readonly liquidHeatCapacity_J_per_kgK: (temperature_K: number) => number
  readonly liquidViscosity_Pas: (temperature_K: number) => number
  readonly liquidConductivity_W_per_mK: (temperature_K: number) => number
  readonly liquidExpansion_per_K: (temperature_K: number) => number
  readonly surfaceTension_N_per_m: (temperature_K: number) => number
}

/** Builds on the first call: reading a manuscript should not pay for steam. */
function late<F extends (x: number) => number>(make: () => F): (x: number) => number {
  let made: F | undefined
  return (x) => {
    made ??= make()
    return made(x)
  }
}

const span = { low: low_K, high: high_K, step: 0.1, name: 'temperature in K' }
const rows = Math.round((high_K - low_K) / span.step) + 1

// One pass over the equations of each phase serves all its tables: the equations are the dear part.
let liquidRows: readonly WaterState[] | undefined
let vapourRows: readonly WaterState[] | undefined
const liquid = (i: number) => {
  liquidRows ??= Array.from({ length: rows }, (_, k) => saturatedLiquid(low_K + k * span.step))
  return liquidRows[i]
}
const vapour = (i: number) => {
  vapourRows ??= Array.from({ length: rows }, (_, k) => saturatedVapour(low_K + k * span.step))
  return vapourRows[i]
}
const row = (T: number) => Math.round((T - low_K) / span.step)
const of = (f: (i: number, temperature_K: number) => number) => late(() => linearTable((T) => f(row(T), T), span).at)

const low_Pa = saturationPressure_Pa(low_K)
const high_Pa = saturationPressure_Pa(high_K)
const logLow = Math.log(low_Pa)
const logHigh = Math.log(high_Pa)

// ln p is nearly straight in T, so interpolating it is a hundred times better than interpolating p.
const logPressure = of((_, T) => Math.log(saturationPressure_Pa(T)))
const logVapourDensity = of((i) => -Math.log(vapour(i).volume_m3_per_kg))
const tempOfLog = late(
  () =>
    linearTable((x) => saturationTemp_K(Math.exp(x)), {
      low: logLow,
      high: logHigh,
      step: (logHigh - logLow) / 4000,
    }).inner,
)

export const steamTables: SteamTables = {
  low_K,
  high_K,
  low_Pa,
  high_Pa,
  saturationPressure_Pa: (T) => Math.exp(logPressure(T)),
  saturationSlope_Pa_per_K: of((_, T) => saturationSlope_Pa_per_K(T)),
  saturationTemp_K: (p) => {
    if (!(p >= low_Pa && p <= high_Pa)) {
      throw new RangeError(`pressure = ${p} Pa: the table covers ${low_Pa} to ${high_Pa} Pa`)
    }
    return tempOfLog(Math.log(p))
  },
  latentHeat_J_per_kg: of((i) => vapour(i).enthalpy_J_per_kg - liquid(i).enthalpy_J_per_kg),
  liquidEnthalpy_J_per_kg: of((i) => liquid(i).enthalpy_J_per_kg),
  vapourEnthalpy_J_per_kg: of((i) => vapour(i).enthalpy_J_per_kg),
  liquidEnergy_J_per_kg: of((i) => liquid(i).energy_J_per_kg),
  vapourEnergy_J_per_kg: of((i) => vapour(i).energy_J_per_kg),
  liquidDensity_kg_per_m3: of((i) => 1 / liquid(i).volume_m3_per_kg),
  vapourDensity_kg_per_m3: (T) => Math.exp(logVapourDensity(T)),
  liquidHeatCapacity_J_per_kgK: of((i) => liquid(i).heatCapacity_J_per_kgK),
  liquidViscosity_Pas: of((i, T) =>
    viscosity_Pas({ temperature_K: T, density_kg_per_m3: 1 / liquid(i).volume_m3_per_kg }),
  ),
  liquidConductivity_W_per_mK: of((_, T) => saturatedLiquidConductivity_W_per_mK(T)),
  liquidExpansion_per_K: of((i) => liquid(i).expansion_per_K),
  surfaceTension_N_per_m: of((_, T) => surfaceTension_N_per_m(T)),
}
