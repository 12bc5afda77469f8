import type { GroupSeries, Phase, Run } from '../cook/index.ts'
import type { Load } from '../method/index.ts'

/** Everything a drawing needs to know of one instant of a run, read off its series. */
export interface Moment {
  readonly time_s: number
  readonly liquor_K: number
  readonly base_K: number
  readonly baseHot_K: number
  readonly gauge_Pa: number
  readonly liquid_m3: number
  readonly fat_kg: number
  /** True when there is liquor to speak of: more than a film, and not just frying fat. */
  readonly wet: boolean
  readonly air_share: number
  /** Locked is before the float has risen, sealed after; pots that hold no pressure are only ever on or off. */
  readonly lid: 'off' | 'on' | 'locked' | 'sealed'
  /** True while the guard (or the cook's nose) is all that watches the base. */
  readonly closed: boolean
  readonly power_W: number
  readonly phase: Phase | null
  readonly groups: readonly GroupMoment[]
  /** Volume of the solids in the pot. */
  readonly solids_m3: number
  /** Solids and liquid over the pot's capacity. */
  readonly fill: number
}

export interface GroupMoment {
  readonly load: Load
  readonly where: 'away' | 'in' | 'beside' | 'rack'
  readonly coldest_K: number
  readonly mean_K: number
  readonly surface_K: number
  readonly done: number
  readonly mass_kg: number
  readonly brown: number
}

const places = ['away', 'in', 'beside', 'rack'] as const
const lids = ['off', 'on', 'sealed'] as const

/** Last time of the run's series, or of its phases when there is no series. */
export function endOf_s(run: Run): number {
  return run.series.time_s.at(-1) ?? run.phases.at(-1)?.end_s ?? 0
}

// Less watery liquid than this is a film: its temperature is the base's, and a line for it would say nothing.
const leastLiquor_m3 = 15e-6
const fat_kg_per_m3 = 910

/** Whether a pot with so much liquid, fat counted in, holds liquor. */
export function isWet(liquid_m3: number, fat_kg: number): boolean {
  return liquid_m3 - fat_kg / fat_kg_per_m3 > leastLiquor_m3
}

function lidAt(run: Run, time_s: number, sample: number): Moment['lid'] {
  const lid = lids[run.series.lid[sample]] ?? 'off'
  return lid === 'on' && run.plan.pot.regulator !== null && isLocked(run, time_s) ? 'locked' : lid
}

/** Between locking and opening. */
function isLocked(run: Run, time_s: number): boolean {
  const turns = run.events.filter(
    (event) => (event.code === 'locked' || event.code === 'open') && event.time_s <= time_s,
  )
  return (
    turns.reduce((last, event) => (event.time_s >= last.time_s ? event : last), { code: 'open', time_s: -1 }).code ===
    'locked'
  )
}

/** Whether the lid keeps the base from sight at a sample: locked, or on a pot that only has one to lay on. */
export function isClosed(run: Run, sample: number): boolean {
  if (run.series.lid[sample] === 0 || run.plan.pot.kind === 'oven') return false
  return run.plan.pot.regulator === null || run.series.lid[sample] === 2 || isLocked(run, run.series.time_s[sample])
}

/** The run at one instant: levels interpolated, states (lid, place of a piece) held from the sample before. */
export function momentOf(run: Run, time_s: number): Moment {
  const { series } = run
  const end = endOf_s(run)
  const t = Number.isFinite(time_s) ? Math.min(Math.max(time_s, 0), end) : end
  const at = bracket(series.time_s, t)
  const level = (values: Float64Array) => between(values, at)
  const groups = series.groups.map((group) => groupMoment(run, group, at))
  const solids_m3 = groups.reduce(
    (sum, group) =>
      group.where === 'in' || group.where === 'rack' ? sum + group.mass_kg / group.load.food.density_kg_per_m3 : sum,
    0,
  )
  const liquid_m3 = Math.max(0, level(series.liquid_m3))
  const fat_kg = level(series.fat_kg)
  return {
    time_s: t,
    liquor_K: level(series.liquor_K),
    base_K: level(series.base_K),
    baseHot_K: level(series.baseHot_K),
    gauge_Pa: level(series.gauge_Pa),
    liquid_m3,
    fat_kg,
    wet: isWet(liquid_m3, fat_kg),
    air_share: level(series.air_share),
    lid: lidAt(run, t, at.low),
    closed: isClosed(run, at.low),
    power_W: series.power_W[at.low] ?? 0,
    phase: phaseAt(run, t),
    groups,
    solids_m3,
    fill: (solids_m3 + liquid_m3) / run.plan.pot.capacity_m3,
  }
}

/** The band of work at an instant; at a seam the one that begins. */
export function phaseAt(run: Run, time_s: number): Phase | null {
  return (
    run.phases.find((phase) => time_s >= phase.start_s && time_s < phase.end_s) ??
    (run.phases.length > 0 && time_s >= run.phases[run.phases.length - 1].end_s
      ? run.phases[run.phases.length - 1]
      : null)
  )
}

function groupMoment(run: Run, group: GroupSeries, at: Bracket): GroupMoment {
  return {
    load: run.plan.loads[group.load],
    where: places[group.where[at.low]] ?? 'away',
    coldest_K: between(group.coldest_K, at),
    mean_K: between(group.mean_K, at),
    surface_K: between(group.surface_K, at),
    done: between(group.done, at),
    mass_kg: between(group.mass_kg, at),
    brown: between(group.brown, at),
  }
}

interface Bracket {
  readonly low: number
  readonly high: number
  readonly share: number
}

function bracket(times: Float64Array, t: number): Bracket {
  let low = 0
  let high = times.length - 1
  if (high <= 0 || t >= times[high]) return { low: Math.max(high, 0), high: Math.max(high, 0), share: 0 }
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if (times[middle] <= t) low = middle
    else high = middle
  }
  const step = times[high] - times[low]
  return { low, high, share: step > 0 ? (t - times[low]) / step : 0 }
}

function between(values: Float64Array, { low, high, share }: Bracket): number {
  const a = values[low] ?? Number.NaN
  const b = values[high] ?? a
  // A gap on one side (not there yet, no longer there) leaves the other side's value.
  if (!Number.isFinite(a)) return b
  if (!Number.isFinite(b)) return a
  return a + (b - a) * share
}
