import { describe, expect, it } from 'vitest'
import {
  acidPace,
  browningRate_per_s,
  type Cut,
  chlorophyllRate_per_s,
  collagenAt100,
  collagenBand,
  collagenRate_per_s,
  collagenTable,
  collagenTurned,
  collagenZ_dK,
  fastShare,
  meatWaterHeld,
  meatWaterRate_per_s,
  meatWord,
  meatWords,
  myoglobinRate_per_s,
  plantBand,
  plantFirmness,
  plantRate_per_s,
  plantTable,
  plantWord,
  plantWords,
  riceRate_per_s,
  slowTimes,
  starchStep,
  starchSwells,
  swelling,
  type Tissue,
  tissues,
  zRate_per_s,
} from '../../../src/core/doneness/index.ts'
import { published } from '../../support/published.ts'

const K = (celsius: number) => celsius + 273.15

describe('collagen', () => {
  it('takes the minutes that the assumed rates say', () => {
    for (const row of published('doneness/collagen.csv').rows) {
      const minutes = (celsius: number) => -Math.log(0.3) / collagenRate_per_s(K(celsius), row.text('cut') as Cut) / 60
      for (const t of [95, 100, 115, 117, 120]) row.agrees(`at${t}`, minutes(t))
    }
  })
  it('reads its table within 1e-5 of the law, and any other constants too', () => {
    const c = { at100_per_s: 1e-4, z_dK: 25 }
    const table = collagenTable(c)
    for (let T = 273.2; T < 433; T += 0.47) {
      const law = (at100: number, z_dK: number) =>
        zRate_per_s({ reference_per_s: at100, reference_K: 373.15, z_dK, temperature_K: T })
      expect(Math.abs(table(T) / law(1e-4, 25) - 1)).toBeLessThan(2e-5)
      expect(
        Math.abs(collagenRate_per_s(T, 'chuck') / law(collagenAt100.chuck.value, collagenZ_dK.value) - 1),
      ).toBeLessThan(1e-5)
    }
    expect(() => collagenRate_per_s(500, 'chuck')).toThrow(RangeError)
    expect(() => collagenRate_per_s(Number.NaN, 'chuck')).toThrow(RangeError)
  })
  it('turns first order, with a band and words', () => {
    expect(collagenTurned(0)).toBe(0)
    expect(collagenTurned(Math.LN2)).toBeCloseTo(0.5, 12)
    const [low, high] = collagenBand(0.7, 'chuck')
    expect(low).toBeGreaterThan(0.55)
    expect(low).toBeLessThan(0.7)
    expect(high).toBeGreaterThan(0.7)
    expect(high).toBeLessThan(0.82)
    expect([0, 0.34, 0.35, 0.69, 0.7, 0.89, 0.9, 1].map(meatWord)).toEqual([
      'tough',
      'tough',
      'chewy',
      'chewy',
      'tender',
      'tender',
      'falls apart',
      'falls apart',
    ])
    expect(meatWords[0].from).toBe(0)
  })
})

