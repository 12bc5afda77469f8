export type Root =
  | { readonly ok: true; readonly x: number; readonly steps: number }
  | {
      readonly ok: false
      readonly code: 'no-sign-change' | 'not-converged'
      readonly low: number
      readonly high: number
      readonly steps: number
    }

/**
 * A root of `f` between `low` and `high` by Brent's method: inverse quadratic steps as long as they pay,
 * bisection when they do not, so that it never leaves the bracket and never needs more than a few times the
 * steps of plain bisection. `tolerance` is the width of the bracket that is good enough, in units of x; rounding
 * of x itself is added to it. f must be finite in the bracket.
 */
export function findRoot(
  f: (x: number) => number,
  { low, high, tolerance, maxSteps = 200 }: { low: number; high: number; tolerance: number; maxSteps?: number },
): Root {
  let a = low
  let b = high
  let fa = f(a)
  let fb = f(b)
  if (fa === 0) return { ok: true, x: a, steps: 0 }
  if (fb === 0) return { ok: true, x: b, steps: 0 }
  // Also catches NaN at either end.
  if (!((fa < 0 && fb > 0) || (fa > 0 && fb < 0))) return { ok: false, code: 'no-sign-change', low, high, steps: 0 }
  let c = a
  let fc = fa
  let step = b - a
  let before = step
  for (let steps = 1; steps <= maxSteps; steps++) {
    if (fb > 0 === fc > 0) {
      c = a
      fc = fa
      step = b - a
      before = step
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b
      b = c
      c = a
      fa = fb
      fb = fc
      fc = fa
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + 0.5 * tolerance
    const half = 0.5 * (c - b)
    if (Math.abs(half) <= near || fb === 0) return { ok: true, x: b, steps }
    if (Math.abs(before) >= near && Math.abs(fa) > Math.abs(fb)) {
      const s = fb / fa
      let p: number
      let q: number
      if (a === c) {
        p = 2 * half * s
        q = 1 - s
      } else {
        const u = fa / fc
        const r = fb / fc
        p = s * (2 * half * u * (u - r) - (b - a) * (r - 1))
        q = (u - 1) * (r - 1) * (s - 1)
      }
      if (p > 0) q = -q
      else p = -p
      if (2 * p < Math.min(3 * half * q - Math.abs(near * q), Math.abs(before * q))) {
        before = step
        step = p / q
      } else {
        step = half
        before = half
      }
    } else {
      step = half
      before = half
    }
    a = b
    fa = fb
    b += Math.abs(step) > near ? step : half > 0 ? near : -near
    fb = f(b)
    if (Number.isNaN(fb)) return { ok: false, code: 'not-converged', low: Math.min(a, c), high: Math.max(a, c), steps }
  }
  return { ok: false, code: 'not-converged', low: Math.min(b, c), high: Math.max(b, c), steps: maxSteps }
}

/** The root, or a RangeError with the bracket: for brackets that the caller has proved. */
export function provedRoot(
  f: (x: number) => number,
  bracket: { low: number; high: number; tolerance: number },
): number {
  const root = findRoot(f, bracket)
  if (!root.ok) throw new RangeError(`no root between ${root.low} and ${root.high} (${root.code})`)
  return root.x
}
