import type { Character } from '../larder/index.ts'
import type { Range } from '../manuscript/index.ts'

// Hand work and open-pot times that a manuscript leaves to the cook. All assumed: kitchen norms with no source, low for
// a practised hand, high for a careful home cook. Batches correct them.

export interface HandTime {
  /** As a list of norms prints it. */
  readonly words: string
  readonly low_s: number
  readonly high_s: number
  readonly per: 'kg' | 'piece' | 'time'
}

export const handTimes = {
  gather: { words: 'fetch and measure one ingredient', low_s: 10, high_s: 20, per: 'piece' },
  tin: { words: 'open a tin', low_s: 10, high_s: 25, per: 'piece' },
  drain: { words: 'drain and rinse', low_s: 25, high_s: 50, per: 'time' },
  cutMeat: { words: 'cut meat into pieces', low_s: 180, high_s: 300, per: 'kg' },
  trimMeat: { words: 'trim a cut', low_s: 60, high_s: 150, per: 'kg' },
  patDry: { words: 'pat dry', low_s: 40, high_s: 90, per: 'kg' },
  seasonMeat: { words: 'season and toss', low_s: 30, high_s: 60, per: 'time' },
  peel: { words: 'peel vegetables', low_s: 120, high_s: 240, per: 'kg' },
  chop: { words: 'chop vegetables', low_s: 240, high_s: 480, per: 'kg' },
  chopFine: { words: 'chop finely or dice small', low_s: 420, high_s: 780, per: 'kg' },
  slice: { words: 'slice vegetables', low_s: 200, high_s: 400, per: 'kg' },
  piecesVegetable: { words: 'cut vegetables into pieces', low_s: 180, high_s: 360, per: 'kg' },
  shred: { words: 'grate or shred', low_s: 360, high_s: 720, per: 'kg' },
  garlic: { words: 'peel and mince a clove of garlic', low_s: 15, high_s: 30, per: 'piece' },
  herb: { words: 'pick and chop a herb', low_s: 30, high_s: 80, per: 'time' },
  juice: { words: 'zest or juice a fruit', low_s: 30, high_s: 60, per: 'piece' },
  mix: { words: 'mix in a bowl', low_s: 45, high_s: 120, per: 'time' },
  cutOther: { words: 'cut up something else', low_s: 30, high_s: 90, per: 'time' },
  pour: { words: 'add one thing to the pot', low_s: 4, high_s: 12, per: 'piece' },
  stir: { words: 'stir in', low_s: 5, high_s: 15, per: 'time' },
  lift: { words: 'lift pieces out', low_s: 25, high_s: 60, per: 'time' },
  liftOne: { words: 'fish out a leaf or a sprig', low_s: 10, high_s: 25, per: 'time' },
  put: { words: 'put pieces back', low_s: 15, high_s: 30, per: 'time' },
  lock: { words: 'wipe the rim, close and lock the lid', low_s: 10, high_s: 25, per: 'time' },
  deglaze: { words: 'scrape the base clean', low_s: 30, high_s: 60, per: 'time' },
  strain: { words: 'strain', low_s: 60, high_s: 150, per: 'time' },
  pourOff: { words: 'drain off liquid', low_s: 30, high_s: 75, per: 'time' },
  rinseCold: { words: 'cool in cold water', low_s: 60, high_s: 180, per: 'time' },
  skim: { words: 'skim fat', low_s: 60, high_s: 180, per: 'time' },
  thicken: { words: 'whisk in a thickener', low_s: 60, high_s: 120, per: 'time' },
  mash: { words: 'mash or blend', low_s: 60, high_s: 180, per: 'time' },
  tearMeat: { words: 'shred, slice or break up cooked meat', low_s: 90, high_s: 200, per: 'kg' },
  season: { words: 'taste and season', low_s: 15, high_s: 40, per: 'time' },
  serve: { words: 'dish up', low_s: 60, high_s: 150, per: 'time' },
} as const satisfies Record<string, HandTime>

export type HandTimeId = keyof typeof handTimes
export type HandTimes = Readonly<Record<HandTimeId, HandTime>>

/** Time of one piece of hand work: of `amount` kg or pieces, or once. */
export function handTime(id: HandTimeId, amount = 1, table: HandTimes = handTimes): Range {
  const norm = table[id]
  const factor = norm.per === 'time' ? 1 : amount
  return { low: norm.low_s * factor, high: norm.high_s * factor }
}

/** Times at the pot when the words give none, in s. */
export const potTimes = {
  preheatOven: { low: 600, high: 900 },
  heatLiquid: { low: 180, high: 300 },
  brownMeat: { low: 360, high: 480 },
  brownMince: { low: 300, high: 420 },
  brownOnions: { low: 480, high: 720 },
  sweat: { low: 300, high: 420 },
  fry: { low: 180, high: 300 },
  bloom: { low: 30, high: 60 },
  softenGarlic: { low: 60, high: 120 },
  boilOff: { low: 60, high: 120 },
  simmerShort: { low: 300, high: 600 },
  reduce: { low: 480, high: 720 },
  wilt: { low: 60, high: 180 },
  vent: { low: 60, high: 120 },
  rest: { low: 300, high: 600 },
  marinate: { low: 1800, high: 7200 },
  soak: { low: 28800, high: 43200 },
  soakBrief: { low: 900, high: 1800 },
  chill: { low: 7200, high: 14400 },
} as const satisfies Record<string, Range>

/** Time at a simmer until the usual doneness, when the words only say "until tender". Common practice, no source. */
export const simmerUntilDone: Partial<Record<Character, Range>> = {
  'collagen cut': { low: 6300, high: 9000 },
  pulse: { low: 3600, high: 5400 },
  'poultry dark': { low: 2100, high: 3000 },
  'poultry light': { low: 1200, high: 1800 },
  'lean meat': { low: 1200, high: 2400 },
  sausage: { low: 900, high: 1500 },
  grain: { low: 900, high: 1500 },
  pasta: { low: 480, high: 720 },
  starch: { low: 900, high: 1200 },
  'firm vegetable': { low: 900, high: 1200 },
  fish: { low: 360, high: 600 },
  'cooked pulse': { low: 600, high: 900 },
  egg: { low: 420, high: 600 },
}

/** Time at high pressure until the usual doneness, when none is said. Common practice, no source. */
export const holdUntilDone: Partial<Record<Character, Range>> = {
  'collagen cut': { low: 1800, high: 2400 },
  pulse: { low: 600, high: 1200 },
  'poultry dark': { low: 600, high: 900 },
  'poultry light': { low: 480, high: 600 },
  'lean meat': { low: 600, high: 1200 },
  sausage: { low: 300, high: 480 },
  grain: { low: 360, high: 900 },
  pasta: { low: 240, high: 300 },
  starch: { low: 300, high: 480 },
  'firm vegetable': { low: 180, high: 300 },
  fish: { low: 120, high: 240 },
  'cooked pulse': { low: 300, high: 480 },
}

/** Share of the fond that comes off the base (assumed). */
export const lifted = {
  /** "scraping up the browned bits" */
  scraped: 0.9,
  /** "deglaze with the wine", no word of scraping */
  deglazed: 0.7,
  /** thin liquid poured over it and left */
  poured: 0.3,
  /** purée or paste poured over it and left */
  pouredThick: 0.15,
} as const
