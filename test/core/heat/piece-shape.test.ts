import { describe, expect, it } from 'vitest'
import {
  type Body,
  bodyCentreLeft,
  bodyMeanLeft,
  centreTime_s,
  firstZero,
  pieceGeometry,
} from '../../../src/core/heat/index.ts'
import { alpha_m2_per_s, meat, piece } from './some-piece.ts'

describe('a brick or short cylinder as a body of one dimension', () => {
  const targets = [0.5, 0.2, 0.1]
  /** Worst error of the core's time, over films from poor to excellent, and of its temperature as a share of the difference. */
  function worst(shape: 'brick' | 'cylinder', thickness_m: number, width_m: number, length_m: number) {
    let time = 0
    let temperature = 0
    let mean = 0
    for (const biot of [0.5, 2, 6, 20, 100]) {
      const film_W_per_m2K = (biot * meat.k_W_per_mK) / (Math.min(thickness_m, length_m) / 2)
      const exact: Body = { shape, thickness_m, width_m, length_m, k_W_per_mK: 0.47, alpha_m2_per_s, film_W_per_m2K }
      const times = targets.map((target_K) => centreTime_s({ ...exact, start_K: 1, bath_K: 0, target_K }))
      const body = piece({ shape, thickness_m, width_m, length_m, start_K: 300, nodes: 24 })
      const step_s = times[2] / 400
      let before = 1
      let next = 0
      let steps = 0
      for (let t = step_s; next < targets.length; t += step_s) {
        body.forward(step_s, film_W_per_m2K)
        body.back(400)
        const left = (400 - body.core_K()) / 100
        if (++steps % 8 === 1) {
          temperature = Math.max(temperature, Math.abs(left - bodyCentreLeft(exact, t - step_s / 2)))
          mean = Math.max(mean, Math.abs((400 - body.mean_K()) / 100 - bodyMeanLeft(exact, t - step_s / 2)))
        }
        while (next < targets.length && left <= targets[next]) {
          const at = t - (step_s * (targets[next] - left)) / (before - left) - step_s / 2
          time = Math.max(time, Math.abs(at / times[next] - 1))
          next++
        }
        before = left
      }
    }
    return { time, temperature, mean }
  }
  it.each([
    [1, 1],
    [1, 1.25],
    [1, 2],
    [1, 4],
    [1, 10],
    [1.25, 1.25],
    [1.25, 2],
    [2, 2],
    [2, 4],
    [2, 10],
    [4, 4],
    [4, 10],
    [10, 10],
  ])('1 : %d : %d keeps its core near the product of series', (w, l) => {
    const { time, temperature, mean } = worst('brick', 0.04, 0.04 * w, 0.04 * l)
    // A cube or baton within 4 %, up to 1 : 2 : 2 within 5.7 %, flat pieces less well: see docs/models/conduction.md.
    const flat = w > 2
    expect(time).toBeLessThan(flat ? 0.091 : 0.058)
    expect(temperature).toBeLessThan(flat ? 0.08 : 0.066)
    expect(mean).toBeLessThan(flat ? 0.082 : 0.067)
    if (w * l <= 2) expect(time).toBeLessThan(0.04)
  })
  it.each([0.25, 0.5, 0.8, 1, 1.25, 2, 4, 10])('a cylinder %d diameters long does so too', (l) => {
    const { time, temperature, mean } = worst('cylinder', 0.04, 0.04, 0.04 * l)
    const coin = l < 0.5
    expect(time).toBeLessThan(coin ? 0.08 : 0.06)
    expect(temperature).toBeLessThan(coin ? 0.075 : 0.047)
    expect(mean).toBeLessThan(coin ? 0.082 : 0.053)
  })
  it('keeps volume and surface of the true piece, whatever order its sides come in', () => {
    const g = pieceGeometry({ shape: 'brick', thickness_m: 0.02, width_m: 0.03, length_m: 0.05 })
    expect(g.volume_m3).toBeCloseTo(3e-5, 15)
    expect(g.surface_m2).toBeCloseTo(2 * (6e-4 + 1e-3 + 1.5e-3), 15)
    const turned = pieceGeometry({ shape: 'brick', thickness_m: 0.05, width_m: 0.02, length_m: 0.03 })
    expect(turned.half_m).toBeCloseTo(g.half_m, 15)
    expect(turned.volume_m3).toBeCloseTo(g.volume_m3, 15)
    const ball = pieceGeometry({ shape: 'sphere', thickness_m: 0.06, width_m: Number.NaN, length_m: Number.NaN })
    expect(ball.volume_m3).toBeCloseTo((4 / 3) * Math.PI * 2.7e-5, 12)
    expect(() => pieceGeometry({ shape: 'brick', thickness_m: 0.02, width_m: Number.NaN, length_m: 0.1 })).toThrow(
      RangeError,
    )
    expect(() => pieceGeometry({ shape: 'sphere', thickness_m: 0, width_m: 1, length_m: 1 })).toThrow(RangeError)
  })
  it('knows the first zeros of plain shapes', () => {
    expect(firstZero(0)).toBeCloseTo(Math.PI / 2, 10)
    expect(firstZero(1)).toBeCloseTo(2.404825557695773, 10)
    expect(firstZero(2)).toBeCloseTo(Math.PI, 10)
  })
  it('takes up heat as its true surface does while the film limits', () => {
    const body = piece({ shape: 'brick', thickness_m: 0.04 })
    const exact = { shape: 'brick' as const, thickness_m: 0.04, k_W_per_mK: 0.47, alpha_m2_per_s, film_W_per_m2K: 1 }
    for (let t = 0; t < 3600; t += 10) {
      body.forward(10, 1)
      body.back(378.15)
    }
    const left = (378.15 - body.mean_K()) / 100
    expect(Math.abs(left - bodyMeanLeft(exact, 3600))).toBeLessThan(2e-3)
  })
})
