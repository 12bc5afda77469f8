import { describe, expect, it } from 'vitest'
import {
  type Body,
  biotNumber,
  bodyCentreLeft,
  bodyMeanLeft,
  centreTime_s,
  coefficient,
  eigenvalues,
  fourierNumber,
  lumpedTemp_K,
  type PlainShape,
  seriesLeft,
  seriesMeanLeft,
} from '../../../src/core/heat/index.ts'
import { published } from '../../support/published.ts'

const shapes: readonly PlainShape[] = ['slab', 'cylinder', 'sphere']

describe('the series of plain shapes', () => {
  it('has the eigenvalues and coefficients of the textbook', () => {
    // The reader takes no infinite number: its row is read as text.
    for (const row of published('heat/eigenvalues.csv').rows) {
      const biot = Number(row.text('biot'))
      for (const shape of shapes) {
        const z = eigenvalues(shape, biot, 1)[0]
        row.agrees(shape, z)
        row.agrees(`${shape}_C`, coefficient(shape, z))
      }
    }
  })
  it('has the further roots', () => {
    for (const row of published('heat/roots.csv').rows) {
      const roots = eigenvalues(row.text('shape') as PlainShape, row.number('biot'), 4)
      for (let i = 0; i < 4; i++) row.agrees(`z${i + 1}`, roots[i])
    }
  })
  it('misses no root: one in every interval, for Biot from 1e-6 to 1e6', () => {
    for (const shape of shapes) {
      for (const biot of [1e-6, 1e-3, 0.3, 0.999999, 1, 1.000001, 7, 1e3, 1e6, Infinity]) {
        const z = eigenvalues(shape, biot, 40)
        for (let i = 1; i < 40; i++) {
          const gap = z[i] - z[i - 1]
          expect(gap, `${shape} ${biot} ${i}`).toBeGreaterThan(i === 1 ? 2 : 2.8)
          expect(gap, `${shape} ${biot} ${i}`).toBeLessThan(i === 1 ? 4.6 : 3.6)
        }
      }
    }
  })
  it('has the temperatures at small, middle and large times', () => {
    for (const row of published('heat/series.csv').rows) {
      const at = { shape: row.text('shape') as PlainShape, biot: row.number('biot'), fourier: row.number('fourier') }
      row.agrees('centre', seriesLeft({ ...at, place: 0 }))
      row.agrees('surface', seriesLeft({ ...at, place: 1 }))
    }
  })
  it('starts from rest as a half-space does', () => {
    // exp(b²) erfc(b) with b = Bi √Fo; erfc by its series.
    const half = (b: number) => {
      let erf = 0
      let term = b
      for (let n = 0; n < 60; n++) {
        erf += term / (2 * n + 1)
        term *= (-b * b) / (n + 1)
      }
      return Math.exp(b * b) * (1 - (2 / Math.sqrt(Math.PI)) * erf)
    }
    for (const fourier of [1e-5, 1e-4, 1e-3]) {
      for (const biot of [0.1, 1, 10, 30]) {
        const surface = seriesLeft({ shape: 'slab', biot, fourier, place: 1 })
        expect(Math.abs(surface - half(biot * Math.sqrt(fourier)))).toBeLessThan(1e-10)
        for (const shape of shapes) {
          expect(Math.abs(seriesLeft({ shape, biot, fourier, place: 0 }) - 1)).toBeLessThan(1e-9)
        }
      }
    }
    expect(seriesLeft({ shape: 'sphere', biot: 3, fourier: 0, place: 0.5 })).toBe(1)
    expect(() => seriesLeft({ shape: 'slab', biot: 3, fourier: 1e-8, place: 1 })).toThrow(/terms/)
  })
  it('gives off at its surface what its mean loses', () => {
    for (const shape of shapes) {
      const exponent = shapes.indexOf(shape)
      for (const biot of [0.2, 2, 20]) {
        for (const fourier of [0.01, 0.1, 0.6]) {
          const d = 1e-5
          const slope =
            (seriesMeanLeft({ shape, biot, fourier: fourier + d }) -
              seriesMeanLeft({ shape, biot, fourier: fourier - d })) /
            (2 * d)
          const film = (exponent + 1) * biot * seriesLeft({ shape, biot, fourier, place: 1 })
          expect(Math.abs(slope / -film - 1)).toBeLessThan(1e-5)
        }
      }
    }
  })
  it('becomes a lumped body as the Biot number falls', () => {
    for (const shape of shapes) {
      const n = shapes.indexOf(shape) + 1
      for (const biot of [1e-2, 1e-3, 1e-4]) {
        const fourier = 0.5 / (n * biot)
        const lumped = lumpedTemp_K({ start_K: 1, bath_K: 0, tau_s: 1 / (n * biot), time_s: fourier })
        expect(Math.abs(seriesMeanLeft({ shape, biot, fourier }) - lumped)).toBeLessThan(0.15 * biot)
      }
    }
    expect(lumpedTemp_K({ start_K: 300, bath_K: 400, tau_s: 10, time_s: 0 })).toBe(300)
    expect(lumpedTemp_K({ start_K: 300, bath_K: 400, tau_s: 10, time_s: Infinity })).toBe(400)
    expect(() => lumpedTemp_K({ start_K: 300, bath_K: 400, tau_s: 0, time_s: 1 })).toThrow(RangeError)
  })
})

