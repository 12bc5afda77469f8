import { expect } from 'vitest'
import type { Recipe } from '../../../src/core/manuscript/index.ts'
import type { Plan } from '../../../src/core/method/index.ts'

/** First number in a value that is not finite; null when all are. */
function notFinite(value: unknown, path: string): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : `${path} is ${value}`
  if (!value || typeof value !== 'object') return null
  for (const [key, each] of Object.entries(value)) {
    const found = notFinite(each, `${path}.${key}`)
    if (found) return found
  }
  return null
}

/** What holds for every plan, whatever the text: it can be done, in this order, with these hands. */
export function expectCoherent(plan: Plan, recipe: Recipe): void {
  expect(notFinite(plan.loads, 'loads') ?? notFinite(plan.operations, 'operations')).toBeNull()
  plan.loads.forEach((load, at) => {
    expect(load.id).toBe(at)
    expect(load.mass_kg, load.name).toBeGreaterThan(0)
    expect(load.massBand_kg.low, load.name).toBeLessThanOrEqual(load.mass_kg * 1.0001)
    expect(load.massBand_kg.high, load.name).toBeGreaterThanOrEqual(load.mass_kg * 0.9999)
    expect(load.start_K, load.name).toBeGreaterThan(250)
    expect(load.start_K, load.name).toBeLessThan(374)
    const water = load.food.composition.water
    expect(water >= 0 && water <= 1, load.name).toBe(true)
    if (load.pieces) {
      expect(load.pieces.count, load.name).toBeGreaterThanOrEqual(1)
      expect(load.pieces.thickness_m, load.name).toBeLessThan(0.7)
    }
  })
  const entered = new Set<number>()
  const lifted = new Set<number>()
  let sealed = false
  let held = false
  for (const op of plan.operations) {
    expect(op.from >= 0 && op.to <= recipe.text.length && op.from <= op.to, `${op.label} stands in the text`).toBe(true)
    expect(op.label.length, 'labels fit a strip').toBeGreaterThan(2)
    const time = 'time_s' in op ? op.time_s : null
    if (time) expect(time.low >= 0 && time.low <= time.high, `${op.label}: ${time.low} to ${time.high} s`).toBe(true)
    const open = !['bench', 'hold', 'release', 'lock'].includes(op.kind)
    if (open) expect(sealed, `${op.label} with the lid locked`).toBe(false)
    if (op.kind === 'add' || op.kind === 'brown') {
      for (const id of op.loads) {
        if (op.kind === 'add') expect(entered.has(id), `${op.label}: load ${id} enters once`).toBe(false)
        entered.add(id)
        lifted.delete(id)
      }
      if (op.kind === 'brown') {
        expect(op.batches).toBeGreaterThanOrEqual(1)
        expect(op.loads.length).toBeGreaterThan(0)
        if (op.liftsOut) for (const id of op.loads) if (plan.loads[id].pieces) lifted.add(id)
      }
    } else if (op.kind === 'return') {
      for (const id of op.loads) {
        expect(lifted.has(id), `${op.label}: load ${id} waits beside the pot`).toBe(true)
        lifted.delete(id)
      }
    } else if (op.kind === 'lift' || op.kind === 'strain') {
      for (const id of op.loads) {
        expect(entered.has(id) && !lifted.has(id), `${op.label}: load ${id} is in the pot`).toBe(true)
        lifted.add(id)
      }
    } else if (op.kind === 'lock') {
      expect(sealed, 'locked once').toBe(false)
      expect(plan.pot.regulator).not.toBeNull()
      sealed = true
    } else if (op.kind === 'hold') {
      expect(sealed, 'held under a locked lid').toBe(true)
      held = true
    } else if (op.kind === 'release') {
      expect(sealed && held, 'released from pressure').toBe(true)
      sealed = false
      held = false
    } else if (op.kind === 'bake') expect(['oven', 'burner']).toContain(plan.pot.kind)
    else if (op.kind === 'deglaze') expect(op.scraped > 0 && op.scraped <= 1).toBe(true)
  }
  expect(held, 'nothing is left at pressure').toBe(false)
  for (const finding of plan.findings) {
    expect(finding.title).toMatch(/[.?]$/)
    if (finding.span) expect(finding.span.from >= 0 && finding.span.to <= recipe.text.length).toBe(true)
  }
}
