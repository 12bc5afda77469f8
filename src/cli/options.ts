import { type PotCard, potById, potCards } from '../core/pots/index.ts'
import { metresFromFeet, psi_Pa } from '../core/units/index.ts'
import { CallError } from './failure.ts'

/** "1600m", "5,250 ft" to metres. The unit is asked for: a bare number would be read wrong by half of all people. */
export function altitudeOption_m(written: string): number {
  const form = 'Write it with its unit, like 1600m or 5250ft.'
  const found = /^(-?\d{1,3}(?:[,']\d{3})+|-?\d+)(\.\d+)?\s*(m|metres?|meters?|ft|feet|foot|')$/i.exec(written.trim())
  if (!found) {
    const bare = /^-?[\d.,]+$/.test(written.trim())
    throw new CallError(`The altitude "${written}" ${bare ? 'has no unit' : 'is not understood'}.`, form)
  }
  const value = Number(found[1].replace(/[,']/g, '') + (found[2] ?? ''))
  const metres = /^m/i.test(found[3]) ? value : metresFromFeet(value)
  if (!(metres >= -500 && metres <= 6000)) {
    throw new CallError(
      `The altitude "${written}" is ${Math.round(metres)} m; nobody cooks there.`,
      'It must lie from −500 m to 6000 m (−1640 ft to 19,685 ft).',
    )
  }
  return metres
}

/** "12psi", "80kPa", "0.8 bar" to pascals over the outside air. */
export function gaugeOption_Pa(written: string): number {
  const found = /^(\d+(?:[.,]\d+)?)\s*(psi|lbs?|kpa|bar)$/i.exec(written.trim())
  if (!found) {
    const bare = /^[\d.,]+$/.test(written.trim())
    throw new CallError(
      `The gauge pressure "${written}" ${bare ? 'has no unit' : 'is not understood'}.`,
      'Write it with its unit, like 12psi or 80kPa.',
    )
  }
  const value = Number(found[1].replace(',', '.'))
  const unit = found[2].toLowerCase()
  const pascals = value * (unit === 'kpa' ? 1000 : unit === 'bar' ? 1e5 : psi_Pa)
  if (!(pascals >= 1e3 && pascals <= 2e5)) {
    throw new CallError(
      `A gauge pressure of ${written} is not that of a kitchen pot.`,
      'It must lie from 1 kPa to 200 kPa; most pots work at 70 to 103 kPa (10 to 15 psi).',
    )
  }
  return pascals
}

/** The card of a pot by its id. */
export function potOption(id: string): PotCard {
  const card = potById(id.trim().toLowerCase())
  if (card) return card
  throw new CallError(`There is no pot "${id}".`, `Known are:\n${potList()}`)
}

/** The pots there are, one a line. */
export function potList(): string {
  return potCards.map((pot) => `  ${pot.id.padEnd(14)} ${pot.name}`).join('\n')
}
