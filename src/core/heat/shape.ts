import { type LinearTable, linearTable, provedRoot, requireRange } from '../numerics/index.ts'

/** The form of one piece. Thickness is surface to surface: the diameter of a cylinder or sphere. */
export interface PieceShape {
  readonly shape: 'slab' | 'cylinder' | 'sphere' | 'brick'
  readonly thickness_m: number
  /** Second side of a slab or brick. */
  readonly width_m: number
  /** Third side of a slab or brick; length of a cylinder. */
  readonly length_m: number
}

/** A piece as a body of one dimension: the area through which heat runs grows with depth^exponent. */
export interface PieceGeometry {
  readonly volume_m3: number
  readonly surface_m2: number
  /** 0 slab, 1 long cylinder, 2 sphere; between and beyond for bricks. */
  readonly exponent: number
  /** Distance from core to surface of the body of one dimension. */
  readonly half_m: number
  /** By what share corners and edges take less from the film than their area, once the film no longer limits. */
  readonly cornerLoss: number
}

// Fitted by a scan against the product of full series: bricks from 1 : 1 : 1 to 1 : 10 : 10 and cylinders from coins
// to rods, Biot 0.5 to 100; time until the core keeps 0.5, 0.2 and 0.1 of its first difference, and the temperatures
// of core and mean on the way. What is left stands in docs/models/conduction.md and is held by
// test/core/heat/piece-shape.test.ts. What each side adds depends on how short it is, b = thickness / side: 1 for a
// cube's, 0 for an endless one.
const bend = (b: number) => (1.2 * 1.19 * b ** 1.6) / (b ** 1.6 + 0.19)
const middling = (b: number) => b ** 0.9 * Math.exp(-4 * b)
const shrinkPerMiddling = 0.1275
const cornerPerMiddling = 2.125

/** First zero of the temperature profile of a body with exponent n and a surface held at the bath: π/2, 2.405, π … */
export function firstZero(exponent: number): number {
  // 0F1(; (n+1)/2; −x²/4): cos x for n = 0, J0(x) for n = 1, sin x / x for n = 2.
  const profile = (x: number) => {
    const y = (-x * x) / 4
    let term = 1
    let sum = 1
    for (let k = 1; k < 40 && Math.abs(term) > 1e-17; k++) {
      term *= y / (k * ((exponent - 1) / 2 + k))
      sum += term
    }
    return sum
  }
  const guess = 1.5708 + 0.85 * exponent - 0.03 * exponent * exponent
  return provedRoot(profile, { low: guess - 0.4, high: guess + 0.4, tolerance: 1e-12 })
}

// A body is made for every load of every simulated kitchen: a table of 0.02 is right to 5e-6 and exact at 0, 1 and 2.
let zeros: LinearTable | undefined
function zeroOf(exponent: number): number {
  zeros ??= linearTable(firstZero, { low: 0, high: 3, step: 0.02, name: 'exponent' })
  return zeros.at(exponent)
}

function fitted(
  o: { volume_m3: number; surface_m2: number },
  exponent: number,
  eigenvalue_per_m: number,
  ratios: readonly number[],
): PieceGeometry {
  let middle = 0
  for (const b of ratios) middle += middling(b)
  return {
    ...o,
    exponent,
    // The slowest mode of the body has to fall as fast as the slowest of the piece, but for a per cent or two.
    half_m: (zeroOf(exponent) / eigenvalue_per_m) * (1 - shrinkPerMiddling * middle),
    cornerLoss: cornerPerMiddling * middle,
  }
}

/**
 * One-dimensional body for a piece: exact volume and surface, exact for a slab (its edges left out: take a brick to
 * count them), a sphere and a long cylinder; fitted for bricks and short cylinders.
 */
export function pieceGeometry({ shape, thickness_m, width_m, length_m }: PieceShape): PieceGeometry {
  requireRange('thickness', thickness_m, 1e-5, 10, 'm')
  const { PI } = Math
  if (shape === 'sphere') {
    const half_m = thickness_m / 2
    return {
      volume_m3: (4 / 3) * PI * half_m ** 3,
      surface_m2: 4 * PI * half_m ** 2,
      exponent: 2,
      half_m,
      cornerLoss: 0,
    }
  }
  requireRange('length', length_m, 1e-5, 10, 'm')
  if (shape === 'cylinder') {
    const r = thickness_m / 2
    const size = { volume_m3: PI * r * r * length_m, surface_m2: 2 * PI * r * (r + length_m) }
    const slowest = Math.hypot(2.404825557695773 / r, PI / length_m)
    const b = thickness_m / length_m
    // A coin is a slab with two short sides, a rod a cylinder with one.
    return b <= 1 ? fitted(size, 1 + bend(b), slowest, [b]) : fitted(size, 2 * bend(1 / b), slowest, [1 / b, 1 / b])
  }
  requireRange('width', width_m, 1e-5, 10, 'm')
  const [a, b, c] = [thickness_m, width_m, length_m].sort((x, y) => x - y)
  if (shape === 'slab') {
    return {
      volume_m3: thickness_m * width_m * length_m,
      surface_m2: 2 * width_m * length_m,
      exponent: 0,
      half_m: thickness_m / 2,
      cornerLoss: 0,
    }
  }
  return fitted(
    { volume_m3: a * b * c, surface_m2: 2 * (a * b + a * c + b * c) },
    bend(a / b) + bend(a / c),
    PI * Math.hypot(1 / a, 1 / b, 1 / c),
    [a / b, a / c],
  )
}
