import { describe, expect, test } from 'vitest'
import type { CallError } from '../../src/cli/failure.ts'
import { altitudeOption_m, gaugeOption_Pa, potOption } from '../../src/cli/options.ts'

const sentence = (ask: () => unknown): string => {
  try {
    ask()
  } catch (error) {
    return (error as CallError).sentence
  }
  throw new Error('it was accepted')
}

describe('altitude', () => {
  test.each([
    ['1600m', 1600],
    ['1600 m', 1600],
    ['0m', 0],
    ['-20m', -20],
    ['1,600 metres', 1600],
    ['5250ft', 1600.2],
    ['5,250 feet', 1600.2],
    ["1000'", 304.8],
  ])('%s', (written, metres) => expect(altitudeOption_m(written)).toBeCloseTo(metres, 9))

  test.each([
    ['1600', /has no unit\. Write it with its unit, like 1600m or 5250ft\./],
    ['high', /is not understood\. Write it with its unit/],
    ['1600 km', /is not understood/],
    ['9000m', /is 9000 m; nobody cooks there\. It must lie from −500 m to 6000 m/],
    ['', /is not understood/],
  ])('"%s" is refused', (written, reason) => expect(sentence(() => altitudeOption_m(written))).toMatch(reason))
})

describe('gauge pressure', () => {
  // 1 psi = 6894.757293168 Pa (exact to the digits shown: NIST SP 811, pound-force per square inch)
  test.each([
    ['12psi', 82_737.087518],
    ['15 psi', 103_421.359398],
    ['80kPa', 80_000],
    ['80 kpa', 80_000],
    ['0,8 bar', 80_000],
  ])('%s', (written, pascals) => expect(gaugeOption_Pa(written)).toBeCloseTo(pascals, 3))

  test.each([
    ['12', /has no unit\. Write it with its unit, like 12psi or 80kPa/],
    ['hot', /is not understood/],
    ['300psi', /not that of a kitchen pot/],
  ])('"%s" is refused', (written, reason) => expect(sentence(() => gaugeOption_Pa(written))).toMatch(reason))
})

test('a pot is known by its id, and an unknown one lists those that are', () => {
  expect(potOption('electric-6qt').name).toBe('6-quart electric pot')
  expect(potOption(' Dutch-Oven ').id).toBe('dutch-oven')
  expect(sentence(() => potOption('cauldron'))).toMatch(
    /There is no pot "cauldron"\. Known are:\n[\s\S]*electric-3qt[\s\S]*dutch-burner/,
  )
})
