import {
  collagenRate_per_s,
  meatWaterHeld,
  meatWaterRate_per_s,
  plantFirmness,
  plantRate_per_s,
} from '../doneness/index.ts'
import { freezingModel, PieceBody, thermalProperties } from '../heat/index.ts'
import type { Food } from '../larder/index.ts'
import type { Load } from '../method/index.ts'
import type { Constants } from './assumptions.ts'
import { heatCapacity_J_per_kgK } from './liquor.ts'
import { reference_K } from './vessel.ts'

// One load of pieces. All pieces are alike; one body stands for them, and `count` says how many. When juice leaves,
// the count shrinks by the heat capacity that left with it: heat stays booked to the last joule, and so does the
// surface that shrinks with the meat.

export type Kind = 'meat' | 'plant' | 'absorber' | 'inert'

export interface Group {
  readonly load: Load
  readonly food: Food
  readonly kind: Kind
  readonly body: PieceBody
  /** Effective number of bodies by heat capacity. */
  count: number
  readonly density_kg_per_m3: number
  mass_kg: number
  /** Water held at each depth, kg for the whole load. */
  readonly water_kg: Float64Array
  /** Collagen not yet turned at each depth, 0..1. */
  readonly collagen: Float64Array
  /** Exposure of plant tissue at each depth: integral of the rate, dimensionless. */
  readonly softening: Float64Array
  fat_kg: number
  salt_kg: number
  /** Collagen and gelatin it came with, kg, and the gelatin that has left. */
  collagen_kg: number
  gelatinLeft_kg: number
  given_kg: number
  /** Juice on the plate beside the pot: it goes back with the pieces. */
  plateJuice_kg: number
  /** Water that was mashed into the liquor with the rest of the food: gone from the load, but not given up. */
  mashed_kg: number
  absorbed_kg: number
  firstMass_kg: number
  /** 0 not in yet, 1 in the pot, 2 beside it, 3 on a rack, 4 gone. */
  where: 0 | 1 | 2 | 3 | 4
  brown: number
  crust: number
  hottestCore_K: number
  surface_m2(): number
  heat_J(): number
  mean_K(): number
  coldest_K(): number
  /**
   * The temperature at which what leaves carries its share of the body's heat: the mean, unless there is ice, whose
   * latent heat is still owed.
   */
  leaving_K(): number
}

const meatCharacters = new Set(['collagen cut', 'lean meat', 'poultry dark', 'poultry light', 'sausage', 'fish'])

export function kindOf(food: Food): Kind {
  if (meatCharacters.has(food.character)) return 'meat'
  if (food.absorbs > 0) return 'absorber'
  if (food.kinetics?.kind === 'plant') return 'plant'
  if (/vegetable|aromatic|mushroom|fruit/.test(food.character)) return 'plant'
  return 'inert'
}

/** Share of its water that a plant gives up once it has gone soft. */
export function givesUp(food: Food, c: Constants): number {
  if (food.character === 'leafy vegetable' || food.character === 'mushroom') return c.leafGives
  if (food.character === 'firm vegetable' || food.character === 'starch') return c.firmGives
  return c.softGives
}

export function tissueOf(food: Food): 'carrot' | 'potato' | 'onion' | 'fibrous' | 'bean' {
  if (food.kinetics?.kind === 'plant') return food.kinetics.tissue
  if (food.character === 'pulse') return 'bean'
  if (food.character === 'firm vegetable') return 'carrot'
  if (food.character === 'starch' || food.character === 'grain' || food.character === 'pasta') return 'potato'
  return 'onion'
}

