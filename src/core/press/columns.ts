import type { Box } from './text-mark.ts'
import type { Point } from './thin.ts'

/** A curve by pixel columns: the lowest and highest y it takes in each, NaN where it is not. Makes questions cheap. */
export interface Columns {
  readonly first: number
  readonly top: Float64Array
  readonly foot: Float64Array
}

export function columnsOf(curve: readonly Point[], x0: number, x1: number): Columns {
  const first = Math.floor(x0)
  const count = Math.max(1, Math.ceil(x1) - first + 1)
  const top = new Float64Array(count).fill(Number.NaN)
  const foot = new Float64Array(count).fill(Number.NaN)
  const touch = (column: number, y: number) => {
    if (column < 0 || column >= count) return
    if (!(top[column] <= y)) top[column] = y
    if (!(foot[column] >= y)) foot[column] = y
  }
  for (let i = 0; i < curve.length; i++) {
    const b = curve[i]
    if (!Number.isFinite(b.y)) continue
    touch(Math.floor(b.x) - first, b.y)
    const a = curve[i - 1]
    if (!a || !Number.isFinite(a.y)) continue
    const [from, to] = [Math.floor(a.x), Math.floor(b.x)]
    for (let x = from + 1; x <= to; x++) {
      // Where the stretch passes from one column into the next it belongs to both.
      const y = a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x)
      touch(x - 1 - first, y)
      touch(x - first, y)
    }
  }
  return { first, top, foot }
}

/** Length of the curve inside the box grown by `gap`, in units of three pixels. */
export function inside(curve: Columns, box: Box, gap: number): number {
  let sum = 0
  const from = Math.max(0, Math.floor(box.x0 - gap) - curve.first)
  const to = Math.min(curve.top.length - 1, Math.floor(box.x1 + gap) - curve.first)
  for (let c = from; c <= to; c++) {
    const high = Math.min(curve.foot[c], box.y1 + gap)
    const low = Math.max(curve.top[c], box.y0 - gap)
    if (high >= low) sum += 1 + (high - low)
  }
  return sum / 3
}

/** Whether a straight line between two points meets the curve. */
export function meets(curve: Columns, a: Point, b: Point): boolean {
  const [p, q] = a.x <= b.x ? [a, b] : [b, a]
  const from = Math.max(0, Math.floor(p.x) - curve.first)
  const to = Math.min(curve.top.length - 1, Math.floor(q.x) - curve.first)
  const slope = q.x - p.x > 1e-6 ? (q.y - p.y) / (q.x - p.x) : 0
  for (let c = from; c <= to; c++) {
    const x = curve.first + c
    const y0 = q.x - p.x < 1 ? p.y : p.y + slope * Math.max(0, x - p.x)
    const y1 = q.x - p.x < 1 ? q.y : p.y + slope * Math.min(q.x - p.x, x + 1 - p.x)
    if (Math.min(y0, y1) <= curve.foot[c] && Math.max(y0, y1) >= curve.top[c]) return true
  }
  return false
}

/** Least distance from the box up to the curve and down to it, over the box's width, and the mean of the nearer. */
export function clearances(curve: Columns, box: Box): { above: number; below: number; mean: number } {
  let above = Number.POSITIVE_INFINITY
  let below = Number.POSITIVE_INFINITY
  let sum = 0
  let n = 0
  const middle = (box.y0 + box.y1) / 2
  const from = Math.max(0, Math.floor(box.x0) - curve.first)
  const to = Math.min(curve.top.length - 1, Math.floor(box.x1) - curve.first)
  for (let c = from; c <= to; c++) {
    const [top, foot] = [curve.top[c], curve.foot[c]]
    if (!Number.isFinite(top)) continue
    if (top <= middle) above = Math.min(above, box.y0 - Math.min(foot, middle))
    if (foot > middle) below = Math.min(below, Math.max(top, middle) - box.y1)
    sum += foot < box.y0 ? box.y0 - foot : top > box.y1 ? top - box.y1 : 0
    n++
  }
  return { above, below, mean: n === 0 ? Number.POSITIVE_INFINITY : sum / n }
}
