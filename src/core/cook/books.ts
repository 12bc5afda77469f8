// The books of a run: what came in and went out of vessel and plate, so that water, fat, salt and energy can be closed.

export interface Books {
  water_kg: { in: number; evaporated: number; vented: number; absorbed: number; lifted: number }
  fat_kg: { in: number; lifted: number }
  salt_kg: { in: number; lifted: number }
  energy_J: { in: number; lost: number; leftWithVapour: number; leftWithFood: number; broughtIn: number }
}

export const openBooks = (): Books => ({
  water_kg: { in: 0, evaporated: 0, vented: 0, absorbed: 0, lifted: 0 },
  fat_kg: { in: 0, lifted: 0 },
  salt_kg: { in: 0, lifted: 0 },
  energy_J: { in: 0, lost: 0, leftWithVapour: 0, leftWithFood: 0, broughtIn: 0 },
})
