import type { Draft } from '../server/dishes.ts'
import type { Copy } from './open.ts'

// Copies on this device, one a dish and window: two windows on one dish must not write over each other.

const start = 'underlid:draft:'
const keyOf = (dish: string, writer: string) => `${start}${dish}:${writer}`

/** False when the device refuses: storage full, or forbidden. */
export function keepHere(dish: string, writer: string, draft: Draft, base: number, at_ms: number): boolean {
  try {
    localStorage.setItem(keyOf(dish, writer), JSON.stringify({ draft, base, at_ms, writer }))
    return true
  } catch {
    return false
  }
}

export function forgetHere(dish: string, writer: string): void {
  try {
    localStorage.removeItem(keyOf(dish, writer))
  } catch {
    // Nothing was kept, then.
  }
}

export function copiesHere(dish: string): Copy[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(`${start}${dish}:`))
      .map((key) => copyOf(localStorage.getItem(key)))
      .filter((copy) => copy !== null)
  } catch {
    return []
  }
}

function copyOf(stored: string | null): Copy | null {
  try {
    const copy = JSON.parse(stored ?? 'null')
    const sound =
      typeof copy?.draft?.text === 'string' && typeof copy.base === 'number' && typeof copy.writer === 'string'
    if (!sound) return null
    return {
      draft: { text: copy.draft.text, pot: copy.draft.pot ?? null, altitude_m: copy.draft.altitude_m ?? null },
      base: copy.base,
      at_ms: Number(copy.at_ms) || 0,
      writer: copy.writer,
    }
  } catch {
    return null
  }
}
