import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { DemonstrationDish } from '../store/index.ts'

/** The folder of the project: this file is found at different depths as source and as built. */
export const home: string = (() => {
  let folder = dirname(fileURLToPath(import.meta.url))
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder)
    if (above === folder) throw new Error('package.json is missing: this copy of Underlid is incomplete')
    folder = above
  }
  return folder
})()

export function version(): string {
  return (JSON.parse(readFileSync(join(home, 'package.json'), 'utf8')) as { version: string }).version
}

// The dish that works comes first: a newcomer should meet a pot that does what it is meant to do.
const demonstrationOrder = ['pork-shoulder-leeks-cider', 'white-bean-soup', 'beef-tomato-sauce']

export function demonstrationDishes(): DemonstrationDish[] {
  const folder = join(home, 'examples', 'dishes')
  return demonstrationOrder.map((id) => ({ id, text: readFileSync(join(folder, `${id}.txt`), 'utf8') }))
}
