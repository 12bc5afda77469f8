import type { HeatWord } from '../manuscript/index.ts'
import type { Load, Plan, PlanOperation } from '../method/index.ts'
import type { Constants } from './assumptions.ts'
import { type DryStep, type Lying, stepDry } from './dry.ts'
import { type Group, makeGroup, warm } from './group.ts'
import { addScaled, emptyLiquor, heatCapacity_J_per_K, liquorOf, liquorParts } from './liquor.ts'
import { noRecorder, type Recorder } from './recorder.ts'
import type { BurnCause, EventCode, Phase, RunEvent } from './run.ts'
import { mixIn, newVessel, reference_K, type Vessel, vapourEnthalpy_J_per_kg } from './vessel.ts'
import { stepWet, type WetOrder, type WetStep } from './wet.ts'

/** Everything a walk through a plan carries along. */
export interface Walk {
  readonly plan: Plan
  readonly v: Vessel
  readonly c: Constants
  readonly recorder: Recorder
  now_s: number
  /** The same clock by the low and the high end of every time that is a range. */
  low_s: number
  high_s: number
  handsOn_s: number
  phases: Phase[]
  events: RunEvent[]
  /** Index of the operation being done. */
  at: number
  /** True once anything has been heated: before that, nothing needs a step. */
  warmYet: boolean
  inOven_K: number | null
  /** Heat setting the open pot stands on; null when it is off. */
  setting: HeatWord | null
  margin: { dK: number; at_s: number; cause: BurnCause | null; trips: boolean }
  clock: {
    prep_s: number
    beforeLock_s: number
    comeUp_s: number | null
    hold_s: number | null
    release_s: number | null
    after_s: number
    apart_s: number
  }
  stage: 'before' | 'closed' | 'after'
  fill_m3: number
  step: WetStep
  everTripped: boolean
  neverAtPressure: boolean
  dryFloorAt_s: number | null
  crowded: { load: number; coverage: number; brown: number }[]
}

export function startWalk(plan: Plan, c: Constants, recorder: Recorder = noRecorder): Walk {
  const v = newVessel(plan.pot, plan.altitude_m, c)
  return {
    plan,
    v,
    c,
    recorder,
    now_s: 0,
    low_s: 0,
    high_s: 0,
    handsOn_s: 0,
    phases: [],
    events: [],
    at: 0,
    warmYet: false,
    inOven_K: null,
    setting: null,
    margin: { dK: Number.POSITIVE_INFINITY, at_s: 0, cause: null, trips: false },
    clock: { prep_s: 0, beforeLock_s: 0, comeUp_s: null, hold_s: null, release_s: null, after_s: 0, apart_s: 0 },
    stage: 'before',
    fill_m3: 0,
    step: {
      power_W: 0,
      pinned: false,
      boiled_kg: 0,
      breathed_kg: 0,
      flux_W_per_m2: 0,
      wet: 1,
      parts: { clean: 0, thickness: 0, fond: 0, floor: 0, patch: 0 },
    },
    everTripped: false,
    neverAtPressure: false,
    dryFloorAt_s: null,
    crowded: [],
  }
}

export const mid = (r: { low: number; high: number }): number => (r.low + r.high) / 2

export function event(w: Walk, code: EventCode, load: number | null = null, time_s = w.now_s): void {
  w.events.push({ code, time_s, operation: w.at, load })
}

/** Notes a band on the strip from `start_s` to now, and its spread on the two other clocks. */
export function band(
  w: Walk,
  kind: Phase['kind'],
  label: string,
  start_s: number,
  o: { handsOn: boolean; spread?: { low: number; high: number } | number },
): void {
  const took = w.now_s - start_s
  if (took <= 0) return
  const last = w.phases.at(-1)
  if (
    last &&
    last.kind === kind &&
    last.label === label &&
    last.operation === w.at &&
    Math.abs(last.end_s - start_s) < 1e-6
  ) {
    w.phases[w.phases.length - 1] = { ...last, end_s: w.now_s }
  } else {
    w.phases.push({ kind, label, start_s, end_s: w.now_s, handsOn: o.handsOn, operation: w.at })
  }
  if (o.handsOn) w.handsOn_s += took
  const spread = o.spread ?? 0
  w.low_s += typeof spread === 'number' ? took * (1 - spread) : spread.low
  w.high_s += typeof spread === 'number' ? took * (1 + spread) : spread.high
  if (kind === 'bench' && w.stage === 'before' && !w.warmYet) w.clock.prep_s += took
  else if (w.stage === 'before') w.clock.beforeLock_s += took
  else if (w.stage === 'after') w.clock.after_s += took
}

