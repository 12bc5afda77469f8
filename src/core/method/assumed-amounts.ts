import type { Character } from '../larder/index.ts'

// What a cook takes for an amount that the words leave open, in kg of edible food. Assumed: typical of recipes for four
// to six, common practice with no source. Every use of one raises the finding `amount-assumed`.

export const assumedAmount_kg: Record<Character, number> = {
  'collagen cut': 0.9,
  'lean meat': 0.7,
  'poultry dark': 0.8,
  'poultry light': 0.6,
  sausage: 0.3,
  fish: 0.5,
  egg: 0.1,
  'firm vegetable': 0.25,
  'soft vegetable': 0.25,
  'leafy vegetable': 0.12,
  aromatic: 0.12,
  mushroom: 0.2,
  fruit: 0.12,
  starch: 0.4,
  grain: 0.2,
  pasta: 0.3,
  pulse: 0.25,
  'cooked pulse': 0.24,
  'thin liquid': 0.24,
  'thick liquid': 0.24,
  paste: 0.03,
  dairy: 0.06,
  fat: 0.014,
  acid: 0.015,
  alcohol: 0.12,
  spice: 0.002,
  herb: 0.005,
  salt: 0.006,
  sweetener: 0.01,
  thickener: 0.008,
  leavening: 0.002,
  nut: 0.04,
  seasoning: 0.01,
  other: 0.03,
}

/** Spread of an assumed amount: half to one and a half times. */
export const assumedSpread = 0.5

/** "Salt to taste": of the mass of the main food (assumed; usual seasoning lies at 0.8 to 1.2 %). */
export const saltToTaste_kg_per_kg = 0.01

/** Mass of one piece when only a count is written and the larder has no household weight. */
export const assumedEach_kg: Partial<Record<Character, number>> = {
  'collagen cut': 0.4,
  'lean meat': 0.2,
  'poultry dark': 0.17,
  'poultry light': 0.2,
  sausage: 0.09,
  fish: 0.15,
  egg: 0.05,
  'firm vegetable': 0.09,
  'soft vegetable': 0.12,
  'leafy vegetable': 0.2,
  aromatic: 0.12,
  mushroom: 0.018,
  fruit: 0.11,
  starch: 0.17,
  herb: 0.001,
  spice: 0.001,
  seasoning: 0.01,
  fat: 0.014,
}

/** Voids between pieces lying loosely in a pot, share of the space they take (assumed, 0.35 to 0.45). */
export const voids = 0.4
/** "To cover" means this much liquid over the top of the solids (assumed). */
export const cover_m = 0.01
