// Cards of vessels, heat sources and lids.
export type { PotCard, PotId, Regulator } from './card.ts'
export { defaultPotId, potById, potCards } from './cards.ts'
