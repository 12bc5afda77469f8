import { steamTables as steam } from '../steam/index.ts'
import { baseForFlux_K, dryPatch_dK, dryPatchTime_s, type FloorFlux, floorFlux, wettedShare } from './floor.ts'
import { drink, type Given, resize, ripen, warm } from './group.ts'
import { heatCapacity_J_per_K, serum_kg } from './liquor.ts'
import { bulkViscosity_Pas, meetFloor } from './medium.ts'
import { freeLiquor_m3, headspace_m3, mixWater, type Vessel } from './vessel.ts'

// One step of a vessel with liquor in it: base, wall, liquor and pieces solved together, implicitly. A forward sweep
// through each load gives its heat as A + B × liquor temperature, so the whole pot reduces to three unknowns.

export interface WetOrder {
  /** Most the source may give, W. */
  most_W: number
  /** 'full': give it all. 'hold': give what keeps the liquor at `pin_K` with `want_W` of vapour. 'off': nothing. */
  control: 'full' | 'hold' | 'off'
  /** The liquor cannot pass this: boiling point outside, or what the regulator holds. */
  pin_K: number
  want_W: number
  saturation_K: number
  /** 'locked' is a pressure lid before its float has risen: it keeps its steam, and what leaves is the card's purge. */
  lid: 'off' | 'ajar' | 'on' | 'locked' | 'sealed'
  /** Where wall and lid lose their heat to: the room, or the oven they stand in. */
  around_K: number
  loss_W_per_K: number
  film_W_per_m2K: number
  stirred: boolean
  /** Full-power peaks matter: an electric pot holding its pressure by pulses. */
  pulsed: boolean
}

export interface WetStep {
  power_W: number
  /** Vapour made at the boil beyond what the headspace takes, kg. */
  boiled_kg: number
  /** The liquor reached what it cannot pass: the boil outside, or what the regulator holds. */
  pinned: boolean
  /** Vapour that left below the boil, kg. */
  breathed_kg: number
  flux_W_per_m2: number
  /** Share of the floor that is wet. */
  wet: number
  /** Parts of the base's excess over saturation, K: they name the cause of a burn. */
  parts: { clean: number; thickness: number; fond: number; floor: number; patch: number }
}

const medium = { convection_W_per_m2K: 0, conduction_W_per_m2K: 0, boiling_W_per_m2: 0, liquor_K: 0, saturation_K: 0 }
const water = { ...medium }
const flux: FloorFlux = { surface_K: 0, flux_W_per_m2: 0, boilingFlux_W_per_m2: 0, slope_W_per_m2K: 0 }
const given: Given = { juice_kg: 0, fat_kg: 0, gelatin_kg: 0, absorbed_kg: 0, starch_kg: 0 }

export function resistances(v: Vessel): { fond: number; layer: number; floor: number; all: number } {
  const area = v.card.baseArea_m2
  const fond = (v.fond_kg / area) * v.c.fondResistance_m2K_per_W_per_kg_m2
  const layer = v.layer_kg_per_m2 * v.c.layerResistance_m2K_per_W_per_kg_m2
  const floor = (v.deposit_kg / area) * v.c.floorResistance_m2K_per_W_per_kg_m2
  return { fond, layer, floor, all: fond + layer + floor }
}

