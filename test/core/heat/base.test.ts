import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  apparentViscosity_Pas,
  type BoilingProperties,
  boilingCoefficient_W_per_m2K3,
  boilingSuperheat_dK,
  criticalHeatFlux_W_per_m2,
  globeDropkin,
  hollands,
  layerNusseltExtrapolated,
  naturalConvection_W_per_m2K,
  nucleateBoilingFlux_W_per_m2,
  rohsenow,
  serumViscosityFactor,
  settlingTime_s,
  starchFactor,
  stokesRise_m_per_s,
  tomatoViscosity_Pas,
  viscosityAssumptions,
  zuber,
} from '../../../src/core/heat/index.ts'
import { saturatedLiquidViscosity_Pas, saturationTemp_K } from '../../../src/core/steam/index.ts'
import { published } from '../../support/published.ts'

/** The textbook's rounded properties of water at 100 °C. */
const bookWater: BoilingProperties = {
  viscosity_Pas: 0.282e-3,
  latent_J_per_kg: 2257e3,
  liquid_kg_per_m3: 957.9,
  vapour_kg_per_m3: 0.6,
  tension_N_per_m: 0.0589,
  cp_J_per_kgK: 4217,
  prandtl: 1.75,
}

describe('boiling', () => {
  it('agrees with the worked examples', () => {
    const q = rohsenow(bookWater) * 8 ** 3
    const pan_W = q * Math.PI * 0.15 ** 2
    const critical = zuber(bookWater, 0.12)
    const boil_K = saturationTemp_K(101325)
    const computed: Record<string, number> = {
      'Rohsenow example 10-1 (W/m2)': q,
      'Rohsenow recomputed (W/m2)': q,
      'its heat over a 30 cm pan (W)': pan_W,
      'its evaporation (kg/s)': pan_W / 2257e3,
      'critical flux example 10-2 (W/m2)': critical,
      'critical flux recomputed (W/m2)': critical,
      'surface at that flux (C over 100)': Math.cbrt(critical / rohsenow(bookWater)),
      'Zuber 0.131 at 1 atm (MW/m2)': criticalHeatFlux_W_per_m2(boil_K) / 1e6,
      'Lienhard 0.149 at 1 atm (MW/m2)': criticalHeatFlux_W_per_m2(boil_K, 0.149) / 1e6,
      'Zuber 0.131 at 118 C (MW/m2)': criticalHeatFlux_W_per_m2(391.15) / 1e6,
      'Lienhard 0.149 at 118 C (MW/m2)': criticalHeatFlux_W_per_m2(391.15, 0.149) / 1e6,
      'superheat of 1000 W over 22 cm (K)': boilingSuperheat_dK({
        flux_W_per_m2: 1000 / (Math.PI * 0.11 ** 2),
        saturation_K: boil_K,
      }),
    }
    for (const row of published('heat/boiling.csv').rows) {
      expect(computed[row.text('quantity')], row.text('quantity')).toBeDefined()
      row.agrees('value', computed[row.text('quantity')])
    }
  })
  it('comes back from flux to superheat, and thickens by the square', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 29, noNaN: true }),
        fc.double({ min: 300, max: 430, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (superheat_dK, saturation_K, viscosityFactor) => {
          const flux_W_per_m2 = nucleateBoilingFlux_W_per_m2({ superheat_dK, saturation_K, viscosityFactor })
          if (flux_W_per_m2 > 3e6) return true
          const thin = nucleateBoilingFlux_W_per_m2({ superheat_dK, saturation_K })
          const back = boilingSuperheat_dK({ flux_W_per_m2, saturation_K, viscosityFactor })
          return (
            Math.abs(back / superheat_dK - 1) < 1e-12 &&
            Math.abs(thin / flux_W_per_m2 / viscosityFactor ** 2 - 1) < 1e-12
          )
        },
      ),
    )
    // The square is Rohsenow's own: viscosity in front and, through Prandtl, under the cube.
    const thick = { ...bookWater, viscosity_Pas: 2 * bookWater.viscosity_Pas, prandtl: 2 * bookWater.prandtl }
    expect(rohsenow(bookWater) / rohsenow(thick)).toBeCloseTo(4, 12)
  })
  it('boils more readily under pressure, and refuses what it does not know', () => {
    let before = 0
    for (let T = 300; T < 433; T += 5) {
      const c = boilingCoefficient_W_per_m2K3(T)
      expect(c).toBeGreaterThan(before)
      before = c
    }
    expect(() => nucleateBoilingFlux_W_per_m2({ superheat_dK: -1, saturation_K: 373 })).toThrow(RangeError)
    expect(() => nucleateBoilingFlux_W_per_m2({ superheat_dK: Number.NaN, saturation_K: 373 })).toThrow(RangeError)
    expect(() => boilingCoefficient_W_per_m2K3(373, 0.5)).toThrow(RangeError)
    expect(() => boilingCoefficient_W_per_m2K3(500)).toThrow(RangeError)
  })
})

