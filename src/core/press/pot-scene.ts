import type { Run } from '../cook/index.ts'
import { bodyMark } from './body-marks.ts'
import { bubbleMarks, headspaceMarks, liquorHeight_m, liquorMarks } from './inside.ts'
import { type Mark, mark, round } from './mark.ts'
import type { GroupMoment, Moment } from './moment.ts'
import { type Body, type Pile, pileOf } from './pile.ts'
import { baseMarks, lidMarks, type VesselFrame, vesselMarks, vesselSize } from './vessel.ts'

const rack_m = 0.028

/** What is drawn of an instant, and where the notes find it. */
export interface Scene {
  readonly marks: readonly Mark[]
  readonly surface: number
  readonly pile: Pile
  readonly rack: Pile
  /** Pixel centre of a body in the pot. */
  spot(body: Body, rack: boolean): { x: number; y: number }
  readonly plate: { readonly y: number; readonly x: number } | null
}

export function sceneOf(run: Run, moment: Moment, f: VesselFrame, prefix: string): Scene {
  const { width_m } = vesselSize(run.plan.pot)
  // The drawn wall takes its thickness from the inside.
  const inner = 0.975 * width_m
  const pile = pileOf(run, moment, 'in', inner)
  const rack = pileOf(run, moment, 'rack', inner)
  const beside = pileOf(run, moment, 'beside', 0.62 * width_m)
  const byLoad = new Map(moment.groups.map((group) => [group.load.id, group]))
  const level_m = liquorHeight_m(moment, pile.height * sag(pile, byLoad), run.plan.pot.baseArea_m2)
  const liquor = liquorMarks(f, moment, level_m, run.plan.pot.baseArea_m2)
  const placing = (group: GroupMoment, lift_m: number, squash: number) => ({
    at: (x: number, y: number) => ({
      x: f.left + (0.0125 * width_m + x) * f.pixels_per_m,
      y: f.floor - 2 - (lift_m + y * squash) * f.pixels_per_m,
    }),
    pixels_per_m: f.pixels_per_m,
    shrink: shrinkOf(group),
    shadeId: `${prefix}-shade-${group.load.id}`,
  })
  const draw = (heap: Pile, lift_m: number) => {
    const squash = sag(heap, byLoad)
    return heap.bodies.map((body) => {
      const group = byLoad.get(body.load) as GroupMoment
      return bodyMark(body, group, placing(group, lift_m, squash))
    })
  }
  const plate = beside.bodies.length > 0 ? plateMarks(beside, byLoad, f, prefix) : null
  return {
    surface: liquor.surface,
    pile,
    rack,
    plate: plate?.at ?? null,
    spot: (body, onRack) => {
      const group = byLoad.get(body.load) as GroupMoment
      return placing(group, onRack ? rack_m : 0, sag(onRack ? rack : pile, byLoad)).at(body.x, body.y)
    },
    marks: [
      ...baseMarks(run.plan.pot, f, moment, `${prefix}-base`),
      ...headspaceMarks(run, f, moment, pile, liquor.surface),
      ...liquor.behind,
      ...bubbleMarks(run, f, moment, liquor.surface),
      mark('g', { class: 'pile' }, draw(pile, 0)),
      ...(rack.bodies.length > 0 ? [rackMark(f), mark('g', { class: 'pile' }, draw(rack, rack_m))] : []),
      ...liquor.before,
      ...vesselMarks(run.plan.pot, f),
      ...limitMarks(run, f),
      ...lidMarks(run.plan.pot, f, moment),
      ...(plate?.marks ?? []),
    ],
  }
}

/** Linear size now over the size when it went in: pieces that lose water shrink, beans that drink swell. */
function shrinkOf(group: GroupMoment): number {
  const ratio = group.mass_kg / group.load.mass_kg
  return Number.isFinite(ratio) && ratio > 0 ? Math.min(1.4, Math.max(0.6, Math.cbrt(ratio))) : 1
}

/** The pile sinks as its pieces shrink. */
function sag(pile: Pile, byLoad: ReadonlyMap<number, GroupMoment>): number {
  if (pile.bodies.length === 0) return 1
  return pile.bodies.reduce((sum, body) => sum + shrinkOf(byLoad.get(body.load) as GroupMoment), 0) / pile.bodies.length
}

function rackMark(f: VesselFrame): Mark {
  const y = f.floor - 2 - rack_m * f.pixels_per_m
  return mark('path', {
    class: 'line s-ink',
    d: `M${round(f.left + 5)} ${round(y)}H${round(f.right - 5)}M${round(f.left + 16)} ${round(y)}V${round(f.floor - 2)}M${round(f.right - 16)} ${round(y)}V${round(f.floor - 2)}`,
    'stroke-width': 1.5,
  })
}

/** Ticks at the fill limit and at the line for what foams. */
function limitMarks(run: Run, f: VesselFrame): Mark[] {
  const { fillLimit, foamLimit } = run.plan.pot
  return [fillLimit, foamLimit].map((share, i) => {
    const y = limitY(f, share)
    return mark('path', {
      class: `line s-${i === 0 ? 'ink' : 'soft'}`,
      d: `M${round(f.left)} ${round(y)}h${i === 0 ? 12 : 7}M${round(f.right)} ${round(y)}h${i === 0 ? -12 : -7}`,
      'stroke-width': i === 0 ? 1.4 : 1,
    })
  })
}

export function limitY(f: VesselFrame, share: number): number {
  return f.floor - share * f.height_m * f.pixels_per_m
}

/** What waits beside the pot, on a plate at half the pot's scale. */
function plateMarks(beside: Pile, byLoad: ReadonlyMap<number, GroupMoment>, f: VesselFrame, prefix: string) {
  const scale = 0.5 * f.pixels_per_m
  const width = 0.62 * f.width_m * scale
  const x0 = f.right + 22
  const y = f.floor + 10
  const marks = beside.bodies.map((body) => {
    const group = byLoad.get(body.load) as GroupMoment
    return bodyMark(body, group, {
      at: (bx, by) => ({ x: x0 + bx * scale, y: y - 2 - by * scale }),
      pixels_per_m: scale,
      shrink: shrinkOf(group),
      shadeId: `${prefix}-shade-${group.load.id}`,
    })
  })
  return {
    at: { x: x0 + width / 2, y },
    marks: [
      mark('path', {
        class: 'line s-ink',
        d: `M${round(x0 - 9)} ${round(y - 4)}q5 5 12 5H${round(x0 + width - 3)}q7 0 12 -5`,
        'stroke-width': 1.6,
        'stroke-linecap': 'round',
      }),
      ...marks,
    ],
  }
}
