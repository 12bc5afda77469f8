import type { Run } from '../cook/index.ts'
import type { Load } from '../method/index.ts'
import { seededRandom } from '../numerics/index.ts'
import type { GroupMoment, Moment } from './moment.ts'
import { type Outline, outline, outlineArea, shuffled } from './outline.ts'
import { packed } from './pack.ts'

/** One drawn piece at rest in the slice, metres, y upward from what it lies on. */
export interface Body {
  readonly load: number
  readonly shape: BodyShape
  readonly outline: Outline
  readonly x: number
  readonly y: number
  readonly tilt: number
  /** Size across before the tilt: of the face that is seen. */
  readonly face: { readonly width: number; readonly height: number }
}

export type BodyShape = 'block' | 'round' | 'side' | 'leaf' | 'bean'

export interface Pile {
  readonly bodies: readonly Body[]
  /** Top of the highest body. */
  readonly height: number
  readonly drawn: ReadonlyMap<number, number>
}

/** So many bodies of one load at most, or the drawing turns into noise. */
const most = 56

/**
 * How many pieces of a load a cut through the middle of the pot shows. In a slice the share of area is the share of
 * volume (Delesse's rule of stereology), so the drawn faces together take the area `volume * slice / base`.
 */
export function sliceCount(load: Load, mass_kg: number, sliceWidth_m: number, baseArea_m2: number): number {
  const { pieces, food } = load
  if (!pieces) return 0
  const volume_m3 = mass_kg / food.density_kg_per_m3
  const faces = Array.from({ length: 6 }, (_, i) => faceOf(load, i))
  const face_m2 = faces.reduce((sum, f) => sum + f.width * f.height * (f.round ? Math.PI / 4 : 0.95), 0) / faces.length
  const n = Math.round((volume_m3 * sliceWidth_m) / baseArea_m2 / face_m2)
  return Math.max(1, Math.min(n, Math.ceil(pieces.count)))
}

/** The face that the cut shows of the `i`th piece of a load. */
function faceOf(load: Load, i: number): { width: number; height: number; round: boolean; shape: BodyShape } {
  const { shape, thickness_m, width_m, length_m } = load.pieces!
  const { character } = load.food
  const across = Math.max(thickness_m, i % 2 === 0 ? width_m : Math.min(length_m, 2.2 * width_m))
  if (/leafy|herb/.test(character))
    return { width: Math.max(length_m, 0.02), height: Math.max(width_m * 0.4, 0.006), round: true, shape: 'leaf' }
  if (/pulse|grain/.test(character))
    return { width: Math.max(length_m, thickness_m * 1.35), height: thickness_m, round: true, shape: 'bean' }
  if (shape === 'sphere') return { width: thickness_m, height: thickness_m, round: true, shape: 'round' }
  if (shape === 'cylinder') {
    const diameter = thickness_m
    const long = Math.max(length_m, thickness_m)
    // A stick lies; a round shows its face two times out of three.
    if (long > 2 * diameter) return { width: Math.min(long, 0.14), height: diameter, round: false, shape: 'side' }
    return i % 3 === 2
      ? { width: Math.max(width_m, long), height: diameter, round: false, shape: 'side' }
      : { width: Math.max(width_m, diameter), height: Math.max(width_m, diameter), round: true, shape: 'round' }
  }
  if (shape === 'slab' && /vegetable|aromatic|starch|mushroom|fruit/.test(character)) {
    const flat = i % 3 === 1
    const disc = Math.min(width_m, length_m)
    return flat
      ? { width: disc, height: thickness_m, round: false, shape: 'side' }
      : { width: disc, height: disc, round: true, shape: 'round' }
  }
  return { width: across, height: thickness_m, round: false, shape: 'block' }
}

/** The bodies of one load, `count` of them, `spacing` times as roomy as they are when only some are drawn. */
function bodiesOf(load: Load, count: number, spacing: number): { wide: Outline; body: Omit<Body, 'x' | 'y'> }[] {
  const random = seededRandom(7919 * (load.id + 1))
  const spread = load.pieces!.spread
  return Array.from({ length: count }, (_, i) => {
    const face = faceOf(load, i)
    // Even steps through the spread of sizes rather than chance: few pieces must still show it.
    const size = 1 + spread * 1.2 * (count < 2 ? 0 : (2 * i) / (count - 1) - 1)
    const tilt =
      (random() - 0.5) * (face.shape === 'side' || face.shape === 'leaf' || face.shape === 'bean' ? 1.1 : 0.28)
    const wish = {
      width: face.width * size,
      height: face.height * size,
      squareness: face.round ? 2 : 4.5,
      tilt,
      stray: face.shape === 'bean' || face.shape === 'leaf' ? 0.02 : 0.09,
      seed: 31 * load.id + i + 1,
    }
    return {
      wide: outline({ ...wish, width: wish.width * spacing, height: wish.height * spacing }),
      body: {
        load: load.id,
        shape: face.shape,
        outline: outline(wish),
        tilt,
        face: { width: wish.width, height: wish.height },
      },
    }
  })
}

