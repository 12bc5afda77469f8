import { besselJ0, besselJ1, provedRoot, requireRange } from '../numerics/index.ts'

// Exact warming of a slab, a long cylinder or a sphere whose bath changes at once: the series that textbooks print,
// with as many terms as the moment asks for. `biot` is film × half thickness (or radius) / conductivity, and may be
// Infinity: the surface takes the bath's temperature at once. `fourier` is alpha × time / half thickness².

export type PlainShape = 'slab' | 'cylinder' | 'sphere'

/** sin z − z cos z, by its series where the two cancel. */
function bend(z: number): number {
  if (Math.abs(z) > 0.05) return Math.sin(z) - z * Math.cos(z)
  const y = z * z
  return z * y * (1 / 3 - y * (1 / 30 - y * (1 / 840 - y / 45360)))
}

/** 2z − sin 2z, likewise. */
function slack(z: number): number {
  if (Math.abs(z) > 0.05) return 2 * z - Math.sin(2 * z)
  const y = 4 * z * z
  return 2 * z * y * (1 / 6 - y * (1 / 120 - y * (1 / 5040 - y / 362880)))
}

/** Which is zero at an eigenvalue, written without poles so that a bracket is enough. */
function characteristic(shape: PlainShape, biot: number, z: number): number {
  if (biot === Infinity) return shape === 'slab' ? Math.cos(z) : shape === 'cylinder' ? besselJ0(z) : Math.sin(z)
  if (shape === 'slab') return z * Math.sin(z) - biot * Math.cos(z)
  if (shape === 'cylinder') return z * besselJ1(z) - biot * besselJ0(z)
  return bend(z) - biot * Math.sin(z)
}

/** Bracket of the root number i = 0, 1, 2 …: between the roots for biot = 0 and for biot = ∞. */
function bracket(shape: PlainShape, biot: number, i: number): { low: number; high: number } {
  const { PI } = Math
  if (shape === 'slab') return { low: i * PI, high: (i + 0.5) * PI }
  if (shape === 'sphere') {
    // At biot = 1 the roots are (i + ½)π exactly; below, they move towards tan z = z, which lies above iπ.
    return biot >= 1 ? { low: (i + 0.5) * PI, high: (i + 1) * PI } : { low: i * PI, high: (i + 0.5) * PI }
  }
  return { low: besselZero(1, i), high: besselZero(0, i + 1) }
}

/** Zero number m of J0 (m ≥ 1) or of J1 (m ≥ 0, the first one at 0). */
function besselZero(order: 0 | 1, m: number): number {
  if (order === 1 && m === 0) return 0
  const guess = (m + order / 2 - 0.25) * Math.PI
  return provedRoot(order === 0 ? besselJ0 : besselJ1, { low: guess - 0.4, high: guess + 0.4, tolerance: 0 })
}

const kept = new Map<string, number[]>()

/** The first `count` eigenvalues, ascending. Kept, because a curve asks for the same ones again. */
export function eigenvalues(shape: PlainShape, biot: number, count: number): readonly number[] {
  requireRange('Biot number', biot, Number.MIN_VALUE, Infinity, '1')
  const key = `${shape} ${biot}`
  let roots = kept.get(key)
  if (!roots) {
    if (kept.size > 200) kept.clear()
    roots = []
    kept.set(key, roots)
  }
  for (let i = roots.length; i < count; i++) {
    const { low, high } = bracket(shape, biot, i)
    // At biot = ∞ the root is the upper end, at biot → 0 the lower one: look a hair beyond both.
    const hair = 1e-12 * (1 + high)
    const from = i === 0 ? Math.min(1e-9, 1e-3 * Math.sqrt(biot)) : low - hair
    roots.push(provedRoot((z) => characteristic(shape, biot, z), { low: from, high: high + hair, tolerance: 0 }))
  }
  return roots
}

/** Coefficient of the term that belongs to eigenvalue z. */
export function coefficient(shape: PlainShape, z: number): number {
  if (shape === 'slab') return (4 * Math.sin(z)) / (2 * z + Math.sin(2 * z))
  if (shape === 'cylinder') {
    const j0 = besselJ0(z)
    const j1 = besselJ1(z)
    return ((2 / z) * j1) / (j0 * j0 + j1 * j1)
  }
  return (4 * bend(z)) / slack(z)
}

function profile(shape: PlainShape, x: number): number {
  if (shape === 'slab') return Math.cos(x)
  if (shape === 'cylinder') return besselJ0(x)
  return x < 1e-4 ? 1 - (x * x) / 6 : Math.sin(x) / x
}

function profileMean(shape: PlainShape, z: number): number {
  if (shape === 'slab') return Math.sin(z) / z
  if (shape === 'cylinder') return (2 * besselJ1(z)) / z
  return (3 * bend(z)) / z ** 3
}

// 1500 terms reach Fo = 2e-6: a second in a steak a foot thick.
const mostTerms = 1500

