import type { Ingredient, Measure, Range } from '../core/manuscript/index.ts'
import { feetFromMetres, type UnitCode } from '../core/units/index.ts'

// Figures as a cook reads them.

const fractions: readonly (readonly [number, string])[] = [
  [1 / 8, '⅛'],
  [1 / 4, '¼'],
  [1 / 3, '⅓'],
  [3 / 8, '⅜'],
  [1 / 2, '½'],
  [5 / 8, '⅝'],
  [2 / 3, '⅔'],
  [3 / 4, '¾'],
  [7 / 8, '⅞'],
]

/** 1.25 as "1¼", 0.5 as "½", 180 as "180". */
export function kitchenNumber(value: number): string {
  const whole = Math.floor(value + 1e-9)
  const rest = value - whole
  const known = fractions.find(([share]) => Math.abs(share - rest) < 0.004)
  if (known) return whole === 0 ? known[1] : `${whole}${known[1]}`
  return String(Math.round(value * 100) / 100)
}

export function measure({ low, high, unit }: Measure): string {
  const number = low === high ? kitchenNumber(low) : `${kitchenNumber(low)} to ${kitchenNumber(high)}`
  return unit === null ? number : `${number} ${high > 1 ? (plurals[unit] ?? unit) : (singulars[unit] ?? unit)}`
}

const singulars: Partial<Record<UnitCode, string>> = { floz: 'fl oz' }
const plurals: Partial<Record<UnitCode, string>> = {
  floz: 'fl oz',
  cup: 'cups',
  pint: 'pints',
  quart: 'quarts',
  gallon: 'gallons',
  pinch: 'pinches',
  dash: 'dashes',
  drop: 'drops',
  clove: 'cloves',
  can: 'cans',
  jar: 'jars',
  packet: 'packets',
  bunch: 'bunches',
  sprig: 'sprigs',
  stalk: 'stalks',
  rib: 'ribs',
  head: 'heads',
  slice: 'slices',
  leaf: 'leaves',
  piece: 'pieces',
  inch: 'inches',
  stick: 'sticks',
  handful: 'handfuls',
  gill: 'gills',
  teacup: 'teacups',
  dessertspoon: 'dessertspoons',
  peck: 'pecks',
}

/** "1¼ tsp", "1 (400 g) can"; empty when no amount is written. */
export function amount(ingredient: Ingredient): string {
  const { low, high, unit, pack } = ingredient
  if (low === null && high === null) return ingredient.toTaste ? 'to taste' : ''
  const number = measure({ low: low ?? (high as number), high: high ?? (low as number), unit: pack ? null : unit })
  if (!pack) return number
  const holders = unit === null ? '' : ` ${(high ?? low ?? 1) > 1 ? (plurals[unit] ?? unit) : unit}`
  return `${number} × ${measure(pack)}${holders}`
}

/** "1200 g", "7 to 9 g", "0.4 g". */
export function grams({ low, high }: Range): string {
  const figure = (kg: number) => {
    const g = kg * 1000
    return g >= 100 ? String(Math.round(g)) : g >= 10 ? String(Math.round(g)) : String(Number(g.toPrecision(2)))
  }
  return figure(low) === figure(high) ? `${figure(low)} g` : `${figure(low)} to ${figure(high)} g`
}

/** "4-cm pieces" as millimetres or centimetres: "4 cm", "4 to 5 cm", "6 mm". */
export function size(range_m: Range): string {
  const mm = [range_m.low * 1000, range_m.high * 1000]
  const unit = mm[1] >= 20 ? 'cm' : 'mm'
  const figure = (x: number) => String(Math.round(unit === 'cm' ? x : x * 10) / 10)
  const [low, high] = mm.map(figure)
  return low === high ? `${low} ${unit}` : `${low} to ${high} ${unit}`
}

/** "30 min", "6 to 8 min", "1 h 30 min", "30 s". */
export function minutes({ low, high }: Range): string {
  const one = (s: number) => {
    if (s < 60) return `${Math.round(s)} s`
    const m = Math.round(s / 6) / 10
    if (m < 90) return `${kitchenNumber(m)} min`
    const whole = Math.round(m)
    return whole % 60 === 0 ? `${whole / 60} h` : `${Math.floor(whole / 60)} h ${whole % 60} min`
  }
  const [a, b] = [one(low), one(high)]
  if (a === b) return a
  return a.endsWith(' min') && b.endsWith(' min') && !a.includes('h') ? `${a.slice(0, -4)} to ${b}` : `${a} to ${b}`
}

/** Time of a cook's clock: 0:00, 1:05. */
export function clock(time_s: number): string {
  const m = Math.round(time_s / 60)
  return `${Math.floor(m / 60)}:${String(m % 60).padStart(2, '0')}`
}

/** "at sea level", "at 120 m (394 ft)". */
export function place(altitude_m: number): string {
  if (Math.abs(altitude_m) < 0.5) return 'at sea level'
  const feet = Math.round(feetFromMetres(altitude_m)).toLocaleString('en-GB')
  return `at ${Math.round(altitude_m).toLocaleString('en-GB')} m (${feet} ft)`
}