export function stepWet(v: Vessel, step_s: number, o: WetOrder, out: WetStep): WetStep {
  const { card, c } = v
  const area = card.baseArea_m2
  // Liquid poured into much hot fat may start above any table: it flashes within the step.
  const from_K = Math.min(v.liquor_K, 430)
  const free_m3 = freeLiquor_m3(v)
  const wet = wettedShare(free_m3, area, c)
  const wetArea_m2 = area * Math.max(0.02, wet)
  meetFloor(v, o.saturation_K, medium, water)
  const r = resistances(v)

  // Pieces: heat they take in this step, J, as A + B T.
  let heatA = 0
  let heatB = 0
  for (const g of v.groups) {
    if (g.where !== 1 && g.where !== 3) continue
    g.body.forward(step_s, o.film_W_per_m2K, v.liquor_K)
    heatA += g.count * g.body.heatFixed_J
    heatB += g.count * g.body.heatPerKelvin_J_per_K
  }

  const liquorHeat = Math.max(0.1, heatCapacity_J_per_K(v.liquor))
  const hfg = steam.latentHeat_J_per_kg(from_K)
  const sealed = o.lid === 'sealed'
  const space_m3 = headspace_m3(v)
  // Steam that the headspace takes up: what it lacks now, and what a warmer liquor sends up.
  const covered = o.lid === 'on' || o.lid === 'locked' || sealed
  const lacks_kg = covered ? space_m3 * steam.vapourDensity_kg_per_m3(from_K) - v.vapour_kg : -v.vapour_kg
  const more_kg_per_K = covered
    ? space_m3 * (steam.vapourDensity_kg_per_m3(from_K + 0.5) - steam.vapourDensity_kg_per_m3(from_K - 0.5))
    : 0

  const breath_kg = breathing_kg_per_s(v, o) * step_s
  const breath_W = (breath_kg * hfg) / step_s
  const wallTo = covered ? c.wallSealed_W_per_K : c.wallOpen_W_per_K
  const perStep = 1 / step_s
  const wallDen = card.wall_J_per_K * perStep + wallTo + o.loss_W_per_K
  const wallA = (card.wall_J_per_K * perStep * v.wall_K + o.loss_W_per_K * o.around_K) / wallDen
  const wallB = wallTo / wallDen
  // Liquor: (slope) T' = load + heat from the floor.
  const slopeDry = liquorHeat * perStep + heatB * perStep + wallTo * (1 - wallB)
  const loadDry = liquorHeat * perStep * v.liquor_K - heatA * perStep + wallTo * wallA - breath_W
  let slope = slopeDry + more_kg_per_K * hfg * perStep
  let load = loadDry - lacks_kg * hfg * perStep + more_kg_per_K * hfg * perStep * v.liquor_K

  const pinnedSaturation = sealed || o.saturation_K <= v.liquor_K + 0.01
  let base_K = v.base_K
  let liquor_K = v.liquor_K
  let power_W = o.control === 'off' ? 0 : o.most_W
  let floor_W = 0
  let excess_W = 0

  const free = (P: number, pin: number): void => {
    // Newton on base and liquor together; the floor's law is convex, so a few rounds settle it.
    base_K = Math.max(v.base_K, v.liquor_K)
    liquor_K = Math.min(v.liquor_K, pin)
    for (let round = 0; round < 30; round++) {
      medium.liquor_K = liquor_K
      medium.saturation_K = pinnedSaturation && sealed ? liquor_K + (o.saturation_K - v.liquor_K) : o.saturation_K
      floorFlux(medium, base_K, r.all, flux)
      const G = wetArea_m2 * flux.slope_W_per_m2K
      const q0 = wetArea_m2 * flux.flux_W_per_m2
      // q = q0 + G (base' − base) − G (liquor' − liquor): what warms the liquor lowers the flux by as much.
      const den = card.base_J_per_K * perStep + G
      const ab = (card.base_J_per_K * perStep * v.base_K + P - q0 + G * base_K - G * liquor_K) / den
      const bb = G / den
      let next = (load + q0 + G * (ab - base_K) + G * liquor_K) / (slope + G - G * bb)
      excess_W = 0
      if (next > pin) next = pin
      const nextBase = ab + bb * next
      const moved = Math.abs(nextBase - base_K) + Math.abs(next - liquor_K)
      floor_W = P - card.base_J_per_K * perStep * (nextBase - v.base_K)
      base_K = nextBase
      liquor_K = next
      if (moved < 0.005) break
    }
    excess_W = load + floor_W - slope * liquor_K
  }

  const solve = (): void => {
    if (o.control !== 'hold') {
      free(power_W, o.pin_K)
      return
    }
    const need_W = slope * o.pin_K - load + o.want_W
    medium.liquor_K = o.pin_K
    medium.saturation_K = o.pin_K + Math.max(0, o.saturation_K - v.liquor_K)
    const wants_K = need_W > 0 ? baseForFlux_K(medium, need_W / wetArea_m2, r.all) : o.pin_K
    const P = need_W + card.base_J_per_K * perStep * (wants_K - v.base_K)
    power_W = Math.max(0, Math.min(o.most_W, P))
    if (power_W !== P) {
      free(power_W, o.pin_K)
      return
    }
    base_K = wants_K
    liquor_K = o.pin_K
    floor_W = need_W
    excess_W = o.want_W
  }
  solve()
  // The straight line through the vapour's density can ask for steam that is not there, or water that is not: then
  // the headspace takes what there is, and the step is solved once more with that amount fixed.
  let toHeadspace_kg = lacks_kg + more_kg_per_K * (liquor_K - v.liquor_K)
  const most_kg = Math.max(0, v.liquor.water)
  if (toHeadspace_kg > most_kg || toHeadspace_kg < -v.vapour_kg) {
    toHeadspace_kg = Math.max(-v.vapour_kg, Math.min(most_kg, toHeadspace_kg))
    slope = slopeDry
    load = loadDry - toHeadspace_kg * hfg * perStep
    solve()
  }

  // Close the step: what was used is what is booked.
  const boiled_kg = Math.max(0, (excess_W * step_s) / hfg)
  if (excess_W < 0) floor_W -= excess_W
  for (const g of v.groups) {
    if (g.where === 1 || g.where === 3) warm(g, liquor_K)
  }
  const wall_K = wallA + wallB * liquor_K
  const lost_J = o.loss_W_per_K * (wall_K - o.around_K) * step_s
  const e = v.books.energy_J
  e.in += power_W * step_s
  if (lost_J >= 0) e.lost += lost_J
  else e.in -= lost_J
  const leaving_kg = Math.min(Math.max(0, v.liquor.water - toHeadspace_kg), boiled_kg + breath_kg)
  // A floor that has boiled dry keeps the heat it can no longer give away.
  const unspent_J = (boiled_kg + breath_kg - leaving_kg) * hfg
  if (unspent_J > 0) base_K += unspent_J / card.base_J_per_K
  e.leftWithVapour += leaving_kg * (4200 * (liquor_K - 273.15) + hfg)
  v.liquor.water -= leaving_kg + toHeadspace_kg
  v.vapour_kg += toHeadspace_kg
  if (sealed) v.books.water_kg.vented += leaving_kg
  else v.books.water_kg.evaporated += leaving_kg
  v.base_K = base_K
  v.liquor_K = liquor_K
  v.wall_K = wall_K
  v.power_W = power_W
  loseAlcohol(v, leaving_kg)

  ripenGroups(v, step_s)
  swellStarch(v, step_s)
  growFloor(v, step_s, o.stirred, flux.boilingFlux_W_per_m2)

  // What the guard feels. Held pressure is held by pulses: between them the floor is cool, within them it is not.
  const full_W_per_m2 = o.pulsed && power_W > 0 ? o.most_W / wetArea_m2 : Math.max(0, floor_W) / wetArea_m2
  const q = Math.max(0, full_W_per_m2)
  medium.liquor_K = liquor_K
  medium.saturation_K = sealed ? liquor_K : o.saturation_K
  let peak_K = base_K
  if (o.pulsed && power_W > 0) {
    const steady_K = baseForFlux_K(medium, q, r.all)
    const follow_s = card.base_J_per_K / (wetArea_m2 * Math.max(200, flux.slope_W_per_m2K))
    peak_K = Math.max(base_K, base_K + (steady_K - base_K) * -Math.expm1(-c.pulse_s / follow_s))
  }
  const dry = 1 - wet
  const patchSteady = dryPatch_dK(o.pulsed && power_W > 0 ? o.most_W / area : power_W / area, dry, area, c)
  const patchTime = dryPatchTime_s(dry, area, card.base_J_per_K, c)
  v.patch_dK += (patchSteady - v.patch_dK) * -Math.expm1(-step_s / patchTime)
  if (dry <= 0) v.patch_dK *= Math.exp(-step_s / 5)
  v.hot_K = peak_K + v.patch_dK

  // Where the base's excess comes from, one cause at a time, each at the flux it has now.
  water.liquor_K = medium.liquor_K
  water.saturation_K = medium.saturation_K
  const evenly_K = baseForFlux_K(water, (q * wetArea_m2) / area, 0)
  const wetted_K = wet < 1 ? baseForFlux_K(water, q, 0) : evenly_K
  out.power_W = power_W
  out.pinned = liquor_K >= o.pin_K - 1e-6
  out.boiled_kg = boiled_kg
  out.breathed_kg = breath_kg
  out.flux_W_per_m2 = q
  out.wet = wet
  out.parts.clean = evenly_K - medium.saturation_K
  out.parts.fond = r.fond * q
  out.parts.thickness = Math.max(0, baseForFlux_K(medium, q, 0) - wetted_K) + r.layer * q
  out.parts.floor = r.floor * q
  out.parts.patch = v.patch_dK + wetted_K - evenly_K
  return out
}