const egg = (diameter_m: number, k: number, alpha: number, film: number): Body => ({
  shape: 'sphere',
  thickness_m: diameter_m,
  k_W_per_mK: k,
  alpha_m2_per_s: alpha,
  film_W_per_m2K: film,
})

/** Time of the first term alone, as textbooks take it. */
function oneTerm_s(b: Body, left: number): number {
  const r = b.thickness_m / 2
  const z = eigenvalues(
    'sphere',
    biotNumber({ film_W_per_m2K: b.film_W_per_m2K, size_m: r, k_W_per_mK: b.k_W_per_mK }),
    1,
  )[0]
  return (Math.log(coefficient('sphere', z) / left) / (z * z) / b.alpha_m2_per_s) * r * r
}

describe('worked examples', () => {
  it('agree with the textbook', () => {
    const small = egg(0.05, 0.627, 0.151e-6, 1200)
    const large = egg(0.055, 0.6, 0.14e-6, 1400)
    const to70 = { start_K: 278.15, bath_K: 368.15, target_K: 343.15 }
    const seconds = centreTime_s({ ...small, ...to70 })
    const plate = {
      shape: 'slab' as const,
      biot: (120 * 0.02) / 110,
      fourier: fourierNumber({ alpha_m2_per_s: 33.9e-6, time_s: 420, size_m: 0.02 }),
    }
    // Mass and heat capacity of the brass as the book has them: 8530 kg/m3, 380 J/(kg K).
    const lumped = lumpedTemp_K({ start_K: 20, bath_K: 500, tau_s: (8530 * 380 * 0.02) / 120, time_s: 420 })
    const shaft = {
      shape: 'cylinder' as const,
      biot: (80 * 0.1) / 14.9,
      fourier: fourierNumber({ alpha_m2_per_s: 3.95e-6, time_s: 2700, size_m: 0.1 }),
    }
    const shaftCentre = 200 + 400 * seriesLeft({ ...shaft, place: 0 })
    const given = 1 - seriesMeanLeft(shaft)
    // Steak: cos z = (2 + 15)/(8 + 15), Bi = z tan z, half thickness 15 mm.
    const z = Math.acos(17 / 23)
    const computed: Record<string, number> = {
      'egg of 5 cm to 70 C (s)': seconds,
      'egg of 5 cm to 70 C one term (s)': oneTerm_s(small, 25 / 90),
      'egg book (s)': seconds,
      'brass plate surface after 7 min (C)': 500 - 480 * seriesLeft({ ...plate, place: 1 }),
      'brass plate lumped (C)': lumped,
      'steel shaft centre after 45 min (C)': shaftCentre,
      'steel shaft centre book (C)': shaftCentre,
      'steel shaft share of heat given off': given,
      'steel shaft heat given off per metre (kJ)': (given * 7900 * 477 * Math.PI * 0.01 * 400) / 1e3,
      'egg of 5.5 cm to 70 C one term (min)': oneTerm_s(large, 27 / 89) / 60,
      'steak film from centre 8 C and surface 2 C (W/m2K)': (z * Math.tan(z) * 0.45) / 0.015,
    }
    for (const row of published('heat/warming.csv').rows) {
      expect(computed[row.text('quantity')], row.text('quantity')).toBeDefined()
      row.agrees('value', computed[row.text('quantity')])
    }
    // The steak's film gives back its own temperatures: long after the start only the first term is left.
    const steak = { shape: 'slab' as const, biot: z * Math.tan(z), fourier: 5 }
    expect(seriesLeft({ ...steak, place: 1 }) / seriesLeft({ ...steak, place: 0 })).toBeCloseTo(17 / 23, 10)
  })
  it('agree with the cooking times of pieces', () => {
    for (const row of published('heat/cooking-times.csv').rows) {
      const thickness_m = row.number('size_mm') / 1e3
      const minutes = (shape: Body['shape']) =>
        centreTime_s({
          shape,
          thickness_m,
          k_W_per_mK: 0.47,
          alpha_m2_per_s: 1.3e-7,
          film_W_per_m2K: 500,
          start_K: 278.15,
          bath_K: 391.15,
          target_K: 368.15,
        }) / 60
      row.agrees('slab', minutes('slab'))
      row.agrees('cylinder', minutes('cylinder'))
      row.agrees('cube', minutes('brick'))
      row.agrees('sphere', minutes('sphere'))
    }
  })
})

