import type { Run } from '../../core/cook/index.ts'
import type { Finding } from '../../core/findings/index.ts'
import type { Recipe } from '../../core/manuscript/index.ts'
import type { Plan } from '../../core/method/index.ts'

/** One order to the kitchen in the worker. */
export interface Order {
  readonly number: number
  readonly text: string
  readonly pot: string | null
  readonly altitude_m: number | null
}

/** What `cookManuscript` makes of a manuscript. */
export interface Cooked {
  readonly recipe: Recipe
  readonly plan: Plan
  readonly run: Run
  readonly findings: readonly Finding[]
}

export type Reply =
  | { readonly number: number; readonly ok: true; readonly cooked: Cooked }
  | { readonly number: number; readonly ok: false; readonly message: string }
