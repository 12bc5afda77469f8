import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  freezingModel,
  seriesLeft,
  seriesMeanLeft,
  suggestedNodes,
  thermalProperties,
} from '../../../src/core/heat/index.ts'
import { published } from '../../support/published.ts'
import { alpha_m2_per_s, beef, meat, piece, timeTo_s } from './some-piece.ts'

describe('a piece against the exact series', () => {
  it('at small, middle and large times, centre, surface and mean', () => {
    for (const row of published('heat/series.csv').rows) {
      const shape = row.text('shape') as 'slab' | 'cylinder' | 'sphere'
      const biot = row.number('biot')
      const fourier = row.number('fourier')
      const half_m = 0.02
      const film = (biot * meat.k_W_per_mK) / half_m
      const run = (nodes: number, steps: number) => {
        const body = piece({
          shape,
          thickness_m: 2 * half_m,
          start_K: 400,
          nodes,
          ...(shape === 'cylinder' ? { length_m: 9 } : {}),
        })
        const step_s = (fourier * half_m ** 2) / alpha_m2_per_s / steps
        for (let i = 0; i < steps; i++) {
          body.forward(step_s, film)
          body.back(300)
        }
        const left = (T: number) => (T - 300) / 100
        return { centre: left(body.core_K()), surface: left(body.surface_K()), mean: left(body.mean_K()) }
      }
      const mean = seriesMeanLeft({ shape, biot, fourier })
      // Fine: within half a per cent of the difference. As used, 8 layers: within 1.5 % from the smallest time on.
      const fine = run(50, 800)
      // Nine metres are long, not endless.
      const cylinderEnds = shape === 'cylinder' ? 2e-3 : 0
      expect(Math.abs(fine.centre - row.number('centre'))).toBeLessThan(1.5e-3 + cylinderEnds)
      expect(Math.abs(fine.surface - row.number('surface'))).toBeLessThan(1.5e-3 + cylinderEnds)
      expect(Math.abs(fine.mean - mean)).toBeLessThan(1.5e-3 + cylinderEnds)
      const coarse = run(8, Math.round(fourier * 600))
      expect(Math.abs(coarse.centre - row.number('centre'))).toBeLessThan(0.015)
      expect(Math.abs(coarse.mean - mean)).toBeLessThan(0.015)
    }
  })
  it('in minutes, for pieces as cooks cut them', () => {
    for (const row of published('heat/cooking-times.csv').rows) {
      const thickness_m = row.number('size_mm') / 1e3
      for (const [column, shape] of [
        ['slab', 'slab'],
        ['cylinder', 'cylinder'],
        ['cube', 'brick'],
        ['sphere', 'sphere'],
      ] as const) {
        const minutes = timeTo_s(piece({ shape, thickness_m }), 368.15, 391.15, 500, 5) / 60
        // 5 s steps and 8 layers: within 3 % of the full series.
        expect(Math.abs(minutes / row.number(column) - 1), `${shape} ${thickness_m}`).toBeLessThan(0.03)
      }
    }
  })
  it('with the properties of chuck and steam at 117 °C: a 2.5 cm cube in about 6 min, a 5 cm cube in about 24', () => {
    const chuck = thermalProperties(beef, 333.15)
    const minutes = (thickness_m: number) =>
      timeTo_s(piece({ shape: 'brick', thickness_m, ...chuck }), 368.15, 390.15, 1500, 5) / 60
    expect(minutes(0.025)).toBeGreaterThan(5.5)
    expect(minutes(0.025)).toBeLessThan(7)
    expect(minutes(0.05)).toBeGreaterThan(22)
    expect(minutes(0.05)).toBeLessThan(27)
  })
  it('converges: first order in the step, second in the layers', () => {
    const exact = seriesLeft({ shape: 'sphere', biot: 10, fourier: 0.2, place: 0 })
    const half_m = 0.02
    const end_s = (0.2 * half_m ** 2) / alpha_m2_per_s
    const error = (nodes: number, steps: number) => {
      const body = piece({ shape: 'sphere', thickness_m: 2 * half_m, start_K: 400, nodes })
      for (let i = 0; i < steps; i++) {
        body.forward(end_s / steps, (10 * meat.k_W_per_mK) / half_m)
        body.back(300)
      }
      return (body.core_K() - 300) / 100 - exact
    }
    const steps = [200, 400, 800].map((n) => error(100, n))
    expect(Math.log2(steps[0] / steps[1])).toBeCloseTo(1, 1)
    expect(Math.log2(steps[1] / steps[2])).toBeCloseTo(1, 1)
    // Richardson takes the step's error out, so that the layers' shows.
    const layers = [8, 16, 32].map((n) => 2 * error(n, 4000) - error(n, 2000))
    expect(Math.log2(layers[0] / layers[1])).toBeGreaterThan(1.8)
    expect(Math.log2(layers[1] / layers[2])).toBeGreaterThan(1.8)
  })
})

