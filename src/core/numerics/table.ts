export interface LinearTable {
  /** Interpolated value; RangeError outside `low`..`high`, never clamped. NaN is outside. */
  readonly at: (x: number) => number
  /** The same without the check, for loops that know their range: outside it the answer means nothing. */
  readonly inner: (x: number) => number
  readonly low: number
  readonly high: number
  readonly step: number
}

/**
 * A function tabulated at even steps and read by linear interpolation: error ≤ step²/8 · max |f''|.
 * `high` is reached exactly; the last entry may lie up to one step beyond it, so f must be defined there or `high`
 * be a whole number of steps from `low` (a millionth of a step is forgiven).
 */
export function linearTable(
  f: (x: number) => number,
  { low, high, step, name = 'x' }: { low: number; high: number; step: number; name?: string },
): LinearTable {
  const cells = Math.ceil((high - low) / step - 1e-6)
  if (!(cells >= 1 && cells < 1e7)) throw new RangeError(`table from ${low} to ${high} by ${step} has no cells`)
  const value = new Float64Array(cells + 2)
  for (let i = 0; i <= cells; i++) value[i] = f(Math.min(low + i * step, Math.max(high, low + cells * step)))
  // One more entry, so that x = high may fall into a cell of its own by rounding.
  value[cells + 1] = 2 * value[cells] - value[cells - 1]
  const perStep = 1 / step
  const inner = (x: number) => {
    const u = (x - low) * perStep
    const i = u | 0
    const left = value[i]
    return left + (u - i) * (value[i + 1] - left)
  }
  const at = (x: number) => {
    if (!(x >= low && x <= high)) throw new RangeError(`${name} = ${x}: the table covers ${low} to ${high}`)
    return inner(x)
  }
  return { at, inner, low, high, step }
}
