import type { Finding, Span } from '../findings/index.ts'
import type { Food } from '../larder/index.ts'
import type { HeatWord, Range, VerbCode } from '../manuscript/index.ts'
import type { PotCard } from '../pots/index.ts'

/**
 * The ordered operations that a manuscript asks for, resolved to foods, masses, pieces and clocks.
 *
 * A load enters the vessel once: by the first `add` or `brown` that lists it. `return` brings back what was lifted;
 * every other operation that lists loads speaks of what is there already (or, for `bench`, not there yet). Loads
 * without pieces that come in with a `brown` (salt, fat) stay in the vessel when the pieces are lifted out.
 */
export interface Plan {
  readonly pot: PotCard
  /** Where the pot was taken from: the caller, the manuscript's words, or the default. */
  readonly potFrom: 'asked' | 'manuscript' | 'default'
  readonly altitude_m: number
  readonly loads: readonly Load[]
  readonly operations: readonly PlanOperation[]
  /** What was missing and how it was filled in, each tied to its words. */
  readonly findings: readonly Finding[]
}

/** One ingredient line as it will meet the pot. A line used in two portions makes two loads. */
export interface Load {
  /** Place in `Plan.loads`. */
  readonly id: number
  /** Index in `Recipe.ingredients`, or null for what is used but unlisted. */
  readonly ingredient: number | null
  readonly name: string
  readonly food: Food
  readonly mass_kg: number
  readonly massBand_kg: Range
  readonly pieces: Pieces | null
  readonly start_K: number
  readonly frozen: boolean
  readonly span: Span | null
  /** Water soaked up before it meets the pot, part of `mass_kg` and of `food.composition`; absent when not soaked. */
  readonly soaked_kg?: number
  /** True when the mass is not in the words. */
  readonly assumed?: boolean
}

/** How a solid is divided: bodies of one shape with one smallest dimension and its spread. */
export interface Pieces {
  readonly shape: 'slab' | 'cylinder' | 'sphere' | 'brick'
  /** Smallest dimension, surface to surface. */
  readonly thickness_m: number
  /** Other two dimensions for a brick, length for a cylinder; equal to thickness for a cube. */
  readonly width_m: number
  readonly length_m: number
  /** Standard deviation of the thickness as a share of it. */
  readonly spread: number
  readonly count: number
  /** Where the size comes from: "the words", or "usual size, not said". */
  readonly from: 'words' | 'usual'
}

interface Common extends Span {
  readonly verb: VerbCode
  /** Index of the manuscript step. */
  readonly step: number
  /** Sentence-case label for the strip: "brown, two batches". */
  readonly label: string
  /** True when a person must stand there. */
  readonly handsOn: boolean
  /** True when the time stands in the words, false when it is a norm. */
  readonly timed: boolean
  /** True for what the words do not say but the dish needs: a lid to lock before a hold. */
  readonly implied?: boolean
}

/** One item of bench work, as the norms give it. */
export interface BenchPart {
  readonly label: string
  readonly load: number | null
  readonly time_s: Range
}

export type PlanOperation = Common &
  (
    | {
        readonly kind: 'bench'
        readonly time_s: Range /** Loads it touches, before they enter a vessel. */
        readonly loads: readonly number[] /** Water soaked up, kg, for soaking. */
        readonly soaked_kg?: number
        /** Waiting that is not on the clock of the cook: overnight, "plus 4 hours for soaking". */
        readonly apart?: boolean
        /** Done while something else works unattended ("meanwhile"): takes clock time only where it outlasts that. */
        readonly beside?: boolean
        /** What the time is made of. */
        readonly parts?: readonly BenchPart[]
      }
    | { readonly kind: 'heat'; readonly setting: HeatWord; readonly time_s: Range | null }
    | {
        readonly kind: 'add'
        readonly loads: readonly number[]
        readonly how: 'stirred' | 'on-top' | 'on-floor' | 'on-rack'
        readonly time_s: Range
      }
    | {
        readonly kind: 'brown'
        readonly loads: readonly number[]
        readonly setting: HeatWord
        readonly batches: number /** Of one batch. */
        readonly time_s: Range /** The browned pieces wait beside the pot afterwards. */
        readonly liftsOut: boolean
      }
    | {
        readonly kind: 'fry'
        readonly mode: 'sweat' | 'bloom' | 'fry'
        readonly setting: HeatWord
        readonly time_s: Range
        readonly stirred: boolean
      }
    | {
        readonly kind: 'deglaze' /** Share of the fond lifted, 0..1. */
        readonly scraped: number
        readonly time_s: Range
      }
    | {
        readonly kind: 'simmer'
        readonly lid: 'off' | 'ajar' | 'on'
        readonly setting: HeatWord
        readonly vigour: 'simmer' | 'boil' /** Counted from the boil; null means only until it boils. */
        readonly time_s: Range | null
        readonly stirred: boolean
      }
    | {
        readonly kind: 'reduce'
        readonly setting: HeatWord
        readonly time_s: Range | null
        readonly toShare: number | null
        readonly toVolume_m3: number | null
        readonly stirred: boolean
      }
    | { readonly kind: 'bake'; readonly oven_K: number; readonly lid: 'off' | 'ajar' | 'on'; readonly time_s: Range }
    | { readonly kind: 'lock'; readonly time_s: Range }
    | { readonly kind: 'hold'; readonly level: 'high' | 'low'; readonly time_s: Range }
    | {
        readonly kind: 'release'
        readonly how: 'natural' | 'vented' | 'natural-then-vented' | 'iced' /** Natural minutes before venting. */
        readonly natural_s: number | null
        /** A time printed for a release that runs until the float drops ("about 25 minutes"). */
        readonly said_s?: Range
      }
    | { readonly kind: 'rest'; readonly time_s: Range; readonly heatOff: true }
    | { readonly kind: 'lift'; readonly loads: readonly number[]; readonly time_s: Range }
    | {
        readonly kind: 'return'
        readonly loads: readonly number[]
        readonly how: 'stirred' | 'on-top'
        readonly time_s: Range
      }
    | {
        readonly kind: 'strain' | 'drain' /** Loads thrown away or set apart; liquid goes too when `drain`. */
        readonly loads: readonly number[]
        readonly time_s: Range
      }
    | {
        readonly kind: 'skim'
        readonly time_s: Range
        /** Fat left in the vessel ("pour off all but 1 tablespoon"); absent when all that can be is taken. */
        readonly leaves_m3?: number
      }
    | {
        readonly kind: 'season' | 'thicken' | 'mash' | 'serve' | 'chill'
        readonly loads: readonly number[]
        readonly time_s: Range
        /** Part of the contents that is mashed, 0..1; absent when all. */
        readonly share?: number
      }
  )
