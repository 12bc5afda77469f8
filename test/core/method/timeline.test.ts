import { describe, expect, it } from 'vitest'
import type { Range } from '../../../src/core/manuscript/index.ts'
import { type Plan, type PlanOperation, plannedTime_s, timeline } from '../../../src/core/method/index.ts'
import { potById } from '../../../src/core/pots/index.ts'

const common = { from: 0, to: 1, step: 0, label: 'x', timed: true } as const
const exactly = (s: number): Range => ({ low: s, high: s })
const bench = (time_s: Range, more: { handsOn?: boolean; apart?: boolean; beside?: boolean } = {}): PlanOperation => ({
  ...common,
  verb: 'cut',
  kind: 'bench',
  loads: [],
  handsOn: more.handsOn ?? true,
  time_s,
  ...(more.apart ? { apart: true } : {}),
  ...(more.beside ? { beside: true } : {}),
})
const simmer = (time_s: Range | null): PlanOperation => ({
  ...common,
  verb: 'simmer',
  kind: 'simmer',
  handsOn: false,
  lid: 'on',
  setting: 'low',
  vigour: 'simmer',
  time_s,
  stirred: false,
})
const hold: PlanOperation = {
  ...common,
  verb: 'hold',
  kind: 'hold',
  handsOn: false,
  level: 'high',
  time_s: exactly(1800),
}
const natural: PlanOperation = {
  ...common,
  verb: 'release',
  kind: 'release',
  handsOn: false,
  how: 'natural',
  natural_s: null,
}
const planOf = (...operations: PlanOperation[]): Plan => ({
  pot: potById('electric-6qt')!,
  potFrom: 'default',
  altitude_m: 0,
  loads: [],
  operations,
  findings: [],
})

describe('timeline of one cook', () => {
  it('lets bands follow one another, low and high apart', () => {
    const { bands, total_s, handsOn_s } = timeline(
      planOf(bench({ low: 100, high: 200 }), simmer(exactly(600)), bench({ low: 30, high: 50 })),
    )
    expect(bands.map((band) => band.start_s)).toEqual([
      { low: 0, high: 0 },
      { low: 100, high: 200 },
      { low: 700, high: 800 },
    ])
    expect(total_s).toEqual({ low: 730, high: 850 })
    expect(handsOn_s).toEqual({ low: 130, high: 250 })
  })
  it('keeps overnight waiting off the clock', () => {
    const { total_s, apart_s, bands } = timeline(
      planOf(bench(exactly(36000), { handsOn: false, apart: true }), simmer(exactly(600))),
    )
    expect(total_s).toEqual(exactly(600))
    expect(apart_s).toEqual(exactly(36000))
    expect(bands).toHaveLength(1)
  })
  it('puts work beside an unattended band for nothing, and counts only what outlasts it', () => {
    expect(
      timeline(
        planOf(simmer(exactly(600)), bench(exactly(200), { beside: true }), bench(exactly(300), { beside: true })),
      ).total_s,
    ).toEqual(exactly(600))
    expect(
      timeline(
        planOf(simmer(exactly(600)), bench(exactly(500), { beside: true }), bench(exactly(300), { beside: true })),
      ).total_s,
    ).toEqual(exactly(800))
  })
  it('does not let two hands do two things at once', () => {
    expect(timeline(planOf(bench(exactly(600)), bench(exactly(200), { beside: true }))).total_s).toEqual(exactly(800))
  })
  it('lists what only a run can tell, and takes it from the run', () => {
    const plan = planOf(simmer(null), hold, natural)
    expect(timeline(plan).open).toEqual([0, 2])
    expect(timeline(plan).total_s).toEqual(exactly(1800))
    const told = timeline(
      plan,
      new Map([
        [0, exactly(400)],
        [2, exactly(1000)],
      ]),
    )
    expect(told.open).toEqual([])
    expect(told.total_s).toEqual(exactly(3200))
  })
  it('multiplies batches and knows the natural part of a release', () => {
    expect(
      plannedTime_s({
        ...common,
        verb: 'brown',
        kind: 'brown',
        handsOn: true,
        loads: [],
        setting: 'high',
        batches: 2,
        time_s: exactly(360),
        liftsOut: true,
      }),
    ).toEqual(exactly(720))
    const mixed = plannedTime_s({
      ...common,
      verb: 'release',
      kind: 'release',
      handsOn: false,
      how: 'natural-then-vented',
      natural_s: 900,
    })!
    expect(mixed.low).toBe(900)
    expect(mixed.high).toBeGreaterThan(900)
  })
})
