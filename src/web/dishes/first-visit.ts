import type { DishLine } from '../server/dishes.ts'

const key = 'underlid:been-here'

/** True once on a device: the first visit is shown a dish already cooked instead of a list. */
export function firstVisit(): boolean {
  try {
    return localStorage.getItem(key) === null
  } catch {
    return false
  }
}

export function beenHere(): void {
  try {
    localStorage.setItem(key, 'yes')
  } catch {
    // Every visit is then a first one to the list, and `firstVisit` says so too.
  }
}

/** The list comes in the order the server thinks best to meet them. */
export const firstDemonstration = (dishes: readonly DishLine[]): DishLine | null =>
  dishes.find((dish) => dish.demonstration) ?? null
