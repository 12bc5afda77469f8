import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readRecipe } from '../../../src/core/manuscript/index.ts'
import { planRecipe } from '../../../src/core/method/index.ts'
import { expectCoherent } from './coherent.ts'
import { beans, beef, pork } from './manuscripts.ts'
import { line, loadLine } from './print-plan.ts'

// Whole plans of the demonstration dishes, checked by eye against their words. A line of an operation reads: kind, loads,
// how, time; * by hand, ~ not timed by the words, (implied) not said at all.

const planned = (text: string) => {
  const recipe = readRecipe(text)
  return { recipe, plan: planRecipe(recipe) }
}
const lines = (text: string) =>
  text
    .trim()
    .split('\n')
    .map((each) => each.trim())

describe('pork shoulder with leeks and cider', () => {
  const { recipe, plan } = planned(pork)
  it('is cooked in the pot the words name', () => {
    expect([plan.pot.id, plan.potFrom]).toEqual(['electric-6qt', 'manuscript'])
  })
  it('weighs and cuts what the list says, salt and oil in two portions', () => {
    expect(plan.loads.map(loadLine)).toEqual(
      lines(`
      0 table salt [salt] 5.9 g 20 °C
      1 rapeseed oil [vegetable-oil] 14 g 20 °C
      2 boneless pork shoulder [pork-shoulder] 1200 g 5 °C, 18 brick 40x40x40 mm (words)
      3 rapeseed oil [vegetable-oil] 14 g 20 °C
      4 leeks [leek] 360 g 20 °C, 19 slab 20x30x30 mm (words)
      5 garlic [garlic] 18 g 20 °C, 572 brick 3x3x3 mm (words)
      6 dry cider [cider] 240.2 g 20 °C
      7 thyme [thyme] 1.9 g 20 °C
      8 grainy mustard [mustard] 15.75 g 20 °C
      9 table salt [salt] 1.475 g 20 °C
    `),
    )
  })
  it('does what the steps say, in their order', () => {
    expect(plan.operations.map(line)).toEqual(
      lines(`
      bench 6.26-11.3 min | gather, measure, cut * ~
      bench [0] 1.3-2.8 min | pat dry and season the boneless pork shoulder * ~
      add [1] stirred 0.15-0.45 min | add the oil * (implied) ~
      heat high 3 min | heat the oil
      brown [2 0 3] x2 out 7 min | brown the pork, two batches *
      add [4] stirred 0.15-0.45 min | add the leeks * ~
      fry sweat medium 5 min | soften the leeks *
      add [5] stirred 0.15-0.45 min | add the garlic * ~
      fry fry medium 0.5 min | fry the garlic *
      add [6] stirred 0.15-0.45 min | add the cider * ~
      deglaze 0.9 0.5-1 min | scrape the base * ~
      add [7] stirred 0.15-0.45 min | add the thyme * ~
      return [2] stirred 0.25-0.5 min | put back the pork * ~
      lock 0.167-0.417 min | lock the lid * ~
      hold high 30 min | at pressure, 30 minutes
      release natural-then-vented 15 min | natural 15 minutes, then vent
      lift [2] 0.417-1 min | lift out the pork * ~
      lift [7] 0.167-0.417 min | lift out the thyme * ~
      simmer boil lid off high 10 min | boil *
      add [8 9] stirred 0.217-0.65 min | add the mustard and salt * ~
      return [2] stirred 0.25-0.5 min | put back the pork * ~
      serve 1-2.5 min | serve * ~
    `),
    )
  })
  it('has nothing to fill in', () => {
    expect(plan.findings).toEqual([])
    expectCoherent(plan, recipe)
  })
})

