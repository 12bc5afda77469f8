import { steamTables as steam } from '../steam/index.ts'
import { type Given, type Group, resize, ripen, warm } from './group.ts'
import { heatCapacity_J_per_K } from './liquor.ts'
import type { Vessel } from './vessel.ts'

// One step of a hot fatted base with no liquor to speak of: preheating, browning, sweating. Fat and floor are one
// node. A wet face stays near 100 °C until its water has gone and then crusts; juice that the floor cannot boil away
// pools, keeps the faces wet and turns browning into stewing: crowding is a result here, not a rule.

export interface DryOrder {
  readonly most_W: number
  readonly thermostat_K: number
  /** Loads that lie on the floor now; with the side that faces it when they are being browned. */
  readonly on: readonly Lying[]
  readonly stirred: boolean
}

export interface Lying {
  readonly group: Group
  readonly side: { crust: number; brown: number } | null
}

const given: Given = { juice_kg: 0, fat_kg: 0, gelatin_kg: 0, absorbed_kg: 0, starch_kg: 0 }

/** Surface that a piece lays on the floor, m2: its two longer dimensions for a slab or brick, a third of it when round. */
function face_m2(g: Group): number {
  const p = g.load.pieces!
  if (p.shape === 'slab' || p.shape === 'brick') return p.width_m * p.length_m
  if (p.shape === 'cylinder') return 0.5 * p.thickness_m * p.length_m
  return 0.3 * p.thickness_m ** 2
}

export interface DryStep {
  power_W: number
  /** Share of the floor that food covers; above 1 it lies on itself. */
  coverage: number
  pool_kg: number
}

