import { potCards } from '../../../data/pots/cards.ts'
import type { PotCard, PotId } from './card.ts'

export { potCards }

/** The card taken when neither the caller nor the manuscript names a pot. */
export const defaultPotId: PotId = 'electric-6qt'

/** The card with this id, or null. */
export function potById(id: PotId): PotCard | null {
  return potCards.find((card) => card.id === id) ?? null
}
