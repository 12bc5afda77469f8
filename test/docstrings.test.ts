import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { sources } from '../src/core/sources.ts'

// Every public function that returns a physical quantity says in its docstring what its shape, range, error, source
// and check are. This test reads those lines.

const rooms = ['steam', 'heat', 'doneness']
const lines = ['Shape', 'Range', 'Outside', 'Error', 'Source', 'Check']

/** Units that a name may end in, longest part first. */
const units = new Set([
  'K', 'dK', 'Pa', 'm', 'm3', 's', 'kg', 'J', 'W', 'Pas', 'Pa_per_K', 'per_s', 'per_K', 'm_per_s', 'm3_per_kg', 'kg_per_m3',
  'J_per_kg', 'J_per_kgK', 'J_per_mol', 'N_per_m', 'W_per_m2', 'W_per_m2K', 'W_per_m2K3', 'W_per_mK',
]) // biome-ignore format: one list

interface Documented {
  readonly where: string
  readonly name: string
  readonly doc: string
}

function documented(): Documented[] {
  const found: Documented[] = []
  for (const room of rooms) {
    const folder = new URL(`../src/core/${room}/`, import.meta.url)
    for (const file of readdirSync(folder).filter((f) => f.endsWith('.ts'))) {
      const text = readFileSync(new URL(file, folder), 'utf8')
      for (const match of text.matchAll(/^export function (\w+_\w+)/gm)) {
        const before = text.slice(0, match.index).trimEnd()
        const doc = before.endsWith('*/') ? before.slice(before.lastIndexOf('/**')) : ''
        found.push({ where: `src/core/${room}/${file}`, name: match[1], doc })
      }
    }
  }
  return found
}

const all = documented()

describe('physical functions', () => {
  it('are found', () => {
    expect(all.length).toBeGreaterThan(50)
  })
  it.each(all.map((d) => [d.name, d] as const))('%s says what it rests on', (name, { where, doc }) => {
    expect(units.has(name.slice(name.indexOf('_') + 1)), `${where}: ${name} ends in no known unit`).toBe(true)
    const said = new Map<string, string>()
    for (const line of lines) {
      const at = doc.match(new RegExp(`^ \\* ${line} +(\\S.*)$`, 'm'))
      expect(at, `${where}: ${name} has no line "${line}"`).not.toBeNull()
      if (at) said.set(line, at[1])
    }
    // In this order, so that a reader finds them.
    const places = lines.map((line) => doc.indexOf(`\n * ${line} `))
    expect(places, `${where}: ${name}: the lines are out of order`).toEqual([...places].sort((a, b) => a - b))
    for (const key of (said.get('Source') ?? '').split(',')) {
      expect(Object.keys(sources), `${where}: ${name} cites`).toContain(key.trim())
    }
    for (const file of doc.match(/check\/\S+\.csv/g) ?? []) {
      expect(existsSync(new URL(`../${file}`, import.meta.url)), `${where}: ${name}: ${file} is not there`).toBe(true)
    }
    expect(said.get('Outside'), `${where}: ${name}`).toMatch(/RangeError/)
  })
  it('a missing line would be noticed', () => {
    const doc = all[0].doc.replace(/^ \* Error.*$/m, ' *')
    expect(doc.match(/^ \* Error +(\S.*)$/m)).toBeNull()
  })
})

describe('sources', () => {
  it('say what they are, and whether they were read', () => {
    for (const [key, { cite, caution }] of Object.entries(sources)) {
      expect(key).toMatch(/^[a-z0-9][a-z0-9.-]*$/)
      expect(cite.length, key).toBeGreaterThan(10)
      expect(caution === null || caution.length > 5, key).toBe(true)
    }
  })
})