export function stepDry(v: Vessel, step_s: number, o: DryOrder, out: DryStep): DryStep {
  const { card, c } = v
  const area = card.baseArea_m2
  const boil_K = v.boil_K
  const hfg = steam.latentHeat_J_per_kg(boil_K)
  const node = evenOut(v, 0)
  const floorHeat = card.base_J_per_K + node.fatHeat

  let faces = 0
  for (const { group } of o.on) faces += face_m2(group) * group.count
  const coverage = faces / area
  const touching_m2 = area * Math.min(c.contactShare * Math.min(1, coverage * 1.2), coverage)
  const crowd = coverage > 0 ? touching_m2 / faces : 0

  // Loosely laid, a piece is warmed through the one face that lies on the floor. Crowded, the steam it gives off
  // condenses on its cold neighbours: they are warmed all round, give up juice and never dry.
  const crowding = Math.max(0, Math.min(1, (coverage - c.crowdFrom) / (1 - c.crowdFrom)))
  const warmed = c.warmedLoose + (c.warmedCrowded - c.warmedLoose) * crowding

  // Heat that leaves the floor at 1 K over the boil, through faces and through the pool.
  const poolArea = Math.max(0, Math.min(area - touching_m2 * 0.9, v.liquor.water / 960 / c.poolDepth_m))
  const hot = v.base_K > boil_K + 0.5
  const poolDraws = hot ? poolArea * 2500 : 0
  let faceDraws = 0
  let facesAt = 0
  const draws: number[] = []
  for (const { group, side } of o.on) {
    const touch = face_m2(group) * group.count * crowd
    // A crust stands hotter than the boil, so it draws less.
    const crust = side ? side.crust : 0
    const draw = c.contact_W_per_m2K * touch * (1 - 0.6 * crust)
    draws.push(draw)
    faceDraws += draw
    // A wet face on a hot floor stands at the boil; on a cooler floor it has the temperature of the piece.
    facesAt += draw * (hot ? boil_K : outside_K(group))
  }
  const loss = c.dryPanLoss_W_per_K
  const base0 = v.base_K
  // Implicit floor; the thermostat gives what holds it.
  const den = floorHeat / step_s + faceDraws + poolDraws + loss
  const fixed = (floorHeat / step_s) * base0 + facesAt + poolDraws * boil_K + loss * v.room_K
  let power_W = o.most_W
  let base_K = (fixed + power_W) / den
  if (base_K > o.thermostat_K && base0 <= o.thermostat_K + 1) {
    power_W = Math.max(0, o.thermostat_K * den - fixed)
    base_K = (fixed + power_W) / den
  } else if (base_K > o.thermostat_K) {
    power_W = 0
    base_K = fixed / den
  }
  const e = v.books.energy_J
  e.in += power_W * step_s
  const lost_J = loss * (base_K - v.room_K) * step_s
  if (lost_J >= 0) e.lost += lost_J
  else e.in -= lost_J
  // Fat moves with the floor; the little water keeps to the boil.
  const over = base_K - boil_K
  let spare_J = Math.max(0, poolDraws * over * step_s)

  for (let i = 0; i < o.on.length; i++) {
    const { group, side } = o.on[i]
    if (!hot || over <= 0) {
      // Small pieces even out within the step: they get no more than brings them halfway to the floor.
      const gap_K = base_K - (hot ? boil_K : outside_K(group))
      const asked_J = draws[i] * gap_K * step_s
      const most_J = 0.5 * group.count * group.body.heatCapacity_J_per_K * Math.abs(gap_K)
      const gives_J = Math.max(-most_J, Math.min(most_J, asked_J))
      spare_J += asked_J - gives_J
      group.body.forward(step_s, c.filmAir_W_per_m2K)
      warm(group, (gives_J / group.count - group.body.heatFixed_J) / group.body.heatPerKelvin_J_per_K)
      continue
    }
    const offered_J = draws[i] * over * step_s
    const surface = group.body.surface_m2 * group.count
    const dryFace = side ? side.crust : 0
    const face_K = boil_K + dryFace * 0.25 * Math.max(0, over)
    const film = Math.min(2000, (draws[i] / Math.max(1e-6, surface)) * (over > 5 ? Math.min(warmed, over / 20) : 0.25))
    group.body.forward(step_s, Math.max(1, film))
    const wants_J = (group.body.heatFixed_J + group.body.heatPerKelvin_J_per_K * face_K) * group.count
    let taken_J = 0
    if (wants_J > 0 && wants_J > offered_J) {
      // The floor gives less than the film would: solve for the face that takes exactly that.
      const T = (offered_J / group.count - group.body.heatFixed_J) / group.body.heatPerKelvin_J_per_K
      taken_J = warm(group, T)
    } else {
      taken_J = warm(group, face_K)
    }
    const evaporates_J = offered_J - taken_J
    // Face water boils off: from the pool of juice first, then out of the piece.
    if (evaporates_J > 0) {
      let kg = evaporates_J / hfg
      const most_kg = Math.min(kg * (v.liquor.water > 1e-3 ? 0.35 : 1), group.mass_kg * 0.02)
      const fromPiece = evaporateFromPiece(v, group, most_kg, boil_K, hfg)
      kg -= fromPiece
      spare_J += kg * hfg
      if (side) {
        const faces_m2 = Math.max(1e-6, face_m2(group) * group.count * crowd)
        side.crust = Math.min(1, side.crust + fromPiece / faces_m2 / c.crustWater_kg_per_m2)
      }
    } else spare_J += evaporates_J
  }

  ripenDry(v, step_s, node)
  // The pool: what heat is spare boils it away; what is left keeps faces wet.
  const pool_kg = v.liquor.water
  const boils_kg = Math.min(pool_kg, Math.max(0, spare_J / hfg))
  if (boils_kg > 0) {
    v.liquor.water -= boils_kg
    // It leaves at the boil: the floor pays what it still lacked.
    v.base_K -= (4200 * boils_kg * (boil_K - node.water_K)) / card.base_J_per_K
    v.books.water_kg.evaporated += boils_kg
    e.leftWithVapour += boils_kg * (4200 * (boil_K - 273.15) + hfg)
  }
  // Heat offered but not used by water stays in the floor.
  const unused_J = spare_J - boils_kg * hfg
  base_K += unused_J / floorHeat
  const film_m = v.liquor.water / 960 / Math.max(1e-4, area - touching_m2 * 0.5)
  for (let i = 0; i < o.on.length; i++) {
    const { side, group } = o.on[i]
    if (!side) continue
    if (film_m > c.cling_m) side.crust *= Math.exp((-step_s / c.rewet_s) * Math.min(1, film_m / (3 * c.cling_m)))
    const face_K = base_K
    const rate = (side.crust ** 2 * 2 ** ((face_K - 453.15) / c.brownDoubling_dK)) / c.brownTime_s
    const before = side.brown
    side.brown = 1 - (1 - side.brown) * Math.exp(-rate * step_s)
    v.fond_kg += (side.brown - before) * 0.5 * group.mass_kg * c.fondPerMeat
  }
  // Small debts were paid by the floor during the step; what it gained by the flame goes to floor and fat alike.
  evenOut(v, floorHeat * (base_K - base0), node)
  v.hot_K = v.base_K
  v.patch_dK = 0
  v.power_W = power_W
  out.power_W = power_W
  out.coverage = coverage
  out.pool_kg = v.liquor.water
  return out
}

