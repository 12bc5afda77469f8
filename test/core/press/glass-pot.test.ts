import { describe, expect, test } from 'vitest'
import { glassPot, marksOf, momentOf } from '../../../src/core/press/index.ts'
import { liquorHeight_m } from '../../../src/core/press/inside.ts'
import { pileOf, sliceCount } from '../../../src/core/press/pile.ts'
import { vesselSize } from '../../../src/core/press/vessel.ts'
import { badNumbers, collisions, textsOf } from '../../support/drawn.ts'
import { exampleRuns } from '../../support/example-runs.ts'
import { syntheticRun } from '../../support/synthetic-run.ts'

const minute = 60
const run = syntheticRun()
const words = (time_s: number, width = 560) =>
  textsOf(glassPot(run, { width, height: 500, time_s })).map(({ text }) => text)
const classes = (time_s: number) =>
  [...marksOf(glassPot(run, { width: 560, height: 500, time_s }))].map((mark) => String(mark.attrs.class ?? ''))

describe('what stands beside the pot', () => {
  test('at pressure: float, fill, level, base against its trip, cores', () => {
    const said = words(64 * minute)
    expect(said).toContain('float up')
    expect(said).toContain('for 28 min')
    expect(said).toContain('30 % full')
    expect(said).toContain('371 ml')
    expect(said).toContain('base 126 °C, trips at 140')
    expect(said).toContain('113 °C')
    expect(said).toContain('A slice through the middle: 4 of 18 pieces of pork and 4 of 32 pieces of leeks.')
  })

  test('pieces that wait lie on a plate beside the pot', () => {
    expect(words(22 * minute)).toContain('pork, 36 °C')
    expect(words(22 * minute)).toContain('at half the scale')
    expect(words(64 * minute)).not.toContain('at half the scale')
  })

  test('while one batch browns the other waits', () => {
    expect(words(15 * minute)).toContain('the other batches')
  })

  test('the float is down under a lid that is only laid on', () => {
    expect(words(34 * minute)).toContain('float down')
    expect(words(34 * minute)).toContain('lid locked')
  })

  test('heat rises only while the heat is on', () => {
    expect(classes(20 * minute)).toContain('line s-heat heat-wave')
    expect(classes(80 * minute)).not.toContain('line s-heat heat-wave')
  })
})

describe.each([{ name: 'synthetic', run }, ...exampleRuns()])('the pot over a whole run: $name', ({ run }) => {
  test.each([
    [320, 320],
    [390, 380],
    [560, 500],
  ])('no words collide or leave a sheet of %i by %i px', (width, height) => {
    const end = run.phases.at(-1)!.end_s
    for (let share = 0; share <= 1; share += 0.07) {
      const drawing = glassPot(run, { width, height, time_s: share * end })
      expect(badNumbers(drawing)).toEqual([])
      const texts = textsOf(drawing)
      expect(collisions(texts), `at ${Math.round((share * end) / 60)} min`).toEqual([])
      for (const { text, box } of texts) {
        expect(box.x0, text).toBeGreaterThanOrEqual(-1)
        expect(box.x1, text).toBeLessThanOrEqual(width + 1)
        expect(box.y0, text).toBeGreaterThanOrEqual(-1)
        expect(box.y1, text).toBeLessThanOrEqual(height + 1)
      }
    }
  })
})

describe('the pile', () => {
  const { width_m } = vesselSize(run.plan.pot)
  const pile = pileOf(run, momentOf(run, 64 * minute), 'in', width_m)

  test('bodies touch but do not overlap, inside the walls and on the floor', () => {
    const step = width_m / 132
    for (const body of pile.bodies) {
      const xs = body.outline.points.map((p) => body.x + p.x)
      const ys = body.outline.points.map((p) => body.y + p.y)
      expect(Math.min(...xs)).toBeGreaterThanOrEqual(-step)
      expect(Math.max(...xs)).toBeLessThanOrEqual(width_m + step)
      expect(Math.min(...ys)).toBeGreaterThanOrEqual(-1e-9)
    }
    for (const a of pile.bodies)
      for (const b of pile.bodies)
        if (a !== b) for (const p of a.outline.points) expect(within(b, a.x + p.x * 0.97, a.y + p.y * 0.97)).toBe(false)
  })

  test('every body rests on the floor or on another', () => {
    for (const body of pile.bodies) {
      const low = Math.min(...body.outline.points.map((p) => body.y + p.y))
      const held =
        low < 0.001 ||
        pile.bodies.some(
          (other) =>
            other !== body && body.outline.points.some((p) => within(other, body.x + p.x, body.y + p.y - 0.003)),
        )
      expect(held).toBe(true)
    }
  })

  test('pieces keep their places while the same ones are there', () => {
    const later = pileOf(run, momentOf(run, 70 * minute), 'in', width_m)
    expect(later.bodies.map(({ x, y }) => [x, y])).toEqual(pile.bodies.map(({ x, y }) => [x, y]))
  })

  test('the cut shows the share of area that is the share of volume', () => {
    const { plan } = run
    for (const load of plan.loads.filter((one) => one.pieces)) {
      const shown_m2 = pile.bodies
        .filter((body) => body.load === load.id)
        .reduce((sum, { face, shape }) => sum + face.width * face.height * (shape === 'round' ? Math.PI / 4 : 0.95), 0)
      const volumeShare = (load.mass_kg / load.food.density_kg_per_m3 / plan.pot.baseArea_m2) * width_m
      // Whole pieces only: the count is rounded, and sizes are spread.
      expect(Math.abs(shown_m2 - volumeShare) / volumeShare).toBeLessThan(0.25)
    }
    expect(sliceCount(plan.loads[0], 2.4, width_m, plan.pot.baseArea_m2)).toBeGreaterThan(
      sliceCount(plan.loads[0], 1.2, width_m, plan.pot.baseArea_m2),
    )
  })

  function within(body: (typeof pile.bodies)[number], x: number, y: number): boolean {
    const points = body.outline.points.map((p) => ({ x: body.x + p.x, y: body.y + p.y }))
    return points.reduce((inside, p, i) => {
      const q = points[(i + 1) % points.length]
      return p.y > y !== q.y > y && x < ((q.x - p.x) * (y - p.y)) / (q.y - p.y) + p.x ? !inside : inside
    }, false)
  }
})

describe('the level of the liquor', () => {
  const moment = momentOf(run, 64 * minute)

  test('without pieces it is volume over area', () => {
    expect(liquorHeight_m({ ...moment, solids_m3: 0, liquid_m3: 0.001 }, 0, 0.034)).toBeCloseTo(0.001 / 0.034, 12)
  })

  test('with everything under it, it is all volume over area', () => {
    expect(liquorHeight_m({ ...moment, solids_m3: 0.0005, liquid_m3: 0.003 }, 0.03, 0.034)).toBeCloseTo(
      0.0035 / 0.034,
      12,
    )
  })

  test('it rises with the liquid and never jumps at the top of the pile', () => {
    let before = 0
    for (let ml = 0; ml <= 3000; ml += 5) {
      const height = liquorHeight_m({ ...moment, solids_m3: 0.0014, liquid_m3: ml * 1e-6 }, 0.07, 0.034)
      expect(height).toBeGreaterThanOrEqual(before)
      expect(height - before).toBeLessThan(0.002)
      before = height
    }
  })
})
