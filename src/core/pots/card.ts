/** A vessel with its heat source and lid. Figures named in `assumed` have no source yet and are open to a pot trial. */
export interface PotCard {
  readonly id: PotId
  /** As a sentence says it: "6-quart electric pot". */
  readonly name: string
  readonly kind: 'electric' | 'stovetop' | 'burner' | 'oven'
  readonly capacity_m3: number
  readonly baseArea_m2: number
  readonly base_J_per_K: number
  /** Wall, lid and inner pot above the base, lumped. */
  readonly wall_J_per_K: number
  /** Heat that reaches the base at full power, in the closed setting. */
  readonly power_W: number
  /** Base temperature at which the open setting cuts out; null when nothing limits it. */
  readonly thermostat_K: number | null
  /** What holds the pressure; null for a pot that does not seal. */
  readonly regulator: Regulator | null
  /** Base temperature that stops the heat in the closed setting; null when the pot has no such guard. */
  readonly trip_K: number | null
  readonly tripSpread_dK: number
  /** Base temperature at which food scorches, for pots without a trip. */
  readonly scorch_K: number
  /** Loss through wall and lid, W per K over the room. */
  readonly loss_W_per_K: number
  /** Steam leak while sealed. */
  readonly leak_kg_per_s: number
  /** Steam that leaves with the air before the float seals. */
  readonly purge_kg: number
  /** Share of the headspace's air that the purge leaves behind. */
  readonly unpurgedAirShare: number
  /** Gauge pressure at which the float drops. */
  readonly floatDrop_Pa: number
  /** Extra loss with ice on a bare lid, W/K; null where the lid cannot take it. */
  readonly iced_W_per_K: number | null
  /** Air that passes under a lid which is on but does not seal, kg/s. */
  readonly lidLeak_kg_per_s: number
  readonly fillLimit: number
  readonly foamLimit: number
  /** The least thin liquid the usual manuals ask for in this size: a rule of the card, not a physical threshold. */
  readonly leastLiquid_m3: number
  readonly assumed: readonly string[]
}

export interface Regulator {
  readonly holds: 'gauge' | 'absolute' | 'temperature'
  /** Pa (gauge or absolute) or K, by `holds`. */
  readonly high: number
  readonly low: number
  /** Half width of the band it swings in, same unit. */
  readonly band: number
  /** True when excess steam is let out to hold it (weight valve); false when the heat is cut. */
  readonly vents: boolean
}

/** Built-in ids; a user's own card may have any other. */
export type PotId = string
