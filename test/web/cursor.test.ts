import { describe, expect, it } from 'vitest'
import type { Run } from '../../src/core/index.ts'
import {
  cursorAt,
  firstLook_s,
  phaseAt,
  timeAsked_s,
  timeOf,
  withinAsked,
  wordsAt,
} from '../../src/web/bench/cursor.ts'
import { syntheticRun } from '../support/synthetic-run.ts'

const run = syntheticRun({ step_s: 60 })
const steps = [0, 1, 2, 3].map((n) => ({ from: 100 * n, to: 100 * n + 90, text: '', operations: [] }))
const recipe = { steps } as unknown as Parameters<typeof wordsAt>[0]

describe('the cursor', () => {
  it('comes back to the time it was taken from', () => {
    for (let time_s = 0; time_s <= 95 * 60; time_s += 97)
      expect(timeOf(run, cursorAt(run, time_s))).toBeCloseTo(time_s, 6)
  })

  it('stays with the work when what comes before takes longer', () => {
    const cursor = cursorAt(run, 64 * 60)
    const later: Run = {
      ...run,
      phases: run.phases.map((phase) => ({ ...phase, start_s: phase.start_s + 300, end_s: phase.end_s + 300 })),
    }
    expect(timeOf(later, cursor)).toBe(69 * 60)
  })

  it('falls back to the first look when its work is gone', () => {
    const cursor = cursorAt(run, 64 * 60)
    const open: Run = { ...run, phases: run.phases.filter((phase) => phase.kind !== 'hold') }
    expect(timeOf(open, cursor)).toBe(firstLook_s(open))
  })

  it('looks first at a burn stop, else well into the hold', () => {
    expect(firstLook_s(syntheticRun({ burns: true, step_s: 60 }))).toBe(52 * 60 - 1)
    expect(phaseAt(run, firstLook_s(run))?.kind).toBe('hold')
  })

  it('finds the words that ask for a moment; coming up belongs to the hold it leads to', () => {
    expect(wordsAt(recipe, run, 20 * 60)?.words).toMatchObject({ verb: 'brown' })
    expect(wordsAt(recipe, run, 38 * 60)?.words).toMatchObject({ verb: 'hold' })
    expect(wordsAt(recipe, run, 38 * 60)?.step).toBe(steps[2])
  })

  it('finds the time that a sentence asks for, and none outside the steps', () => {
    expect(timeAsked_s(recipe, run, 310)).toBe(87.5 * 60)
    expect(timeAsked_s(recipe, run, 395)).toBeNull()
    expect(withinAsked(run, 90 * 60, 87.5 * 60)).toBe(true)
    expect(withinAsked(run, 60 * 60, 87.5 * 60)).toBe(false)
  })
})
