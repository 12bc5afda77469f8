import { makePieceSolver, type PieceBody, type PieceOptions } from '../../../src/core/heat/index.ts'

/** Properties of a cooking piece that several tests share: alpha is 1.3e-7 m2/s. */
export const meat = { k_W_per_mK: 0.47, rho_kg_per_m3: 1050, cp_J_per_kgK: 0.47 / 1050 / 1.3e-7 }
export const alpha_m2_per_s = 1.3e-7
export const beef = { water: 0.7, protein: 0.19, fat: 0.1, carbohydrate: 0, fibre: 0, ash: 0.01 }

/** A slab or cylinder is long unless told; a brick is a cube. */
export function piece(o: Partial<PieceOptions> & Pick<PieceOptions, 'shape' | 'thickness_m'>): PieceBody {
  const long = o.shape === 'slab' || o.shape === 'cylinder' ? 2 : o.thickness_m
  return makePieceSolver({ width_m: long, length_m: long, start_K: 278.15, ...meat, ...o })
}

/** Steps until the core gets there; the answer is interpolated inside the step. */
export function timeTo_s(body: PieceBody, core_K: number, bath_K: number, film: number, step_s: number): number {
  let before = body.core_K()
  for (let t = 0; ; t += step_s) {
    body.forward(step_s, film, bath_K)
    body.back(bath_K)
    const now = body.core_K()
    if (now >= core_K) return t + (step_s * (core_K - before)) / (now - before)
    before = now
  }
}
