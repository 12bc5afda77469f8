// Writes data/larder/foods.ts from the hand-kept selection and the tables of the food-data folder given as argument:
//   npm run larder -- FOLDER
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { selection } from '../../data/larder/selection/index.ts'
import { nutrientRowOf } from './nutrients.ts'
import { rowOf } from './row.ts'
import { readTables } from './tables.ts'

const folder = process.argv[2]
if (!folder) {
  console.error('Which folder holds foods_generic.csv and measures.csv? Use: npm run larder -- FOLDER')
  process.exit(2)
}
const tables = readTables(folder)
const faults: string[] = []
const rows = selection.flatMap((entry) => {
  try {
    return [rowOf(entry, tables)]
  } catch (fault) {
    faults.push((fault as Error).message)
    return []
  }
})
if (faults.length) {
  console.error(faults.join('\n'))
  process.exit(1)
}
const note = (what: string) => `// biome-ignore-all format: one line a food, so that a change shows as one line
// biome-ignore-all lint/suspicious/noApproximativeNumericConstant: measured figures, not constants
// Written by scripts/larder/build.ts from data/larder/selection and USDA tables; do not edit by hand.
// The encoding is ${what}. USDA National Nutrient Database for Standard Reference 28 (2015)
// and FoodData Central Foundation Foods (2024-10), public domain.
`
write(
  'foods.ts',
  `${note('src/core/larder/row.ts')}import type { Row } from '../../src/core/larder/row.ts'

export const rows: readonly Row[] = [
`,
  rows,
)
write(
  'nutrients.ts',
  `${note('NutrientRow in src/core/larder/nutrients.ts')}import type { NutrientRow } from '../../src/core/larder/nutrients.ts'

export const nutrientRows: readonly NutrientRow[] = [
`,
  selection.map((entry) => nutrientRowOf(entry, tables)),
)
console.log(`${rows.length} foods`)

function write(file: string, head: string, table: readonly unknown[]): void {
  const path = fileURLToPath(new URL(`../../data/larder/${file}`, import.meta.url))
  writeFileSync(path, `${head}${table.map((row) => `  ${line(row)},\n`).join('')}]\n`)
}

function line(value: unknown): string {
  if (value === null) return 'null'
  if (Array.isArray(value)) return `[${value.map(line).join(', ')}]`
  if (typeof value === 'number') return String(value)
  if (typeof value === 'string') return `'${value.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`
  const pairs = Object.entries(value as object).map(([key, v]) => `${key}: ${line(v)}`)
  return pairs.length ? `{ ${pairs.join(', ')} }` : '{}'
}