const outside_K = (g: Group): number => g.body.temperature_K[g.body.nodes - 1]

/** Dries a piece by up to `most_kg`, from its outer layers first; says how much there was to take. */
function evaporateFromPiece(v: Vessel, g: Group, most_kg: number, at_K: number, hfg: number): number {
  let left = most_kg
  if (g.kind === 'meat') {
    for (let i = g.water_kg.length - 1; i >= 0 && left > 0; i--) {
      const take = Math.min(left, g.water_kg[i] * 0.5)
      g.water_kg[i] -= take
      left -= take
    }
  } else {
    const held = g.load.mass_kg * g.food.composition.water - g.given_kg + g.absorbed_kg
    left = Math.max(0, most_kg - Math.max(0, held * 0.5))
  }
  const kg = most_kg - left
  if (kg <= 0) return 0
  const leaving_K = g.leaving_K()
  resize(g, -kg)
  g.given_kg += kg
  v.books.water_kg.evaporated += kg
  // Heating that water from the piece's own temperature to the boil is paid out of the floor's heat.
  v.base_K -= (4200 * kg * (at_K - leaving_K)) / v.card.base_J_per_K
  v.books.energy_J.leftWithVapour += kg * (4200 * (at_K - 273.15) + hfg)
  return kg
}

function ripenDry(v: Vessel, step_s: number, node: Node): void {
  for (const g of v.groups) {
    if (g.where !== 1 && g.where !== 2) continue
    ripen(g, step_s, false, v.c, given)
    const core = g.coldest_K()
    if (core > g.hottestCore_K) g.hottestCore_K = core
    if (g.where !== 1) {
      g.plateJuice_kg += given.juice_kg
      g.given_kg += given.juice_kg
      continue
    }
    const mean = g.leaving_K()
    if (given.juice_kg > 0) {
      resize(g, -given.juice_kg)
      g.given_kg += given.juice_kg
      pour(v, 'water', given.juice_kg, 4200, node.water_K - mean)
    }
    if (given.fat_kg > 0) {
      const heat = g.count * g.body.heatCapacity_J_per_K
      g.count *= Math.max(1e-3, (heat - given.fat_kg * 2100) / heat)
      g.mass_kg -= given.fat_kg
      g.fat_kg -= given.fat_kg
      pour(v, 'fat', given.fat_kg, 2100, node.floor_K - mean)
    }
  }
}

/** Something small joins the pan: the floor pays for bringing it to the temperature of its kind. */
function pour(v: Vessel, part: 'water' | 'fat', kg: number, cp: number, rise_K: number): void {
  v.liquor[part] += kg
  v.base_K -= (kg * cp * rise_K) / v.card.base_J_per_K
}

/** Floor and fat share one temperature; the little water in the pan keeps to the boil. */
interface Node {
  readonly floor_K: number
  readonly water_K: number
  readonly fatHeat: number
}

/**
 * Brings floor, fat and water to their common state by what they hold together. `gained_J` comes on top; with
 * `before`, floor and liquor are taken to stand where that state left them, but for the debts the floor has paid.
 */
function evenOut(v: Vessel, gained_J: number, before?: Node): Node {
  const all = heatCapacity_J_per_K(v.liquor)
  const waterHeat = 4200 * v.liquor.water
  const fatHeat = Math.max(0, all - waterHeat)
  const liquor_J = before ? fatHeat * before.floor_K + waterHeat * before.water_K : all * v.liquor_K
  const held_J = v.card.base_J_per_K * v.base_K + liquor_J + gained_J
  const together_K = held_J / (v.card.base_J_per_K + all)
  const floor_K =
    together_K <= v.boil_K ? together_K : (held_J - waterHeat * v.boil_K) / (v.card.base_J_per_K + fatHeat)
  const water_K = Math.min(together_K, v.boil_K)
  v.base_K = floor_K
  v.liquor_K = all > 1e-9 ? (fatHeat * floor_K + waterHeat * water_K) / all : floor_K
  return { floor_K, water_K, fatHeat }
}
