import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { applyCure, cookManuscript, potCards } from '../../src/core/index.ts'

const dish = (name: string): string =>
  readFileSync(join(import.meta.dirname, '..', '..', 'examples', 'dishes', `${name}.txt`), 'utf8')
const codes = (text: string): string[] => cookManuscript(text).findings.map((f) => f.code)

describe('the demonstration dishes under glass', () => {
  it('pork shoulder with leeks and cider works, and nobody has anything to say', () => {
    const { run, findings } = cookManuscript(dish('pork-shoulder-leeks-cider'))
    expect(findings).toEqual([])
    const pork = run.pieces.find((p) => p.tender !== null)!
    expect(pork.word).toBe('tender')
    expect(run.base.trips).toBe(false)
    expect(run.clock.total_s[0]).toBeLessThan(105 * 60)
    expect(run.clock.total_s[1]).toBeGreaterThan(105 * 60)
  })
  it('white bean soup touches the foam line', () => {
    const { run } = cookManuscript(dish('white-bean-soup'))
    expect(run.fill.limit).toBe(0.5)
    expect(run.fill.fraction).toBeGreaterThan(0.47)
    expect(run.fill.fraction).toBeLessThan(0.51)
    expect(codes(dish('white-bean-soup'))).toContain('at-foam-line')
    expect(codes(dish('white-bean-soup').replace('1.35 litres', '2 litres'))).toContain('over-foam-line')
  })
  it('beef and tomato sauce stops the pot, lacks the wine in its list and promises too short a time', () => {
    const found = codes(dish('beef-tomato-sauce'))
    expect(found).toContain('burn-stop')
    expect(found).toContain('used-unlisted')
    expect(found).toContain('headline-time-short')
  })
  it('beef and tomato sauce no longer stops once it is thinned, and its time is then summed by the run', () => {
    const thinned = dish('beef-tomato-sauce')
      .replace('700 g tomato passata', '200 g tomato passata\n600 ml beef stock')
      .replace(
        'Pour in the passata and the red wine',
        'Pour in the stock, scrape up the browned bits, add the passata and the red wine',
      )
    const { run, findings } = cookManuscript(thinned)
    expect(run.base.trips).toBe(false)
    const short = findings.find((f) => f.code === 'headline-time-short')!
    expect(short.message).toContain('come to pressure')
    const cured = applyCure(thinned, short.cure!)
    expect(cookManuscript(cured).findings.map((f) => f.code)).not.toContain('headline-time-short')
  })
  it('less cider brings the base nearer to its trip', () => {
    const margin = (ml: number): number =>
      cookManuscript(dish('pork-shoulder-leeks-cider').replace('240 ml dry cider', `${ml} ml dry cider`)).run.base
        .margin_dK
    expect(margin(40)).toBeLessThan(margin(240) - 3)
  })
})

describe('any pot, any text', () => {
  it('the books of every dish close in every pot', () => {
    for (const name of ['pork-shoulder-leeks-cider', 'white-bean-soup', 'beef-tomato-sauce']) {
      for (const { id } of potCards) {
        const { account } = cookManuscript(dish(name), { pot: id }).run
        for (const book of [account.water_kg, account.fat_kg, account.salt_kg, account.energy_J]) {
          expect(Math.abs(book.closure_share), `${name} in ${id}`).toBeLessThan(1e-3)
        }
      }
    }
  })
  it('nothing, noise and a list give a finding and no throw', () => {
    for (const text of [
      '',
      '\u0000\u0001\u0002',
      'milk\neggs\nbread',
      'The pot sits quiet on the sill.',
      '<p>Boil.</p>',
    ]) {
      expect(() => cookManuscript(text)).not.toThrow()
      expect(cookManuscript(text).findings.length, JSON.stringify(text)).toBeGreaterThan(0)
    }
  })
  it('an unknown pot is refused by name', () => {
    expect(() => cookManuscript('Soup', { pot: 'wok' })).toThrow(/wok.*electric-6qt/)
  })
})

describe('a pot that is too small', () => {
  it('is said to be so, whatever the pot', () => {
    const crowd = dish('pork-shoulder-leeks-cider').replace('1.2 kg boneless', '9 kg boneless')
    for (const pot of ['electric-6qt', 'dutch-burner', 'dutch-oven']) {
      expect(
        cookManuscript(crowd, { pot }).findings.map((f) => f.code),
        pot,
      ).toContain('does-not-fit')
    }
  })
  it('does not count mashed beans as water given up', () => {
    const { run } = cookManuscript(dish('white-bean-soup'))
    const beans = run.pieces.find((p) => run.plan.loads[p.load].food.character === 'pulse')!
    expect(beans.waterLost_kg).toBeLessThan(0.02)
  })
})
