/** Six significant digits: more than any figure here means, and 0.1 + 0.2 prints as 0.3. */
export function rounded(value: number): number {
  return Number(value.toPrecision(6))
}

/** Rounded to a number of decimals; null for what is not a number, since JSON has no word for that. */
export function decimals(value: number | null | undefined, places: number): number | null {
  if (value === null || value === undefined || !Number.isFinite(value)) return null
  const scale = 10 ** places
  // Adding zero turns −0 into 0.
  return Math.round(value * scale) / scale + 0
}
