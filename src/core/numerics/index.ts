// Small numerical tools without domain words.

// Ranges

export { requireRange } from './range.ts'

// Roots

export { findRoot, provedRoot, type Root } from './roots.ts'

// Linear systems

export { solveTridiagonal } from './tridiagonal.ts'

// Tables

export { type LinearTable, linearTable } from './table.ts'

// Chance

export { normalFrom, type Random, seededRandom } from './random.ts'

// Special functions

export { besselJ0, besselJ1 } from './bessel.ts'
