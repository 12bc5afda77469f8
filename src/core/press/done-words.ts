import type { Run } from '../cook/index.ts'
import { meatWords, plantWords } from '../doneness/index.ts'
import type { Load } from '../method/index.ts'

/** The words along a measure of doneness, each from the share where it begins. */
export interface DoneScale {
  readonly load: number
  readonly kind: 'collagen' | 'plant'
  readonly zones: readonly { readonly from: number; readonly word: string }[]
}

/** The groups whose doneness is worth a measure: meat before plants, the heavier first. */
export function doneScales(run: Run): readonly DoneScale[] {
  const meat = run.series.groups.filter((g) => run.plan.loads[g.load].food.kinetics?.kind === 'collagen')
  const plants = run.series.groups.filter((g) => run.plan.loads[g.load].food.kinetics?.kind === 'plant')
  const heavy = (a: { load: number }, b: { load: number }) => weightOf(run, b.load) - weightOf(run, a.load)
  return [
    ...meat.sort(heavy).map((g) => ({ load: g.load, kind: 'collagen' as const, zones: meatWords })),
    ...plants
      .sort(heavy)
      .map((g) => ({ load: g.load, kind: 'plant' as const, zones: plantWords(tissueOf(run, g.load)) })),
  ]
}

function tissueOf(run: Run, load: number) {
  const { kinetics } = run.plan.loads[load].food
  return kinetics?.kind === 'plant' ? kinetics.tissue : undefined
}

function weightOf(run: Run, load: number): number {
  return (run.plan.loads[load] as Load).mass_kg
}
