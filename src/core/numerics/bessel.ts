// J0 and J1 to about 1e-14 absolute. Below 25 by Miller's backward recurrence, which is stable where the forward
// one is not; above by Hankel's asymptotic series, whose smallest term there is about e^-50.

function backward(x: number): [number, number] {
  // Start where J_m is negligible: m beyond x by a margin that grows slowly with x.
  const start = 2 * Math.ceil((x + 15 + 6 * Math.cbrt(x)) / 2)
  let above = 0
  let here = 1e-290
  let sum = 0
  let j1 = 0
  for (let m = start; m >= 1; m--) {
    const below = ((2 * m) / x) * here - above
    above = here
    here = below
    // `here` is now J_{m−1} up to a factor. The even orders sum to one: J0 + 2 J2 + 2 J4 + … = 1.
    if (m - 1 === 1) j1 = here
    if ((m - 1) % 2 === 0) sum += m === 1 ? here : 2 * here
    if (Math.abs(here) > 1e200) {
      here *= 1e-200
      above *= 1e-200
      sum *= 1e-200
      j1 *= 1e-200
    }
  }
  return [here / sum, j1 / sum]
}

function hankel(order: 0 | 1, x: number): number {
  const mu = 4 * order * order
  let p = 0
  let q = 0
  let term = 1
  for (let k = 0; k < 40; k++) {
    const kind = k % 4
    if (kind === 0) p += term
    else if (kind === 1) q += term
    else if (kind === 2) p -= term
    else q -= term
    const next = (term * (mu - (2 * k + 1) ** 2)) / ((k + 1) * 8 * x)
    if (Math.abs(next) >= Math.abs(term) || Math.abs(next) < 1e-18) break
    term = next
  }
  const phase = x - (order / 2 + 0.25) * Math.PI
  return Math.sqrt(2 / (Math.PI * x)) * (p * Math.cos(phase) - q * Math.sin(phase))
}

/** Bessel function of the first kind, order 0. */
export function besselJ0(x: number): number {
  const y = Math.abs(x)
  if (y < 1e-8) return 1
  return y < 25 ? backward(y)[0] : hankel(0, y)
}

/** Bessel function of the first kind, order 1. */
export function besselJ1(x: number): number {
  const y = Math.abs(x)
  if (y < 1e-8) return x / 2
  const j = y < 25 ? backward(y)[1] : hankel(1, y)
  return x < 0 ? -j : j
}