describe('the two halves of a step', () => {
  const any = fc.record({
    shape: fc.constantFrom('slab', 'cylinder', 'sphere', 'brick') as fc.Arbitrary<
      'slab' | 'cylinder' | 'sphere' | 'brick'
    >,
    thickness_m: fc.double({ min: 0.002, max: 0.12, noNaN: true }),
    nodes: fc.integer({ min: 1, max: 20 }),
    step_s: fc.double({ min: 0.1, max: 60, noNaN: true }),
    film: fc.double({ min: 1, max: 3000, noNaN: true }),
    start_K: fc.double({ min: 250, max: 390, noNaN: true }),
    media: fc.array(fc.double({ min: 250, max: 400, noNaN: true }), { minLength: 1, maxLength: 30 }),
    icy: fc.boolean(),
  })
  it('book every joule, keep every temperature between what there was and the medium, frozen or not', () => {
    fc.assert(
      fc.property(any, ({ media, step_s, film, icy, ...o }) => {
        const body = piece({ ...o, freezing: icy ? freezingModel(beef) : null })
        const scale = body.heatCapacity_J_per_K * 100
        let low = o.start_K
        let high = o.start_K
        for (const medium_K of media) {
          const before = body.heat_J(273.15)
          body.forward(step_s, film, medium_K)
          const promised = body.heatFixed_J + body.heatPerKelvin_J_per_K * medium_K
          const taken = body.back(medium_K)
          expect(taken).toBe(promised)
          expect(Math.abs(body.heat_J(273.15) - before - taken)).toBeLessThan(1e-11 * scale)
          low = Math.min(low, medium_K)
          high = Math.max(high, medium_K)
          expect(Math.min(...body.temperature_K)).toBeGreaterThan(low - 1e-3)
          expect(Math.max(...body.temperature_K)).toBeLessThan(high + 1e-3)
          expect(body.heatPerKelvin_J_per_K).toBeGreaterThan(0)
        }
      }),
      { numRuns: 150 },
    )
  })
  it('warm from the outside in, and rest in a bath of their own temperature', () => {
    const body = piece({ shape: 'brick', thickness_m: 0.05 })
    for (let i = 0; i < 60; i++) {
      body.forward(20, 500)
      body.back(390)
      for (let k = 1; k < body.nodes; k++)
        expect(body.temperature_K[k]).toBeGreaterThanOrEqual(body.temperature_K[k - 1])
      expect(body.surface_K()).toBeGreaterThanOrEqual(body.temperature_K[body.nodes - 1])
      expect(body.coldest_K()).toBe(body.temperature_K[0])
      expect(body.core_K()).toBeLessThanOrEqual(body.coldest_K())
      expect(body.mean_K()).toBeGreaterThan(body.coldest_K())
    }
    body.setTemperature(350)
    body.forward(20, 500)
    expect(Math.abs(body.back(350))).toBeLessThan(1e-9)
    expect(body.mean_K()).toBeCloseTo(350, 10)
  })
  it('export depths and shares that belong together', () => {
    for (const shape of ['slab', 'cylinder', 'sphere', 'brick'] as const) {
      const body = piece({ shape, thickness_m: 0.04 })
      expect(body.share.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12)
      for (let i = 1; i < body.nodes; i++) expect(body.position_m[i]).toBeGreaterThan(body.position_m[i - 1])
      expect(body.mass_kg).toBeCloseTo(body.volume_m3 * 1050, 12)
    }
    expect(suggestedNodes(0.005)).toBe(3)
    expect(piece({ shape: 'brick', thickness_m: 0.01 }).nodes).toBe(5)
  })
  it('give off as steam what stands above the limit', () => {
    const body = piece({ shape: 'brick', thickness_m: 0.04, start_K: 390 })
    for (let i = 0; i < 5; i++) {
      body.forward(20, 500)
      body.back(373)
    }
    const before = body.heat_J(273.15)
    const out_J = body.coolAbove(375)
    expect(out_J).toBeGreaterThan(0)
    expect(body.heat_J(273.15)).toBeCloseTo(before - out_J, 6)
    expect(Math.max(...body.temperature_K)).toBeLessThanOrEqual(375)
    expect(body.coolAbove(375)).toBe(0)
  })
  it('refuse no layers, and properties that are none', () => {
    expect(() => piece({ shape: 'slab', thickness_m: 0.01, nodes: 0 })).toThrow(RangeError)
    expect(() => piece({ shape: 'slab', thickness_m: 0.01, k_W_per_mK: Number.NaN })).toThrow(RangeError)
    expect(() => piece({ shape: 'slab', thickness_m: 0.01, start_K: 20 })).toThrow(/temperature = 20 K/)
  })
})
