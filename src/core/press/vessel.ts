import type { PotCard } from '../pots/index.ts'
import { heatShare } from './body-marks.ts'
import { type Mark, mark, round } from './mark.ts'
import type { Moment } from './moment.ts'

/** The vessel in pixels, to the proportions of its card: a cylinder of the base's area that holds the capacity. */
export interface VesselFrame {
  readonly pixels_per_m: number
  readonly left: number
  readonly right: number
  /** Inside of the floor. */
  readonly floor: number
  readonly rim: number
  /** Highest point of the closed lid. */
  readonly crown: number
  readonly width_m: number
  readonly height_m: number
}

const wall = 3

export function vesselSize(pot: PotCard): { width_m: number; height_m: number } {
  return { width_m: 2 * Math.sqrt(pot.baseArea_m2 / Math.PI), height_m: pot.capacity_m3 / pot.baseArea_m2 }
}

export interface Room {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
}

/** Largest vessel that fits: dome and knob above the rim, base and heat below the floor. */
export function vesselFrame(pot: PotCard, room: Room): VesselFrame {
  const { width_m, height_m } = vesselSize(pot)
  const dome = 0.11 * width_m
  const above = 26
  const below = 44
  const pixels_per_m = Math.min(
    (room.x1 - room.x0) / (width_m * 1.07),
    (room.y1 - room.y0 - above - below) / (height_m + dome),
  )
  const width = width_m * pixels_per_m
  const middle = (room.x0 + room.x1) / 2
  const spare = room.y1 - room.y0 - above - below - (height_m + dome) * pixels_per_m
  const floor = room.y1 - below - spare / 2
  const rim = floor - height_m * pixels_per_m
  return {
    pixels_per_m,
    left: middle - width / 2,
    right: middle + width / 2,
    floor,
    rim,
    crown: rim - dome * pixels_per_m,
    width_m,
    height_m,
  }
}

/** Wall, rim and handles. The inside is left open for what is drawn in it. */
export function vesselMarks(pot: PotCard, f: VesselFrame): Mark[] {
  const r = 6
  const body = `M${p(f.left - wall / 2)} ${p(f.rim)}V${p(f.floor - r)}q0 ${r} ${r} ${r}H${p(f.right + wall / 2 - r)}q${r} 0 ${r} -${r}V${p(f.rim)}`
  return [mark('path', { class: 'line s-ink', d: body, 'stroke-width': wall }), ...handles(pot, f)]
}

function handles(pot: PotCard, f: VesselFrame): Mark[] {
  const stroke = (d: string, width = 1.6) =>
    mark('path', { class: 'line s-ink', d, 'stroke-width': width, 'stroke-linecap': 'round' })
  const y = f.rim + 0.1 * (f.floor - f.rim)
  if (pot.kind === 'stovetop') return [stroke(`M${p(f.left - 3)} ${p(y)}h-16v5h16`)]
  if (pot.kind === 'burner' || pot.kind === 'oven') {
    return [
      stroke(`M${p(f.left - 3)} ${p(y)}q-15 -1 -15 5t15 5`),
      stroke(`M${p(f.right + 3)} ${p(y)}q15 -1 15 5t-15 5`),
    ]
  }
  return []
}

/** The lid as it is: away, laid on, or locked with its lugs and the float up. */
export function lidMarks(pot: PotCard, f: VesselFrame, moment: Moment): Mark[] {
  if (moment.lid === 'off')
    return [
      mark('path', {
        class: 'line s-ink',
        d: `M${p(f.left - 9)} ${p(f.rim)}h9M${p(f.right)} ${p(f.rim)}h9`,
        'stroke-width': 2,
      }),
    ]
  const [x0, x1] = [f.left - 4, f.right + 4]
  const control = 2 * (f.crown + 1) - f.rim
  const lid = `M${p(x0)} ${p(f.rim - 2)}Q${p((x0 + x1) / 2)} ${p(control)} ${p(x1)} ${p(f.rim - 2)}`
  const knobX = f.left + 0.4 * (f.right - f.left)
  const knobY = domeY(f, 0.4)
  const sealed = moment.lid === 'sealed'
  const locked = sealed || moment.lid === 'locked'
  const seals = pot.regulator !== null
  const fx = floatX(f)
  const fy = domeY(f, floatShare)
  return [
    mark('path', { class: 'line s-ink', d: `M${p(f.left - 12)} ${p(f.rim)}H${p(f.right + 12)}`, 'stroke-width': 2.2 }),
    mark('path', { class: 'line s-ink', d: lid, 'stroke-width': 2.2 }),
    mark('rect', { class: 'f-ground s-ink', x: knobX - 12, y: knobY - 12, width: 24, height: 11, 'stroke-width': 1.4 }),
    seals &&
      locked &&
      mark('path', {
        class: 'line s-ink',
        d: `M${p(f.left - 8)} ${p(f.rim - 4)}v10h-5M${p(f.right + 8)} ${p(f.rim - 4)}v10h5`,
        'stroke-width': 1.8,
      }),
    seals &&
      mark('rect', {
        class: sealed ? 'f-heat s-ink' : 'f-ground s-ink',
        x: fx - 4,
        y: sealed ? fy - 15 : fy - 5,
        width: 8,
        height: sealed ? 17 : 7,
        rx: 2,
        'stroke-width': 1.2,
      }),
  ].filter((m): m is Mark => m !== false)
}

const floatShare = 0.62
export function floatX(f: VesselFrame): number {
  return f.left + floatShare * (f.right - f.left)
}

/** Height of the lid's line at a share of the width: the parabola that the quadratic curve draws. */
function domeY(f: VesselFrame, share: number): number {
  return f.rim - 2 - 4 * share * (1 - share) * (f.rim - 2 - f.crown)
}

export function floatY(f: VesselFrame, moment: Moment): number {
  return domeY(f, floatShare) - (moment.lid === 'sealed' ? 8 : 2)
}

/** The base, shaded from its mean at the edges to its hottest spot, and the heat that rises into it. */
export function baseMarks(pot: PotCard, f: VesselFrame, moment: Moment, id: string): Mark[] {
  const y = f.floor + wall / 2 + 1.5
  const share = (temperature_K: number) => Math.max(0.04, heatShare(temperature_K) * 1.35)
  const stop = (offset: number, temperature_K: number) =>
    mark('stop', {
      offset: `${offset}%`,
      class: 'g-heat',
      'stop-opacity': Math.round(Math.min(1, share(temperature_K)) * 100) / 100,
    })
  const power = pot.power_W > 0 ? Math.min(1, moment.power_W / pot.power_W) : 0
  const waves = power > 0.01 ? Math.max(2, Math.round(8 * power)) : 0
  const width = f.right - f.left
  return [
    mark(
      'linearGradient',
      { id },
      stop(0, moment.base_K - 6),
      stop(28, moment.base_K),
      stop(50, moment.baseHot_K),
      stop(72, moment.base_K),
      stop(100, moment.base_K - 6),
    ),
    mark('rect', { fill: `url(#${id})`, x: f.left - 4, y, width: width + 8, height: 11 }),
    mark('rect', { class: 'line s-ink', x: f.left - 4, y, width: width + 8, height: 11, 'stroke-width': 0.8 }),
    ...Array.from({ length: waves }, (_, i) => {
      const x = f.left + (width * (i + 0.5)) / waves
      return mark('path', {
        class: 'line s-heat heat-wave',
        d: `M${p(x)} ${p(y + 14)}q-4 3.5 0 7t0 7t0 6`,
        'stroke-width': 1.3,
        'stroke-linecap': 'round',
      })
    }),
  ]
}

const p = round
