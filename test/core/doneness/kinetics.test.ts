import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  activation_J_per_mol,
  activationFromTimes_J_per_mol,
  arrheniusRate_per_s,
  cookValueRate,
  matchingTemp_K,
  rateFromReduction_per_s,
  zFromActivation_dK,
  zFromTimes_dK,
  zRate_per_s,
} from '../../../src/core/doneness/index.ts'
import { published } from '../../support/published.ts'

const K = (celsius: number) => celsius + 273.15
const buffer = [
  { temperature_K: K(115.6), time_s: 1.3 * 60 },
  { temperature_K: K(110), time_s: 4.4 * 60 },
  { temperature_K: K(104.4), time_s: 17.6 * 60 },
]
const juice = [
  { temperature_K: K(115.6), time_s: 0.4 * 60 },
  { temperature_K: K(110), time_s: 1.6 * 60 },
  { temperature_K: K(104.4), time_s: 6.0 * 60 },
]

describe('rates and their two languages', () => {
  it('agree with what papers print', () => {
    const match = (z_dK: number, kJ: number) => matchingTemp_K({ z_dK, activation_J_per_mol: kJ * 1e3 }) - 273.15
    const ratio = (z_dK: number) =>
      zRate_per_s({ reference_per_s: 1, reference_K: K(100), z_dK, temperature_K: K(118) })
    const ea = (z_dK: number) => activation_J_per_mol({ z_dK, low_K: K(100), high_K: K(118) }) / 1e3
    const z = (kJ: number) => zFromActivation_dK({ activation_J_per_mol: kJ * 1e3, low_K: K(100), high_K: K(118) })
    const zBuffer = zFromTimes_dK(buffer)
    // The line through the three points passes through their means.
    const meanLog = buffer.reduce((s, p) => s + Math.log10(p.time_s / 60), 0) / 3
    const computed: Record<string, number> = {
      'bean hardness: z 21.3 and Ea 130.8 match at (C)': match(21.3, 130.8),
      'bean appearance: z 24.3 and Ea 118.7 match at (C)': match(24.3, 118.7),
      'pea colour: z 26.4 and Ea 102.4 match at (C)': match(26.4, 102.4),
      'pea hardness: z 28.5 and Ea 94.9 match at (C)': match(28.5, 94.9),
      '30 min at 336 K as 15 s at 347 K (kJ/mol)':
        activationFromTimes_J_per_mol({ first_K: 336, first_s: 1800, second_K: 347, second_s: 15 }) / 1e3,
      'spores in buffer z (K)': zBuffer,
      'spores in tomato juice z (K)': zFromTimes_dK(juice),
      'spores in buffer D at 121.1 C (min)': 10 ** (meanLog - (121.1 - 110) / zBuffer),
      'ratio 118:100 C at z 25': ratio(25),
      'ratio 118:100 C at z 28': ratio(28),
      'ratio 118:100 C at z 30': ratio(30),
      'ratio 118:100 C at z 33': ratio(33),
      'Ea of z 25 between 100 and 118 C (kJ/mol)': ea(25),
      'Ea of z 28 between 100 and 118 C (kJ/mol)': ea(28),
      'Ea of z 30 between 100 and 118 C (kJ/mol)': ea(30),
      'Ea of z 33 between 100 and 118 C (kJ/mol)': ea(33),
      'z of 117 kJ/mol between 100 and 118 C (K)': z(117),
      'z of 63 kJ/mol between 100 and 118 C (K)': z(63),
      'z of 71 kJ/mol between 100 and 118 C (K)': z(71),
    }
    for (const row of published('doneness/conversions.csv').rows) {
      expect(computed[row.text('quantity')], row.text('quantity')).toBeDefined()
      row.agrees('value', computed[row.text('quantity')])
    }
  })
  it('come back, and agree where they were matched', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 80, noNaN: true }),
        fc.double({ min: 300, max: 380, noNaN: true }),
        fc.double({ min: 1, max: 60, noNaN: true }),
        (z_dK, low_K, rise) => {
          const high_K = low_K + rise
          const Ea = activation_J_per_mol({ z_dK, low_K, high_K })
          const back = zFromActivation_dK({ activation_J_per_mol: Ea, low_K, high_K })
          const rate = { reference_per_s: 1e-3, reference_K: low_K, temperature_K: high_K }
          const a = arrheniusRate_per_s({ ...rate, activation_J_per_mol: Ea })
          const z = zRate_per_s({ ...rate, z_dK })
          // The time of the same work gives the energy back.
          const again = activationFromTimes_J_per_mol({
            first_K: low_K,
            first_s: a / 1e-3,
            second_K: high_K,
            second_s: 1,
          })
          return Math.abs(back / z_dK - 1) < 1e-12 && Math.abs(a / z - 1) < 1e-9 && Math.abs(again / Ea - 1) < 1e-9
        },
      ),
    )
    const line = [0, 1, 2, 3].map((i) => ({ temperature_K: 370 + 4 * i, time_s: 100 * 10 ** (-(4 * i) / 17) }))
    expect(zFromTimes_dK(line)).toBeCloseTo(17, 10)
    expect(rateFromReduction_per_s(10) * 10).toBeCloseTo(Math.LN10, 12)
    expect(cookValueRate(373.15)).toBe(1)
    expect(cookValueRate(373.15 + 33.1)).toBeCloseTo(10, 10)
  })
  it('refuse what makes no sense', () => {
    expect(() => zFromTimes_dK([buffer[0]])).toThrow(RangeError)
    expect(() => zFromTimes_dK([buffer[0], buffer[0]])).toThrow(/spread of temperatures/)
    expect(() => matchingTemp_K({ z_dK: 0, activation_J_per_mol: 1 })).toThrow(RangeError)
    expect(() => activationFromTimes_J_per_mol({ first_K: 300, first_s: 1, second_K: 300, second_s: 2 })).toThrow(
      RangeError,
    )
    expect(() => zRate_per_s({ reference_per_s: 1, reference_K: 373, z_dK: Number.NaN, temperature_K: 373 })).toThrow(
      RangeError,
    )
    expect(() => rateFromReduction_per_s(0)).toThrow(RangeError)
  })
})
