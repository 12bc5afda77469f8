import type { Entry, Stated, Weight } from '../../data/larder/selection/entry.ts'
import type { MeasureRow, Row } from '../../src/core/larder/row.ts'
import { readMeasure } from './household.ts'
import type { FoodRecord, Tables } from './tables.ts'

/** Densities at 20 C, kg/m3: Choi & Okos components; ethanol from memory. */
const density = {
  water: 995.74,
  protein: 1319.53,
  fat: 917.23,
  carbohydrate: 1592.89,
  fibre: 1304.2,
  ash: 2418.18,
  alcohol: 789,
}
const chloridePerSodium = 2.54

/** One line of foods.ts out of an entry of the selection and the record it names. */
export function rowOf(entry: Entry, tables: Tables): Row {
  const record = tables.record(entry.record)
  const basis: Record<string, string> = {}
  const stated = (field: string, value: Stated): number => {
    basis[field] = value[1]
    return value[0] * 100
  }
  const fail = (what: string): never => {
    throw new Error(`${entry.id} (${entry.record} ${record.description}): ${what}`)
  }
  const need = (column: string): number =>
    record.figure(column) ?? fail(`${column} is not recorded. Cure: another record.`)

  const total = record.figure('carbohydrate_g') ?? fail('no carbohydrate')
  let carbohydrate = Math.max(0, total)
  let fibre = record.figure('fibre_g')
  if (fibre === null && entry.fibre) fibre = stated('fibre', entry.fibre)
  if (fibre === null) fibre = carbohydrate < 1 ? 0 : fail('fibre is not recorded. Cure: state it.')
  let ash = need('ash_g')
  let water = need('water_g')
  const protein = need('protein_g')
  const fat = need('fat_g')
  const alcohol = record.figure('alcohol_g') ?? 0
  const missing = 100 - (water + protein + fat + carbohydrate + ash + alcohol)
  if (entry.remainder === 'carbohydrate') carbohydrate += missing
  else if (entry.remainder === 'ash') ash += missing
  else if (entry.remainder === 'water') water += missing
  else if (Math.abs(missing) > 2) fail(`proximates miss ${missing.toFixed(2)} g of 100 g`)
  if (entry.remainder)
    basis.composition = `${missing.toFixed(2)} g of 100 g not in the record counted as ${entry.remainder}`
  // Analyses of one sample do not sum to 100.00; the account of a pot must. At most 2 % is shared out here.
  const thinner = entry.dilute ? 1 - stated('composition', entry.dilute) / 100 : 1
  const scale = (100 / (water + protein + fat + carbohydrate + ash + alcohol)) * thinner
  const parts = [
    water,
    protein,
    fat,
    Math.max(0, carbohydrate - fibre),
    Math.min(fibre, carbohydrate),
    ash,
    alcohol,
  ].map((x) => x * scale)
  parts[0] += 100 * (1 - thinner)

  const digestible = Math.max(0, carbohydrate - fibre)
  let sugars = record.figure('sugars_g')
  if (sugars === null && entry.sugars) sugars = stated('sugars', entry.sugars)
  if (sugars === null && digestible < 1) {
    sugars = 0
    if (digestible > 0) basis.sugars = `assumed none: not recorded, carbohydrate ${digestible.toFixed(1)} %`
  }
  if (sugars === null) fail(`sugars are not recorded, carbohydrate ${digestible} g. Cure: state them.`)
  sugars = Math.min(sugars as number, carbohydrate)
  let starch = record.figure('starch_g')
  if (starch === null && entry.starch === 'rest') {
    starch = Math.max(0, digestible - sugars)
    basis.starch = 'carbohydrate less fibre and sugars'
  } else if (starch === null && entry.starch) starch = stated('starch', entry.starch as Stated)
  starch = Math.min(starch ?? 0, digestible)
  const sodium = entry.salt ? 0 : (record.figure('sodium_mg') ?? fail('sodium is not recorded. Cure: state the salt.'))
  const salt = entry.salt ? stated('salt', entry.salt) : (sodium / 1000) * chloridePerSodium
  // More salt than ash: glutamate counted as salt, or two analyses of different samples. Said, not smoothed over.
  if (salt > ash + 0.5 && !basis.salt)
    basis.salt = `sodium and ash of the record disagree: ${round(salt, 1)} % against ${ash} %`
  const solids = 100 - water - fat - alcohol - salt
  let suspended = 0
  if (entry.suspended === 'solids') {
    suspended = solids
    basis.suspended = 'total solids less fat and salt'
  } else if (entry.suspended === 'solids-less-sugars') {
    suspended = Math.max(0, solids - sugars)
    basis.suspended = 'total solids less fat, salt and sugars'
  } else if (entry.suspended) suspended = stated('suspended', entry.suspended)
  const collagen = entry.collagen ? stated('collagen', entry.collagen) * (1 - parts[2] / 100) : 0
  const acid = entry.acid ? stated('acid', entry.acid) : 0

  const refuse = record.figure('refuse_pct') ?? 0
  const edible = entry.edible ? stated('edible', entry.edible) / 100 : 1 - refuse / 100
  const names = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash', 'alcohol'] as const
  const volume = names.reduce((sum, name, i) => sum + parts[i] / density[name], 0)

  if (entry.note) basis.note = entry.note
  return [
    entry.id,
    entry.name ?? entry.id.replaceAll('-', ' '),
    (entry.also ?? '')
      .split(',')
      .map((s) => s.trim())
      .filter(Boolean),
    entry.character,
    record.source,
    parts.map((x) => round(x, 2)) as unknown as Row[5],
    [starch, sugars, salt, collagen, suspended, acid].map((x) => round(x * thinner, 2)) as unknown as Row[6],
    absorbsOf(entry, tables, basis, fail),
    round(edible, 3),
    Math.round(100 / volume),
    entry.kinetics ?? '',
    entry.piece ?? '',
    measuresOf(entry, record, tables),
    split(entry.allergens),
    split(entry.checkLabel).filter((key) => !split(entry.allergens).includes(key)),
    split(entry.tags),
    basis,
  ]
}

