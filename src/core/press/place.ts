import { type Columns, clearances, columnsOf, inside, meets } from './columns.ts'
import { textWidth } from './measure.ts'
import { type Box, overlaps, type TextStyle } from './text-mark.ts'
import type { Point } from './thin.ts'

export interface CurveLabel {
  readonly text: string
  readonly x: number
  readonly y: number
  readonly box: Box
  /** From the name to its curve, where the name could not stand beside it. */
  readonly leader: readonly [Point, Point] | null
}

export interface LabelWish {
  readonly text: string
  readonly style: TextStyle
  readonly curve: readonly Point[]
  /** Where along the strip the name reads best, in pixels; a wish, not a rule. */
  readonly near: number
}

interface Search {
  readonly wish: LabelWish
  readonly own: Columns
  readonly others: readonly Columns[]
  readonly field: Box
  readonly taken: readonly Box[]
  readonly width: number
  readonly size: number
}

/** The box of the name with its first baseline point at (x, y). */
function boxAt({ width, size }: Search, x: number, y: number): Box {
  return { x0: x, x1: x + width, y0: y - 0.78 * size, y1: y + 0.24 * size }
}

interface Costed {
  readonly label: CurveLabel
  readonly cost: number
}

/**
 * Names curves: first beside the curve, above or below it, where it touches nothing and nobody can doubt whose name it
 * is; failing that in a free place with a leader to the curve; failing that not at all. The same input gives the same
 * places, and no two names overlap.
 */
export function placeNames(
  wishes: readonly LabelWish[],
  field: Box,
  taken: readonly Box[],
  obstacles: readonly (readonly Point[])[],
): (CurveLabel | null)[] {
  const boxes = [...taken]
  const rasters = new Map(obstacles.map((curve) => [curve, columnsOf(curve, field.x0, field.x1)]))
  return wishes.map((wish) => {
    const own = rasters.get(wish.curve) ?? columnsOf(wish.curve, field.x0, field.x1)
    const others = [...rasters.values()].filter((one) => one !== own)
    const size = wish.style.size ?? 12.5
    const width = textWidth(wish.text, size, wish.style.face)
    const search = { wish, own, others, field, taken: boxes, width, size }
    const beside = besideCurve(search)
    const chosen = beside && beside.cost <= 60 ? beside.label : (apart(search)?.label ?? null)
    if (chosen) boxes.push(chosen.box)
    return chosen
  })
}

// Names side by side need more air between them than names one above the other.
function free(box: Box, { field, taken }: Search): boolean {
  const roomy = { x0: box.x0 - 9, x1: box.x1 + 9, y0: box.y0 - 2, y1: box.y1 + 2 }
  return (
    box.x0 >= field.x0 &&
    box.x1 <= field.x1 &&
    box.y0 >= field.y0 &&
    box.y1 <= field.y1 &&
    !taken.some((other) => overlaps(roomy, other))
  )
}

function besideCurve(search: Search): Costed | null {
  const { wish, own, others, size } = search
  let best: Costed | null = null
  let last = Number.NEGATIVE_INFINITY
  for (const p of wish.curve) {
    if (!Number.isFinite(p.y) || p.x - last < 8) continue
    last = p.x
    for (const [off, gap] of [5, 9, 16].entries()) {
      for (const y of [p.y - gap, p.y + gap + 0.72 * size]) {
        const box = boxAt(search, p.x, y)
        if (!free(box, search)) continue
        const mine = clearances(own, box)
        const side = mine.above <= mine.below ? 'above' : 'below'
        let cost = 12 * inside(own, box, 1) + 0.05 * Math.abs(p.x - wish.near) + 2 * off
        // A name belongs to the line it hugs; one that hangs beyond the end of its line is not beside it.
        cost += Number.isFinite(mine.mean) ? 0.6 * mine.mean : 20
        for (const other of others) {
          if (best && cost >= best.cost) break
          // Touching another curve is worst, a near neighbour makes it a guess, one in between a lie.
          cost += 40 * inside(other, box, 2) + 2.5 * inside(other, box, 9)
          if (clearances(other, box)[side] < mine[side] + 2) cost += 120
        }
        if (!best || cost < best.cost - 1e-9) best = { label: { text: wish.text, x: p.x, y, box, leader: null }, cost }
      }
    }
  }
  return best
}

/** The free place nearest to the curve from which a straight leader crosses as little as possible. */
function apart(search: Search): Costed | null {
  const { wish, own, others, field, taken, size } = search
  // A target every few pixels is enough; the whole curve would only cost time.
  const targets: Point[] = []
  for (const p of wish.curve) {
    if (Number.isFinite(p.y) && (targets.length === 0 || Math.abs(p.x - targets[targets.length - 1].x) >= 6))
      targets.push(p)
  }
  let best: Costed | null = null
  for (let y = field.y0 + size; y < field.y1; y += 9) {
    for (let x = field.x0; x < field.x1; x += 14) {
      const box = boxAt(search, x, y)
      if (!free(box, search) || [own, ...others].some((curve) => inside(curve, box, 3) > 0)) continue
      const middle = (box.x0 + box.x1) / 2
      for (const p of targets) {
        if (Math.abs(p.x - middle) > 40) continue
        const from = { x: Math.min(Math.max(p.x, box.x0), box.x1), y: p.y < box.y0 ? box.y0 + 2 : box.y1 - 1 }
        const length = Math.hypot(p.x - from.x, p.y - from.y)
        if (length < 12 || length > 70 || (p.y >= box.y0 && p.y <= box.y1)) continue
        const cheapest = length + 0.6 * Math.abs(p.x - middle) + 0.04 * Math.abs(p.x - wish.near)
        if (cheapest > Math.min(110, best?.cost ?? 110)) continue
        // The last pixels belong to the curve that is named: a neighbour that close does not count as crossed.
        const short = { x: p.x + ((from.x - p.x) * 2) / length, y: p.y + ((from.y - p.y) * 2) / length }
        const crossed = others.filter((curve) => meets(curve, from, short)).length
        const blocked = taken.some((other) => meetsBox(from, p, other))
        // Where lines run together nobody sees which one a leader means.
        const here = { x0: p.x, x1: p.x, y0: p.y, y1: p.y }
        const crowd = others.filter((curve) => inside(curve, here, 5) > 0).length
        const cost = cheapest + 45 * crossed + 25 * crowd + (blocked ? 200 : 0)
        if (cost < Math.min(110, best?.cost ?? 110) - 1e-9) {
          best = { label: { text: wish.text, x, y, box, leader: [from, p] }, cost }
        }
      }
    }
  }
  return best
}

function meetsBox(a: Point, b: Point, box: Box): boolean {
  for (let k = 0; k <= 12; k++) {
    const x = a.x + ((b.x - a.x) * k) / 12
    const y = a.y + ((b.y - a.y) * k) / 12
    if (x >= box.x0 && x <= box.x1 && y >= box.y0 && y <= box.y1) return true
  }
  return false
}
