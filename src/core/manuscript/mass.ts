import { type Food, householdMass_kg } from '../larder/index.ts'
import { type MeasureSystem, massOfUnit_kg, volumeOfUnit_m3 } from '../units/index.ts'
import type { Measure, Range } from './recipe.ts'
import { isMass } from './system.ts'

export interface MassOf {
  readonly mass_kg: Range | null
  readonly massFrom: string
}

export interface MassQuestion {
  readonly low: number | null
  readonly high: number | null
  readonly unit: Measure['unit']
  /** The unit as a word, also where it has no code: "glass". */
  readonly unitWord: string | null
  readonly pack: Measure | null
  readonly also: readonly Measure[]
  readonly food: Food | null
  /** How the food is when it is measured: "chopped" in "1 cup chopped onion". */
  readonly form: string | null
  readonly size: string | null
  readonly system: MeasureSystem
  readonly line: string
  /** Only the juice, or the grated rind, of what is counted. */
  readonly taken: 'juice' | 'zest' | null
}

const unknown = (why: string): MassOf => ({ mass_kg: null, massFrom: why })

// Household measures without a code, in mL (g for what is no liquid). Common practice, no source.
const loose: Readonly<Record<string, readonly [number, number]>> = {
  glass: [125, 200],
  wineglass: [60, 125],
  bottle: [700, 750],
  shot: [25, 45],
  splash: [5, 15],
  squeeze: [5, 10],
  drizzle: [5, 15],
  glug: [15, 30],
  spoonful: [10, 20],
  ladle: [90, 150],
  mug: [250, 300],
  dollop: [15, 30],
  knob: [10, 25],
  thumb: [15, 30],
  carton: [250, 500],
  handful: [20, 45],
}
// Juice and rind of one citrus fruit, in mL and g. Common practice, no source.
const squeezed: Readonly<Record<string, readonly [number, number]>> = {
  lemon: [30, 60],
  lime: [20, 35],
  orange: [60, 110],
  grapefruit: [120, 200],
}
const rind: readonly [number, number] = [2, 7]
/** Share of a can that is left when it is drained: 240 g of 400 g is the usual declaration. Common practice, no source. */
const drainedShare: Range = { low: 0.55, high: 0.65 }

const sizeNames: Readonly<Record<string, 'small' | 'medium' | 'large' | 'extra large'>> = {
  small: 'small',
  little: 'small',
  tiny: 'small',
  smaller: 'small',
  sm: 'small',
  sml: 'small',
  medium: 'medium',
  med: 'medium',
  md: 'medium',
  'medium-sized': 'medium',
  'medium-size': 'medium',
  large: 'large',
  big: 'large',
  lg: 'large',
  lrg: 'large',
  lge: 'large',
  larger: 'large',
  plump: 'large',
  fat: 'large',
  jumbo: 'extra large',
  huge: 'extra large',
  xl: 'extra large',
  'extra-large': 'extra large',
  'extra large': 'extra large',
}

const peeled =
  /\b(?:peeled weight|trimmed weight|prepared weight|net weight|boned weight|shelled weight|boneless|peeled and|ready[- ]to|pitted weight)\b/i

/** What is written is what is bought; the pot gets what is left of it after peeling, boning and coring. */
function edibleOf(q: MassQuestion, low_kg: number, high_kg: number, from: string): MassOf {
  const edible = q.food?.edible ?? 1
  if (edible >= 0.97 || peeled.test(q.line)) return { mass_kg: { low: low_kg, high: high_kg }, massFrom: from }
  return {
    mass_kg: { low: low_kg * edible, high: high_kg },
    massFrom: `${from}; ${Math.round(edible * 100)} % of it is edible`,
  }
}

function drained(q: MassQuestion, found: MassOf): MassOf {
  if (
    !found.mass_kg ||
    q.unit !== 'can' ||
    !/(?:^|[^n])\bdrained\b/i.test(q.line) ||
    /\b(?:not drained|undrained|drained weight)\b/i.test(q.line)
  )
    return found
  const { low, high } = found.mass_kg
  return {
    mass_kg: { low: low * drainedShare.low, high: high * drainedShare.high },
    massFrom: `${found.massFrom}; drained, 55 to 65 % of the can stays (common practice, no source)`,
  }
}

/**
 * Edible mass of an ingredient with its spread, and a sentence on how it was found: a weight as written first, then the
 * content of packs, then household weights and densities of the larder, then usual sizes of loose measures.
 */
export function massOf(q: MassQuestion): MassOf {
  if (q.low === null || q.high === null) return unknown('no amount is written')
  const weight = [{ low: q.low, high: q.high, unit: q.unit }, ...q.also].find(isMass)
  if (weight) {
    const one_kg = massOfUnit_kg(weight.unit!)!
    return edibleOf(q, weight.low * one_kg, weight.high * one_kg, 'as written')
  }
  if (q.taken && q.food) return takenMass(q)
  if (q.pack && isMass(q.pack)) {
    const one_kg = massOfUnit_kg(q.pack.unit!)!
    const packs = `as written, ${q.low === q.high ? q.low : `${q.low} to ${q.high}`} of ${q.pack.low === q.pack.high ? q.pack.low : `${q.pack.low} to ${q.pack.high}`} ${q.pack.unit}`
    return drained(q, edibleOf(q, q.low * q.pack.low * one_kg, q.high * q.pack.high * one_kg, packs))
  }
  if (!q.food) return unknown('the larder does not know it')
  const size = q.size ? (sizeNames[q.size] ?? null) : null
  const volume = q.pack && volumeOfUnit_m3(q.pack.unit!) !== null ? q.pack : null
  const asked: { low: number; high: number; unit: Measure['unit'] }[] = volume
    ? [{ low: q.low * volume.low, high: q.high * volume.high, unit: volume.unit }]
    : []
  if (q.unit !== null || q.unitWord === null || q.unitWord === 'each')
    asked.push({ low: q.low, high: q.high, unit: q.unit })
  asked.push(...q.also)
  for (const amount of asked) {
    const found = householdMass_kg(q.food, { ...amount, form: q.form, size, system: q.system })
    if (found) return { mass_kg: { low: found.low_kg, high: found.high_kg }, massFrom: found.from }
  }
  const usual = q.unitWord === null ? undefined : loose[q.unitWord]
  if (usual) {
    const found = householdMass_kg(q.food, { low: q.low * usual[0], high: q.high * usual[1], unit: 'ml' })
    if (found)
      return {
        mass_kg: { low: found.low_kg, high: found.high_kg },
        massFrom: `a ${q.unitWord} taken for ${usual[0]} to ${usual[1]} mL (common practice, no source)`,
      }
  }
  return unknown(`no weight is known for ${q.unitWord ?? 'one'} of it`)
}

function takenMass(q: MassQuestion): MassOf {
  const fruit = Object.keys(squeezed).find((name) => q.line.toLowerCase().includes(name))
  const usual = q.taken === 'zest' ? rind : fruit ? squeezed[fruit] : undefined
  if (!usual) return unknown('no yield is known for it')
  const unit = q.taken === 'zest' ? 'g' : 'mL'
  return {
    mass_kg: { low: (q.low! * usual[0]) / 1000, high: (q.high! * usual[1]) / 1000 },
    massFrom: `${q.taken} of ${q.low === q.high ? q.low : `${q.low} to ${q.high}`}, ${usual[0]} to ${usual[1]} ${unit} each (common practice, no source)`,
  }
}
