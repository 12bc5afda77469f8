import { describe, expect, it } from 'vitest'
import { provedRoot } from '../../../src/core/numerics/index.ts'
import {
  airMass_kg,
  airPressure_Pa,
  airShare,
  boilingPoint_K,
  geopotentialFromHeight_m,
  headspaceTemp_K,
  heightFromGeopotential_m,
  latentHeat_J_per_kg,
  liquidEnthalpy_J_per_kg,
  saturatedLiquidDensity_kg_per_m3,
  saturatedLiquidEnergy_J_per_kg,
  saturatedLiquidEnthalpy_J_per_kg,
  saturatedVapourDensity_kg_per_m3,
  saturatedVapourEnergy_J_per_kg,
  saturatedVapourEnthalpy_J_per_kg,
  saturationTemp_K,
  standardAltitude_m,
  standardPressure_Pa,
} from '../../../src/core/steam/index.ts'
import { published } from '../../support/published.ts'

describe('the air outside', () => {
  it('has the standard pressure, and water boils under it where the tables say', () => {
    for (const row of published('steam/atmosphere.csv').rows) {
      const p = standardPressure_Pa(row.number('H_m'))
      row.agrees('p_Pa', p)
      row.agrees('boil_C', boilingPoint_K(row.number('H_m')) - 273.15)
      row.agrees('at70_C', saturationTemp_K(p + 70e3) - 273.15)
      row.agrees('at75_C', saturationTemp_K(p + 75e3) - 273.15)
      row.agrees('at80_C', saturationTemp_K(p + 80e3) - 273.15)
      row.agrees('at10342_C', saturationTemp_K(p + 103.42e3) - 273.15)
    }
  })
  it('tells geometric from geopotential height', () => {
    for (const row of published('steam/geometric-height.csv').rows) {
      row.agrees('p_Pa', standardPressure_Pa(geopotentialFromHeight_m(row.number('height_m'))))
    }
    for (const h of [-400, 0, 1, 1609, 8848]) {
      expect(heightFromGeopotential_m(geopotentialFromHeight_m(h))).toBeCloseTo(h, 8)
      expect(standardAltitude_m(standardPressure_Pa(h))).toBeCloseTo(h, 7)
    }
  })
  it('agrees with the canning guide within its own straight line', () => {
    for (const row of published('steam/altitude-boiling.csv').rows) {
      row.agrees('t_C', boilingPoint_K(row.number('height_ft') * 0.3048) - 273.15)
    }
  })
  it('refuses the stratosphere and no number', () => {
    for (const h of [11001, -2001, Number.NaN]) expect(() => standardPressure_Pa(h)).toThrow(RangeError)
    expect(() => standardAltitude_m(2e4)).toThrow(RangeError)
  })
})

/** The textbook's rigid pot: steam leaves at the boiling temperature while heat goes in; what stays? */
function textbookPot(): { first: number; left_kg: number; T: number } {
  const V = 6e-3
  const T = saturationTemp_K(175e3)
  const vf = 1 / saturatedLiquidDensity_kg_per_m3(T)
  const vg = 1 / saturatedVapourDensity_kg_per_m3(T)
  const quality = (m: number) => (V / m - vf) / (vg - vf)
  const energy = (m: number) => {
    const x = quality(m)
    return m * (saturatedLiquidEnergy_J_per_kg(T) * (1 - x) + saturatedVapourEnergy_J_per_kg(T) * x)
  }
  const hg = saturatedVapourEnthalpy_J_per_kg(T)
  const heat_J = 500 * 1800
  const left_kg = provedRoot((m) => energy(m) - energy(1) - heat_J + (1 - m) * hg, {
    low: 0.1,
    high: 1,
    tolerance: 1e-9,
  })
  return { first: quality(1), left_kg, T }
}

