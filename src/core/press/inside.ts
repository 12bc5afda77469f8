import type { Run } from '../cook/index.ts'
import { seededRandom } from '../numerics/index.ts'
import { saturationTemp_K, standardPressure_Pa } from '../steam/index.ts'
import { type Mark, mark, round } from './mark.ts'
import type { Moment } from './moment.ts'
import type { Pile } from './pile.ts'
import type { VesselFrame } from './vessel.ts'

/**
 * Height of the liquor over the floor: the liquid fills what the pile leaves free. The pile is taken as evenly dense up
 * to its top, which is what the drawn slice shows.
 */
export function liquorHeight_m(moment: Moment, pileHeight_m: number, baseArea_m2: number): number {
  const { liquid_m3, solids_m3 } = moment
  if (pileHeight_m <= 0 || solids_m3 <= 0) return liquid_m3 / baseArea_m2
  const free_m2 = baseArea_m2 - solids_m3 / pileHeight_m
  const within = free_m2 > 0.02 * baseArea_m2 ? liquid_m3 / free_m2 : Number.POSITIVE_INFINITY
  return within <= pileHeight_m ? within : (liquid_m3 + solids_m3) / baseArea_m2
}

/** Liquor behind the pieces, its surface and its film of fat. */
export function liquorMarks(
  f: VesselFrame,
  moment: Moment,
  height_m: number,
  baseArea_m2: number,
): { behind: Mark[]; before: Mark[]; surface: number } {
  const surface = f.floor - Math.max(moment.liquid_m3 > 2e-6 ? 1.2 : 0, height_m * f.pixels_per_m)
  const [x0, x1] = [f.left + 1, f.right - 1]
  const bottom = f.floor - 1.5
  if (moment.liquid_m3 <= 2e-6) return { behind: [], before: [], surface }
  // 0.9 kg per litre of fat spread over the whole surface; what is thinner than a pixel shows as a broken line.
  const film = (moment.fat_kg / 900 / baseArea_m2) * f.pixels_per_m
  const box = { x: x0, y: surface, width: x1 - x0, height: Math.max(0, bottom - surface) }
  return {
    surface,
    behind: [mark('rect', { class: 'f-water-tint', ...box })],
    before: [
      mark('rect', { class: 'f-water-tint', ...box, opacity: 0.28 }),
      moment.fat_kg > 0.002 &&
        mark('rect', {
          class: 'f-heat-tint',
          x: x0,
          y: surface - Math.max(1, film),
          width: x1 - x0,
          height: Math.max(1, film),
        }),
      mark('path', { class: 'line s-water', d: `M${round(x0)} ${round(surface)}H${round(x1)}`, 'stroke-width': 1 }),
      moment.fat_kg > 0.002 &&
        mark('path', {
          class: 'line s-soft',
          d: `M${round(x0)} ${round(surface - Math.max(1, film))}H${round(x1)}`,
          'stroke-width': 0.7,
          'stroke-dasharray': film < 1 ? '6 3' : undefined,
        }),
    ].filter((m): m is Mark => m !== false),
  }
}

/** Bubbles on the floor where the liquor boils under heat. */
export function bubbleMarks(run: Run, f: VesselFrame, moment: Moment, surface: number): Mark[] {
  const deep = f.floor - surface
  if (!moment.wet || deep < 5) return []
  const boiling_K = saturationTemp_K(outside_Pa(run) + moment.gauge_Pa)
  const power = run.plan.pot.power_W > 0 ? moment.power_W / run.plan.pot.power_W : 0
  if (moment.liquor_K < boiling_K - 2.5 || power < 0.02) return []
  const random = seededRandom(5)
  return Array.from({ length: Math.round(6 + 34 * Math.min(1, power)) }, () => {
    const r = 0.9 + 1.7 * random()
    return mark('circle', {
      class: 'line s-water',
      cx: f.left + 6 + random() * (f.right - f.left - 12),
      cy: f.floor - 4 - random() ** 2 * Math.max(0, deep - 7),
      r,
      'stroke-width': 0.8,
    })
  })
}

/**
 * What fills the headspace, one dot for a fixed amount of gas: the denser the dots, the higher the pressure; filled
 * dots are steam, open ones air, in their shares. The places never change, so a cursor's move makes nothing flicker.
 */
export function headspaceMarks(run: Run, f: VesselFrame, moment: Moment, pile: Pile, surface: number): Mark[] {
  if (moment.lid === 'off') return vapourMarks(run, f, moment)
  const outside = outside_Pa(run)
  const random = seededRandom(23)
  const wanted = Math.round(120 * ((outside + moment.gauge_Pa) / (2 * outside)))
  const marks: Mark[] = []
  for (let i = 0; i < wanted; i++) {
    const [u, v, kind] = [random(), random(), random()]
    const x = f.left + 7 + u * (f.right - f.left - 14)
    const y = f.rim + 5 + v * (f.floor - f.rim - 8)
    if (y > surface - 5 || insideBody(pile, f, x, y)) continue
    marks.push(
      kind < moment.air_share
        ? mark('circle', { class: 'line s-soft', cx: x, cy: y, r: 1.5, 'stroke-width': 0.8 })
        : mark('circle', { class: 'f-water', cx: x, cy: y, r: 1.1, opacity: 0.8 }),
    )
  }
  return marks
}

function insideBody(pile: Pile, f: VesselFrame, x: number, y: number): boolean {
  const mx = (x - f.left) / f.pixels_per_m
  const my = (f.floor - y) / f.pixels_per_m
  return pile.bodies.some(
    (b) => Math.abs(mx - b.x) < b.outline.width / 2 + 0.002 && Math.abs(my - b.y) < b.outline.height / 2 + 0.002,
  )
}

/** Wisps over an open pot, more of them the closer it is to the boil. */
function vapourMarks(run: Run, f: VesselFrame, moment: Moment): Mark[] {
  const boiling_K = saturationTemp_K(outside_Pa(run))
  const share = moment.wet ? 1 - (boiling_K - moment.liquor_K) / 35 : 0
  const count = Math.round(6 * Math.min(1, Math.max(0, share)))
  return Array.from({ length: count }, (_, i) => {
    const x = f.left + ((f.right - f.left) * (i + 0.5)) / count
    return mark('path', {
      class: 'line s-water',
      d: `M${round(x)} ${round(f.rim + 14)}c-7 -9 7 -14 0 -23s5 -11 1 -18`,
      'stroke-width': 1,
      'stroke-linecap': 'round',
      opacity: 0.8,
    })
  })
}

function outside_Pa(run: Run): number {
  return standardPressure_Pa(run.plan.altitude_m)
}
