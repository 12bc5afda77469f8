import type { Finding } from '../findings/index.ts'
import type { Plan } from '../method/index.ts'

/** The computed course of a plan in a pot. SI inside; the command line turns it into grams and degrees Celsius. */
export interface Run {
  readonly plan: Plan
  readonly clock: Clock
  readonly phases: readonly Phase[]
  readonly events: readonly RunEvent[]
  readonly base: BaseVerdict
  readonly fill: { readonly volume_m3: number; readonly fraction: number; readonly limit: number }
  readonly pieces: readonly PieceVerdict[]
  readonly sauce: Sauce
  readonly account: Account
  readonly series: Series
  readonly findings: readonly Finding[]
}

/** Seconds. Null when the plan never gets there. */
export interface Clock {
  readonly prep_s: number
  readonly beforeLock_s: number
  readonly comeUp_s: number | null
  readonly hold_s: number | null
  readonly release_s: number | null
  readonly after_s: number
  readonly total_s: readonly [number, number]
  /** Time a person must stand there, of the total. */
  readonly handsOn_s: number
  /** Waiting that is not on this clock: soaking overnight, chilling. */
  readonly apart_s?: number
}

/** One band of work on the strip. */
export interface Phase {
  readonly kind: 'bench' | 'open' | 'come-up' | 'hold' | 'release' | 'rest' | 'after'
  readonly label: string
  readonly start_s: number
  readonly end_s: number
  readonly handsOn: boolean
  /** Index in `Plan.operations`; null for what the pot does by itself. */
  readonly operation: number | null
}

export type EventCode =
  | 'fat-hot'
  | 'browned'
  | 'stewed'
  | 'boils'
  | 'locked'
  | 'float-up'
  | 'at-pressure'
  | 'hold-ends'
  | 'float-down'
  | 'open'
  | 'burn-stop'
  | 'scorch'
  | 'dry-floor'
  | 'reduced'
  | 'tender'
  | 'at-boil-again'

export interface RunEvent {
  readonly code: EventCode
  readonly time_s: number
  readonly operation: number | null
  /** Index in `Plan.loads`, when it is about one. */
  readonly load: number | null
}

export type BurnCause = 'liquid' | 'thickness' | 'fond' | 'floor'

export interface BaseVerdict {
  /** Least distance of the base below its trip (or scorch) temperature while closed, in K; negative when it trips. */
  readonly margin_dK: number
  readonly trips: boolean
  /** When the margin was least, or when it tripped. */
  readonly at_s: number
  /** What brings it nearest; null when nothing does. */
  readonly cause: BurnCause | null
}

export interface PieceVerdict {
  readonly load: number
  /** Coldest point at its hottest moment, K. */
  readonly coldest_K: number
  /** Collagen turned to gelatin at the coldest collagen, 0..1; null when it has none to speak of. */
  readonly tender: number | null
  readonly tenderBand: readonly [number, number] | null
  /** Firmness left, 0..1 of raw; null for meat. */
  readonly firm: number | null
  readonly word: string
  readonly waterLost_kg: number
  /** Of its raw mass. */
  readonly waterLost_share: number
  readonly mass_kg: number
}

export interface Sauce {
  readonly mass_kg: number
  readonly volume_m3: number
  readonly gelatin_share: number
  readonly starch_share: number
  readonly salt_share: number
  readonly fat_kg: number
  /** Apparent viscosity at serving heat and low shear, Pa s. */
  readonly viscosity_Pas: number
}

/** What went in, out and stayed. `closure_share` is what the books fail to balance by, as a share of what went in. */
export interface Account {
  readonly water_kg: Record<
    'in' | 'evaporated' | 'vented' | 'absorbed' | 'lifted' | 'inPieces' | 'inLiquor' | 'inHeadspace',
    number
  > & { closure_share: number }
  readonly fat_kg: Record<'in' | 'lifted' | 'inPieces' | 'inLiquor', number> & { closure_share: number }
  readonly salt_kg: Record<'in' | 'lifted' | 'inPieces' | 'inLiquor', number> & { closure_share: number }
  readonly energy_J: Record<'in' | 'lost' | 'leftWithVapour' | 'leftWithFood' | 'stored', number> & {
    closure_share: number
  }
}

/** Samples over the whole timeline, one entry per sample in every array. */
export interface Series {
  readonly time_s: Float64Array
  readonly liquor_K: Float64Array
  readonly base_K: Float64Array
  /** Hottest spot of the base: what the guard feels. */
  readonly baseHot_K: Float64Array
  readonly wall_K: Float64Array
  readonly gauge_Pa: Float64Array
  /** Free liquid in the pot. */
  readonly liquid_m3: Float64Array
  readonly fat_kg: Float64Array
  /** Share of the headspace that is air, 0..1. */
  readonly air_share: Float64Array
  /** 0 open, 1 lid on, 2 sealed. */
  readonly lid: Uint8Array
  readonly power_W: Float64Array
  readonly groups: readonly GroupSeries[]
}

/** One load of pieces over time. */
export interface GroupSeries {
  readonly load: number
  /** 0 not yet or no longer there, 1 in the liquor or steam, 2 waiting beside the pot, 3 on a rack. */
  readonly where: Uint8Array
  readonly coldest_K: Float64Array
  readonly mean_K: Float64Array
  readonly surface_K: Float64Array
  /** Collagen turned (meat) or firmness lost (plants), 0..1. */
  readonly done: Float64Array
  readonly mass_kg: Float64Array
  /** Browning of the surface, 0..1. */
  readonly brown: Float64Array
}