describe('the air and steam inside', () => {
  it('agree with what was worked out for closed pots', () => {
    const pot = textbookPot()
    const celsius = (T: number) => T - 273.15
    const T118 = 118 + 273.15
    const air_kg = airMass_kg({ pressure_Pa: 101.3e3, volume_m3: 3e-3, temperature_K: 293.15 })
    const air_Pa = airPressure_Pa({ mass_kg: air_kg, volume_m3: 3e-3, temperature_K: T118 })
    const total_Pa = 181.3e3
    const sensible = (m: number) =>
      (m *
        (saturatedLiquidEnthalpy_J_per_kg(T118) -
          liquidEnthalpy_J_per_kg({ temperature_K: 293.15, pressure_Pa: 101325 }))) /
      1e3
    // Steam leaves as it forms, always at the temperature of the moment: d ln m = dh / hfg.
    let flashed = 0
    for (let t = 100.005; t < 117; t += 0.01) {
      const T = t + 273.15
      const dh = saturatedLiquidEnthalpy_J_per_kg(T + 0.005) - saturatedLiquidEnthalpy_J_per_kg(T - 0.005)
      flashed += dh / latentHeat_J_per_kg(T)
    }
    const T150 = saturationTemp_K(150e3)
    const vg = 1 / saturatedVapourDensity_kg_per_m3(T150)
    const discharge = (0.6e-3 * saturatedLiquidDensity_kg_per_m3(T150)) / 2400
    const hg = saturatedVapourEnthalpy_J_per_kg(T150)
    const computed: Record<string, number> = {
      'boiling at 175 kPa (C)': celsius(pot.T),
      'first quality': pot.first,
      'water left (kg)': pot.left_kg,
      'air sealed at 20 C and 101.3 kPa at 118 C (kPa)': air_Pa / 1e3,
      'steam at 80 kPa gauge above that air (C)': celsius(
        headspaceTemp_K({ pressure_Pa: total_Pa, air_share: airShare({ air_Pa, total_Pa }) }),
      ),
      '5 % air at 181.3 kPa (C)': celsius(headspaceTemp_K({ pressure_Pa: total_Pa, air_share: 0.05 })),
      '10 % air at 181.3 kPa (C)': celsius(headspaceTemp_K({ pressure_Pa: total_Pa, air_share: 0.1 })),
      '20 % air at 181.3 kPa (C)': celsius(headspaceTemp_K({ pressure_Pa: total_Pa, air_share: 0.2 })),
      'no air at 181.3 kPa (C)': celsius(headspaceTemp_K({ pressure_Pa: total_Pa, air_share: 0 })),
      'flash from 117 to 100 C (%)': -100 * Math.expm1(-flashed),
      'steam in 3 L at 117 C (g)': 3 * saturatedVapourDensity_kg_per_m3(390.15),
      'heat of 1 kg from 20 to 118 C (kJ)': sensible(1),
      'heat of 2 kg from 20 to 118 C (kJ)': sensible(2),
      'heat of 3 kg from 20 to 118 C (kJ)': sensible(3),
      'boil-down per net kW (g/min)': (1000 * 60 * 1000) / latentHeat_J_per_kg(saturationTemp_K(101325)),
      'steam discharge 0.6 L in 40 min at 150 kPa (g/s)': discharge * 1e3,
      'its speed through 8 mm2 (m/s)': (discharge * vg) / 8e-6,
      'its flow energy (kJ/kg)': (150e3 * vg) / 1e3,
      'its enthalpy (kJ/kg)': hg / 1e3,
    }
    for (const row of published('steam/closed-pot.csv').rows) {
      const value = computed[row.text('quantity')]
      expect(value, row.text('quantity')).toBeDefined()
      row.agrees('value', value)
    }
  })
  it('comes back from mass to pressure', () => {
    const at = { volume_m3: 4e-3, temperature_K: 350 }
    expect(airPressure_Pa({ ...at, mass_kg: airMass_kg({ ...at, pressure_Pa: 5e4 }) })).toBeCloseTo(5e4, 6)
  })
  it('refuses a headspace of air alone, and no number', () => {
    expect(() => headspaceTemp_K({ pressure_Pa: 1e5, air_share: 1 })).toThrow(RangeError)
    expect(() => airShare({ air_Pa: 2e5, total_Pa: 1e5 })).toThrow(RangeError)
    expect(() => airMass_kg({ pressure_Pa: Number.NaN, volume_m3: 1, temperature_K: 300 })).toThrow(RangeError)
  })
})