export function makeGroup(load: Load, as?: Kind): Group {
  if (!load.pieces) throw new TypeError(`${load.name}: a load without pieces belongs to the liquor`)
  const { food, pieces } = load
  const comp = food.composition
  const thermal = thermalProperties(comp, 333.15)
  // A slab has no edges; what is not much wider than thick is warmed through them too.
  const compact = pieces.shape === 'slab' && Math.min(pieces.width_m, pieces.length_m) < 5 * pieces.thickness_m
  const body = new PieceBody({
    shape: compact ? 'brick' : pieces.shape,
    thickness_m: pieces.thickness_m,
    width_m: pieces.width_m,
    length_m: pieces.length_m,
    start_K: load.start_K,
    k_W_per_mK: thermal.k_W_per_mK,
    rho_kg_per_m3: thermal.rho_kg_per_m3,
    cp_J_per_kgK: thermal.cp_J_per_kgK,
    ...(load.frozen ? { freezing: freezingModel(comp) } : {}),
  })
  const n = body.nodes
  const kind = as ?? kindOf(food)
  const water_kg = new Float64Array(n)
  for (let i = 0; i < n; i++) water_kg[i] = load.mass_kg * comp.water * body.share[i]
  const g: Group = {
    load,
    food,
    kind,
    body,
    count: (load.mass_kg * thermal.cp_J_per_kgK) / body.heatCapacity_J_per_K,
    density_kg_per_m3: thermal.rho_kg_per_m3,
    mass_kg: load.mass_kg,
    water_kg,
    collagen: new Float64Array(n).fill(1),
    softening: new Float64Array(n),
    fat_kg: load.mass_kg * comp.fat,
    salt_kg: load.mass_kg * food.salt,
    collagen_kg: load.mass_kg * food.collagen,
    gelatinLeft_kg: 0,
    given_kg: 0,
    plateJuice_kg: 0,
    mashed_kg: 0,
    absorbed_kg: 0,
    firstMass_kg: load.mass_kg,
    where: 0,
    brown: 0,
    crust: 0,
    hottestCore_K: load.start_K,
    surface_m2: () => g.count * body.surface_m2,
    heat_J: () => g.count * body.heat_J(reference_K),
    mean_K: () => body.mean_K(),
    coldest_K: () => coldestOf(body),
    leaving_K: () => reference_K + body.heat_J(reference_K) / body.heatCapacity_J_per_K,
  }
  return g
}

/** The same load in equal parts, each with bodies of its own, for browning in batches. A frozen block stays whole. */
export function splitGroup(g: Group, parts: number): Group[] {
  if (parts <= 1 || g.load.frozen) return [g]
  return Array.from({ length: parts }, () => {
    const part = makeGroup({ ...g.load, mass_kg: g.load.mass_kg / parts })
    part.body.temperature_K.set(g.body.temperature_K)
    part.count = g.count / parts
    part.mass_kg = g.mass_kg / parts
    for (let i = 0; i < part.water_kg.length; i++) part.water_kg[i] = g.water_kg[i] / parts
    part.collagen.set(g.collagen)
    part.softening.set(g.softening)
    part.brown = g.brown
    for (const key of carried) part[key] = g[key] / parts
    return part
  })
}

const carried = [
  'fat_kg',
  'salt_kg',
  'collagen_kg',
  'gelatinLeft_kg',
  'given_kg',
  'absorbed_kg',
  'plateJuice_kg',
  'mashed_kg',
  'firstMass_kg',
] as const

/** Puts the parts together again: heat, water and exposure are means over the bodies, so nothing is lost. */
export function mergeGroups(g: Group, parts: readonly Group[]): void {
  if (parts.length === 1 && parts[0] === g) return
  const count = parts.reduce((s, p) => s + p.count, 0)
  for (let i = 0; i < g.body.nodes; i++) {
    g.body.temperature_K[i] = parts.reduce((s, p) => s + p.count * p.body.temperature_K[i], 0) / count
    g.water_kg[i] = parts.reduce((s, p) => s + p.water_kg[i], 0)
    g.collagen[i] = parts.reduce((s, p) => s + p.count * p.collagen[i], 0) / count
    g.softening[i] = parts.reduce((s, p) => s + p.count * p.softening[i], 0) / count
  }
  g.count = count
  g.mass_kg = parts.reduce((s, p) => s + p.mass_kg, 0)
  g.brown = parts.reduce((s, p) => s + p.brown, 0) / parts.length
  for (const key of carried) g[key] = parts.reduce((s, p) => s + p[key], 0)
  g.hottestCore_K = Math.max(...parts.map((p) => p.hottestCore_K))
}

/** Takes water out of (or into) the load at its mean temperature, shrinking the count so that heat stays booked. */
export function resize(g: Group, water_kg: number): void {
  const heat_J_per_K = g.count * g.body.heatCapacity_J_per_K
  g.count *= Math.max(1e-3, (heat_J_per_K + heatCapacity_J_per_kgK.water * water_kg) / heat_J_per_K)
  g.mass_kg += water_kg
}

function coldestOf(body: PieceBody): number {
  let least = body.temperature_K[0]
  for (let i = 1; i < body.nodes; i++) if (body.temperature_K[i] < least) least = body.temperature_K[i]
  return least
}

