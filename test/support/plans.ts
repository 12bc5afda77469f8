import { type Load, type Pieces, type Plan, type PlanOperation, type PotCard, potById } from '../../src/core/index.ts'
import { type Food, foodById } from '../../src/core/larder/index.ts'
import type { Range } from '../../src/core/manuscript/index.ts'

// Plans written by hand, for tests of the pot that should not depend on how a sentence is read.

const exactly = (x: number): Range => ({ low: x, high: x })
const fridge_K = 278.15
const room_K = 293.15

export const cube = (size_m: number): Pieces => ({
  shape: 'brick',
  thickness_m: size_m,
  width_m: size_m,
  length_m: size_m,
  spread: 0.2,
  count: 1,
  from: 'words',
})

export function food(id: string): Food {
  const found = foodById(id)
  if (!found) throw new Error(`the larder has no ${id}`)
  return found
}

type Bare<T> = T extends unknown ? Omit<T, 'from' | 'to' | 'verb' | 'step' | 'label' | 'handsOn' | 'timed'> : never

export class PlanBuilder {
  readonly loads: Load[] = []
  readonly operations: PlanOperation[] = []

  load(id: string, mass_kg: number, pieces: Pieces | null = null, start_K = pieces ? fridge_K : room_K): number {
    const one = food(id)
    this.loads.push({
      id: this.loads.length,
      ingredient: null,
      name: one.name,
      food: one,
      mass_kg,
      massBand_kg: exactly(mass_kg),
      pieces,
      start_K,
      frozen: start_K < 270,
      span: null,
    })
    return this.loads.length - 1
  }

  do(op: Bare<PlanOperation>): this {
    this.operations.push({
      from: 0,
      to: 0,
      verb: 'add',
      step: 0,
      label: op.kind,
      handsOn: true,
      timed: true,
      ...op,
    } as PlanOperation)
    return this
  }

  add(loads: number[], how: 'stirred' | 'on-top' | 'on-floor' = 'stirred'): this {
    return this.do({ kind: 'add', loads, how, time_s: exactly(10) })
  }

  plan(pot: PotCard | string = 'electric-6qt', altitude_m = 0): Plan {
    const card = typeof pot === 'string' ? potById(pot) : pot
    if (!card) throw new Error(`no pot ${String(pot)}`)
    return { pot: card, potFrom: 'asked', altitude_m, loads: this.loads, operations: this.operations, findings: [] }
  }
}

export interface Braise {
  meat?: string
  meat_kg?: number
  size_m?: number
  stock_kg?: number
  passata_kg?: number
  batches?: number
  each_s?: number
  scraped?: number
  vegetables?: boolean
  hold_s?: number
  release?: 'natural' | 'vented' | 'natural-then-vented' | 'iced'
  pot?: PotCard | string
  altitude_m?: number
  scale?: number
  ovenHours?: number
}

/** The base braise of docs/models/pot.md: lamb shoulder, onion, carrot, stock, browned in batches and deglazed. */
export function braise(o: Braise = {}): Plan {
  const b = new PlanBuilder()
  const scale = o.scale ?? 1
  const oil = b.load('olive-oil', 0.027)
  const meat = b.load(o.meat ?? 'lamb-shoulder', (o.meat_kg ?? 0.9) * scale, cube(o.size_m ?? 0.04))
  const stock = b.load('homemade-stock', (o.stock_kg ?? 0.15) * scale)
  b.add([oil]).do({ kind: 'heat', setting: 'high', time_s: null })
  b.do({
    kind: 'brown',
    loads: [meat],
    setting: 'high',
    batches: o.batches ?? 2 * scale,
    time_s: exactly(o.each_s ?? 420),
    liftsOut: true,
  })
  const withVegetables = o.vegetables !== false
  if (withVegetables) {
    const onion = b.load('onion', 0.2 * scale, cube(0.01), room_K)
    b.add([onion]).do({ kind: 'fry', mode: 'sweat', setting: 'medium', time_s: exactly(240), stirred: true })
  }
  b.add([stock])
  if (o.passata_kg) b.add([b.load('passata', o.passata_kg)])
  if ((o.scraped ?? 0.9) > 0) b.do({ kind: 'deglaze', scraped: o.scraped ?? 0.9, time_s: exactly(45) })
  b.do({ kind: 'return', loads: [meat], how: 'on-top', time_s: exactly(20) })
  if (withVegetables) b.add([b.load('carrot', 0.3 * scale, cube(0.03), room_K)], 'on-top')
  if (o.ovenHours)
    return b
      .do({ kind: 'bake', oven_K: 423.15, lid: 'on', time_s: exactly(o.ovenHours * 3600) })
      .plan(o.pot ?? 'dutch-oven', o.altitude_m)
  return b
    .do({ kind: 'lock', time_s: exactly(15) })
    .do({ kind: 'hold', level: 'high', time_s: exactly(o.hold_s ?? 1800) })
    .do({ kind: 'release', how: o.release ?? 'natural', natural_s: null })
    .plan(o.pot, o.altitude_m)
}

/** A weigh-back test: water alone, held and released. */
export function waterTest(o: {
  water_kg: number
  hold_s: number
  release: 'natural' | 'vented'
  pot?: PotCard | string
  altitude_m?: number
  start_K?: number
}): Plan {
  const b = new PlanBuilder()
  return b
    .add([b.load('water', o.water_kg, null, o.start_K ?? room_K)])
    .do({ kind: 'lock', time_s: exactly(10) })
    .do({ kind: 'hold', level: 'high', time_s: exactly(o.hold_s) })
    .do({ kind: 'release', how: o.release, natural_s: null })
    .plan(o.pot, o.altitude_m)
}
