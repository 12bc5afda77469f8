import { describe, expect, it } from 'vitest'
import { rows } from '../../../data/larder/foods.ts'
import { findFood } from '../../../src/core/larder/index.ts'
import { phraseOf, plain } from '../../../src/core/larder/words.ts'

const names = rows.flatMap(([id, name, also]) => [name, ...also].map((each) => ({ id, name: each.replace(/^=/, '') })))

describe('names', () => {
  it('find the food they stand for, every one', () => {
    expect(names.length).toBeGreaterThan(2500)
    const lost = names.filter(({ id, name }) => findFood(name)?.id !== id)
    expect(lost.map(({ id, name }) => `${name} of ${id} finds ${findFood(name)?.id ?? 'nothing'}`)).toEqual([])
  })

  it('are claimed by one food alone', () => {
    const owners = new Map<string, string>()
    const twice: string[] = []
    for (const { id, name } of names) {
      const owner = owners.get(name)
      if (owner !== undefined && owner !== id) twice.push(`${name}: ${owner} and ${id}`)
      owners.set(name, id)
    }
    expect(twice).toEqual([])
  })

  it('stay apart once they are stemmed and ordered', () => {
    const owners = new Map<string, string>()
    const twice: string[] = []
    for (const [id, name, also] of rows) {
      for (const each of [name, ...also]) {
        if (each.startsWith('=')) continue
        const phrase = phraseOf(plain(each))!
        const words = [...new Set([...phrase.main, ...phrase.after, ...phrase.beside])].sort()
        const key = `${words.join(' ')}, ${phrase.head}`
        const owner = owners.get(key)
        if (owner !== undefined && owner !== id) twice.push(`${each}: ${owner} and ${id}`)
        owners.set(key, id)
      }
    }
    expect(twice).toEqual([])
  })

  it('are found in the plural, in capitals and with accents', () => {
    expect(findFood('SHALLOTS')?.id).toBe('shallot')
    expect(findFood('Gruyère')?.id).toBe('gruyere')
    expect(findFood('Crème Fraîche')?.id).toBe('creme-fraiche')
    expect(findFood('bay-leaves')?.id).toBe('bay-leaf')
  })
})