/** Vapour that leaves below the boil, kg/s: from an open face, under a lid that breathes, or by a sealed pot's leak. */
function breathing_kg_per_s(v: Vessel, o: WetOrder): number {
  const T = Math.min(v.liquor_K, 430)
  if (v.liquor.water <= 0.002) return 0
  if (o.lid === 'locked') return 0
  if (o.lid === 'sealed') return T > v.boil_K ? v.card.leak_kg_per_s : 0
  const p = steam.saturationPressure_Pa(T)
  const top_m2 = v.card.baseArea_m2
  if (o.lid === 'off' || o.lid === 'ajar') {
    const room_Pa = 1200
    const rate = v.c.openEvaporation_kg_per_m2sPa * top_m2 * Math.max(0, p - room_Pa)
    return o.lid === 'ajar' ? rate * v.c.ajarShare : rate
  }
  // Air that leaks through carries what it can hold at the liquor's temperature.
  const over = Math.max(0.02 * v.ambient_Pa, v.ambient_Pa - p)
  return v.card.lidLeak_kg_per_s * 0.622 * (p / over)
}

/** Dilute alcohol leaves about eight times as fast as its share of the vapour. */
function loseAlcohol(v: Vessel, vapour_kg: number): void {
  if (v.liquor.alcohol <= 0 || vapour_kg <= 0) return
  const share = v.liquor.alcohol / (v.liquor.alcohol + v.liquor.water + 1e-9)
  const gone = Math.min(v.liquor.alcohol, vapour_kg * 8 * share)
  v.liquor.alcohol -= gone
  v.books.energy_J.leftWithVapour += gone * 2700 * (v.liquor_K - 273.15)
}