const split = (words = ''): string[] => words.split(/[ ,]+/).filter(Boolean)
const round = (x: number, digits: number): number => Number(x.toFixed(digits))

function absorbsOf(entry: Entry, tables: Tables, basis: Record<string, string>, fail: (what: string) => never): number {
  if (entry.absorbs === undefined) {
    if (['pulse', 'grain', 'pasta'].includes(entry.character)) fail('what it absorbs is not said')
    return 0
  }
  if (typeof entry.absorbs !== 'string') {
    basis.absorbs = entry.absorbs[1]
    return entry.absorbs[0]
  }
  const [raw, boiled] = entry.absorbs.split('/')
  if (boiled) {
    // Dry matter stays: what the boiled food weighs more than the raw is water.
    const dry = (key: string) => 100 - (tables.record(key).figure('water_g') ?? fail(`no water for ${key}`))
    basis.absorbs = `dry matter of raw and boiled, usda-sr28 ${raw} and ${boiled}`
    return round(dry(raw) / dry(boiled) - 1, 3)
  }
  const uptake = tables.uptake(entry.absorbs)
  if (uptake === null) return fail(`no boiled yield for ${entry.absorbs}`)
  basis.absorbs = `dry-matter yield on boiling, usda-sr28 ${entry.absorbs}`
  return round(uptake, 3)
}

/** Own weights of the record, those of `more` as spread, then what the selection states. */
function measuresOf(entry: Entry, record: FoodRecord, tables: Tables): MeasureRow[] {
  const found = new Map<string, { unit: string; form: string; low: number; high: number; source: string }>()
  const records = [
    ...(entry.ownWeights === false ? [] : [record]),
    ...(entry.more ?? []).map((key) => tables.record(key)),
  ]
  const names = new Set(`${entry.id} ${entry.name ?? ''} ${entry.also ?? ''}`.toLowerCase().split(/[^a-z]+/))
  for (const each of records) {
    for (const { amount, measure, grams } of each.measures) {
      const read = readMeasure(measure, names)
      if (!read || !(amount > 0) || !(grams > 0)) continue
      const key = `${read.unit} ${read.form}`
      const one = grams / amount
      const now = found.get(key)
      const source = each === record ? '' : each.source
      if (!now) found.set(key, { ...read, low: one, high: one, source })
      else {
        now.low = Math.min(now.low, one)
        now.high = Math.max(now.high, one)
        if (source && !now.source.includes(source))
          now.source = now.source ? `${now.source}; ${source}` : `${record.source}; ${source}`
      }
    }
  }
  for (const [unit, form, low, high, source] of entry.weights ?? ([] as Weight[]))
    found.set(`${unit} ${form}`, { unit, form, low, high, source })
  return [...found.values()].map((m) => [
    m.unit,
    m.form,
    Number(m.low.toPrecision(5)),
    Number(m.high.toPrecision(5)),
    m.source,
  ])
}