describe('plants', () => {
  it('take the minutes that beans were measured to take', () => {
    for (const row of published('doneness/beans.csv').rows) {
      row.agrees('minutes', -Math.log(row.number('left')) / plantRate_per_s(K(row.number('t_C')), 'bean') / 60)
    }
  })
  it('stand in the middle of the papers', () => {
    const rows = published('doneness/tissues.csv').rows
    for (const tissue of ['carrot', 'onion', 'fibrous', 'bean'] as const) {
      const own = rows.filter((r) => r.text('food') === tissue)
      const rates = own.map((r) => r.number('at100_per_min'))
      const ours = tissues[tissue].at100_per_s.value * 60
      expect(ours).toBeGreaterThanOrEqual(Math.min(...rates) * 0.95)
      expect(ours).toBeLessThanOrEqual(Math.max(...rates) * 1.05)
      const energies = own.map((r) => r.number('activation_kJ_per_mol'))
      const Ea = tissues[tissue].activation_J_per_mol.value / 1e3
      expect(Ea).toBeGreaterThanOrEqual(Math.min(...energies) * 0.95)
      expect(Ea).toBeLessThanOrEqual(Math.max(...energies) * 1.05)
    }
    const carrots = rows.filter((r) => r.text('food') === 'carrot').map((r) => r.number('at100_per_min'))
    const mean = Math.exp(carrots.reduce((s, k) => s + Math.log(k), 0) / carrots.length)
    expect(Math.abs(tissues.carrot.at100_per_s.value * 60 - mean)).toBeLessThan(0.02)
  })
  it('read their tables as near the law as straight lines over 0.1 K can', () => {
    for (const tissue of Object.keys(tissues) as Tissue[]) {
      const { at100_per_s, activation_J_per_mol } = tissues[tissue]
      const fine = plantTable({ at100_per_s: at100_per_s.value, activation_J_per_mol: activation_J_per_mol.value })
      let before = 0
      for (let T = 273.2; T < 433; T += 0.47) {
        const law = at100_per_s.value * Math.exp((activation_J_per_mol.value / 8.314462618) * (1 / 373.15 - 1 / T))
        const rate = plantRate_per_s(T, tissue)
        const bend = (0.1 * activation_J_per_mol.value) / (8.314462618 * T * T)
        expect(Math.abs(rate / law - 1)).toBeLessThan((1.02 * bend * bend) / 8 + 1e-9)
        if (T > 353) expect(Math.abs(rate / law - 1)).toBeLessThan(2.5e-5)
        expect(rate).toBeGreaterThan(before)
        expect(fine(T)).toBe(rate)
        before = rate
      }
    }
  })
  it('lose their firmness in two ways, so that a carrot never quite vanishes', () => {
    expect(plantFirmness(0)).toBe(1)
    expect(plantFirmness(20)).toBeGreaterThan(0.05)
    expect(plantFirmness(20, 1)).toBeLessThan(1e-8)
    // The papers' own ranges: 80–97 % fast, the rest 30–170 times slower.
    expect([fastShare.low, fastShare.high, slowTimes.low, slowTimes.high]).toEqual([0.8, 0.97, 30, 170])
    let before = 1.1
    for (let x = 0; x < 400; x += 0.5) {
      expect(plantFirmness(x)).toBeLessThan(before)
      before = plantFirmness(x)
    }
    const [low, high] = plantBand(1, 'carrot')
    expect(low).toBeLessThan(plantFirmness(1))
    expect(high).toBeGreaterThan(plantFirmness(1))
  })
  it('have words that a cook would use', () => {
    const wordAfter = (minutes: number, celsius: number, tissue: Tissue) =>
      plantWord(plantFirmness(plantRate_per_s(K(celsius), tissue) * minutes * 60), tissue)
    expect(wordAfter(0, 100, 'carrot')).toBe('raw')
    expect(wordAfter(5, 100, 'carrot')).toBe('crisp')
    expect(wordAfter(15, 100, 'carrot')).toBe('tender')
    expect(wordAfter(45, 100, 'carrot')).toBe('soft')
    expect(wordAfter(60, 117, 'carrot')).toBe('gone')
    // Soaked beans at 117 °C: the appliance manuals' 7 to 10 min and a natural release.
    expect(wordAfter(15, 117, 'bean')).toBe('tender')
    expect(wordAfter(30, 100, 'bean')).toBe('crisp')
    expect(plantWords('bean').map((w) => w.word)).toEqual(plantWords().map((w) => w.word))
    expect(plantWord(1)).toBe('raw')
    expect(plantWord(0)).toBe('gone')
  })
  it('hold out in acid and give in to soda', () => {
    expect(acidPace(6)).toBe(1)
    expect(acidPace(4)).toBeCloseTo(0.35, 12)
    expect(acidPace(8)).toBeCloseTo(2, 12)
    let before = 0
    for (let pH = 2; pH <= 10; pH += 0.1) {
      expect(acidPace(pH)).toBeGreaterThanOrEqual(before)
      before = acidPace(pH)
    }
    expect(() => acidPace(1)).toThrow(RangeError)
  })
})

