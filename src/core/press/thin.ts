/** A point of a curve in pixels; `y` NaN is a gap. */
export interface Point {
  readonly x: number
  readonly y: number
}

/**
 * Thins a curve to what the eye can tell apart: for every pixel column the first, the lowest, the highest and the last
 * point, in their order. Peaks survive whatever the width; gaps (NaN) stay gaps.
 */
export function thinned(points: readonly Point[]): Point[] {
  const kept: Point[] = []
  let column: Point[] = []
  const flush = () => {
    if (column.length <= 4) kept.push(...column)
    else {
      let low = column[0]
      let high = column[0]
      for (const p of column) {
        if (p.y < low.y) low = p
        if (p.y > high.y) high = p
      }
      const chosen = new Set([column[0], low, high, column[column.length - 1]])
      kept.push(...column.filter((p) => chosen.has(p)))
    }
    column = []
  }
  for (const p of points) {
    if (!Number.isFinite(p.y)) {
      flush()
      if (kept.length > 0 && Number.isFinite(kept[kept.length - 1].y)) kept.push({ x: p.x, y: Number.NaN })
      continue
    }
    if (column.length > 0 && Math.floor(p.x) !== Math.floor(column[0].x)) flush()
    column.push(p)
  }
  flush()
  return kept
}
