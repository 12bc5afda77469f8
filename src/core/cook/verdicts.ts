import { collagenBand, meatWord, plantWord } from '../doneness/index.ts'
import { steamTables as steam } from '../steam/index.ts'
import { collagenTurned, firmnessLeft, type Group, tissueOf } from './group.ts'
import { waterIn } from './hand-work.ts'
import { mass_kg, serum_kg, volume_m3 } from './liquor.ts'
import { bulkViscosity_Pas } from './medium.ts'
import type { Account, PieceVerdict, Sauce } from './run.ts'
import { heatHeld_J } from './vessel.ts'
import type { Walk } from './walk.ts'

export function pieceVerdicts(w: Walk): PieceVerdict[] {
  return w.v.groups.filter((g) => g.where !== 0).map(verdictOn)
}

function verdictOn(g: Group): PieceVerdict {
  const first = g.load.mass_kg
  const lost = g.kind === 'meat' ? first * g.food.composition.water - waterIn(g) : g.given_kg - g.mashed_kg
  const base = {
    load: g.load.id,
    coldest_K: g.hottestCore_K,
    waterLost_kg: Math.max(0, lost),
    waterLost_share: first > 0 ? Math.max(0, lost) / first : 0,
    mass_kg: g.mass_kg,
  }
  if (g.kind === 'meat') {
    if (g.food.kinetics?.kind !== 'collagen') {
      const done =
        g.hottestCore_K >= 347.05 ? 'cooked through' : g.hottestCore_K >= 336.15 ? 'just cooked' : 'underdone'
      return { ...base, tender: null, tenderBand: null, firm: null, word: done }
    }
    const least = collagenTurned(g).least
    return {
      ...base,
      tender: least,
      tenderBand: collagenBand(least, g.food.kinetics.cut),
      firm: null,
      word: meatWord(least),
    }
  }
  if (g.kind === 'inert') return { ...base, tender: null, tenderBand: null, firm: null, word: 'in the pot' }
  const firm = firmnessLeft(g)
  return { ...base, tender: null, tenderBand: null, firm, word: plantWord(firm, tissueOf(g.food)) }
}

export function sauceOf(w: Walk): Sauce {
  const l = w.v.liquor
  const serum = serum_kg(l)
  const warm_K = 343.15
  return {
    mass_kg: mass_kg(l),
    volume_m3: volume_m3(l, steam.liquidDensity_kg_per_m3(warm_K)),
    gelatin_share: serum > 0 ? l.gelatin / serum : 0,
    starch_share: serum > 0 ? (l.starchSwollen + l.starchRaw) / serum : 0,
    salt_share: serum > 0 ? l.salt / serum : 0,
    fat_kg: l.fat,
    viscosity_Pas: bulkViscosity_Pas(w.v, warm_K),
  }
}

/** Closes the books: what came in against what left and what is still there. */
export function accountOf(w: Walk, start_J: number): Account {
  const { v } = w
  const b = v.books
  const there = v.groups.filter((g) => g.where !== 0 && g.where !== 4)
  const sum = (f: (g: Group) => number): number => there.reduce((s, g) => s + f(g), 0)
  const waterPieces = sum(waterIn)
  const miss = (total: number, parts: number): number => (total > 1e-9 ? (total - parts) / total : 0)
  const waterOut =
    b.water_kg.evaporated + b.water_kg.vented + b.water_kg.lifted + waterPieces + v.liquor.water + v.vapour_kg
  const fatPieces = sum((g) => g.fat_kg)
  const saltPieces = sum((g) => g.salt_kg)
  const held_J = heatHeld_J(w.v) - v.groups.filter((g) => g.where === 4).reduce((s, g) => s + g.heat_J(), 0)
  const energyIn = b.energy_J.in + b.energy_J.broughtIn + start_J
  const energyOut = b.energy_J.lost + b.energy_J.leftWithVapour + b.energy_J.leftWithFood + held_J
  return {
    water_kg: {
      in: b.water_kg.in,
      evaporated: b.water_kg.evaporated,
      vented: b.water_kg.vented,
      absorbed: b.water_kg.absorbed,
      lifted: b.water_kg.lifted,
      inPieces: waterPieces,
      inLiquor: v.liquor.water,
      inHeadspace: v.vapour_kg,
      closure_share: miss(b.water_kg.in, waterOut),
    },
    fat_kg: {
      in: b.fat_kg.in,
      lifted: b.fat_kg.lifted,
      inPieces: fatPieces,
      inLiquor: v.liquor.fat,
      closure_share: miss(b.fat_kg.in, b.fat_kg.lifted + fatPieces + v.liquor.fat),
    },
    salt_kg: {
      in: b.salt_kg.in,
      lifted: b.salt_kg.lifted,
      inPieces: saltPieces,
      inLiquor: v.liquor.salt,
      closure_share: miss(b.salt_kg.in, b.salt_kg.lifted + saltPieces + v.liquor.salt),
    },
    energy_J: {
      in: b.energy_J.in,
      lost: b.energy_J.lost,
      leftWithVapour: b.energy_J.leftWithVapour,
      leftWithFood: b.energy_J.leftWithFood,
      stored: held_J - start_J,
      closure_share: miss(energyIn, energyOut),
    },
  }
}
