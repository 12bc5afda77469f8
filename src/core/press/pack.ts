import { seededRandom } from '../numerics/index.ts'
import type { Outline } from './outline.ts'

/** Where the middle of a body came to rest: x from the left wall, y up from the floor, metres. */
export interface Rest {
  readonly x: number
  readonly y: number
}

interface Interval {
  readonly low: number
  readonly high: number
}

/**
 * Lays bodies into a box of a given width, one after another, each at the lowest place it fits (ties settled by the
 * seed). Bodies touch but do not overlap: the box is cut into columns, a body is an interval of height in each.
 * Small ones find the gaps that large ones leave. Nothing stops the pile from rising over the rim; the caller sees it.
 */
export function packed(bodies: readonly Outline[], width: number, seed: number, columns = 132): Rest[] {
  const random = seededRandom(seed)
  const step = width / columns
  const filled: Interval[][] = Array.from({ length: columns }, () => [])
  return bodies.map((body) => {
    const profile = profileOf(body, step)
    const left = leftOf(body)
    const span = profile.length
    let best: (Rest & { cost: number; first: number }) | null = null
    for (let first = 0; first + span <= columns; first++) {
      const floor = lowestFit(profile, filled, first)
      // A body settles where it lies lowest; a breath of chance keeps piles from leaning on one wall.
      const cost = floor + 0.08 * body.height * random()
      if (!best || cost < best.cost) best = { x: first * step - left, y: floor, cost, first }
    }
    // Wider than the pot: it lies across the middle, over everything.
    if (!best) {
      const top = Math.max(0, ...filled.flat().map((one) => one.high))
      best = { x: width / 2, y: top + body.height / 2, cost: 0, first: 0 }
    }
    for (let c = 0; c < Math.min(span, columns); c++) {
      const { low, high } = profile[c]
      filled[best.first + c].push({ low: best.y + low, high: best.y + high })
    }
    return { x: best.x, y: best.y }
  })
}

/** Height of the middle of a body at its lowest fit when its first column is `first`. */
function lowestFit(profile: readonly Interval[], filled: readonly Interval[][], first: number): number {
  let y = Math.max(...profile.map(({ low }) => -low))
  // Rises past whatever it meets until it meets nothing; every round clears at least one obstacle.
  for (let moved = true; moved; ) {
    moved = false
    for (let c = 0; c < profile.length; c++) {
      for (const other of filled[first + c]) {
        const { low, high } = profile[c]
        if (y + low < other.high - 1e-9 && y + high > other.low + 1e-9) {
          y = other.high - low
          moved = true
        }
      }
    }
  }
  return y
}

/** The body as an interval of height in every column it covers, about its middle. */
function profileOf({ points, width }: Outline, step: number): Interval[] {
  const count = Math.max(1, Math.ceil(width / step))
  const left = leftOf({ points })
  const profile = Array.from({ length: count }, () => ({
    low: Number.POSITIVE_INFINITY,
    high: Number.NEGATIVE_INFINITY,
  }))
  points.forEach((p, i) => {
    const q = points[(i + 1) % points.length]
    const parts = Math.max(2, Math.ceil((2 * Math.abs(q.x - p.x)) / step))
    for (let k = 0; k <= parts; k++) {
      const x = p.x + ((q.x - p.x) * k) / parts
      const y = p.y + ((q.y - p.y) * k) / parts
      const c = Math.min(count - 1, Math.max(0, Math.floor((x - left) / step)))
      profile[c].low = Math.min(profile[c].low, y)
      profile[c].high = Math.max(profile[c].high, y)
    }
  })
  return profile
}

function leftOf({ points }: Pick<Outline, 'points'>): number {
  return Math.min(...points.map((p) => p.x))
}
