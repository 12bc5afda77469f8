import type { Finding, Span } from '../findings/index.ts'
import type { UnitCode } from '../units/index.ts'

/** What the careful stranger understood. Every part keeps the place of the words it came from. */
export interface Recipe {
  /** The manuscript exactly as given; all spans count UTF-16 code units into it. */
  readonly text: string
  readonly title: (Span & { readonly text: string }) | null
  readonly yield: (Span & { readonly low: number; readonly high: number; readonly unit: string }) | null
  readonly stated: {
    readonly total: StatedTime | null
    readonly active: StatedTime | null
  }
  /** A pot, oven or place that the manuscript itself names. */
  readonly named: {
    readonly pot: (Span & { readonly id: string }) | null
    readonly altitude_m: number | null
  }
  readonly ingredients: readonly Ingredient[]
  readonly steps: readonly Step[]
  /** What the text left open, in the order of the text. */
  readonly queries: readonly Finding[]
  /** What kind of text this is taken for; anything but 'recipe' comes with a query that says so. */
  readonly kind: 'recipe' | 'list' | 'prose' | 'empty' | 'not-text'
}

export interface StatedTime extends Span {
  readonly low_s: number
  readonly high_s: number
}

export interface Range {
  readonly low: number
  readonly high: number
}

/** An amount as written: 1 1/2 cups -> low 1.5, high 1.5, unit cup. Unit null is a bare count. */
export interface Measure {
  readonly low: number
  readonly high: number
  readonly unit: UnitCode | null
}

export interface Ingredient extends Span {
  /** Place in `Recipe.ingredients`. */
  readonly index: number
  /** The line without its bullet. */
  readonly line: string
  /** Null when no amount is written. */
  readonly low: number | null
  readonly high: number | null
  readonly unit: UnitCode | null
  /** Place of the amount words, for queries; null when there is none. */
  readonly amountSpan: Span | null
  readonly pack: Measure | null
  /** Further measures of the same thing: "(900 g)". */
  readonly also: readonly Measure[]
  /** The food, lower case, without preparation. */
  readonly item: string
  readonly itemSpan: Span | null
  /** Larder entry, or null when the larder does not know it. */
  readonly larder: string | null
  readonly prep: string | null
  readonly cut: Cut | null
  /** Temperature it starts from, where the words say it. */
  readonly state: 'frozen' | 'chilled' | 'room' | 'hot' | null
  readonly optional: boolean
  readonly toTaste: boolean
  readonly divided: boolean
  /** Edible mass that goes into the pot, with its spread; null when the words do not settle it. */
  readonly mass_kg: Range | null
  /** How the mass was found: "as written", "household weight: 1 cup, chopped = 160 g (USDA)", "count, 110 to 230 g each". */
  readonly massFrom: string
  /** Measure the contract has no code for, in the singular ("glass", "bottle", "knob"); `unit` is null then. */
  readonly unitWord?: string
}

/** How a solid is cut. Size is the smallest dimension named or, failing that, the one named. */
export interface Cut {
  readonly shape:
    | 'whole'
    | 'halves'
    | 'pieces'
    | 'cubes'
    | 'slices'
    | 'sticks'
    | 'strips'
    | 'chopped'
    | 'minced'
    | 'shredded'
    | 'ground'
  /** Null when the words give a shape but no size ("cut into chunks"). */
  readonly size_m: Range | null
  readonly from: number
  readonly to: number
}

export interface Step extends Span {
  readonly text: string
  readonly operations: readonly Operation[]
}

export const verbCodes = [
  'heat',
  'brown',
  'sweat',
  'bloom',
  'fry',
  'deglaze',
  'add',
  'boil',
  'simmer',
  'reduce',
  'lock',
  'hold',
  'release',
  'rest',
  'lift',
  'strain',
  'settle',
  'skim',
  'thicken',
  'season',
  'chill',
  'bake',
  'cut',
  'mix',
  'soak',
  'pickle',
  'marinate',
  'drain',
  'mash',
  'serve',
] as const
export type VerbCode = (typeof verbCodes)[number]

export type HeatWord = 'low' | 'medium-low' | 'medium' | 'medium-high' | 'high'
export type PressureWord = 'high' | 'medium' | 'low'
export type ReleaseWord = 'natural' | 'vented' | 'natural-then-vented' | 'iced'

export interface Operation extends Span {
  readonly verb: VerbCode
  /** Time as written, in seconds; for repeated batches see `batches` and `each`. */
  readonly time_s: Range | null
  /** "in two batches" -> 2; null when not said. */
  readonly batches: number | null
  /** True when `time_s` is for each batch ("5 minutes per batch"), false when it is in all or there is one batch. */
  readonly perBatch: boolean
  /** Oven or thermometer temperature. */
  readonly temperature_K: Range | null
  readonly heat: HeatWord | null
  readonly pressure: PressureWord | null
  readonly release: ReleaseWord | null
  /** Natural part of the release before venting. */
  readonly releaseTime_s: number | null
  readonly uses: readonly Use[]
  /** What to look for: "until deep golden". */
  readonly cue: string | null
  readonly lid: 'on' | 'off' | 'ajar' | null
  /** Said to scrape the base clean ("scraping up the browned bits"). */
  readonly scrapes: boolean
  /** Said to stir while it goes on ("stirring", "stirring often"). */
  readonly stirs: boolean
  /** Volume or share to boil down to, as written: "reduce by half" -> share 0.5. */
  readonly reduceTo: { readonly share: number | null; readonly volume_m3: number | null } | null
  /** Where it happens when that is not the main vessel: "in a bowl", "in the oven", "in a skillet". */
  readonly place: 'pot' | 'bowl' | 'oven' | 'pan' | 'rack' | 'fridge' | null
  /** True when `time_s` is for one side of two ("4 minutes a side"). */
  readonly perSide?: boolean
  /**
   * Told beside the course of the method, not part of it: one of two ways ("or chill for 3 hours"), only on a
   * condition ("if you like peas, add …"), or a time said once more ("2 hours to stew the tails").
   */
  readonly aside?: 'alternative' | 'condition' | 'restated'
  /** Goes on beside what comes before ("Meanwhile, …"). */
  readonly meanwhile?: boolean
  /** Where its numbers and words stand, for queries and for shading words by how much they matter. */
  readonly places?: {
    readonly verb?: Span
    readonly time?: Span
    readonly temperature?: Span
    readonly heat?: Span
    readonly pressure?: Span
    readonly cue?: Span
    readonly reduceTo?: Span
  }
}

/** An ingredient touched by an operation, and how much of it. */
export interface Use extends Span {
  readonly ingredient: number
  /** Share of the whole listed amount, 0..1; 1 when nothing narrower is said, null when "a little", "some". */
  readonly share: number | null
  /** True when it was in a vessel already and comes back ("return the pork"). */
  readonly again: boolean
}