describe('products of plain shapes', () => {
  const base = { k_W_per_mK: 0.47, alpha_m2_per_s: 1.3e-7, film_W_per_m2K: 500 }
  it('a cube is a slab to the third power, a long brick a square rod, a thin coin a slab', () => {
    const t = 900
    const slab = bodyCentreLeft({ shape: 'slab', thickness_m: 0.04, ...base }, t)
    expect(bodyCentreLeft({ shape: 'brick', thickness_m: 0.04, ...base }, t)).toBeCloseTo(slab ** 3, 12)
    const rod = bodyCentreLeft({ shape: 'brick', thickness_m: 0.04, width_m: 0.04, length_m: 2, ...base }, t)
    expect(rod).toBeCloseTo(slab ** 2, 9)
    const coin = bodyCentreLeft({ shape: 'cylinder', thickness_m: 2, length_m: 0.04, ...base }, t)
    expect(coin).toBeCloseTo(slab, 9)
    const mean = bodyMeanLeft({ shape: 'slab', thickness_m: 0.04, ...base }, t)
    expect(bodyMeanLeft({ shape: 'brick', thickness_m: 0.04, ...base }, t)).toBeCloseTo(mean ** 3, 12)
  })
  it('time to a target grows as the size squared when the film is good', () => {
    const time = (thickness_m: number) =>
      centreTime_s({
        shape: 'brick',
        thickness_m,
        ...base,
        film_W_per_m2K: 1e6,
        start_K: 278,
        bath_K: 390,
        target_K: 368,
      })
    expect(time(0.06) / time(0.03)).toBeCloseTo(4, 2)
  })
  it('refuses a target that is never reached, and no size', () => {
    const p = { shape: 'sphere' as const, thickness_m: 0.05, ...base, start_K: 280, bath_K: 370 }
    for (const target_K of [280, 370, 400, 200, Number.NaN]) {
      expect(() => centreTime_s({ ...p, target_K })).toThrow(RangeError)
    }
    expect(() => centreTime_s({ ...p, thickness_m: 0, target_K: 300 })).toThrow(RangeError)
    expect(() => seriesLeft({ shape: 'slab', biot: 0, fourier: 1, place: 0 })).toThrow(RangeError)
    expect(() => seriesLeft({ shape: 'slab', biot: 1, fourier: 1, place: 1.1 })).toThrow(RangeError)
  })
})
