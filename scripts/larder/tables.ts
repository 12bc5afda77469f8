import { join } from 'node:path'
import { readCsv } from './csv.ts'

export interface FoodRecord {
  /** 'usda-sr28 11282' */
  readonly source: string
  readonly description: string
  /** g per 100 g, mg for sodium; null where the table has no figure. */
  readonly figure: (column: string) => number | null
  readonly measures: readonly { readonly amount: number; readonly measure: string; readonly grams: number }[]
}

export interface Tables {
  readonly record: (key: string) => FoodRecord
  /** Net water taken up on boiling, kg per kg raw, by NDB number of the raw food. */
  readonly uptake: (ndb: string) => number | null
}

/** The figures of the data folder, keyed by NDB number; 'F11282' is a Foundation Foods record. */
export function readTables(folder: string): Tables {
  const keyOf = (row: Record<string, string>) => (row.source === 'SR28' ? row.ndb_no : `F${row.ndb_no}`)
  const foods = new Map(readCsv(join(folder, 'foods_generic.csv')).map((row) => [keyOf(row), row]))
  const measures = new Map<string, Record<string, string>[]>()
  for (const row of readCsv(join(folder, 'measures.csv'))) {
    const list = measures.get(keyOf(row))
    if (list) list.push(row)
    else measures.set(keyOf(row), [row])
  }
  const yields = new Map(
    readCsv(join(folder, 'derived', 'dry_matter_yields_boiled.csv')).map((row) => [
      row.ndb_raw,
      Number(row.net_water_uptake_g_per_g_raw),
    ]),
  )
  return {
    record(key) {
      const row = foods.get(key)
      if (!row)
        throw new Error(`No record ${key} in foods_generic.csv. Cure: look the number up and correct the selection.`)
      return {
        source: row.source === 'SR28' ? `usda-sr28 ${row.ndb_no}` : `usda-foundation-2024-10 ${row.ndb_no}`,
        description: row.description,
        figure: (column) => (row[column] === '' || row[column] === undefined ? null : Number(row[column])),
        measures: (measures.get(key) ?? []).map((m) => ({
          amount: Number(m.amount),
          measure: m.measure,
          grams: Number(m.grams),
        })),
      }
    },
    uptake: (ndb) => yields.get(ndb) ?? null,
  }
}
