import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Component, componentProperties, levy, thermalProperties } from '../../../src/core/heat/index.ts'
import { published, type Row } from '../../support/published.ts'

const fractions = (row: Row) => ({
  water: row.number('water'),
  protein: row.number('protein'),
  fat: row.number('fat'),
  carbohydrate: row.number('carbohydrate'),
  fibre: row.number('fibre'),
  ash: row.number('ash'),
})
const meat = (row: Row) => ({
  water: row.number('water'),
  protein: row.number('protein'),
  fat: row.number('fat'),
  carbohydrate: 0,
  fibre: 0,
  ash: row.number('ash'),
})

describe('thermal properties', () => {
  it('of the components agree with Choi & Okos', () => {
    for (const row of published('heat/components.csv').rows) {
      const p = componentProperties(row.text('component') as Component, row.number('t_C') + 273.15)
      row.agrees('k', p.k_W_per_mK)
      row.agrees('rho', p.rho_kg_per_m3)
      row.agrees('cp_kJ', p.cp_J_per_kgK / 1e3)
    }
  })
  it('of mixtures agree with the rules of mixing', () => {
    for (const row of published('heat/mixtures.csv').rows) {
      const p = thermalProperties(fractions(row), row.number('t_C') + 273.15)
      row.agrees('rho', p.rho_kg_per_m3)
      row.agrees('k_parallel', p.kParallel_W_per_mK)
      row.agrees('k_perpendicular', p.kPerpendicular_W_per_mK)
      row.agrees('cp_kJ', p.cp_J_per_kgK / 1e3)
      row.agrees('alpha_parallel', p.kParallel_W_per_mK / (p.rho_kg_per_m3 * p.cp_J_per_kgK))
    }
  })
  it('of meat agree with what was measured', () => {
    for (const row of published('heat/meat-heat-capacity.csv').rows) {
      row.agrees('cp_kJ', thermalProperties(meat(row), row.number('t_C') + 273.15).cp_J_per_kgK / 1e3)
    }
    const chicken = { water: 0.745, protein: 0.235, fat: 0.01, carbohydrate: 0, fibre: 0, ash: 0.01 }
    for (const row of published('heat/chicken-conductivity.csv').rows) {
      const p = thermalProperties(chicken, row.number('t_C') + 273.15)
      row.agrees('k', p.k_W_per_mK)
      // The measured value lies between the bounds.
      expect(row.number('k')).toBeGreaterThan(p.kPerpendicular_W_per_mK)
      expect(row.number('k')).toBeLessThan(p.kParallel_W_per_mK)
    }
  })
  it('lie between their bounds, finite, for any food and temperature', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true })
    fc.assert(
      fc.property(
        fc.array(part, { minLength: 7, maxLength: 7 }),
        fc.double({ min: 233.15, max: 423.15, noNaN: true }),
        fc.boolean(),
        (raw, T, icy) => {
          const sum = raw.reduce((a, b) => a + b, 1e-6)
          const [water, protein, fat, carbohydrate, fibre, ash, other] = raw.map((x) => x / sum)
          const food = { water: water + 1e-6 / sum, protein, fat, carbohydrate, fibre, ash }
          const frozen = icy && T < 273.15
          const p = thermalProperties(frozen ? { ...food, ice: other } : { ...food, alcohol: other }, T)
          return (
            p.k_W_per_mK >= p.kPerpendicular_W_per_mK * (1 - 1e-12) &&
            p.k_W_per_mK <= p.kParallel_W_per_mK * (1 + 1e-12) &&
            p.rho_kg_per_m3 > 670 &&
            p.rho_kg_per_m3 < 2450 &&
            p.cp_J_per_kgK > 800 &&
            p.cp_J_per_kgK < 7700
          )
        },
      ),
      { numRuns: 500 },
    )
  })
  it('refuse ice above freezing, missing parts, and no number', () => {
    const beef = { water: 0.745, protein: 0.21, fat: 0.035, carbohydrate: 0, fibre: 0, ash: 0.01 }
    expect(() => componentProperties('ice', 280)).toThrow(RangeError)
    expect(() => thermalProperties(beef, 430)).toThrow(RangeError)
    expect(() => thermalProperties({ ...beef, water: 0.5 }, 300)).toThrow(/sum of the fractions/)
    expect(() => thermalProperties({ ...beef, water: Number.NaN }, 300)).toThrow(RangeError)
  })
})

describe("Levy's law", () => {
  it('does not care which phase is called first', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        fc.double({ min: 0.01, max: 3, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (k1_W_per_mK, k2_W_per_mK, volumeShare2) => {
          const a = levy({ k1_W_per_mK, k2_W_per_mK, volumeShare2 })
          const b = levy({ k1_W_per_mK: k2_W_per_mK, k2_W_per_mK: k1_W_per_mK, volumeShare2: 1 - volumeShare2 })
          return Math.abs(a / b - 1) < 1e-7
        },
      ),
    )
  })
  it('ends at the pure phases', () => {
    expect(levy({ k1_W_per_mK: 0.6, k2_W_per_mK: 0.2, volumeShare2: 0 })).toBeCloseTo(0.6, 10)
    expect(levy({ k1_W_per_mK: 0.6, k2_W_per_mK: 0.2, volumeShare2: 1 })).toBeCloseTo(0.2, 10)
    expect(levy({ k1_W_per_mK: 0.5, k2_W_per_mK: 0.5, volumeShare2: 0.3 })).toBe(0.5)
  })
})