/** True when enough liquor covers the floor for it to be a wet pot and not a frying floor. */
export function isWet(w: Walk): boolean {
  return w.v.liquor.water / 960 / w.v.card.baseArea_m2 > 0.6e-3
}

export const heatShare = { low: 0.3, 'medium-low': 0.45, medium: 0.6, 'medium-high': 0.8, high: 1 } as const

/** Floor temperature at which an open setting cuts out; without a thermostat a cook takes the pan off at about 230 °C. */
export function thermostat_K(w: Walk, setting: keyof typeof heatShare): number {
  const top = w.v.card.thermostat_K ?? 503.15
  // Lower settings cut out lower: a quarter of the way down to 150 °C for each step.
  const low = 423.15
  const step = { low: 1, 'medium-low': 0.75, medium: 0.5, 'medium-high': 0.25, high: 0 }[setting]
  return top - (top - low) * step
}

export function wetOrder(w: Walk, o: Partial<WetOrder> & { control: WetOrder['control'] }): WetOrder {
  const { card } = w.v
  return {
    most_W: card.power_W,
    pin_K: w.v.boil_K,
    want_W: 0,
    saturation_K: w.v.boil_K,
    lid: 'off',
    around_K: w.inOven_K ?? w.v.room_K,
    loss_W_per_K: card.loss_W_per_K,
    film_W_per_m2K: w.c.filmSimmer_W_per_m2K,
    stirred: false,
    pulsed: false,
    ...o,
  }
}

/** One step of the wet pot, of the pieces that wait beside it, and of the record. */
export function step(w: Walk, step_s: number, order: WetOrder): WetStep {
  stepWet(w.v, step_s, w.v.lid === 0 ? underThermostat(w, order) : order, w.step)
  waitBeside(w, step_s)
  w.now_s += step_s
  w.recorder.sample(w.v, w.now_s)
  return w.step
}

/** An open pot's thermostat (or a cook's nose) takes the heat off as the base nears its limit under something thick. */
function underThermostat(w: Walk, order: WetOrder): WetOrder {
  const over_dK = w.v.base_K - (thermostat_K(w, w.setting ?? 'high') - 10)
  if (over_dK <= 0) return order
  return { ...order, most_W: order.most_W * Math.max(0, 1 - over_dK / 10) }
}

/** Pieces beside the pot cool in the air and go on cooking from within. */
export function waitBeside(w: Walk, step_s: number): void {
  for (const g of w.v.groups) {
    if (g.where !== 2) continue
    g.body.forward(step_s, w.c.filmAir_W_per_m2K)
    const taken_J = warm(g, w.v.room_K)
    if (taken_J < 0) w.v.books.energy_J.lost -= taken_J
    else w.v.books.energy_J.in += taken_J
  }
}

/** What lies in the pot now, for a dry step. */
export const inPot = (w: Walk): Lying[] =>
  w.v.groups.filter((g) => g.where === 1).map((group) => ({ group, side: null }))

const dryOut: DryStep = { power_W: 0, coverage: 0, pool_kg: 0 }

/** One dry step with whatever lies on the floor, then the record. A null setting is a cold hob. */
export function dry(
  w: Walk,
  step_s: number,
  setting: HeatWord | null,
  on: readonly Lying[],
  stirred: boolean,
): DryStep {
  const order = {
    most_W: setting ? w.v.card.power_W * heatShare[setting] : 0,
    thermostat_K: thermostat_K(w, setting ?? 'low'),
    on,
    stirred,
  }
  if (w.v.vapour_kg > 0) {
    // Steam left under a lid comes back to a pot that is drying out; its latent heat warms the floor.
    w.v.base_K +=
      (w.v.vapour_kg * vapourEnthalpy_J_per_kg(Math.min(w.v.liquor_K, 430)) -
        4200 * w.v.vapour_kg * (w.v.liquor_K - reference_K)) /
      w.v.card.base_J_per_K
    w.v.liquor.water += w.v.vapour_kg
    w.v.vapour_kg = 0
  }
  stepDry(w.v, step_s, order, dryOut)
  waitBeside(w, step_s)
  w.now_s += step_s
  w.recorder.sample(w.v, w.now_s)
  return dryOut
}

/**
 * Lets time pass over the pot as it stands: with the heat off, or, while a cook adds and stirs, with the setting left
 * as it was. Before anything is warm that costs no step.
 */
