import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { markFaults, noFaults } from '../../../scripts/marks/faults.ts'
import { markMethod } from '../../../scripts/marks/method.ts'
import { Tally } from '../../../scripts/marks/tally.ts'
import { loadSet } from '../../../scripts/marks/truth.ts'
import { applyCure, type Span } from '../../../src/core/findings/index.ts'
import { type Recipe, readRecipe } from '../../../src/core/manuscript/index.ts'
import { course, lines, operationsOf } from './reading.ts'

const dish = (name: string): string =>
  readFileSync(new URL(`../../../examples/dishes/${name}.txt`, import.meta.url), 'utf8')
const folder = fileURLToPath(new URL('../../manuscripts', import.meta.url))

describe('the pork dish', () => {
  const recipe = readRecipe(dish('pork-shoulder-leeks-cider'))
  it('is read whole', () => {
    expect(course(recipe)).toEqual(
      lines(`
      mix | table salt 0.8, boneless pork shoulder 1
      heat 3 high | rapeseed oil 0.5
      brown 7 | boneless pork shoulder 0.5
      lift @bowl | boneless pork shoulder 0.5
      brown 7 | rapeseed oil 0.5, boneless pork shoulder 0.5
      lift @bowl | boneless pork shoulder 0.5
      add | leeks 1
      sweat 5 stirs | leeks 1
      add | garlic 1
      fry 30 s | garlic 1
      add | dry cider 1
      deglaze scrapes |
      add | boneless pork shoulder 1 again, thyme 1
      lock lid on |
      hold 30 at high |
      release 15 natural-then-vented:15 |
      lift | boneless pork shoulder 1
      lift | thyme 1
      boil 10 |
      add | grainy mustard 1, table salt 0.2
      add | boneless pork shoulder 1 again
      serve |`).map((line) => (line.endsWith('|') ? `${line} ` : line)),
    )
  })
  it('leaves nothing to ask', () => {
    expect(recipe.queries).toEqual([])
    expect(recipe.kind).toBe('recipe')
    expect(recipe.named.pot?.id).toBe('electric-6qt')
    expect(recipe.text.slice(recipe.named.pot!.from, recipe.named.pot!.to)).toBe('6-quart electric pressure cooker')
  })
  it('keeps its cues', () => {
    expect(operationsOf(recipe).flatMap((operation) => operation.cue ?? [])).toEqual([
      'until just smoking',
      'until softened',
      'until it lightly coats a spoon',
    ])
  })
})

describe('the beef sauce', () => {
  const text = dish('beef-tomato-sauce')
  const recipe = readRecipe(text)
  it('is read whole', () => {
    expect(course(recipe)).toEqual(
      lines(`
      season | beef chuck 1, salt 1
      heat high | olive oil 1
      brown 6 x2 each | beef chuck 1
      lift | beef chuck 1
      add | onions 1
      sweat 5 | onions 1
      add | garlic 1, tomato paste 1
      fry 2 | garlic 1, tomato paste 1
      add | tomato passata 1
      add | dried oregano 1, beef chuck 1 again
      lock lid on |
      hold 35 at high |
      release 10 natural-then-vented:10 |
      mash | beef chuck 1
      simmer |
      add | basil leaves 1
      serve |`).map((line) => (line.endsWith('|') ? `${line} ` : line)),
    )
  })
  it('asks three things, each at its words', () => {
    const asked = recipe.queries.map((query) => [
      query.code,
      query.severity,
      query.span && text.slice(query.span.from, query.span.to),
    ])
    expect(asked).toEqual([
      ['headline-time-short', 'warning', 'Ready in 50 minutes'],
      ['used-unlisted', 'warning', 'red wine'],
      ['reduce-no-target', 'warning', 'until thick'],
    ])
  })
  it('the wine listed, the query is gone', () => {
    const cure = recipe.queries.find((query) => query.code === 'used-unlisted')!.cure!
    const cured = applyCure(text, cure)
    expect(cured).toContain('a handful of basil leaves\nred wine\n')
    expect(readRecipe(cured).queries.map((query) => query.code)).not.toContain('used-unlisted')
  })
})

describe('the bean soup', () => {
  const recipe = readRecipe(dish('white-bean-soup'))
  it('is read whole', () => {
    expect(course(recipe)).toEqual(
      lines(`
      heat medium | olive oil 1
      add | onion 1, carrots 1, celery 1
      sweat 6 stirs | onion 1, carrots 1, celery 1
      add | garlic 1, sage 1
      fry 1 | garlic 1, sage 1
      add | dried white beans 1, water 1, fine salt 1
      mix |
      lock lid on |
      hold 12 at high |
      release 25 natural:25 |
      add @bowl |
      mash |
      add |
      simmer 5 |
      add | lemon juice 1
      serve |`).map((line) => (line.endsWith('|') ? `${line} ` : line)),
    )
  })
  it('leaves nothing to ask', () => {
    expect(recipe.queries).toEqual([])
  })
})