describe('natural convection', () => {
  it('agrees with what was worked out for the laws', () => {
    for (const row of published('heat/convection.csv').rows) {
      const at = { rayleigh: row.number('rayleigh'), prandtl: row.number('prandtl') }
      row.agrees('nusselt', row.text('law') === 'hollands' ? hollands(at.rayleigh) : globeDropkin(at))
    }
    for (const row of published('heat/water-layers.csv').rows) {
      const h = naturalConvection_W_per_m2K({
        liquor_K: row.number('t_C') + 273.15,
        difference_dK: row.number('difference_K'),
        depth_m: row.number('depth_m'),
      })
      row.agrees('h', h)
    }
  })
  it('has no step where one law passes into the other, and grows', () => {
    let fell = false
    let jumped = false
    for (const prandtl of [0.71, 1.5, 7, 100, 5000]) {
      let before = 0
      for (let log = 0; log < 29; log += 0.01) {
        const rayleigh = Math.exp(log)
        const nusselt = layerNusseltExtrapolated({ rayleigh, prandtl })
        fell ||= !(nusselt >= before * (1 - 1e-12))
        jumped ||= before > 0 && rayleigh > 4000 && nusselt / before > 1.02
        before = nusselt
      }
    }
    expect({ fell, jumped }).toEqual({ fell: false, jumped: false })
    expect(() => globeDropkin({ rayleigh: 1e5, prandtl: 1 })).toThrow(RangeError)
    expect(() => hollands(2e6)).toThrow(RangeError)
    expect(() => layerNusseltExtrapolated({ rayleigh: Number.NaN, prandtl: 1 })).toThrow(RangeError)
  })
  it('conducts through a resting layer, and forgets the depth of a lively one', () => {
    const still = naturalConvection_W_per_m2K({ liquor_K: 353.15, difference_dK: 0, depth_m: 0.05 })
    expect(still).toBeCloseTo(0.667 / 0.05, 0)
    const at = (depth_m: number) => naturalConvection_W_per_m2K({ liquor_K: 353.15, difference_dK: 10, depth_m })
    expect(at(0.16) / at(0.08)).toBeCloseTo(1, 10)
    const thick = naturalConvection_W_per_m2K({
      liquor_K: 353.15,
      difference_dK: 10,
      depth_m: 0.08,
      viscosity_Pas: 0.5,
    })
    expect(thick).toBeLessThan(at(0.08) / 5)
    expect(() =>
      naturalConvection_W_per_m2K({ liquor_K: 353.15, difference_dK: 1, depth_m: 0.05, viscosity_Pas: 1e-5 }),
    ).toThrow(/viscosity/)
  })
})

