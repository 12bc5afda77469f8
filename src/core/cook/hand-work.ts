import { type Group, resize } from './group.ts'
import { emptyLiquor, heatCapacity_J_per_K } from './liquor.ts'
import { mixWater, reference_K } from './vessel.ts'
import { band, enter, groupsOf, idle, isWet, mid, type Op, stir, type Walk } from './walk.ts'

// What hands do with food that is in the vessel: mash, lift, give back, strain, skim.

/** Mashed pieces become liquor: their water thins it, their solids thicken it. */
export function mash(w: Walk, op: Op<'mash'>): void {
  const share = op.share ?? 1
  const { v } = w
  const chosen = op.loads.length > 0 ? groupsOf(w, op.loads) : v.groups.filter((g) => g.where === 1)
  for (const g of chosen) {
    if (g.kind === 'meat' || g.where === 0 || g.where === 4) continue
    const part = share
    const water = Math.max(0, g.load.mass_kg * g.food.composition.water - g.given_kg + g.absorbed_kg) * part
    const total = g.mass_kg * part
    const fat = g.fat_kg * part
    const salt = g.salt_kg * part
    const starch = Math.min(g.load.mass_kg * g.food.starch * part, total - water - fat - salt)
    const rest = Math.max(0, total - water - fat - salt - starch)
    const heat_J = g.heat_J() * part
    const liquorHeat = heatCapacity_J_per_K(v.liquor)
    const energy = liquorHeat * (v.liquor_K - reference_K) + heat_J
    v.liquor.water += water
    v.liquor.fat += fat
    v.liquor.salt += salt
    v.liquor.starchSwollen += Math.max(0, starch)
    v.liquor.suspended += rest
    v.liquor_K = reference_K + energy / heatCapacity_J_per_K(v.liquor)
    g.count *= 1 - part
    g.mass_kg -= total
    g.fat_kg -= fat
    g.salt_kg -= salt
    for (let i = 0; i < g.water_kg.length; i++) g.water_kg[i] *= 1 - part
    g.given_kg += water
    g.mashed_kg += water
    if (part >= 1) g.where = 4
  }
  stir(w)
}
export function lift(w: Walk, op: Op<'lift'>): void {
  const start = w.now_s
  for (const g of groupsOf(w, op.loads)) if (g.where === 1 || g.where === 3) g.where = 2
  idle(w, mid(op.time_s), { heatOn: true })
  band(w, w.stage === 'after' ? 'after' : 'open', op.label, start, { handsOn: op.handsOn, spread: op.time_s })
}

export function giveBack(w: Walk, op: Op<'return'>): void {
  const start = w.now_s
  for (const id of op.loads) {
    const g = w.v.groups.find((one) => one.load.id === id)
    if (!g) enter(w, w.plan.loads[id], op.how)
    else if (g.where !== 4) {
      g.where = 1
      takePlateJuice(w, g)
    }
  }
  if (op.how === 'stirred' && isWet(w)) stir(w)
  idle(w, mid(op.time_s), { heatOn: true })
  band(w, w.stage === 'after' ? 'after' : 'open', op.label, start, { handsOn: op.handsOn, spread: op.time_s })
}

/** What ran out of the pieces on the plate goes back with them. */
export function takePlateJuice(w: Walk, g: Group): void {
  if (g.plateJuice_kg <= 0) return
  const mean_K = g.leaving_K()
  resize(g, -g.plateJuice_kg)
  mixWater(w.v, g.plateJuice_kg, mean_K)
  g.plateJuice_kg = 0
}

/** Loads, or with `drain` the liquor too, leave for good. */
export function strain(w: Walk, op: Op<'strain'>): void {
  const start = w.now_s
  const { v } = w
  for (const g of groupsOf(w, op.loads)) discard(w, g)
  if (op.kind === 'drain') {
    const heat = heatCapacity_J_per_K(v.liquor)
    v.books.energy_J.leftWithFood += heat * (v.liquor_K - reference_K)
    v.books.water_kg.lifted += v.liquor.water
    v.books.fat_kg.lifted += v.liquor.fat
    v.books.salt_kg.lifted += v.liquor.salt
    v.liquor = emptyLiquor()
  }
  idle(w, mid(op.time_s), { heatOn: true })
  band(w, w.stage === 'after' ? 'after' : 'open', op.label, start, { handsOn: op.handsOn, spread: op.time_s })
}

function discard(w: Walk, g: Group): void {
  if (g.where === 4 || g.where === 0) return
  g.where = 4
  w.v.books.energy_J.leftWithFood += g.heat_J()
  w.v.books.water_kg.lifted += waterIn(g)
  w.v.books.fat_kg.lifted += g.fat_kg
  w.v.books.salt_kg.lifted += g.salt_kg
}

/** Water held by a load now, kg. */
export function waterIn(g: Group): number {
  if (g.kind === 'meat') {
    let sum = g.plateJuice_kg
    for (let i = 0; i < g.water_kg.length; i++) sum += g.water_kg[i]
    return sum
  }
  return g.load.mass_kg * g.food.composition.water - g.given_kg + g.absorbed_kg + g.plateJuice_kg
}

export function skim(w: Walk, op: Op<'skim'>): void {
  const start = w.now_s
  const { v } = w
  const leaves_kg = op.leaves_m3 !== undefined ? op.leaves_m3 * 890 : v.liquor.fat * 0.2
  const kg = Math.max(0, v.liquor.fat - leaves_kg)
  v.books.energy_J.leftWithFood += kg * 2100 * (v.liquor_K - reference_K)
  v.books.fat_kg.lifted += kg
  v.liquor.fat -= kg
  idle(w, mid(op.time_s), { heatOn: true })
  band(w, w.stage === 'after' ? 'after' : 'open', op.label, start, { handsOn: op.handsOn, spread: op.time_s })
}