describe('beef and tomato sauce', () => {
  const { recipe, plan } = planned(beef)
  it('is cooked in an electric pot', () => {
    expect([plan.pot.id, plan.potFrom]).toEqual(['electric-6qt', 'manuscript'])
  })
  it('takes a glass of the wine that is not listed', () => {
    expect(plan.loads.map(loadLine)).toEqual(
      lines(`
      0 salt [salt] 8.85 g 20 °C
      1 olive oil [olive-oil] 27 g 20 °C
      2 beef chuck [beef-chuck] 900 g 5 °C, 32 brick 30x30x30 mm (words)
      3 onions [onion] 340 g 20 °C, 2631 brick 5x5x5 mm (words)
      4 garlic [garlic] 18 g 20 °C, 46 slab 2x13x13 mm (words)
      5 tomato paste [tomato-paste] 48 g 20 °C
      6 tomato passata [passata] 700 g 20 °C
      7 red wine [red-wine] 120 g 20 °C, assumed
      8 dried oregano [dried-oregano] 1.4 g 20 °C
      9 basil leaves [basil] 16.5 g 20 °C
    `),
    )
  })
  it('pours passata over a brown layer that nobody scrapes', () => {
    expect(plan.operations.map(line)).toEqual(
      lines(`
      bench 6.64-12 min | gather, measure, cut * ~
      bench [0] 0.5-1 min | season the beef chuck * ~
      add [1] stirred 0.15-0.45 min | add the oil * (implied) ~
      heat high ? | heat the oil ~
      brown [2 0] x2 out 6 min | brown the beef, two batches *
      add [3] stirred 0.15-0.45 min | add the onions * ~
      fry sweat medium 5 min | soften the onions *
      add [4 5] stirred 0.217-0.65 min | add the garlic and tomato paste * ~
      fry fry medium 2 min | fry the garlic and tomato paste *
      add [6 7] stirred 0.217-0.65 min | add the passata and red wine * ~
      deglaze 0.3 0 min | liquid over the brown layer, not scraped (implied) ~
      add [8] stirred 0.15-0.45 min | add the oregano * ~
      return [2] stirred 0.25-0.5 min | put back the beef * ~
      lock 0.167-0.417 min | lock the lid * ~
      hold high 35 min | at pressure, 35 minutes
      release natural-then-vented 10 min | natural 10 minutes, then vent
      bench [2] 1.35-3 min | cut up the beef * ~
      reduce to ? 8-12 min | boil down * ~
      add [9] stirred 0.15-0.45 min | add the basil * ~
      serve 1-2.5 min | serve * ~
    `),
    )
  })
  it('says what it filled in, at the words', () => {
    expect(plan.findings.map(({ code, span }) => [code, span && recipe.text.slice(span.from, span.to)])).toEqual([
      ['unlisted-assumed', 'red wine'],
      ['time-assumed', 'simmer until thick'],
    ])
    expectCoherent(plan, recipe)
  })
})

describe('white bean soup', () => {
  const { recipe, plan } = planned(beans)
  it('weighs the beans as they come out of the soak', () => {
    expect(plan.loads.map(loadLine)).toEqual(
      lines(`
      0 olive oil [olive-oil] 27 g 20 °C
      1 onion [onion] 245 g 20 °C, 237 brick 10x10x10 mm (words)
      2 carrots [carrot] 271.5 g 20 °C, 42 cylinder 20x20x20 mm (words)
      3 celery [celery] 104 g 20 °C, 119 slab 6x12x12 mm (words)
      4 garlic [garlic] 18 g 20 °C, 572 brick 3x3x3 mm (words)
      5 sage [sage] 2.8 g 20 °C
      6 dried white beans [white-bean] 990.8 g 20 °C, soaked +491 g, 1100 slab 7x10.5x10.5 mm (usual)
      7 water [water] 1351 g 20 °C
      8 fine salt [fine-sea-salt] 8.25 g 20 °C
      9 lemon juice [lemon-juice] 10.17 g 20 °C
    `),
    )
  })
  it('soaks apart, mashes a third and lets the pressure fall by itself', () => {
    expect(plan.operations.map(line)).toEqual(
      lines(`
      bench apart 480-720 min | soak the dried white beans
      bench 4.35-8.68 min | gather, measure, cut * ~
      add [0] stirred 0.15-0.45 min | add the oil * (implied) ~
      heat medium ? | heat the oil ~
      add [1 2 3] stirred 0.283-0.85 min | add the onion, carrots and celery * ~
      fry sweat medium 6 min | soften the onion, carrots and celery *
      add [4 5] stirred 0.217-0.65 min | add the garlic and sage * ~
      fry fry medium 1 min | fry the garlic and sage *
      add [6 7 8] stirred 0.283-0.85 min | add the dried white beans, water and salt * ~
      lock 0.167-0.417 min | lock the lid * ~
      hold high 12 min | at pressure, 12 minutes
      release natural | natural release
      mash [1 2 3 4 6] 1-3 min | mash part * ~
      simmer simmer lid off medium-low 5 min | simmer *
      add [9] stirred 0.15-0.45 min | add the lemon juice * ~
      serve 1-2.5 min | serve * ~
    `),
    )
    const mash = plan.operations.find((op) => op.kind === 'mash')
    expect(mash?.kind === 'mash' && mash.share).toBeCloseTo(1 / 3, 9)
    const release = plan.operations.find((op) => op.kind === 'release')
    expect(release?.kind === 'release' && release.said_s).toEqual({ low: 1500, high: 1500 })
  })
  it('has nothing to fill in', () => {
    expect(plan.findings).toEqual([])
    expectCoherent(plan, recipe)
  })
})

describe('the dishes as they stand in examples/', () => {
  const folder = new URL('../../../examples/dishes/', import.meta.url)
  it.each(readdirSync(folder).filter((file) => file.endsWith('.txt')))('%s can be cooked as planned', (file) => {
    const { recipe, plan } = planned(readFileSync(new URL(file, folder), 'utf8'))
    expectCoherent(plan, recipe)
    expect(plan.potFrom).toBe('manuscript')
    expect(plan.operations.map((op) => op.kind)).toEqual(
      expect.arrayContaining(['bench', 'add', 'heat', 'fry', 'lock', 'hold', 'release', 'serve']),
    )
    expect(plan.findings.filter((each) => each.severity !== 'hint')).toEqual([])
  })
})
