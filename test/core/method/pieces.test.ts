import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Character } from '../../../src/core/larder/index.ts'
import type { Cut } from '../../../src/core/manuscript/index.ts'
import { type Pieces, piecesOf } from '../../../src/core/method/index.ts'
import { someFood } from './some-food.ts'

const of = (
  character: Character,
  kg: number,
  words: string,
  cut: { shape: Cut['shape']; cm?: number } | null = null,
  bought: number | null = null,
) =>
  piecesOf({
    food: someFood(character),
    mass_kg: kg,
    words,
    bought,
    cut: cut && { shape: cut.shape, size_m: cut.cm ? { low: cut.cm / 100, high: cut.cm / 100 } : null },
  })

const volume_m3 = (p: Pieces) =>
  p.shape === 'sphere'
    ? (Math.PI / 6) * p.thickness_m ** 3
    : p.shape === 'cylinder'
      ? (Math.PI / 4) * p.thickness_m ** 2 * p.length_m
      : p.thickness_m * p.width_m * p.length_m

describe('pieces', () => {
  it('takes pieces of meat for cubes of the size in the words', () => {
    expect(of('collagen cut', 0.9, 'cut into 4-cm pieces', { shape: 'pieces', cm: 4 })).toMatchObject({
      shape: 'brick',
      thickness_m: 0.04,
      width_m: 0.04,
      length_m: 0.04,
      count: 14,
      from: 'words',
    })
  })
  it('takes rounds for slabs as wide as what they are cut from', () => {
    expect(of('firm vegetable', 0.5, 'leeks, sliced 2 cm thick', { shape: 'slices', cm: 2 })).toMatchObject({
      shape: 'slab',
      thickness_m: 0.02,
      width_m: 0.03,
    })
  })
  it('takes pieces of a carrot for cylinders no thicker than a carrot', () => {
    expect(of('firm vegetable', 0.3, 'carrots, cut into 2-cm pieces', { shape: 'pieces', cm: 2 })).toMatchObject({
      shape: 'cylinder',
      thickness_m: 0.02,
      length_m: 0.02,
    })
    expect(of('firm vegetable', 0.3, 'carrots, in 5 cm lengths', { shape: 'sticks', cm: 5 })).toMatchObject({
      shape: 'cylinder',
      thickness_m: 0.025,
      length_m: 0.05,
    })
  })
  it('leaves bought thighs whole, 2.5 to 3 cm thick, as many as were bought', () => {
    const thighs = of('poultry dark', 1.36, '8 bone-in chicken thighs', null, 8)
    expect(thighs).toMatchObject({ shape: 'slab', count: 8, from: 'words' })
    expect(thighs!.thickness_m).toBeGreaterThanOrEqual(0.025)
    expect(thighs!.thickness_m).toBeLessThanOrEqual(0.03)
  })
  it('gives a joint the proportions of a joint and a brisket its own thickness', () => {
    const joint = of('collagen cut', 1.2, '1.2 kg boned shoulder, whole', { shape: 'whole' })
    expect(joint!.count).toBe(1)
    expect(joint!.thickness_m).toBeGreaterThan(0.07)
    expect(joint!.thickness_m).toBeLessThan(0.08)
    const brisket = of('collagen cut', 1.4, '1.4 kg beef brisket, flat cut, in 4 pieces', { shape: 'pieces' })
    expect(brisket).toMatchObject({ shape: 'slab', thickness_m: 0.045, count: 4 })
  })
  it('cuts into the number of chunks that the words name', () => {
    expect(of('collagen cut', 1.6, 'cut into 6 big chunks', { shape: 'pieces' })).toMatchObject({
      count: 6,
      from: 'words',
    })
  })
  it('halves and quarters a vegetable', () => {
    const whole = of('aromatic', 0.15, '1 onion, peeled', null, 1)!
    const half = of('aromatic', 0.15, '1 onion, halved', { shape: 'halves' }, 1)!
    const quarter = of('aromatic', 0.15, '1 onion, quartered', { shape: 'pieces' }, 1)!
    expect([whole.count, half.count, quarter.count]).toEqual([1, 2, 4])
    expect(half.thickness_m).toBeCloseTo(whole.thickness_m / 2, 6)
    expect(quarter.thickness_m).toBeLessThan(half.thickness_m)
  })
  it('makes minced smaller than fine, fine smaller than coarse', () => {
    const size = (words: string, shape: Cut['shape']) => of('aromatic', 0.1, words, { shape })!.thickness_m
    const sizes = [
      size('minced', 'minced'),
      size('finely chopped', 'chopped'),
      size('chopped', 'chopped'),
      size('roughly chopped', 'chopped'),
    ]
    expect([...sizes].sort((a, b) => a - b)).toEqual(sizes)
    expect(new Set(sizes).size).toBe(4)
  })
  it('says when the size is only the usual one', () => {
    expect(of('collagen cut', 0.9, '900 g stewing beef')).toMatchObject({ from: 'usual', thickness_m: 0.04 })
  })
  it('has no pieces for what pours or dissolves', () => {
    for (const character of ['thin liquid', 'fat', 'salt', 'spice', 'paste', 'alcohol', 'sweetener', 'dairy'] as const)
      expect(of(character, 0.1, '')).toBeNull()
  })
  it('keeps volume and mass together, whatever the words', () => {
    const shapes: Cut['shape'][] = [
      'whole',
      'halves',
      'pieces',
      'cubes',
      'slices',
      'sticks',
      'strips',
      'chopped',
      'minced',
      'shredded',
      'ground',
    ]
    fc.assert(
      fc.property(
        fc.constantFrom(
          'collagen cut',
          'poultry dark',
          'firm vegetable',
          'aromatic',
          'pulse',
          'fish',
          'starch',
          'sausage',
          'leafy vegetable',
        ),
        fc.double({ min: 0.02, max: 4, noNaN: true }),
        fc.option(
          fc.record({
            shape: fc.constantFrom(...shapes),
            cm: fc.option(fc.double({ min: 0.2, max: 12, noNaN: true }), { nil: undefined }),
          }),
        ),
        fc.option(fc.integer({ min: 1, max: 40 })),
        fc.constantFrom('', 'thinly', 'carrots', 'whole chicken', 'roast', 'leeks, cut small'),
        (character, kg, cut, bought, words) => {
          const pieces = of(character as Character, kg, words, cut, bought)!
          for (const x of [pieces.thickness_m, pieces.width_m, pieces.length_m, pieces.spread, pieces.count])
            expect(Number.isFinite(x) && x > 0).toBe(true)
          // Whole pieces only: with few of them the rounding shows, with many it must not.
          const filled = pieces.count * volume_m3(pieces) * 1000
          if (pieces.count > 20) expect(Math.abs(filled / kg - 1)).toBeLessThan(0.03)
          expect(pieces.spread).toBeLessThan(0.5)
        },
      ),
    )
  })
})
