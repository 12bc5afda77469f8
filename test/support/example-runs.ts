// Runs of the example dishes, cooked once for all tests that draw or print them.
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { cookManuscript, type UnderGlass } from '../../src/core/manuscript-under-glass.ts'

export const dishes = fileURLToPath(new URL('../../examples/dishes/', import.meta.url))

const pots = ['electric-6qt', 'dutch-burner']

export function exampleRuns(): readonly (UnderGlass & { readonly name: string })[] {
  return readdirSync(dishes)
    .filter((file) => file.endsWith('.txt'))
    .flatMap((file) =>
      pots.map((pot) => ({
        name: `${file} in ${pot}`,
        ...cookManuscript(readFileSync(dishes + file, 'utf8'), { pot }),
      })),
    )
}