const piles = new WeakMap<Run, Map<string, Pile>>()

/**
 * The pile of pieces in the pot (or on a rack, or a plate) at an instant. It depends only on which loads are there and
 * in which order they came, so pieces keep their places while the cursor moves.
 */
export function pileOf(run: Run, moment: Moment, place: 'in' | 'rack' | 'beside', width_m: number): Pile {
  const shares = groupShares(run, moment, place)
  const known = piles.get(run) ?? new Map<string, Pile>()
  piles.set(run, known)
  const key = `${width_m.toFixed(4)}|${shares.map((s) => `${s.group.load.id}:${s.share.toFixed(2)}:${s.mixed ? 1 : 0}`).join(',')}`
  const found = known.get(key)
  if (found) return found
  const pile = build(run, shares, width_m)
  known.set(key, pile)
  return pile
}

interface GroupShare {
  readonly group: GroupMoment
  readonly share: number
  /** Stirred in among what was there before, not laid on top. */
  readonly mixed: boolean
}

function build(run: Run, shares: readonly GroupShare[], width_m: number): Pile {
  const { baseArea_m2 } = run.plan.pot
  const drawn = new Map<number, number>()
  let queue: { wide: Outline; body: Omit<Body, 'x' | 'y'> }[] = []
  for (const { group, share, mixed } of shares) {
    const true_ = sliceCount(group.load, group.load.mass_kg * share, width_m, baseArea_m2)
    const count = Math.min(true_, most)
    drawn.set(group.load.id, count)
    const mine = bodiesOf(group.load, count, Math.sqrt(true_ / count))
    const all = [...queue, ...mine]
    // Large pieces settle first and small ones into their gaps, or the pile would stand on pebbles.
    queue = mixed ? shuffled(all, seededRandom(17 + group.load.id)).sort((a, b) => step(b.wide) - step(a.wide)) : all
  }
  const rests = packed(
    queue.map((q) => q.wide),
    width_m,
    41,
  )
  const bodies = queue.map((q, i) => ({ ...q.body, ...rests[i] }))
  return { bodies, height: Math.max(0, ...bodies.map((b, i) => b.y + queue[i].wide.height / 2)), drawn }
}

// Sizes in coarse classes, so that a shuffle among like sizes survives the sort.
function step(o: Outline): number {
  return Math.round(2 * Math.log2(Math.sqrt(outlineArea(o))))
}

/** Loads at a place, first come first; while a batch browns the others wait on the plate. */
function groupShares(run: Run, moment: Moment, place: 'in' | 'rack' | 'beside'): GroupShare[] {
  const operation = moment.phase?.operation == null ? null : run.plan.operations[moment.phase.operation]
  const batches = operation?.kind === 'brown' ? operation.batches : 1
  const list: (GroupShare & { since: number })[] = []
  for (const group of moment.groups) {
    if (!group.load.pieces || group.where === 'away') continue
    const browning =
      operation?.kind === 'brown' && operation.loads.includes(group.load.id) && batches > 1 && group.where === 'in'
    const share = browning
      ? place === 'in'
        ? 1 / batches
        : place === 'beside'
          ? 1 - 1 / batches
          : 0
      : group.where === place
        ? 1
        : 0
    if (share <= 0) continue
    const { since, mixed } = entry(run, group, moment.time_s)
    list.push({ group, share, mixed, since })
  }
  return list.sort((a, b) => a.since - b.since || a.group.load.id - b.group.load.id)
}

/** When a load last entered the pot, and whether it was stirred in. */
function entry(run: Run, group: GroupMoment, time_s: number): { since: number; mixed: boolean } {
  const series = run.series.groups.find((g) => run.plan.loads[g.load].id === group.load.id)
  if (!series) return { since: 0, mixed: false }
  let last = 0
  const { time_s: times } = run.series
  for (let i = 1; i < times.length && times[i] <= time_s; i++) {
    if (series.where[i] !== series.where[i - 1] && (series.where[i] === 1 || series.where[i] === 3)) last = times[i]
  }
  const by = run.plan.operations.filter(
    (o) => (o.kind === 'add' || o.kind === 'return') && o.loads.includes(group.load.id),
  )
  const how = by.at(-1)
  return { since: last, mixed: how !== undefined && 'how' in how && how.how === 'stirred' }
}