/** Juice, fat, gelatin and absorbed water pass between loads and liquor. */
export function ripenGroups(v: Vessel, step_s: number): void {
  for (const g of v.groups) {
    if (g.where === 0 || g.where === 4) continue
    const inPot = g.where === 1 || g.where === 3
    ripen(g, step_s, inPot, v.c, given)
    const core = g.coldest_K()
    if (core > g.hottestCore_K) g.hottestCore_K = core
    const mean_K = g.leaving_K()
    if (given.absorbed_kg > 0 && inPot) {
      // No more than half of what is left in one step: the last of it is drunk slowly.
      const takes = Math.min(given.absorbed_kg, Math.max(0, v.liquor.water * 0.5 - 0.002))
      if (takes > 0) {
        v.liquor.water -= takes
        drink(g, takes, v.liquor_K)
        g.absorbed_kg += takes
        v.books.water_kg.absorbed += takes
      }
    }
    if (!inPot) {
      g.plateJuice_kg += given.juice_kg
      g.given_kg += given.juice_kg
      continue
    }
    const leaves = given.juice_kg
    if (leaves > 0) {
      resize(g, -leaves)
      g.given_kg += leaves
      mixWater(v, leaves, mean_K)
    }
    if (given.fat_kg > 0) moveSolid(v, g, 'fat', given.fat_kg, mean_K, 2100)
    if (given.gelatin_kg > 0) moveSolid(v, g, 'gelatin', given.gelatin_kg, mean_K, 1500)
    if (g.kind !== 'inert') saltTo(v, g, step_s)
  }
}

