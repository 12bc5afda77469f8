import { altitudeLimits_m } from '../../contract/index.ts'
import { metresFromFeet } from '../../core/units/index.ts'

/** As the sentence of the head says it: "sea level", "1600 m". */
export const altitudeWords = (altitude_m: number): string =>
  Math.round(altitude_m) === 0 ? 'sea level' : `${Math.round(altitude_m)} m`

export type Altitude =
  | { readonly ok: true; readonly altitude_m: number | null }
  | { readonly ok: false; readonly why: string }

/** Metres or feet as people write them: "1600 m", "5,250 ft", "120", "sea level"; nothing is not said. */
export function altitudeOf(written: string): Altitude {
  const words = written.trim().toLowerCase()
  if (words === '') return { ok: true, altitude_m: null }
  if (words === 'sea level') return { ok: true, altitude_m: 0 }
  const parts = /^(-?\d[\d\s,]*(?:\.\d+)?)\s*(m|metres?|meters?|ft|feet|foot|')?$/.exec(words)
  if (!parts)
    return { ok: false, why: `“${written.trim()}” is not an altitude. Write metres or feet: 1600 m, 5250 ft.` }
  const figure = Number(parts[1].replace(/[\s,]/g, ''))
  const altitude_m = /^(ft|feet|foot|')$/.test(parts[2] ?? 'm') ? Math.round(metresFromFeet(figure)) : figure
  const { low, high } = altitudeLimits_m
  if (!(altitude_m >= low && altitude_m <= high))
    return { ok: false, why: `No kitchen stands at ${Math.round(altitude_m)} m. Write ${low} to ${high} m.` }
  return { ok: true, altitude_m }
}
