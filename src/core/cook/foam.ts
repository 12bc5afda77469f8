import type { Plan } from '../method/index.ts'

/** What swells or froths is kept to the lower line: pulses, grains, pasta once they make up a tenth of the pot. */
export function foams(plan: Plan): boolean {
  let foamy = 0
  let all = 0
  for (const load of plan.loads) {
    all += load.mass_kg
    if (['pulse', 'grain', 'pasta'].includes(load.food.character)) foamy += load.mass_kg
  }
  return all > 0 && foamy / all > 0.1
}