function moveSolid(
  v: Vessel,
  g: Vessel['groups'][number],
  part: 'fat' | 'gelatin' | 'salt',
  kg: number,
  at_K: number,
  cp: number,
): void {
  const heat = g.count * g.body.heatCapacity_J_per_K
  g.count *= Math.max(1e-3, (heat - kg * cp) / heat)
  g.mass_kg -= kg
  if (part === 'fat') g.fat_kg -= kg
  else if (part === 'gelatin') g.gelatinLeft_kg += kg
  else g.salt_kg -= kg
  const before = heatCapacity_J_per_K(v.liquor)
  v.liquor[part] += kg
  const after = before + kg * cp
  if (after > 1e-9) v.liquor_K = 273.15 + (before * (v.liquor_K - 273.15) + kg * cp * (at_K - 273.15)) / after
}

/** Salt walks between liquor and load until the water on both sides is equally salty; thick pieces take hours. */
function saltTo(v: Vessel, g: Vessel['groups'][number], step_s: number): void {
  let water = 0
  for (let i = 0; i < g.water_kg.length; i++) water += g.water_kg[i]
  if (g.kind !== 'meat') water = Math.max(0, g.load.mass_kg * g.food.composition.water - g.given_kg + g.absorbed_kg)
  const liquorWater = v.liquor.water
  if (water < 1e-4 || liquorWater < 1e-3) return
  const half = g.load.pieces!.thickness_m / 2
  const rate = (Math.PI ** 2 * v.c.saltDiffusion_m2_per_s) / (4 * half * half)
  const level = (v.liquor.salt + g.salt_kg) / (water + liquorWater)
  let into = (level * water - g.salt_kg) * -Math.expm1(-rate * step_s)
  into = Math.max(-g.salt_kg, Math.min(v.liquor.salt, into))
  if (Math.abs(into) > 1e-9) moveSolid(v, g, 'salt', -into, g.leaving_K(), 1500)
}

/** Raw starch swells above about 65 °C within a minute or two. */
function swellStarch(v: Vessel, step_s: number): void {
  if (v.liquor.starchRaw > 0 && v.liquor_K > 338.15) {
    const kg = v.liquor.starchRaw * -Math.expm1(-step_s / 90)
    v.liquor.starchRaw -= kg
    v.liquor.starchSwollen += kg
  }
}

/** What dries, soaks and washes off at the floor. */
function growFloor(v: Vessel, step_s: number, stirred: boolean, boilingFlux_W_per_m2: number): void {
  const { c } = v
  const serum = serum_kg(v.liquor)
  const solids = v.liquor.suspended + v.liquor.starchSwollen
  const bulk = serum > 0 ? solids / serum : 0
  const mu = bulkViscosity_Pas(v)
  if (stirred) {
    v.floorSolids = bulk
    v.layer_kg_per_m2 *= Math.exp(-step_s / c.layerWash_s)
  } else {
    const thick = mu / (mu + c.mixingHalfViscosity_Pas)
    const time = c.mixingThin_s + (c.mixingThick_s - c.mixingThin_s) * thick
    v.floorSolids += (bulk - v.floorSolids) * -Math.expm1(-step_s / time)
    const dries_kg_per_m2s = boilingFlux_W_per_m2 / steam.latentHeat_J_per_kg(Math.min(v.liquor_K, 430))
    const stays = mu / (mu + c.layerHalfViscosity_Pas)
    v.layer_kg_per_m2 += dries_kg_per_m2s * v.floorSolids * stays * step_s
  }
  if (v.fond_kg > 0 && serum > 0.02) {
    const soaked = v.fond_kg * -Math.expm1(-step_s / c.fondSoak_s)
    v.fond_kg -= soaked
  }
}