/** Finishes a step that `forward` began; the heat that the whole load took up, J. */
export function warm(g: Group, medium_K: number): number {
  return g.body.back(medium_K) * g.count
}

/** Water comes in at the liquor's temperature, and its heat spreads through the load. */
export function drink(g: Group, water_kg: number, at_K: number): void {
  const brings_J = heatCapacity_J_per_kgK.water * water_kg * (at_K - g.leaving_K())
  resize(g, water_kg)
  const rise_K = brings_J / (g.count * g.body.heatCapacity_J_per_K)
  // A layer that holds ice keeps its own enthalpy; nothing that drinks is cooked from frozen to speak of.
  if (!g.body.frozen()) for (let i = 0; i < g.body.nodes; i++) g.body.temperature_K[i] += rise_K
}

export interface Given {
  juice_kg: number
  fat_kg: number
  gelatin_kg: number
  /** Water taken up from the liquor. */
  absorbed_kg: number
  starch_kg: number
}

/** One step of what time and heat do to a load at each depth. Amounts come back; temperatures are untouched. */
export function ripen(g: Group, step_s: number, wet: boolean, c: Constants, out: Given): Given {
  out.juice_kg = out.fat_kg = out.gelatin_kg = out.absorbed_kg = out.starch_kg = 0
  const { body } = g
  const T = body.temperature_K
  const n = body.nodes
  if (g.kind === 'meat') {
    const water = g.food.composition.water
    const initial = g.load.mass_kg
    let turned = 0
    const kinetics = g.food.kinetics
    const cut = kinetics?.kind === 'collagen' ? kinetics.cut : null
    for (let i = 0; i < n; i++) {
      const held = g.water_kg[i]
      // The published curve starts from 0.70 kg per kg; a wetter or drier cut keeps the same share of its own water.
      const least = ((meatWaterHeld(T[i]) * water) / 0.7) * initial * body.share[i]
      if (held > least) {
        const out_kg = (held - least) * -Math.expm1(-meatWaterRate_per_s * step_s)
        g.water_kg[i] = held - out_kg
        out.juice_kg += out_kg
      }
      if (cut) {
        const left = g.collagen[i] * Math.exp(-collagenRate_per_s(T[i], cut) * step_s)
        turned += (g.collagen[i] - left) * body.share[i]
        g.collagen[i] = left
      }
    }
    out.gelatin_kg = turned * g.collagen_kg * c.gelatinLeaves
    const melts =
      g.load.mass_kg * g.food.composition.fat * c.meatFatMelts - (g.load.mass_kg * g.food.composition.fat - g.fat_kg)
    if (melts > 0 && body.mean_K() > 318.15) out.fat_kg = melts * -Math.expm1(-c.meatFatRate_per_s * step_s)
  } else if (g.kind === 'plant' || g.kind === 'absorber') {
    const tissue = tissueOf(g.food)
    const pace = g.food.pace ?? 1
    let soft = 0
    for (let i = 0; i < n; i++) {
      g.softening[i] += plantRate_per_s(T[i], tissue) * pace * step_s
      soft += (1 - plantFirmness(g.softening[i])) * body.share[i]
    }
    if (g.kind === 'plant') {
      const give = g.load.mass_kg * g.food.composition.water * givesUp(g.food, c) * soft - g.given_kg
      if (give > 0) out.juice_kg = give
    } else if (wet) {
      // Takes up water as it softens; what soaking gave it already counts.
      const wants = g.load.mass_kg * g.food.absorbs * soft - g.absorbed_kg
      if (wants > 0) out.absorbed_kg = wants
    }
  }
  return out
}

/** Mean collagen turned and the least turned at any depth, 0..1. */
export function collagenTurned(g: Group): { mean: number; least: number } {
  let mean = 0
  let least = 1
  for (let i = 0; i < g.body.nodes; i++) {
    const turned = 1 - g.collagen[i]
    mean += turned * g.body.share[i]
    if (turned < least) least = turned
  }
  return { mean, least }
}

/** Firmness left at the firmest depth, 0..1. */
export function firmnessLeft(g: Group): number {
  let firmest = 0
  for (let i = 0; i < g.body.nodes; i++) firmest = Math.max(firmest, plantFirmness(g.softening[i]))
  return firmest
}
