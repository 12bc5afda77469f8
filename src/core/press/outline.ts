import { type Random, seededRandom } from '../numerics/index.ts'
import type { Point } from './thin.ts'

/** A body seen in a slice: its outline about its own middle, y upward, in metres. */
export interface Outline {
  readonly points: readonly Point[]
  readonly width: number
  readonly height: number
}

export interface OutlineWish {
  readonly width: number
  readonly height: number
  /** 2 is round, 5 a cut block with softened corners. */
  readonly squareness: number
  /** Radians. */
  readonly tilt: number
  /** How much the hand that cut it strayed, as a share of the size. */
  readonly stray: number
  readonly seed: number
}

const steps = 32

/** A closed outline between round and square, with a cook's irregularity that the seed alone decides. */
export function outline({ width, height, squareness, tilt, stray, seed }: OutlineWish): Outline {
  const random = seededRandom(seed)
  const waves = [2, 3, 5].map((k) => ({ k, size: stray * (random() - 0.5), turn: 2 * Math.PI * random() }))
  const points = Array.from({ length: steps }, (_, i) => {
    const angle = (2 * Math.PI * i) / steps
    const [c, s] = [Math.cos(angle), Math.sin(angle)]
    const radius = 1 + waves.reduce((sum, wave) => sum + wave.size * Math.cos(wave.k * angle + wave.turn), 0)
    const x = (width / 2) * radius * Math.sign(c) * Math.abs(c) ** (2 / squareness)
    const y = (height / 2) * radius * Math.sign(s) * Math.abs(s) ** (2 / squareness)
    return { x: x * Math.cos(tilt) - y * Math.sin(tilt), y: x * Math.sin(tilt) + y * Math.cos(tilt) }
  })
  const xs = points.map((p) => p.x)
  const ys = points.map((p) => p.y)
  return { points, width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) }
}

/** Area inside, by the shoelace formula. */
export function outlineArea({ points }: Outline): number {
  return Math.abs(
    points.reduce((sum, p, i) => {
      const q = points[(i + 1) % points.length]
      return sum + p.x * q.y - q.x * p.y
    }, 0) / 2,
  )
}

/** A shuffled copy; the same source of chance gives the same order. */
export function shuffled<T>(items: readonly T[], random: Random): T[] {
  const list = [...items]
  for (let i = list.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1))
    ;[list[i], list[j]] = [list[j], list[i]]
  }
  return list
}