function sum(shape: PlainShape, biot: number, fourier: number, of: (z: number) => number): number {
  requireRange('Fourier number', fourier, 0, Infinity, '1')
  if (fourier === 0) return 1
  let total = 0
  let asked = 8
  for (let i = 0; i < mostTerms; i++) {
    if (i >= asked) asked *= 2
    const z = eigenvalues(shape, biot, asked)[i]
    const fall = Math.exp(-z * z * fourier)
    total += coefficient(shape, z) * fall * of(z)
    if (fall < 1e-13) return total
  }
  throw new RangeError(`Fourier number = ${fourier}: the series needs more than ${mostTerms} terms below 3e-6`)
}

/**
 * What is left of the first difference to the bath, (T − bath)/(start − bath), at a place: 0 centre, 1 surface.
 * Exact to 1e-12. RangeError for a Fourier number below 3e-6 (0 itself gives 1).
 */
export function seriesLeft(p: { shape: PlainShape; biot: number; fourier: number; place: number }): number {
  requireRange('place', p.place, 0, 1, 'of the half thickness')
  return sum(p.shape, p.biot, p.fourier, (z) => profile(p.shape, z * p.place))
}

/** The same for the mean over the body's volume: 1 − heat taken up / heat taken up in the end. */
export function seriesMeanLeft(p: { shape: PlainShape; biot: number; fourier: number }): number {
  return sum(p.shape, p.biot, p.fourier, (z) => profileMean(p.shape, z))
}

/** A brick or a short cylinder as its faces see it: the product of plain shapes, each with its own Biot and Fourier. */
export interface Body {
  readonly shape: PlainShape | 'brick'
  /** Thickness, or diameter of a cylinder or sphere. */
  readonly thickness_m: number
  /** Second side of a brick. */
  readonly width_m?: number
  /** Third side of a brick; length of a cylinder, left out when it is long. */
  readonly length_m?: number
  readonly k_W_per_mK: number
  readonly alpha_m2_per_s: number
  readonly film_W_per_m2K: number
}

function factors(b: Body): { shape: PlainShape; half_m: number }[] {
  const half = (d_m: number, name: string) => {
    requireRange(name, d_m, Number.MIN_VALUE, 10, 'm')
    return d_m / 2
  }
  const thickness = half(b.thickness_m, 'thickness')
  if (b.shape === 'brick') {
    return [b.thickness_m, b.width_m ?? b.thickness_m, b.length_m ?? b.thickness_m].map((d) => ({
      shape: 'slab',
      half_m: half(d, 'side'),
    }))
  }
  if (b.shape === 'cylinder' && b.length_m !== undefined) {
    return [
      { shape: 'cylinder', half_m: thickness },
      { shape: 'slab', half_m: half(b.length_m, 'length') },
    ]
  }
  return [{ shape: b.shape, half_m: thickness }]
}

/** (T − bath)/(start − bath) at the centre after a time. */
export function bodyCentreLeft(body: Body, time_s: number): number {
  return product(body, time_s, (shape, biot, fourier) => seriesLeft({ shape, biot, fourier, place: 0 }))
}

/** The same for the mean of the body. */
export function bodyMeanLeft(body: Body, time_s: number): number {
  return product(body, time_s, (shape, biot, fourier) => seriesMeanLeft({ shape, biot, fourier }))
}

function product(b: Body, time_s: number, one: (shape: PlainShape, biot: number, fourier: number) => number): number {
  let left = 1
  for (const { shape, half_m } of factors(b)) {
    left *= one(shape, (b.film_W_per_m2K * half_m) / b.k_W_per_mK, (b.alpha_m2_per_s * time_s) / half_m ** 2)
  }
  return left
}

/**
 * Time in which the centre of a body gets from `start_K` to `target_K` in a bath.
 *
 * Shape    root in time of the product of full series
 * Range    target_K strictly between start_K and bath_K; sizes and properties > 0
 * Outside  RangeError; nothing is clamped
 * Error    1e-9 of the time; the model's own: constant properties and film, bath reached at once
 * Source   heat-textbook
 * Check    check/heat/warming.csv
 */
export function centreTime_s(p: Body & { start_K: number; bath_K: number; target_K: number }): number {
  const left = (p.target_K - p.bath_K) / (p.start_K - p.bath_K)
  requireRange('share of the difference left', left, 1e-9, 1 - 1e-9, '1')
  const least_m = Math.min(...factors(p).map((f) => f.half_m))
  const most_m = Math.max(...factors(p).map((f) => f.half_m))
  const low = (3e-6 * most_m ** 2) / p.alpha_m2_per_s
  let high = (0.1 * least_m ** 2) / p.alpha_m2_per_s + low
  while (bodyCentreLeft(p, high) > left) high *= 2
  return provedRoot((time_s) => bodyCentreLeft(p, time_s) - left, { low, high, tolerance: 1e-9 * high })
}
