import { describe, expect, test } from 'vitest'
import {
  describePot,
  describeStrip,
  momentSentence,
  readings,
  shortNames,
  terminalChart,
} from '../../../src/core/press/index.ts'
import { spread } from '../../../src/core/press/spread.ts'
import { duration, durationRange, inWords, shortened } from '../../../src/core/press/words.ts'
import { exampleRuns } from '../../support/example-runs.ts'
import { syntheticRun } from '../../support/synthetic-run.ts'

const run = syntheticRun()

describe('times read aloud', () => {
  test.each([
    [20, '20 s'],
    [60, '1 min'],
    [2040, '34 min'],
    [3600, '1 h'],
    [5700, '1 h 35 min'],
    [43_200, '12 h'],
  ])('%i s is %s', (seconds, said) => expect(duration(seconds)).toBe(said))

  test('ranges', () => {
    expect(durationRange(5700, 6600)).toBe('1 h 35 to 1 h 50')
    expect(durationRange(1800, 2400)).toBe('30 to 40 min')
    expect(durationRange(1800, 1805)).toBe('30 min')
    expect(durationRange(3000, 4200)).toBe('50 min to 1 h 10')
  })

  test('numbers in words', () => {
    expect([1, 12, 20, 35, 90, 99, 100].map(inWords)).toEqual([
      'one',
      'twelve',
      'twenty',
      'thirty-five',
      'ninety',
      'ninety-nine',
      '100',
    ])
  })

  test('labels are cut at words, never on one that waits for another', () => {
    const fits = (n: number) => (text: string) => text.length <= n
    expect(shortened('brown, two batches', fits(30))).toBe('brown, two batches')
    expect(shortened('brown, two batches', fits(10))).toBe('brown')
    expect(shortened('cut and pat', fits(8))).toBe('cut')
    expect(shortened('at pressure, 30 minutes', fits(5))).toBeNull()
  })
})

describe('where an instant lies', () => {
  test.each([
    [64, '64 min: 23 minutes into the thirty'],
    [41, '41 min: pressure is reached, the thirty begin'],
    [35, '35 min: 2 minutes into coming up to pressure'],
    [20, '20 min: brown, two batches, 8 minutes in'],
    [9, '9 min: now heat the oil'],
    [95, '95 min: done'],
  ])('%i min', (minutes, said) => expect(momentSentence(run, minutes * 60)).toBe(said))
})

describe('the four figures', () => {
  test('at pressure', () => {
    expect(readings(run, 64 * 60).map(({ value, unit }) => `${value} ${unit}`)).toEqual([
      '116 °C',
      '113 °C',
      '371 ml',
      '14 K',
    ])
    const [liquor, coldest, liquid, base] = readings(run, 64 * 60)
    expect(liquor.words).toBe('liquor, 75 kPa over; air all but gone')
    expect(coldest.words).toBe('coldest pork, 41 % of its collagen melted')
    expect(liquid.words).toContain('given up')
    expect(base.words).toBe('base below its trip; nearest cause: browned bits left on the base')
    expect(base.accent).toBe('ink')
  })

  test('before anything is in the pot they say so', () => {
    const [liquor, coldest] = readings(run, 60)
    expect(liquor.words).toBe('no liquor yet; lid off')
    expect(coldest.words).toBe('no pieces in the pot')
  })

  test('a burn stop is named with its cause', () => {
    const base = readings(syntheticRun({ burns: true }), 53 * 60)[3]
    expect(base.words).toContain('stopped by too little liquid over the floor')
    expect(base.accent).toBe('heat')
  })

  test.each(exampleRuns())('are figures or a dash throughout $name', ({ run }) => {
    for (let t = 0; t <= run.phases.at(-1)!.end_s; t += 60)
      for (const { value, words } of readings(run, t)) {
        expect(value).toMatch(/^(-?\d+|–)$/)
        expect(words).not.toMatch(/NaN|undefined|Infinity/)
      }
  })
})

describe('for those who hear the drawing', () => {
  test('the strip', () => {
    const said = describeStrip(run)
    expect(said).toContain('1 h 30 to 1 h 46 in all, 37 min by hand.')
    expect(said).toContain('The liquor reaches 116 °C at 75 kPa over the air outside.')
    expect(said).toContain('float up at 36 min, pork tender at 66 min and float down at 87 min')
    expect(said).toContain('In the end: pork tender and leeks soft.')
    expect(describeStrip(syntheticRun({ burns: true }))).toContain(
      'The pot stops with a burn warning at 52 min, because of too little liquid over the floor.',
    )
  })

  test('the pot', () => {
    expect(describePot(run, 64 * 60)).toBe(
      '64 min: 23 minutes into the thirty. In the 6-quart electric pot the lid is locked and the float up, 75 kPa over the air outside. ' +
        '371 ml of liquid at 116 °C; the pot is 30 % full, its limit is 67 %. ' +
        'In it: pork, 18 pieces, 113 °C in the middle and 116 °C at the surface; leeks, 32 pieces, 116 °C in the middle and 117 °C at the surface. ' +
        'The base is at 126 °C, its trip at 140, heat on.',
    )
    expect(describePot(run, 22 * 60)).toContain('Waiting beside it: pork at 36 °C.')
  })

  test.each(exampleRuns())('no broken figures in $name', ({ run }) => {
    expect(describeStrip(run)).not.toMatch(/NaN|undefined|Infinity/)
    for (let t = 0; t <= run.phases.at(-1)!.end_s; t += 300)
      expect(describePot(run, t)).not.toMatch(/NaN|undefined|Infinity/)
  })

  test('names are short and differ', () => {
    expect(shortNames(run.plan)).toEqual(['pork', 'leeks', 'cider', 'rapeseed oil'])
  })
})

describe('the chart in characters', () => {
  test.each([40, 60, 80, 120])('no line is wider than %i columns', (columns) => {
    for (const unicode of [true, false])
      for (const line of terminalChart(run, { columns, unicode }).split('\n').slice(0, -2))
        expect([...line].length).toBeLessThanOrEqual(columns)
  })

  test('keeps to ASCII when asked, but for the degree sign', () => {
    expect(terminalChart(run, { columns: 80, unicode: false }).replace('°', '')).toMatch(/^[\x20-\x7e\n]*$/)
  })

  test('shows the browning high and the trip where the lid is sealed', () => {
    const lines = terminalChart(run, { columns: 80 }).split('\n')
    const row = (label: string) => lines.find((line) => line.trimStart().startsWith(label))!
    expect(row('200')).toContain('•')
    expect(row('150')).toContain('╌')
    expect(lines.at(-1)).toContain('1 h 30 to 1 h 46 in all')
  })
})

test('labels down a side keep their order, their distance and the edges', () => {
  const wanted = [40, 42, 41, 300, 5].map((at) => ({ at, size: 30 }))
  const centres = spread(wanted, 0, 320)
  const sorted = [...centres].sort((a, b) => a - b)
  for (let i = 1; i < sorted.length; i++) expect(sorted[i] - sorted[i - 1]).toBeGreaterThanOrEqual(30 - 1e-9)
  expect(Math.min(...centres)).toBeGreaterThanOrEqual(15 - 1e-9)
  expect(Math.max(...centres)).toBeLessThanOrEqual(305 + 1e-9)
  expect(spread([{ at: 100, size: 20 }], 0, 320)).toEqual([100])
})
