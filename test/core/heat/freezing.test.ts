import { describe, expect, it } from 'vitest'
import { freezingEnthalpy_J_per_kg, freezingModel, frozenTemp_K, iceShare } from '../../../src/core/heat/index.ts'
import { published } from '../../support/published.ts'
import { beef, meat, piece, timeTo_s } from './some-piece.ts'

describe('freezing', () => {
  const m = freezingModel(beef)
  it('thaws water for the heat that the books say', () => {
    const water = freezingModel({ water: 1, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 }, 273.149)
    const rise = -freezingEnthalpy_J_per_kg({ ...water, cp_J_per_kgK: 4200, temperature_K: 255.15 })
    for (const row of published('heat/freezing.csv').rows) row.agrees('value', (0.5 * rise) / 1e3)
  })
  it('comes back from enthalpy to temperature, without a step at the freezing point', () => {
    let before = -Infinity
    for (let T = 205; T < 300; T += 0.05) {
      const h = freezingEnthalpy_J_per_kg({ ...m, cp_J_per_kgK: 3500, temperature_K: T })
      expect(h).toBeGreaterThan(before)
      expect(frozenTemp_K({ ...m, cp_J_per_kgK: 3500, enthalpy_J_per_kg: h })).toBeCloseTo(T, 7)
      before = h
    }
    const step =
      freezingEnthalpy_J_per_kg({ ...m, cp_J_per_kgK: 3500, temperature_K: m.freezing_K + 1e-6 }) -
      freezingEnthalpy_J_per_kg({ ...m, cp_J_per_kgK: 3500, temperature_K: m.freezing_K - 1e-6 })
    expect(step).toBeLessThan(1)
    expect(iceShare(m, m.freezing_K)).toBe(0)
    expect(iceShare(m, 255.15)).toBeGreaterThan(0.9)
  })
  it('costs a frozen piece the heat and the time of its ice', () => {
    const frozen = (more = {}) => piece({ shape: 'brick', thickness_m: 0.04, start_K: 255.15, freezing: m, ...more })
    const body = frozen()
    const cold = piece({ shape: 'brick', thickness_m: 0.04, start_K: 275.15, freezing: m })
    const heat = cold.heat_J(273.15) - body.heat_J(273.15)
    expect(heat / body.mass_kg).toBeGreaterThan(0.95 * (0.7 - 0.4 * 0.19) * 333.6e3)
    expect(body.frozen()).toBe(true)
    const used = timeTo_s(body, 368.15, 391.15, 500, 5)
    expect(body.frozen()).toBe(false)
    // Two kelvin short of frozen would be a fifth quicker and more.
    expect(used / timeTo_s(cold, 368.15, 391.15, 500, 5)).toBeGreaterThan(1.15)
    // As used, against fine layers and fine steps.
    const fine = timeTo_s(frozen({ nodes: 40 }), 368.15, 391.15, 500, 0.5)
    expect(Math.abs(used / fine - 1)).toBeLessThan(0.03)
    expect(Math.abs(timeTo_s(frozen(), 368.15, 391.15, 500, 20) / fine - 1)).toBeLessThan(0.05)
  })
  it('thaws a slab in the time of Plank', () => {
    // Plank takes a sharp front and no sensible heat: nearly pure water, a mild medium, frozen to just below its point.
    const sharp = { ...m, freezing_K: 273.149 }
    for (const [thickness_m, film] of [
      [0.04, 20],
      [0.04, 200],
      [0.02, 50],
    ]) {
      const body = piece({ shape: 'slab', thickness_m, start_K: 273.05, freezing: sharp, nodes: 40 })
      const latent = body.rho_kg_per_m3 * sharp.latent_J_per_kg * iceShare(sharp, 273.05)
      const plank =
        (latent / (278.15 - sharp.freezing_K)) * (thickness_m / 2 / film + thickness_m ** 2 / 8 / meat.k_W_per_mK)
      let t = 0
      while (body.frozen()) {
        body.forward(20, film, 278.15)
        body.back(278.15)
        t += 20
      }
      expect(Math.abs(t / plank - 1)).toBeLessThan(0.01)
    }
  })
  it('does not overshoot a hot medium with a thin frozen piece and a long step', () => {
    const body = piece({ shape: 'slab', thickness_m: 0.003, start_K: 272.1, freezing: m })
    body.forward(60, 1500, 390)
    body.back(390)
    expect(Math.max(...body.temperature_K)).toBeLessThan(390 + 1e-3)
    expect(body.frozen()).toBe(false)
  })
  it('freezes again in the cold', () => {
    const body = piece({ shape: 'slab', thickness_m: 0.02, start_K: 278.15, freezing: m })
    for (let i = 0; i < 2000; i++) {
      body.forward(30, 20)
      body.back(250)
    }
    expect(body.frozen()).toBe(true)
    expect(body.mean_K()).toBeCloseTo(250, 1)
  })
})