describe('the labelled manuscripts', () => {
  const set = loadSet(folder, 'pressure')
  it('are all there', () => {
    expect(set.length).toBe(22)
  })
  it('are read as labelled: verbs, minutes, temperature, pressure and release together', () => {
    const tally = new Tally()
    for (const labelled of set) markMethod(tally, labelled, readRecipe(labelled.text))
    expect(tally.misses.filter((miss) => miss.startsWith('together'))).toEqual([])
  })
  it('all planted faults are found, and clean texts draw no warning', () => {
    const marks = noFaults()
    for (const labelled of set) markFaults(marks, labelled, readRecipe(labelled.text))
    expect(marks.lines.filter((line) => /^(?:missed|false)/.test(line))).toEqual([])
    expect(marks.found).toBe(marks.planted)
    expect(marks.planted).toBe(18)
    expect(marks.cleanTexts).toBe(14)
  })
  it('the queries about planted faults carry their own codes', () => {
    for (const { truth, text } of set) {
      const { queries } = readRecipe(text)
      for (const fault of truth.faults ?? []) {
        const from = text.indexOf(fault.words)
        const near = queries.filter(
          (query) => query.span && query.span.from < from + fault.words.length && query.span.to > from,
        )
        expect(
          near.map((query) => query.code),
          `${truth.file}: ${fault.words}`,
        ).toContain(fault.kind.replace('temp-pair', 'temperature-pair'))
      }
    }
  })
})

/** What must hold of the reading of any text at all. */
function check(text: string): void {
  const recipe: Recipe = readRecipe(text)
  const inside = (span: Span | null | undefined): void => {
    if (!span) return
    expect(Number.isInteger(span.from) && Number.isInteger(span.to)).toBe(true)
    expect(span.from).toBeGreaterThanOrEqual(0)
    expect(span.from).toBeLessThanOrEqual(span.to)
    expect(span.to).toBeLessThanOrEqual(text.length)
  }
  expect(recipe.text).toBe(text)
  inside(recipe.named.pot)
  for (const step of recipe.steps) {
    expect(text.slice(step.from, step.to)).toBe(step.text)
    for (const operation of step.operations) {
      inside(operation)
      expect(operation.from >= step.from && operation.to <= step.to).toBe(true)
      for (const place of Object.values(operation.places ?? {})) inside(place)
      for (const range of [operation.time_s, operation.temperature_K]) {
        if (range) expect(range.low >= 0 && range.low <= range.high && Number.isFinite(range.high)).toBe(true)
      }
      for (const use of operation.uses) {
        inside(use)
        expect(recipe.ingredients[use.ingredient]).toBeDefined()
        if (use.share !== null) expect(use.share >= 0 && use.share <= 1).toBe(true)
      }
    }
  }
  for (const query of recipe.queries) {
    inside(query.span)
    expect(query.title).not.toBe('')
    for (const edit of query.cure?.edits ?? []) inside(edit)
    if (query.cure) applyCure(text, query.cure)
  }
  if (recipe.kind !== 'recipe') expect(recipe.queries.some((query) => query.severity === 'blocking')).toBe(true)
}

describe('any text', () => {
  it('any string', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 400 }), check), { numRuns: 150 })
  })
  it('any words of the kitchen, in any order', () => {
    const words = fc.constantFrom(
      ...(
        'add the onions and cook for 5 minutes until soft , . ; : ( ) - 1/2 1½ of half remaining it them lock lid high pressure release naturally 10 15 psi °F 350 C ' +
        'constructor __proto__ toString "Brown" w/ + & beef salt oil to taste \n \n\n 1. * in two batches repeat with rest cover bring boil simmer 0/0 99999999999 %'
      ).split(' '),
    )
    fc.assert(
      fc.property(fc.array(words, { maxLength: 120 }), (parts) => check(parts.join(' '))),
      { numRuns: 150 },
    )
  })
  it('a good manuscript with a piece torn out or doubled', () => {
    const texts = ['pork-shoulder-leeks-cider', 'beef-tomato-sauce', 'white-bean-soup'].map(dish)
    const torn = fc
      .tuple(fc.constantFrom(...texts), fc.nat(1500), fc.nat(200), fc.boolean())
      .map(([text, at, length, doubled]) => {
        const from = Math.min(at, text.length)
        return text.slice(0, from) + text.slice(doubled ? Math.max(0, from - length) : from + length)
      })
    fc.assert(fc.property(torn, check), { numRuns: 150 })
  })
  it('time grows with the text, not with its square', () => {
    const one = dish('pork-shoulder-leeks-cider')
    const time = (text: string): number => {
      const start = performance.now()
      readRecipe(text)
      return performance.now() - start
    }
    const method = 'Add the leeks and 1 tablespoon of the oil and cook for 5 minutes. '
    time(one + method.repeat(200))
    const short = Math.min(time(one + method.repeat(200)), time(one + method.repeat(200)))
    const long = Math.min(time(one + method.repeat(1600)), time(one + method.repeat(1600)))
    // Eight times the text: a square would take 64 times as long. Wide, for machines that do other things meanwhile.
    expect(long).toBeLessThan(Math.max(short, 20) * 30)
  })
})

it('says so when no step can be followed, and asks nothing else', () => {
  const text =
    'Gulasch\n\n800 g Rindfleisch\n3 Zwiebeln\n\nDas Fleisch anbraten. Zwiebeln zugeben und 2 Stunden schmoren.\n'
  const { queries } = readRecipe(text)
  expect(queries.map((q) => q.code)).toEqual(['nothing-followed'])
})
