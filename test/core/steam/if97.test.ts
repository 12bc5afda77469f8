import { describe, expect, it } from 'vitest'
import {
  liquidEnthalpy_J_per_kg,
  liquidHeatCapacity_J_per_kgK,
  liquidState,
  liquidTemp_K,
  liquidVolume_m3_per_kg,
  saturationPressure_Pa,
  saturationTemp_K,
  vapourEnthalpy_J_per_kg,
  vapourHeatCapacity_J_per_kgK,
  vapourState,
  vapourVolume_m3_per_kg,
  type WaterState,
} from '../../../src/core/steam/index.ts'
import { published, type Row } from '../../support/published.ts'

function agreesWith(row: Row, s: WaterState): void {
  row.agrees('v_m3_per_kg', s.volume_m3_per_kg)
  row.agrees('h_kJ_per_kg', s.enthalpy_J_per_kg / 1e3)
  row.agrees('u_kJ_per_kg', s.energy_J_per_kg / 1e3)
  row.agrees('s_kJ_per_kgK', s.entropy_J_per_kgK / 1e3)
  row.agrees('cp_kJ_per_kgK', s.heatCapacity_J_per_kgK / 1e3)
  row.agrees('w_m_per_s', s.soundSpeed_m_per_s)
}

const at = (row: Row) => ({ temperature_K: row.number('temperature_K'), pressure_Pa: row.number('pressure_MPa') * 1e6 })

describe('the published verification values of IF97', () => {
  it('liquid', () => {
    for (const row of published('steam/if97-liquid.csv').rows) {
      agreesWith(row, liquidState(at(row)))
      row.agrees('v_m3_per_kg', liquidVolume_m3_per_kg(at(row)))
      row.agrees('h_kJ_per_kg', liquidEnthalpy_J_per_kg(at(row)) / 1e3)
      row.agrees('cp_kJ_per_kgK', liquidHeatCapacity_J_per_kgK(at(row)) / 1e3)
    }
  })
  it('vapour', () => {
    for (const row of published('steam/if97-vapour.csv').rows) {
      agreesWith(row, vapourState(at(row)))
      row.agrees('v_m3_per_kg', vapourVolume_m3_per_kg(at(row)))
      row.agrees('h_kJ_per_kg', vapourEnthalpy_J_per_kg(at(row)) / 1e3)
      row.agrees('cp_kJ_per_kgK', vapourHeatCapacity_J_per_kgK(at(row)) / 1e3)
    }
  })
  it('saturation line both ways', () => {
    for (const row of published('steam/if97-saturation.csv').rows) {
      const { temperature_K, pressure_Pa } = at(row)
      if (row.text('asked') === 'pressure') row.agrees('pressure_MPa', saturationPressure_Pa(temperature_K) / 1e6)
      else row.agrees('temperature_K', saturationTemp_K(pressure_Pa))
    }
  })
  it('temperature of the liquid from its enthalpy', () => {
    for (const row of published('steam/if97-liquid-temp.csv').rows) {
      const T = liquidTemp_K({
        pressure_Pa: row.number('pressure_MPa') * 1e6,
        enthalpy_J_per_kg: row.number('h_kJ_per_kg') * 1e3,
      })
      row.agrees('temperature_K', T)
    }
  })
})

describe('the equations between themselves', () => {
  const pot = Array.from({ length: 33 }, (_, i) => 273.15 + 5 * i)
  it('heat capacity, expansion and energy are what differences of enthalpy and volume say', () => {
    const d = 1e-3
    for (const state of [liquidState, vapourState]) {
      for (const T of pot.slice(2)) {
        const p = saturationPressure_Pa(T)
        const off = state === liquidState ? 1.2 : 0.8
        const here = state({ temperature_K: T, pressure_Pa: p * off })
        const above = state({ temperature_K: T + d, pressure_Pa: p * off })
        const below = state({ temperature_K: T - d, pressure_Pa: p * off })
        const cp = (above.enthalpy_J_per_kg - below.enthalpy_J_per_kg) / (2 * d)
        const expansion = (above.volume_m3_per_kg - below.volume_m3_per_kg) / (2 * d * here.volume_m3_per_kg)
        expect(Math.abs(here.heatCapacity_J_per_kgK / cp - 1)).toBeLessThan(1e-6)
        expect(Math.abs(here.expansion_per_K - expansion)).toBeLessThan(1e-8)
        const u = here.enthalpy_J_per_kg - p * off * here.volume_m3_per_kg
        expect(Math.abs(here.energy_J_per_kg - u)).toBeLessThan(1e-3)
      }
    }
  })
  it('temperature of the liquid comes back from its enthalpy within 25 mK', () => {
    for (const T of pot) {
      const pressure_Pa = Math.max(2e5, saturationPressure_Pa(T) * 1.05)
      const enthalpy_J_per_kg = liquidEnthalpy_J_per_kg({ temperature_K: T, pressure_Pa })
      expect(Math.abs(liquidTemp_K({ pressure_Pa, enthalpy_J_per_kg }) - T)).toBeLessThan(0.025)
    }
  })
  it('refuses what is not liquid, not vapour, or no number', () => {
    const p = saturationPressure_Pa(393.15)
    expect(() => liquidState({ temperature_K: 393.15, pressure_Pa: 0.9 * p })).toThrow(RangeError)
    expect(() => vapourState({ temperature_K: 393.15, pressure_Pa: 1.1 * p })).toThrow(RangeError)
    expect(() => liquidState({ temperature_K: Number.NaN, pressure_Pa: 1e5 })).toThrow(/temperature = NaN K/)
    expect(() => liquidState({ temperature_K: 700, pressure_Pa: 1e7 })).toThrow(RangeError)
    expect(() => vapourState({ temperature_K: 300, pressure_Pa: 0 })).toThrow(RangeError)
    expect(() => liquidTemp_K({ pressure_Pa: 1e5, enthalpy_J_per_kg: 6e5 })).toThrow(/no longer liquid/)
    expect(() => liquidTemp_K({ pressure_Pa: 1e5, enthalpy_J_per_kg: -9e3 })).toThrow(RangeError)
  })
})
