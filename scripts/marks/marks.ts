// How much of a labelled set of recipe texts the reader reads right. Usage: npm run marks -- FOLDER [--misses]
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { readRecipe } from '../../src/core/manuscript/index.ts'
import { markFaults, noFaults } from './faults.ts'
import { foodKinds, markFoods } from './foods.ts'
import { markMethod, methodKinds } from './method.ts'
import { Tally } from './tally.ts'
import { loadSet } from './truth.ts'

const folder = process.argv.slice(2).find((word) => !word.startsWith('--'))
const withMisses = process.argv.includes('--misses')
if (!folder || !['open', 'pressure'].some((set) => existsSync(join(folder, `${set}.json`)))) {
  console.error('marks: name the folder that holds open.json and open/, or pressure.json and pressure/.')
  process.exit(2)
}

for (const set of ['open', 'pressure']) {
  if (!existsSync(join(folder, `${set}.json`))) continue
  const foods = new Tally()
  const method = new Tally()
  const faults = noFaults()
  for (const labelled of loadSet(folder, set)) {
    const recipe = readRecipe(labelled.text)
    markFoods(foods, labelled, recipe)
    markMethod(method, labelled, recipe)
    markFaults(faults, labelled, recipe)
  }
  console.log(`\n${set}: ingredients\n${foods.table(foodKinds)}`)
  console.log(`\n${set}: method\n${method.table(methodKinds)}`)
  if (faults.planted > 0 || faults.cleanTexts > 0) {
    console.log(
      `\n${set}: ${faults.found} of ${faults.planted} planted faults found; ${faults.falseWarnings} warnings on ${faults.cleanTexts} clean texts`,
    )
  }
  if (withMisses) console.log(['', ...foods.misses, ...method.misses, ...faults.lines].join('\n'))
}