describe('viscosity', () => {
  it('meets the targets of the model', () => {
    for (const row of published('heat/viscosity.csv').rows) {
      const what = row.text('what')
      const share = row.number('share')
      const mu = apparentViscosity_Pas({
        temperature_K: row.number('t_C') + 273.15,
        shear_per_s: row.number('shear'),
        gelatin_kg_per_kg: what === 'gelatin' ? share : 0,
        starch_kg_per_kg: what === 'starch' ? share : 0,
        suspended_kg_per_kg: what === 'tomato' ? share : 0,
      })
      row.agrees('mu', mu)
    }
  })
  it('grows with every thickener and falls with temperature, finite to the dry end', () => {
    for (const key of ['gelatin_kg_per_kg', 'sugar_kg_per_kg', 'starch_kg_per_kg', 'suspended_kg_per_kg'] as const) {
      let before = 0
      for (let share = 0; share <= 1; share += 0.004) {
        const mu = apparentViscosity_Pas({ temperature_K: 383.15, [key]: share })
        expect(Number.isFinite(mu)).toBe(true)
        expect(mu).toBeGreaterThan(before)
        before = mu
      }
      let hotter = Infinity
      for (let T = 280; T < 430; T += 5) {
        const mu = apparentViscosity_Pas({ temperature_K: T, [key]: 0.03 })
        expect(mu).toBeLessThan(hotter)
        hotter = mu
      }
    }
    // No step where the granules begin to touch.
    let step = 1
    for (let s = 0.001; s < 0.1; s += 1e-5) step = Math.max(step, starchFactor(s + 1e-5) / starchFactor(s))
    expect(step).toBeLessThan(1.1)
  })
  it('thins under shear, and serum stays thin for a bubble', () => {
    const at = (shear_per_s: number) =>
      tomatoViscosity_Pas({ solids_kg_per_kg: 0.1, temperature_K: 383.15, shear_per_s })
    expect(at(30) / at(3)).toBeCloseTo(10 ** -0.57, 10)
    expect(serumViscosityFactor({})).toBe(1)
    expect(serumViscosityFactor({ gelatin_kg_per_kg: 0.01 })).toBeGreaterThan(1.3)
    expect(serumViscosityFactor({ gelatin_kg_per_kg: 0.1, sugar_kg_per_kg: 0.5 })).toBe(3)
    const water = saturatedLiquidViscosity_Pas(383.15)
    expect(apparentViscosity_Pas({ temperature_K: 383.15 }) / water).toBeCloseTo(
      viscosityAssumptions.brothFactor.value,
      5,
    )
  })
  it('names every assumption with a band around it', () => {
    for (const [name, a] of Object.entries(viscosityAssumptions)) {
      expect(a.source, name).toBe('assumed')
      expect(a.low, name).toBeLessThanOrEqual(a.value)
      expect(a.high, name).toBeGreaterThanOrEqual(a.value)
      expect(a.high, name).toBeGreaterThan(a.low)
    }
  })
  it('refuses shares that are none', () => {
    for (const share of [-0.01, 1.1, Number.NaN]) {
      expect(() => apparentViscosity_Pas({ temperature_K: 380, starch_kg_per_kg: share })).toThrow(RangeError)
      expect(() => apparentViscosity_Pas({ temperature_K: 380, suspended_kg_per_kg: share })).toThrow(RangeError)
      expect(() => serumViscosityFactor({ sugar_kg_per_kg: share })).toThrow(RangeError)
    }
  })
})

describe('settling', () => {
  const drop = { liquor_kg_per_m3: 960, drop_kg_per_m3: 900, viscosity_Pas: 0.3e-3 }
  it('agrees with Stokes', () => {
    for (const row of published('heat/settling.csv').rows) {
      row.agrees('speed_mm_per_s', stokesRise_m_per_s({ ...drop, diameter_m: row.number('diameter_um') * 1e-6 }) * 1e3)
    }
    expect(settlingTime_s({ ...drop, diameter_m: 50e-6, depth_m: 0.05 })).toBeCloseTo(0.05 / 0.0002725, -1)
  })
  it('sinks what is heavier, and refuses drops too large for the law', () => {
    expect(stokesRise_m_per_s({ ...drop, drop_kg_per_m3: 1000, diameter_m: 50e-6 })).toBeLessThan(0)
    expect(() => settlingTime_s({ ...drop, drop_kg_per_m3: 1000, diameter_m: 50e-6, depth_m: 0.05 })).toThrow(
      RangeError,
    )
    expect(() => stokesRise_m_per_s({ ...drop, diameter_m: 1e-3 })).toThrow(/Reynolds/)
  })
})