describe('meat', () => {
  it('turns from red at the published rate', () => {
    for (const row of published('doneness/meat.csv').rows) {
      row.agrees('per_min', myoglobinRate_per_s(K(row.number('t_C'))) * 60)
    }
    // To 6.5 % at 63 °C in "about a minute".
    expect(-Math.log(1 - 0.065) / myoglobinRate_per_s(K(63)) / 60).toBeCloseTo(0.98, 2)
  })
  it('holds less water the hotter it gets, and yields what braises yield', () => {
    let before = 1
    for (let T = 253.15; T < 433; T += 0.5) {
      expect(meatWaterHeld(T)).toBeLessThanOrEqual(before)
      before = meatWaterHeld(T)
    }
    expect(meatWaterHeld(K(5))).toBeCloseTo(0.7, 3)
    const left = 1 - (0.7 - meatWaterHeld(K(95))) * -Math.expm1(-meatWaterRate_per_s * 7200)
    for (const row of published('doneness/yields.csv').rows) row.agrees('value', left)
  })
})

describe('colour', () => {
  it('of green leaves goes at the published rate, faster in acid', () => {
    for (const row of published('doneness/colour.csv').rows) {
      row.agrees('D_min', Math.LN10 / chlorophyllRate_per_s(K(row.number('t_C'))) / 60)
    }
    expect(chlorophyllRate_per_s(373.15, 4.5) / chlorophyllRate_per_s(373.15)).toBeCloseTo(4, 10)
    expect(() => chlorophyllRate_per_s(373.15, 12)).toThrow(RangeError)
  })
  it('of a dry face doubles every 15 K, and hardly starts at the boil', () => {
    expect(browningRate_per_s(453.15) * 70).toBeCloseTo(1, 12)
    expect(browningRate_per_s(468.15) / browningRate_per_s(453.15)).toBeCloseTo(2, 12)
    expect(browningRate_per_s(373.15) * 600).toBeLessThan(0.3)
    expect(() => browningRate_per_s(Number.NaN)).toThrow(RangeError)
  })
})

describe('starch and rice', () => {
  it('swells over its range, and never goes back', () => {
    for (const [kind, { from_K, to_K }] of Object.entries(swelling) as [
      keyof typeof swelling,
      { from_K: number; to_K: number },
    ][]) {
      expect(starchSwells(from_K, kind)).toBe(0)
      expect(starchSwells(to_K, kind)).toBe(1)
      expect(starchSwells((from_K + to_K) / 2, kind)).toBeCloseTo(0.5, 12)
    }
    let swollen = 0
    for (let t = 0; t < 120; t += 5) swollen = starchStep({ swollen, temperature_K: 363.15, step_s: 5, kind: 'maize' })
    expect(swollen).toBeGreaterThan(0.95)
    expect(starchStep({ swollen, temperature_K: 290, step_s: 1e4, kind: 'maize' })).toBe(swollen)
    // One long step is many short ones.
    const one = starchStep({ swollen: 0, temperature_K: 363.15, step_s: 60, kind: 'rice' })
    let many = 0
    for (let i = 0; i < 60; i++) many = starchStep({ swollen: many, temperature_K: 363.15, step_s: 1, kind: 'rice' })
    expect(one).toBeCloseTo(many, 12)
  })
  it('rice doubles its pace in ten kelvin, less above the break, without a step', () => {
    for (const row of published('doneness/starch.csv').rows) {
      row.agrees('ratio', riceRate_per_s(K(row.number('to_C'))) / riceRate_per_s(K(row.number('from_C'))))
    }
    expect(riceRate_per_s(K(105.1)) / riceRate_per_s(K(104.9))).toBeLessThan(1.02)
    const below = riceRate_per_s(K(104)) / riceRate_per_s(K(99))
    const above = riceRate_per_s(K(111)) / riceRate_per_s(K(106))
    expect(above).toBeLessThan(below)
    expect(-Math.log(0.1) / riceRate_per_s(373.15) / 60).toBeCloseTo(15.4, 1)
  })
})
