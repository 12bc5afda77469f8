import { describe, expect, it } from 'vitest'
import {
  latentHeat_J_per_kg,
  steamTables as s,
  saturatedLiquidConductivity_W_per_mK,
  saturatedLiquidDensity_kg_per_m3,
  saturatedLiquidEnergy_J_per_kg,
  saturatedLiquidEnthalpy_J_per_kg,
  saturatedLiquidExpansion_per_K,
  saturatedLiquidHeatCapacity_J_per_kgK,
  saturatedLiquidViscosity_Pas,
  saturatedVapourDensity_kg_per_m3,
  saturatedVapourEnergy_J_per_kg,
  saturatedVapourEnthalpy_J_per_kg,
  saturationPressure_Pa,
  saturationSlope_Pa_per_K,
  saturationTemp_K,
  surfaceTension_N_per_m,
} from '../../../src/core/steam/index.ts'

// Off the nodes: where linear interpolation is worst.
const between = Array.from({ length: 1598 }, (_, i) => 273.2 + i * 0.1)

describe('tables for inner loops', () => {
  it.each([
    ['saturationPressure_Pa', s.saturationPressure_Pa, saturationPressure_Pa, 1e-6],
    ['saturationSlope_Pa_per_K', s.saturationSlope_Pa_per_K, saturationSlope_Pa_per_K, 6e-6],
    ['latentHeat_J_per_kg', s.latentHeat_J_per_kg, latentHeat_J_per_kg, 1e-8],
    ['vapourEnthalpy_J_per_kg', s.vapourEnthalpy_J_per_kg, saturatedVapourEnthalpy_J_per_kg, 1e-8],
    ['vapourEnergy_J_per_kg', s.vapourEnergy_J_per_kg, saturatedVapourEnergy_J_per_kg, 1e-8],
    ['liquidDensity_kg_per_m3', s.liquidDensity_kg_per_m3, saturatedLiquidDensity_kg_per_m3, 1e-7],
    ['vapourDensity_kg_per_m3', s.vapourDensity_kg_per_m3, saturatedVapourDensity_kg_per_m3, 1e-6],
    ['liquidHeatCapacity_J_per_kgK', s.liquidHeatCapacity_J_per_kgK, saturatedLiquidHeatCapacity_J_per_kgK, 1e-6],
    ['liquidViscosity_Pas', s.liquidViscosity_Pas, saturatedLiquidViscosity_Pas, 5e-6],
    ['liquidConductivity_W_per_mK', s.liquidConductivity_W_per_mK, saturatedLiquidConductivity_W_per_mK, 1e-6],
    ['surfaceTension_N_per_m', s.surfaceTension_N_per_m, surfaceTension_N_per_m, 1e-6],
  ] as const)('%s keeps its promise', (_, table, equation, promised) => {
    let worst = 0
    for (const T of between) worst = Math.max(worst, Math.abs(table(T) / equation(T) - 1))
    expect(worst).toBeLessThan(promised)
  })
  it('what passes through zero keeps an absolute promise', () => {
    for (const T of between) {
      expect(Math.abs(s.liquidEnthalpy_J_per_kg(T) - saturatedLiquidEnthalpy_J_per_kg(T))).toBeLessThan(0.05)
      expect(Math.abs(s.liquidEnergy_J_per_kg(T) - saturatedLiquidEnergy_J_per_kg(T))).toBeLessThan(0.05)
      expect(Math.abs(s.liquidExpansion_per_K(T) - saturatedLiquidExpansion_per_K(T))).toBeLessThan(2e-9)
    }
  })
  it('boiling temperature within 10 µK, and back', () => {
    for (const T of between) {
      const p = saturationPressure_Pa(T)
      expect(Math.abs(s.saturationTemp_K(p) - saturationTemp_K(p))).toBeLessThan(1e-5)
      expect(Math.abs(s.saturationTemp_K(s.saturationPressure_Pa(T)) - T)).toBeLessThan(2e-5)
    }
  })
  it('reaches both ends, and refuses what lies beyond', () => {
    expect(s.saturationPressure_Pa(s.low_K)).toBeCloseTo(saturationPressure_Pa(s.low_K), 6)
    expect(s.latentHeat_J_per_kg(s.high_K)).toBeCloseTo(latentHeat_J_per_kg(s.high_K), 3)
    expect(s.saturationTemp_K(s.high_Pa)).toBeCloseTo(s.high_K, 4)
    for (const T of [273, 433.2, Number.NaN]) {
      expect(() => s.saturationPressure_Pa(T)).toThrow(RangeError)
      expect(() => s.vapourDensity_kg_per_m3(T)).toThrow(RangeError)
    }
    expect(() => s.saturationTemp_K(600)).toThrow(RangeError)
    expect(() => s.saturationTemp_K(Number.NaN)).toThrow(RangeError)
  })
})
