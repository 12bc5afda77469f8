import type { Food } from '../larder/index.ts'
import type { Ingredient } from '../manuscript/index.ts'
import { kelvinFromCelsius } from '../units/index.ts'

/** Temperatures that food starts from when the words do not say: a home kitchen (assumed). */
export const startTemperatures_K = {
  frozen: kelvinFromCelsius(-18),
  fridge: kelvinFromCelsius(5),
  tap: kelvinFromCelsius(15),
  room: kelvinFromCelsius(20),
  hot: kelvinFromCelsius(95),
  warm: kelvinFromCelsius(50),
  /** Cooked in another vessel just before. */
  cookedApart: kelvinFromCelsius(60),
} as const

const chilled: ReadonlySet<Food['character']> = new Set([
  'collagen cut',
  'lean meat',
  'poultry dark',
  'poultry light',
  'sausage',
  'fish',
  'egg',
  'dairy',
])

/** Temperature an ingredient enters with, and whether its water is ice. */
export function startOf(food: Food, ingredient: Ingredient | null): { start_K: number; frozen: boolean } {
  const at = startTemperatures_K
  const words = ingredient?.line.toLowerCase() ?? ''
  const state = ingredient?.state ?? null
  if (state === 'frozen' || (state === null && /\bfrozen\b/.test(words) && !/thawed|defrosted/.test(words)))
    return { start_K: at.frozen, frozen: true }
  const liquid = food.character === 'thin liquid' || food.character === 'thick liquid'
  if (state === 'hot' || (state === null && liquid && /\b(boiling|hot)\b/.test(words)))
    return { start_K: at.hot, frozen: false }
  if (state === null && liquid && /\bwarm\b/.test(words)) return { start_K: at.warm, frozen: false }
  if (state === 'room') return { start_K: at.room, frozen: false }
  // Cold water comes from the tap.
  if (liquid && state === 'chilled' && !/\b(iced?|fridge|chilled)\b/.test(words))
    return { start_K: at.tap, frozen: false }
  // Tinned and dried milk, fish and meat stand in the cupboard.
  const cupboard = /\b(tins?|tinned|cans?|canned|evaporated|condensed|dried|uht|long-life)\b/.test(words)
  if (state === 'chilled' || (chilled.has(food.character) && !cupboard)) return { start_K: at.fridge, frozen: false }
  return { start_K: at.room, frozen: false }
}
