import fc from 'fast-check'
import { describe, it } from 'vitest'
import { foods } from '../../../src/core/larder/index.ts'
import { type Operation, type Recipe, readRecipe, verbCodes } from '../../../src/core/manuscript/index.ts'
import { planRecipe, statedSum, timeline } from '../../../src/core/method/index.ts'
import { potCards } from '../../../src/core/pots/index.ts'
import { expectCoherent } from './coherent.ts'

const text =
  'Toss everything with half the rest, bring it to the boil, lock the lid; brown in the oven until thick and golden.'
const span = fc
  .tuple(fc.nat(text.length), fc.nat(text.length))
  .map(([a, b]) => ({ from: Math.min(a, b), to: Math.max(a, b) }))
const range = (max: number) =>
  fc
    .tuple(fc.double({ min: 0, max, noNaN: true }), fc.double({ min: 0, max, noNaN: true }))
    .map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) }))
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary)

const ingredient = (index: number) =>
  fc
    .record({
      span,
      larder: maybe(fc.constantFrom(...foods.map((food) => food.id), 'no-such-food')),
      item: fc.constantFrom('beef', 'salt', 'water', 'zorbs', '', 'red kidney beans', 'lemon', 'oil'),
      line: fc.constantFrom(
        '500 g beef, cut into 4 pieces',
        'water to cover',
        'salt to taste',
        '2 onions, quartered',
        'beans, soaked overnight',
        '1 whole chicken',
        '',
      ),
      amount: maybe(range(1000)),
      unit: maybe(fc.constantFrom('g', 'cup', 'can', 'clove', 'tsp', 'lb') as fc.Arbitrary<never>),
      mass_kg: maybe(range(6)),
      cut: maybe(
        fc.record({
          shape: fc.constantFrom(
            'whole',
            'halves',
            'pieces',
            'cubes',
            'slices',
            'sticks',
            'strips',
            'chopped',
            'minced',
            'shredded',
            'ground',
          ) as fc.Arbitrary<never>,
          size_m: maybe(range(0.2)),
          from: fc.constant(0),
          to: fc.constant(1),
        }),
      ),
      state: maybe(fc.constantFrom('frozen', 'chilled', 'room', 'hot') as fc.Arbitrary<never>),
      toTaste: fc.boolean(),
    })
    .map(({ span, amount, ...rest }) => ({
      ...span,
      index,
      ...rest,
      low: amount?.low ?? null,
      high: amount?.high ?? null,
      amountSpan: null,
      pack: null,
      also: [],
      itemSpan: null,
      prep: null,
      optional: false,
      divided: false,
      massFrom: '',
    }))

const operation = (lines: number): fc.Arbitrary<Operation> =>
  fc
    .record({
      span,
      verb: fc.constantFrom(...verbCodes),
      time_s: maybe(range(40_000)),
      batches: maybe(fc.integer({ min: 1, max: 6 })),
      perBatch: fc.boolean(),
      temperature_K: maybe(range(600)),
      heat: maybe(fc.constantFrom('low', 'medium', 'high') as fc.Arbitrary<never>),
      pressure: maybe(fc.constantFrom('high', 'medium', 'low') as fc.Arbitrary<never>),
      release: maybe(fc.constantFrom('natural', 'vented', 'natural-then-vented', 'iced') as fc.Arbitrary<never>),
      releaseTime_s: maybe(fc.double({ min: 0, max: 3000, noNaN: true })),
      uses: fc.array(
        fc
          .record({
            span,
            ingredient: fc.nat(Math.max(0, lines - 1)),
            share: maybe(fc.double({ min: 0, max: 1, noNaN: true })),
            again: fc.boolean(),
          })
          .map(({ span, ...rest }) => ({ ...span, ...rest })),
        { maxLength: lines === 0 ? 0 : 4 },
      ),
      cue: maybe(fc.constantFrom('until thick', 'until tender')),
      lid: maybe(fc.constantFrom('on', 'off', 'ajar') as fc.Arbitrary<never>),
      scrapes: fc.boolean(),
      stirs: fc.boolean(),
      reduceTo: maybe(
        fc.record({
          share: maybe(fc.double({ min: 0, max: 1, noNaN: true })),
          volume_m3: maybe(fc.double({ min: 0, max: 0.01, noNaN: true })),
        }),
      ),
      place: maybe(fc.constantFrom('pot', 'bowl', 'oven', 'pan', 'rack', 'fridge') as fc.Arbitrary<never>),
      perSide: fc.boolean(),
      meanwhile: fc.boolean(),
    })
    .map(({ span, ...rest }) => ({ ...span, ...rest }) as Operation)

const anyRecipe: fc.Arbitrary<Recipe> = fc.nat(6).chain((lines) =>
  fc
    .record({
      ingredients: fc.tuple(...Array.from({ length: lines }, (_, index) => ingredient(index))) as fc.Arbitrary<never>,
      steps: fc.array(fc.array(operation(lines), { maxLength: 7 }), { maxLength: 5 }),
    })
    .map(({ ingredients, steps }) => ({
      text,
      title: null,
      yield: null,
      stated: { total: null, active: null },
      named: { pot: null, altitude_m: null },
      ingredients,
      queries: [],
      kind: 'recipe' as const,
      steps: steps.map((operations) => ({ from: 0, to: text.length, text, operations })),
    })),
)

describe('any recipe at all', () => {
  it('gives a plan that can be done, in any pot', () => {
    fc.assert(
      fc.property(anyRecipe, fc.constantFrom(undefined, ...potCards), (recipe, pot) => {
        const plan = planRecipe(recipe, { pot })
        expectCoherent(plan, recipe)
        const { total_s, handsOn_s } = timeline(plan)
        if (!(total_s.low >= 0 && total_s.low <= total_s.high && handsOn_s.high <= total_s.high + 1e-6))
          throw new Error('the clock runs backwards')
        if (!Number.isFinite(statedSum(recipe).time_s.high)) throw new Error('the printed minutes do not add up')
      }),
      { numRuns: 300 },
    )
  })
  it('gives one for whatever a person may paste', () => {
    const word = fc.constantFrom(
      '1 kg beef',
      'cut into 3-cm pieces',
      '2 onions',
      'Brown the beef',
      'in two batches',
      'Add the onions',
      'Lock the lid',
      'cook at high pressure',
      'for 30 minutes',
      'Release naturally.',
      '\n\n',
      '\n',
      '1.',
      'until thick',
      '200 ml stock',
      'Simmer',
      'salt to taste',
      'the rest of',
      'everything',
      'Serves 4',
      '½',
      '°C',
      'oven',
    )
    const pasted = fc.oneof(
      fc.array(word, { maxLength: 60 }).map((words) => words.join(' ')),
      fc.string({ maxLength: 300, unit: 'grapheme' }),
    )
    fc.assert(
      fc.property(pasted, (words) => {
        const recipe = readRecipe(words)
        expectCoherent(planRecipe(recipe), recipe)
      }),
      { numRuns: 200 },
    )
  })
})