export function idle(w: Walk, time_s: number, o: { lid?: 'off' | 'ajar' | 'on'; heatOn?: boolean } = {}): void {
  if (time_s <= 0) return
  if (!w.warmYet) {
    w.now_s += time_s
    w.recorder.sample(w.v, w.now_s)
    return
  }
  const setting = o.heatOn ? w.setting : null
  runFor(w, time_s, setting ? 5 : 20, (dt) => {
    if (!isWet(w)) dry(w, dt, setting, inPot(w), false)
    else {
      step(
        w,
        dt,
        wetOrder(w, {
          control: setting ? 'full' : 'off',
          most_W: setting ? w.v.card.power_W * heatShare[setting] : 0,
          lid: o.lid ?? 'off',
          film_W_per_m2K: w.c.filmRelease_W_per_m2K,
        }),
      )
    }
  })
}

/** Repeats until the time is up or `once` answers false. Steps end on the mark. */
export function runFor(w: Walk, time_s: number, longest_s: number, once: (step_s: number) => unknown): void {
  const end = w.now_s + time_s
  for (let guard = 0; guard < 200_000; guard++) {
    const rest = end - w.now_s
    if (rest <= 1e-6) return
    const step_s = rest < longest_s * 1.5 ? (rest <= longest_s ? rest : rest / 2) : longest_s
    if (once(step_s) === false) return
  }
}

const lying = new Set(['paste', 'thickener', 'sweetener', 'dairy', 'starch'])

/** A load meets the vessel: pieces as a group, everything else into the liquor. */
export function enter(w: Walk, load: Load, how: 'stirred' | 'on-top' | 'on-floor' | 'on-rack'): void {
  const { v } = w
  const already = v.groups.find((g) => g.load.id === load.id)
  if (already) {
    already.where = how === 'on-rack' ? 3 : 1
    return
  }
  const comp = load.food.composition
  const b = v.books
  if (load.pieces) {
    const g = makeGroup(load)
    g.where = how === 'on-rack' ? 3 : 1
    v.groups.push(g)
    b.water_kg.in += load.mass_kg * comp.water
    b.fat_kg.in += g.fat_kg
    b.salt_kg.in += g.salt_kg
    b.energy_J.broughtIn += g.heat_J()
    return
  }
  if (how === 'on-rack') {
    // Poured into a dish over the water: it warms as a body of its own and mixes with nothing outside the dish.
    const depth_m = Math.max(0.02, Math.cbrt(load.mass_kg / 1000))
    const dish = {
      shape: 'cylinder',
      thickness_m: depth_m,
      width_m: depth_m,
      length_m: depth_m,
      spread: 0,
      count: 1,
      from: 'usual',
    } as const
    const g = makeGroup({ ...load, pieces: dish }, 'inert')
    g.where = 3
    v.groups.push(g)
    b.water_kg.in += load.mass_kg * comp.water
    b.fat_kg.in += g.fat_kg
    b.salt_kg.in += g.salt_kg
    b.energy_J.broughtIn += g.heat_J()
    return
  }
  const parts = liquorOf(load.food)
  const scaled = emptyLiquor()
  addScaled(scaled, parts, load.mass_kg)
  const wetBefore = isWet(w)
  const before = heatCapacity_J_per_K(v.liquor)
  mixIn(v, scaled, load.start_K)
  b.energy_J.broughtIn += (heatCapacity_J_per_K(v.liquor) - before) * (load.start_K - reference_K)
  b.water_kg.in += scaled.water
  b.fat_kg.in += scaled.fat
  b.salt_kg.in += scaled.salt
  // What is thick and lands on a dry or unstirred floor lies there until something lifts it.
  if (lying.has(load.food.character) && (how === 'on-floor' || (!wetBefore && how !== 'on-top'))) {
    v.deposit_kg += scaled.suspended + scaled.starchRaw + scaled.sugar
  }
  if (how === 'stirred' && isWet(w)) stir(w)
}

/** Stirring mixes the liquor down to the floor and lifts most of what lies there. */
export function stir(w: Walk): void {
  const { v } = w
  const serum = liquorParts.reduce((sum, part) => sum + (part === 'fat' ? 0 : v.liquor[part]), 0)
  v.floorSolids = serum > 0 ? (v.liquor.suspended + v.liquor.starchSwollen) / serum : 0
  v.deposit_kg *= 1 - w.c.floorStirred
}

export function groupsOf(w: Walk, loads: readonly number[]): Group[] {
  return w.v.groups.filter((g) => loads.includes(g.load.id))
}

/** The operation of one kind; a member that covers several kinds counts for each. */
export type Op<K extends PlanOperation['kind']> = PlanOperation extends infer O
  ? O extends PlanOperation
    ? K extends O['kind']
      ? O
      : never
    : never
  : never
