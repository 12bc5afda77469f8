import { describe, expect, test } from 'vitest'
import { glassPot, strip, stripScale } from '../../../src/core/press/index.ts'
import { thinned } from '../../../src/core/press/thin.ts'
import { badNumbers, collisions, textsOf } from '../../support/drawn.ts'
import { exampleRuns } from '../../support/example-runs.ts'
import { syntheticRun } from '../../support/synthetic-run.ts'

const widths = [320, 390, 640, 760, 1000, 1400]
const runs = [
  { name: 'plain', run: syntheticRun() },
  { name: 'burnt', run: syntheticRun({ burns: true }) },
  ...exampleRuns(),
]

describe.each(runs)('the strip of a run: $name', ({ run }) => {
  test.each(widths)('no words cover each other and none leave the sheet at %i px', (width) => {
    const end = run.phases.at(-1)!.end_s
    for (const share of [0.1, 0.68, 1]) {
      const drawing = strip(run, { width, height: 260, cursor_s: share * end })
      const texts = textsOf(drawing)
      expect(collisions(texts)).toEqual([])
      for (const { text, box } of texts) {
        expect(box.x0, text).toBeGreaterThanOrEqual(-1)
        expect(box.x1, text).toBeLessThanOrEqual(width + 1)
        expect(box.y1, text).toBeLessThanOrEqual(262)
      }
      expect(badNumbers(drawing)).toEqual([])
    }
  })
})

describe('what the strip says', () => {
  const run = syntheticRun()
  const words = (width: number, cursor_s?: number) =>
    textsOf(strip(run, { width, height: 260, cursor_s })).map(({ text }) => text)

  test('names every curve, the trip, the total, the moment and what is done', () => {
    const said = words(1360, 64 * 60)
    for (const word of [
      'base of the pot',
      'liquor',
      'coldest pork',
      'leeks',
      'trip',
      'tender',
      '75 kPa over the air outside',
    ])
      expect(said).toContain(word)
    expect(said).toContain('1 h 30 to 1 h 46 in all, 37 min by hand')
    expect(said).toContain('64 min: 23 minutes into the thirty')
  })

  test('a burn stop stands out', () => {
    const burnt = textsOf(strip(syntheticRun({ burns: true }), { width: 1000, height: 260 })).map(({ text }) => text)
    expect(burnt).toContain('burn stop')
    expect(words(1000)).not.toContain('burn stop')
  })

  test('a phone gets the words instead of the measures', () => {
    expect(words(358)).toContain('pork tender, leeks soft')
    expect(words(358)).not.toContain('falls apart')
  })

  test('compact is bands and one sentence', () => {
    const drawing = strip(run, { width: 358, height: 44, cursor_s: 64 * 60, compact: true })
    expect(textsOf(drawing).map(({ text }) => text)).toEqual(['64 min: 23 minutes into the thirty'])
    expect(badNumbers(drawing)).toEqual([])
  })

  test('the same call draws the same thing', () => {
    expect(strip(syntheticRun(), { width: 900, height: 240 })).toEqual(
      strip(syntheticRun(), { width: 900, height: 240 }),
    )
  })

  test('a run without anything to show is still a drawing', () => {
    const empty = {
      ...run,
      phases: [],
      events: [],
      pieces: [],
      series: { ...run.series, time_s: new Float64Array(0), groups: [] },
    }
    expect(badNumbers(strip(empty, { width: 800, height: 200, cursor_s: 0 }))).toEqual([])
    expect(badNumbers(glassPot(empty, { width: 400, height: 400, time_s: 0 }))).toEqual([])
  })
})

describe('between time and pixels', () => {
  test.each([false, true])('there and back, compact: %s', (compact) => {
    const run = syntheticRun()
    const scale = stripScale(run, { width: 900, height: 240, compact })
    for (let t = 0; t <= 95 * 60; t += 97) expect(scale.time_s(scale.x(t))).toBeCloseTo(t, 6)
    expect(scale.time_s(-50)).toBe(0)
    expect(scale.time_s(5000)).toBeCloseTo(95 * 60, 6)
  })

  test('a night of soaking takes a short stretch and the clock begins after it', () => {
    const run = soaked()
    const scale = stripScale(run, { width: 900, height: 240 })
    const soak = scale.x(12 * 3600) - scale.x(0)
    expect(soak / (scale.right - scale.left)).toBeLessThan(0.1)
    for (let t = 0; t <= 12 * 3600 + 95 * 60; t += 611) expect(scale.time_s(scale.x(t))).toBeCloseTo(t, 5)
    const said = textsOf(strip(run, { width: 900, height: 240, cursor_s: 12 * 3600 + 64 * 60 })).map(({ text }) => text)
    expect(said).toContain('0 min')
    expect(said).toContain('64 min: 23 minutes into the thirty')
    const night = textsOf(strip(run, { width: 900, height: 240, cursor_s: 3 * 3600 })).map(({ text }) => text)
    expect(night).toContain('9 h before: soak, 3 h in')
  })
})

/** The synthetic run with a night's soaking put before it. */
function soaked() {
  const run = syntheticRun()
  const night = 12 * 3600
  const later = <T extends { start_s: number; end_s: number }>(phase: T) => ({
    ...phase,
    start_s: phase.start_s + night,
    end_s: phase.end_s + night,
  })
  return {
    ...run,
    phases: [
      { kind: 'bench' as const, label: 'soak', start_s: 0, end_s: night, handsOn: false, operation: null },
      ...run.phases.map(later),
    ],
    events: run.events.map((event) => ({ ...event, time_s: event.time_s + night })),
    series: { ...run.series, time_s: run.series.time_s.map((t) => t + night) },
  }
}

describe('thinning', () => {
  test('keeps the extremes of every pixel column', () => {
    const points = Array.from({ length: 20_000 }, (_, i) => ({ x: i / 200, y: Math.sin(i * 12.9898) * 100 }))
    const kept = thinned(points)
    expect(kept.length).toBeLessThanOrEqual(4 * 101)
    for (let column = 0; column < 100; column++) {
      const here = (list: typeof points) => list.filter((p) => Math.floor(p.x) === column).map((p) => p.y)
      expect(Math.max(...here(kept))).toBe(Math.max(...here(points)))
      expect(Math.min(...here(kept))).toBe(Math.min(...here(points)))
    }
  })

  test('keeps gaps as gaps and order as order', () => {
    const kept = thinned([1, 2, Number.NaN, Number.NaN, 3, 4].map((y, x) => ({ x, y })))
    expect(kept.map((p) => p.y)).toEqual([1, 2, Number.NaN, 3, 4])
    const xs = thinned(Array.from({ length: 999 }, (_, i) => ({ x: i / 30, y: (i * 7919) % 101 }))).map((p) => p.x)
    expect(xs).toEqual([...xs].sort((a, b) => a - b))
  })
})
