/**
 * Solves a tridiagonal system in place: lower[i]·out[i−1] + diagonal[i]·out[i] + upper[i]·out[i+1] = rhs[i].
 * Allocates nothing; overwrites `diagonal` and `rhs` (elimination by Thomas, without pivoting: the matrix has to
 * be diagonally dominant, as heat steps are). lower[0] and upper[n−1] are not read. `out` may be `rhs`.
 */
export function solveTridiagonal(
  lower: Float64Array,
  diagonal: Float64Array,
  upper: Float64Array,
  rhs: Float64Array,
  out: Float64Array,
): void {
  const n = diagonal.length
  for (let i = 1; i < n; i++) {
    const w = lower[i] / diagonal[i - 1]
    diagonal[i] -= w * upper[i - 1]
    rhs[i] -= w * rhs[i - 1]
  }
  out[n - 1] = rhs[n - 1] / diagonal[n - 1]
  for (let i = n - 2; i >= 0; i--) out[i] = (rhs[i] - upper[i] * out[i + 1]) / diagonal[i]
}
