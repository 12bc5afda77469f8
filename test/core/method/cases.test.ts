import { describe, expect, it, vi } from 'vitest'

// The larder's entry is whatever kitchen character the line names, so that these tests are about the plan alone.
vi.mock('../../../src/core/larder/index.ts', async () => {
  const { someFood } = await import('./some-food.ts')
  const named: Record<string, string> = { 'red wine': 'alcohol', water: 'thin liquid' }
  return {
    foodById: (id: string) => someFood(id as never, { id, name: id, ...(id === 'pulse' ? { absorbs: 1.4 } : {}) }),
    findFood: (words: string) => (named[words] ? someFood(named[words] as never, { name: words }) : null),
  }
})

import type { Recipe } from '../../../src/core/manuscript/index.ts'
import { handTimes, type Plan, type PlanOperation, planRecipe } from '../../../src/core/method/index.ts'
import { potById } from '../../../src/core/pots/index.ts'
import { kelvinFromCelsius } from '../../../src/core/units/index.ts'
import { type Line, type Op, recipeOf } from './hand-made.ts'

const beef: Line = {
  line: '900 g beef, cut into 3-cm pieces',
  item: 'beef',
  larder: 'collagen cut',
  kg: 0.9,
  cut: { shape: 'pieces', cm: 3 },
}
const oil: Line = { line: '2 tbsp oil, divided', item: 'oil', larder: 'fat', kg: 0.027 }
const stock: Line = { line: '300 ml stock', item: 'stock', larder: 'thin liquid', kg: 0.3 }
const onion: Line = { line: '1 onion, chopped', item: 'onion', larder: 'aromatic', kg: 0.15, cut: { shape: 'chopped' } }
const step = (text: string, ...ops: Op[]) => ({ text, ops })
const kinds = (plan: Plan) => plan.operations.filter((op) => op.kind !== 'bench').map((op) => op.kind)
type Of<K extends PlanOperation['kind'], O = PlanOperation> = O extends PlanOperation
  ? K extends O['kind']
    ? O
    : never
  : never
const only = <K extends PlanOperation['kind']>(plan: Plan, kind: K) =>
  plan.operations.filter((op): op is Of<K> => op.kind === kind)
const codes = (plan: Plan) => plan.findings.map((each) => each.code)

const lockHold = (min: number): Op[] => [
  { words: 'Lock the lid', verb: 'lock' },
  { words: `cook at high pressure for ${min} minutes`, verb: 'hold', min, more: { pressure: 'high' } },
]

describe('portions', () => {
  const recipe = recipeOf({
    lines: [beef, oil, { line: '2 tsp salt, divided', item: 'salt', larder: 'salt', kg: 0.012 }, stock],
    steps: [
      step(
        'Toss the beef with 1 tsp of the salt. Heat half the oil. Brown half the beef for 6 minutes and lift it out. Brown the rest with the remaining oil.',
        {
          words: 'Toss the beef with 1 tsp of the salt',
          verb: 'season',
          uses: [
            ['beef', 0],
            ['1 tsp of the salt', 2, 0.5],
          ],
        },
        { words: 'Heat half the oil', verb: 'heat', uses: [['half the oil', 1, 0.5]] },
        { words: 'Brown half the beef for 6 minutes', verb: 'brown', min: 6, uses: [['half the beef', 0, 0.5]] },
        { words: 'lift it out', verb: 'lift', uses: [['it', 0, 0.5, 'again']] },
        {
          words: 'Brown the rest with the remaining oil',
          verb: 'brown',
          uses: [
            ['the rest', 0, 0.5],
            ['remaining oil', 1, 0.5],
          ],
        },
      ),
      step(
        'Add the stock and the beef. Lock the lid and cook at high pressure for 30 minutes.',
        {
          words: 'Add the stock and the beef',
          verb: 'add',
          uses: [
            ['stock', 3],
            ['beef', 0, 1, 'again'],
          ],
        },
        ...lockHold(30),
      ),
      step('Stir in the remaining salt.', {
        words: 'Stir in the remaining salt',
        verb: 'add',
        uses: [['remaining salt', 2, 0.5]],
      }),
    ],
  })
  const plan = planRecipe(recipe)
  it('makes two loads of what is used in two steps', () => {
    const salts = plan.loads.filter((load) => load.ingredient === 2)
    expect(salts.map((load) => load.mass_kg)).toEqual([0.006, 0.006])
    expect(plan.loads.filter((load) => load.ingredient === 1).map((load) => load.mass_kg)).toEqual([0.0135, 0.0135])
  })
  it('keeps half and the rest of the meat one load, browned in two batches', () => {
    expect(plan.loads.filter((load) => load.ingredient === 0).map((load) => load.mass_kg)).toEqual([0.9])
    const browned = only(plan, 'brown')
    expect(browned).toHaveLength(1)
    expect(browned[0]).toMatchObject({ batches: 2, time_s: { low: 360, high: 360 }, timed: true })
  })
  it('sends salt that was rubbed in with the meat', () => {
    const salt = plan.loads.find((load) => load.ingredient === 2)!
    expect(only(plan, 'brown')[0].loads).toContain(salt.id)
  })
  it('brings every load in once', () => {
    const entering = plan.operations.flatMap((op) => (op.kind === 'add' || op.kind === 'brown' ? op.loads : []))
    expect([...entering].sort((a, b) => a - b)).toEqual(plan.loads.map((load) => load.id))
  })
  it('leaves what is never used out of the pot', () => {
    const some = planRecipe(
      recipeOf({
        lines: [stock, onion],
        steps: [
          step('Bring the stock to the boil.', {
            words: 'Bring the stock to the boil',
            verb: 'boil',
            uses: [['stock', 0]],
          }),
        ],
      }),
    )
    expect(some.loads.map((load) => load.name)).toEqual(['stock'])
  })
  it('takes the unnamed lines when the words say everything', () => {
    const all = planRecipe(
      recipeOf({
        lines: [beef, onion, stock],
        steps: [
          step(
            'Put everything in the pot. Lock the lid and cook at high pressure for 30 minutes.',
            { words: 'Put everything in the pot', verb: 'add' },
            ...lockHold(30),
          ),
        ],
      }),
    )
    expect(all.loads.map((load) => load.name)).toEqual(['beef', 'onion', 'stock'])
  })
  it('shares "a little" out of what is left', () => {
    const little = planRecipe(
      recipeOf({
        lines: [oil, onion, stock],
        steps: [
          step(
            'Soften the onion in a little of the oil. Add the stock and the rest of the oil.',
            {
              words: 'Soften the onion in a little of the oil',
              verb: 'sweat',
              uses: [
                ['onion', 1],
                ['a little of the oil', 0, null],
              ],
            },
            {
              words: 'Add the stock and the rest of the oil',
              verb: 'add',
              uses: [
                ['stock', 2],
                ['rest of the oil', 0, 1],
              ],
            },
          ),
        ],
      }),
    )
    const oils = little.loads.filter((load) => load.ingredient === 0)
    expect(oils).toHaveLength(2)
    expect(oils[0].mass_kg + oils[1].mass_kg).toBeCloseTo(0.027, 12)
    expect(oils[0].mass_kg).toBeLessThan(oils[1].mass_kg)
    expect(oils[0].assumed).toBe(true)
  })
})

describe('amounts that the words leave open', () => {
  it('takes salt to taste for 1 % of the main food', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [
          beef,
          stock,
          { line: 'salt to taste', item: 'salt', larder: 'salt', kg: null, more: { toTaste: true } },
        ],
        steps: [
          step(
            'Add the beef, stock and salt. Simmer for 20 minutes.',
            {
              words: 'Add the beef, stock and salt',
              verb: 'add',
              uses: [
                ['beef', 0],
                ['stock', 1],
                ['salt', 2],
              ],
            },
            { words: 'Simmer for 20 minutes', verb: 'simmer', min: 20 },
          ),
        ],
      }),
    )
    const salt = plan.loads.find((load) => load.name === 'salt')!
    expect(salt.mass_kg).toBeCloseTo(0.009, 12)
    expect(salt.assumed).toBe(true)
    expect(codes(plan)).toContain('amount-assumed')
    expect(plan.findings.find((each) => each.code === 'amount-assumed')!.message).toContain('1 %')
  })
  it('pours water to cover as far as the solids of this pot need', () => {
    const recipe = recipeOf({
      lines: [beef, { line: 'water to cover', item: 'water', larder: 'thin liquid', kg: null }],
      steps: [
        step(
          'Put in the beef and water to cover. Simmer for 20 minutes.',
          {
            words: 'Put in the beef and water to cover',
            verb: 'add',
            uses: [
              ['beef', 0],
              ['water', 1],
            ],
          },
          { words: 'Simmer for 20 minutes', verb: 'simmer', min: 20 },
        ),
      ],
    })
    const small = planRecipe(recipe, { pot: potById('electric-3qt')! })
    const large = planRecipe(recipe, { pot: potById('electric-8qt')! })
    const litres = (plan: Plan) => plan.loads.find((load) => load.name === 'water')!.mass_kg
    // Voids of 40 % among 0.9 L of beef, 0.6 L, and a centimetre over 232 or 390 cm².
    expect(litres(small)).toBeCloseTo(0.9 * (0.4 / 0.6) + 0.232, 2)
    expect(litres(large)).toBeCloseTo(0.9 * (0.4 / 0.6) + 0.39, 2)
    expect(codes(small)).toContain('to-cover-assumed')
  })
  it('assumes an amount for what is used but not listed, tied to its words', () => {
    const lines = [beef, stock]
    const steps = [
      step(
        'Add the beef, the stock and the red wine. Lock the lid and cook at high pressure for 30 minutes.',
        {
          words: 'Add the beef, the stock and the red wine',
          verb: 'add' as const,
          uses: [
            ['beef', 0],
            ['stock', 1],
          ] as const,
        },
        ...lockHold(30),
      ),
    ]
    const bare = recipeOf({ lines, steps })
    const from = bare.text.indexOf('the red wine')
    const recipe: Recipe = {
      ...bare,
      queries: [
        {
          code: 'used-unlisted',
          severity: 'warning',
          span: { from, to: from + 12 },
          title: '',
          message: '',
          source: 'the words',
          advice: null,
          cure: null,
        },
      ],
    }
    const plan = planRecipe(recipe)
    expect(plan.loads.at(-1)).toMatchObject({ ingredient: null, name: 'red wine', mass_kg: 0.12, assumed: true })
    expect(only(plan, 'add')[0].loads).toContain(plan.loads.at(-1)!.id)
    const said = plan.findings.find((each) => each.code === 'unlisted-assumed')!
    expect(recipe.text.slice(said.span!.from, said.span!.to)).toBe('the red wine')
  })
  it('takes an unknown food for something watery and says so', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [{ line: '200 g zorbs', item: 'zorbs', larder: null, kg: 0.2 }, stock],
        steps: [
          step('Boil the zorbs in the stock for 5 minutes.', {
            words: 'Boil the zorbs in the stock for 5 minutes',
            verb: 'boil',
            min: 5,
            uses: [
              ['zorbs', 0],
              ['stock', 1],
            ],
          }),
        ],
      }),
    )
    expect(plan.loads[0]).toMatchObject({ name: 'zorbs', mass_kg: 0.2 })
    expect(codes(plan)).toContain('food-unknown')
  })
  it('asks for the size of a braising cut when none is said', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [{ ...beef, line: '900 g stewing beef', cut: undefined }, stock],
        steps: [
          step(
            'Add the beef and stock. Lock the lid and cook at high pressure for 30 minutes.',
            {
              words: 'Add the beef and stock',
              verb: 'add',
              uses: [
                ['beef', 0],
                ['stock', 1],
              ],
            },
            ...lockHold(30),
          ),
        ],
      }),
    )
    expect(plan.loads[0].pieces).toMatchObject({ from: 'usual' })
    expect(codes(plan)).toContain('size-not-said')
  })
})

describe('where food starts from', () => {
  const plan = planRecipe(
    recipeOf({
      lines: [
        beef,
        { line: '200 g frozen peas', item: 'peas', larder: 'firm vegetable', kg: 0.2, more: { state: 'frozen' } },
        { line: '500 ml hot stock', item: 'stock', larder: 'thin liquid', kg: 0.5, more: { state: 'hot' } },
        { line: '100 ml cream', item: 'cream', larder: 'dairy', kg: 0.1 },
        onion,
      ],
      steps: [step('Add everything.', { words: 'Add everything', verb: 'add' })],
    }),
  )
  it('knows the freezer, the fridge, the room and the kettle', () => {
    expect(plan.loads.map((load) => Math.round(load.start_K - 273.15))).toEqual([5, -18, 95, 5, 20])
    expect(plan.loads.map((load) => load.frozen)).toEqual([false, true, false, false, false])
  })
})

describe('soaked beans', () => {
  const beans: Line = {
    line: '500 g dried beans, soaked overnight and drained',
    item: 'dried beans',
    larder: 'pulse',
    kg: 0.5,
  }
  const water: Line = { line: '1.5 litres water', item: 'water', larder: 'thin liquid', kg: 1.5 }
  const plan = planRecipe(
    recipeOf({
      lines: [beans, water],
      steps: [
        step(
          'Add the beans and the water. Lock the lid and cook at high pressure for 12 minutes.',
          {
            words: 'Add the beans and the water',
            verb: 'add',
            uses: [
              ['beans', 0],
              ['water', 1],
            ],
          },
          ...lockHold(12),
        ),
      ],
    }),
  )
  it('weigh what they weigh when drained, and need less in the pot', () => {
    const load = plan.loads[0]
    expect(load.mass_kg).toBeGreaterThan(0.95)
    expect(load.mass_kg).toBeLessThanOrEqual(1)
    expect(load.soaked_kg).toBeCloseTo(load.mass_kg - 0.5, 9)
    expect(load.food.composition.water).toBeGreaterThan(0.85)
    expect(load.food.absorbs).toBeLessThan(0.25)
  })
  it('wait apart from the clock of the cook', () => {
    const soak = only(plan, 'bench').find((op) => op.verb === 'soak')!
    expect(soak).toMatchObject({ apart: true, handsOn: false, time_s: { low: 28800, high: 43200 } })
    expect(soak.soaked_kg).toBeCloseTo(plan.loads[0].soaked_kg!, 9)
  })
  it('stay dry when nobody soaks them', () => {
    const dry = planRecipe(
      recipeOf({
        lines: [{ ...beans, line: '500 g dried beans' }, water],
        steps: [
          step(
            'Add the beans and the water. Lock the lid and cook at high pressure for 40 minutes.',
            {
              words: 'Add the beans and the water',
              verb: 'add',
              uses: [
                ['beans', 0],
                ['water', 1],
              ],
            },
            ...lockHold(40),
          ),
        ],
      }),
    )
    expect(dry.loads[0]).toMatchObject({ mass_kg: 0.5 })
    expect(dry.loads[0].soaked_kg).toBeUndefined()
  })
  it('do not drink the soaking water that the list gives', () => {
    const soaked = planRecipe(
      recipeOf({
        lines: [
          { ...beans, line: '500 g dried beans' },
          { line: '2 litres soaking water', item: 'soaking water', larder: 'thin liquid', kg: 2 },
          water,
        ],
        steps: [
          step('Soak the beans in the soaking water for 10 hours.', {
            words: 'Soak the beans in the soaking water for 10 hours',
            verb: 'soak',
            min: 600,
            uses: [
              ['beans', 0],
              ['soaking water', 1],
            ],
          }),
          step(
            'Add the beans and the water. Lock the lid and cook at high pressure for 12 minutes.',
            {
              words: 'Add the beans and the water',
              verb: 'add',
              uses: [
                ['beans', 0],
                ['water', 2],
              ],
            },
            ...lockHold(12),
          ),
        ],
      }),
    )
    expect(soaked.loads.map((load) => load.name)).toEqual(['dried beans', 'water'])
    expect(soaked.loads[0].mass_kg).toBeCloseTo(0.5 * (2 - Math.exp(-4)), 6)
  })
})

describe('under the lid', () => {
  const add: Op = {
    words: 'Add the beef and stock',
    verb: 'add',
    uses: [
      ['beef', 0],
      ['stock', 1],
    ],
  }
  it('locks a lid that the words forget, and lets down a pressure that they leave', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [beef, stock],
        steps: [
          step(
            'Add the beef and stock, cook at high pressure for 30 minutes. Lift out the beef.',
            add,
            lockHold(30)[1],
            { words: 'Lift out the beef', verb: 'lift', uses: [['beef', 0, 1, 'again']] },
          ),
        ],
      }),
    )
    expect(kinds(plan)).toEqual(['add', 'lock', 'hold', 'release', 'lift'])
    expect(only(plan, 'lock')[0].implied).toBe(true)
    expect(only(plan, 'release')[0]).toMatchObject({ how: 'natural', natural_s: null, implied: true })
    expect(codes(plan)).toContain('release-assumed')
  })
  it('lets down a pot that the text ends with at pressure', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [beef, stock],
        steps: [
          step('Add the beef and stock. Lock the lid and cook at high pressure for 30 minutes.', add, ...lockHold(30)),
        ],
      }),
    )
    expect(kinds(plan)).toEqual(['add', 'lock', 'hold', 'release'])
  })
  it('goes to pressure twice', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [
          beef,
          stock,
          {
            line: '400 g carrots, in 3-cm pieces',
            item: 'carrots',
            larder: 'firm vegetable',
            kg: 0.4,
            cut: { shape: 'pieces', cm: 3 },
          },
        ],
        steps: [
          step(
            'Add the beef and stock. Lock the lid and cook at high pressure for 30 minutes. Release naturally for 10 minutes. Vent the rest.',
            add,
            ...lockHold(30),
            {
              words: 'Release naturally for 10 minutes',
              verb: 'release',
              more: { release: 'natural', releaseTime_s: 600 },
            },
            { words: 'Vent the rest', verb: 'release', more: { release: 'vented' } },
          ),
          step(
            'Add the carrots. Come back to pressure and cook for 3 minutes. Quick release.',
            { words: 'Add the carrots', verb: 'add', uses: [['carrots', 2]] },
            { words: 'Come back to pressure', verb: 'hold' },
            { words: 'cook for 3 minutes', verb: 'simmer', min: 3 },
            { words: 'Quick release', verb: 'release', more: { release: 'vented' } },
          ),
          step('Simmer for 5 minutes.', { words: 'Simmer for 5 minutes', verb: 'simmer', min: 5 }),
        ],
      }),
    )
    expect(kinds(plan)).toEqual(['add', 'lock', 'hold', 'release', 'add', 'lock', 'hold', 'release', 'simmer'])
    expect(only(plan, 'release').map((op) => [op.how, op.natural_s])).toEqual([
      ['natural-then-vented', 600],
      ['vented', null],
    ])
    expect(only(plan, 'hold').map((op) => op.time_s.high)).toEqual([1800, 180])
    expect(only(plan, 'simmer')[0]).toMatchObject({ lid: 'off', timed: true })
  })
  it('takes a printed time of a full natural release for what it is', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [beef, stock],
        steps: [
          step(
            'Add the beef and stock. Lock the lid and cook at high pressure for 30 minutes. Let it fall by itself, about 25 minutes.',
            add,
            ...lockHold(30),
            {
              words: 'Let it fall by itself, about 25 minutes',
              verb: 'release',
              min: 25,
              more: { release: 'natural' },
            },
          ),
        ],
      }),
    )
    expect(only(plan, 'release')[0]).toMatchObject({
      how: 'natural',
      natural_s: null,
      said_s: { low: 1500, high: 1500 },
    })
  })
  it('simmers in a pot that cannot hold pressure, and says it is not that dish', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [beef, stock],
        steps: [
          step(
            'Add the beef and stock. Lock the lid and cook at high pressure for 30 minutes. Release naturally.',
            add,
            ...lockHold(30),
            { words: 'Release naturally', verb: 'release', more: { release: 'natural' } },
          ),
        ],
      }),
      { pot: potById('dutch-oven')! },
    )
    expect(kinds(plan)).toEqual(['add', 'simmer'])
    expect(only(plan, 'simmer')[0]).toMatchObject({ lid: 'on', time_s: { low: 1800, high: 1800 } })
    expect(plan.findings.find((each) => each.code === 'pot-cannot-hold')!.severity).toBe('blocking')
  })
  it('fills in a time at pressure that is not said', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [beef, stock],
        steps: [
          step('Add the beef and stock. Cook at high pressure until tender.', add, {
            words: 'Cook at high pressure until tender',
            verb: 'hold',
            more: { cue: 'until tender' },
          }),
        ],
      }),
    )
    expect(only(plan, 'hold')[0]).toMatchObject({ timed: false, time_s: { low: 1800, high: 2400 } })
    expect(codes(plan)).toContain('time-assumed')
  })
})

describe('the base', () => {
  const browned = (...ops: Op[]) =>
    planRecipe(
      recipeOf({
        lines: [beef, oil, stock],
        steps: [
          step(
            'Heat the oil and brown the beef for 6 minutes. Add the stock and scrape up the bits. Pour the stock in. Simmer for 10 minutes.',
            { words: 'Heat the oil', verb: 'heat', uses: [['oil', 1]] },
            { words: 'brown the beef for 6 minutes', verb: 'brown', min: 6, uses: [['beef', 0]] },
            ...ops,
            { words: 'Simmer for 10 minutes', verb: 'simmer', min: 10 },
          ),
        ],
      }),
    )
  it('is scraped where the words say so', () => {
    const plan = browned(
      { words: 'Add the stock', verb: 'add', uses: [['stock', 2]] },
      { words: 'scrape up the bits', verb: 'deglaze', more: { scrapes: true } },
    )
    expect(only(plan, 'deglaze')).toHaveLength(1)
    expect(only(plan, 'deglaze')[0].scraped).toBe(0.9)
  })
  it('is only washed when liquid is poured over it', () => {
    const plan = browned({ words: 'Pour the stock in', verb: 'add', uses: [['stock', 2]] })
    expect(only(plan, 'deglaze')[0]).toMatchObject({ scraped: 0.3, implied: true, handsOn: false })
  })
  it('is heated before anything is fried in it, said or not', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [beef, oil, stock],
        steps: [
          step(
            'Brown the beef in the oil for 6 minutes. Add the stock.',
            {
              words: 'Brown the beef in the oil for 6 minutes',
              verb: 'brown',
              min: 6,
              uses: [
                ['beef', 0],
                ['oil', 1],
              ],
            },
            { words: 'Add the stock', verb: 'add', uses: [['stock', 2]] },
          ),
        ],
      }),
    )
    expect(kinds(plan)).toEqual(['add', 'heat', 'brown', 'add', 'deglaze'])
    expect(only(plan, 'heat')[0]).toMatchObject({ implied: true, time_s: null })
  })
})

describe('batches', () => {
  const brownOp = (more: Op['more'], min: number | undefined) =>
    only(
      planRecipe(
        recipeOf({
          lines: [beef, stock],
          steps: [
            step(
              'Brown the beef in two batches. Add the stock.',
              {
                words: 'Brown the beef in two batches',
                verb: 'brown',
                ...(min ? { min } : {}),
                uses: [['beef', 0]],
                more,
              },
              { words: 'Add the stock', verb: 'add', uses: [['stock', 1]] },
            ),
          ],
        }),
      ),
      'brown',
    )[0]
  it('takes minutes per batch as said, and minutes in all by the batch', () => {
    expect(brownOp({ batches: 2, perBatch: true }, 6).time_s).toEqual({ low: 360, high: 360 })
    expect(brownOp({ batches: 2, perBatch: false }, 12).time_s).toEqual({ low: 360, high: 360 })
    expect(brownOp({ batches: 2, perBatch: false }, undefined)).toMatchObject({ batches: 2, timed: false })
  })
  it('is literal about one batch', () => {
    expect(brownOp({}, 6).batches).toBe(1)
  })
})

describe('the oven', () => {
  const lines = [beef, oil, stock]
  const steps = [
    step(
      'Heat the oven to 150C. Heat the oil in a casserole and brown the beef for 6 minutes. Add the stock, bring to a simmer, cover and cook in the oven for 2 hours.',
      {
        words: 'Heat the oven to 150C',
        verb: 'heat',
        more: { place: 'oven', temperature_K: { low: kelvinFromCelsius(150), high: kelvinFromCelsius(150) } },
      },
      { words: 'Heat the oil in a casserole', verb: 'heat', uses: [['oil', 1]] },
      { words: 'brown the beef for 6 minutes', verb: 'brown', min: 6, uses: [['beef', 0]] },
      { words: 'Add the stock', verb: 'add', uses: [['stock', 2]] },
      { words: 'bring to a simmer', verb: 'boil' },
      { words: 'cook in the oven for 2 hours', verb: 'bake', min: 120, more: { place: 'oven', lid: 'on' } },
    ),
  ]
  it('is the pot of an oven braise, heated before and not waited for', () => {
    const plan = planRecipe(recipeOf({ lines, steps }))
    expect(plan.pot.id).toBe('dutch-oven')
    expect(plan.potFrom).toBe('manuscript')
    expect(kinds(plan)).toEqual(['add', 'heat', 'brown', 'add', 'deglaze', 'simmer', 'bake'])
    expect(only(plan, 'bake')[0]).toMatchObject({
      oven_K: kelvinFromCelsius(150),
      lid: 'on',
      time_s: { low: 7200, high: 7200 },
    })
    expect(only(plan, 'bench').find((op) => op.label === 'heat the oven')).toMatchObject({
      beside: true,
      handsOn: false,
    })
  })
  it('is missed in a pressure pot: the same time at a lidded simmer, and a finding', () => {
    const plan = planRecipe(recipeOf({ lines, steps }), { pot: potById('electric-6qt')! })
    expect(plan.potFrom).toBe('asked')
    expect(only(plan, 'bake')).toHaveLength(0)
    expect(only(plan, 'simmer').at(-1)).toMatchObject({ lid: 'on', time_s: { low: 7200, high: 7200 } })
    expect(codes(plan)).toContain('pot-cannot-bake')
  })
})

describe('beside the pot', () => {
  it('fries in another pan at the bench and brings it in later', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [stock, onion, oil],
        steps: [
          step(
            'Bring the stock to the boil in the pot. Simmer for 20 minutes.',
            {
              words: 'Bring the stock to the boil in the pot',
              verb: 'boil',
              uses: [['stock', 0]],
              more: { place: 'pot' },
            },
            { words: 'Simmer for 20 minutes', verb: 'simmer', min: 20 },
          ),
          step(
            'Meanwhile fry the onion in the oil in a skillet for 5 minutes. Add the onion to the pot.',
            {
              words: 'fry the onion in the oil in a skillet for 5 minutes',
              verb: 'fry',
              min: 5,
              uses: [
                ['onion', 1],
                ['oil', 2],
              ],
              more: { place: 'pan' },
            },
            {
              words: 'Add the onion to the pot',
              verb: 'add',
              uses: [['onion', 1, 1, 'again']],
              more: { place: 'pot' },
            },
          ),
        ],
      }),
    )
    expect(kinds(plan)).toEqual(['add', 'simmer', 'simmer', 'add'])
    const apart = only(plan, 'bench').at(-1)!
    expect(apart).toMatchObject({ beside: true, handsOn: true })
    expect(plan.loads.find((load) => load.name === 'onion')!.start_K).toBeCloseTo(kelvinFromCelsius(60), 9)
  })
  it('takes browned meat out only when it is set aside', () => {
    const out = (words: boolean) =>
      only(
        planRecipe(
          recipeOf({
            lines: [beef, onion, stock],
            steps: [
              step(
                'Brown the beef for 6 minutes. Set aside. Add the onion. Add the beef.',
                { words: 'Brown the beef for 6 minutes', verb: 'brown', min: 6, uses: [['beef', 0]] },
                ...(words ? [{ words: 'Set aside', verb: 'lift' as const }] : []),
                { words: 'Add the onion', verb: 'add', uses: [['onion', 1]] },
                { words: 'Add the beef', verb: 'add', uses: [['beef', 0, 1, 'again']] },
              ),
            ],
          }),
        ),
        'return',
      ).length
    expect(out(true)).toBe(1)
    expect(out(false)).toBe(0)
  })
  it('mashes a third in place', () => {
    const plan = planRecipe(
      recipeOf({
        lines: [
          { line: '500 g potatoes, diced', item: 'potatoes', larder: 'starch', kg: 0.5, cut: { shape: 'cubes' } },
          stock,
        ],
        steps: [
          step(
            'Simmer the potatoes in the stock for 15 minutes. Ladle a third of the soup into a bowl, mash it smooth and stir it back in.',
            {
              words: 'Simmer the potatoes in the stock for 15 minutes',
              verb: 'simmer',
              min: 15,
              uses: [
                ['potatoes', 0],
                ['stock', 1],
              ],
            },
            { words: 'Ladle a third of the soup into a bowl', verb: 'lift', more: { place: 'bowl' } },
            { words: 'mash it smooth', verb: 'mash' },
            { words: 'stir it back in', verb: 'add' },
          ),
        ],
      }),
    )
    expect(kinds(plan)).toEqual(['add', 'simmer', 'mash'])
    expect(only(plan, 'mash')[0].share).toBeCloseTo(1 / 3, 9)
  })
})

describe('options', () => {
  const recipe = recipeOf({
    lines: [beef, stock],
    steps: [
      step(
        'Add the beef and stock. Lock the lid and cook at high pressure for 30 minutes.',
        {
          words: 'Add the beef and stock',
          verb: 'add',
          uses: [
            ['beef', 0],
            ['stock', 1],
          ],
        },
        ...lockHold(30),
      ),
    ],
    more: { named: { pot: null, altitude_m: 1600 } },
  })
  it('puts the asked gauge pressure in place of the card’s', () => {
    const plan = planRecipe(recipe, { gauge_Pa: 82_737 })
    expect(plan.pot.regulator).toMatchObject({ holds: 'gauge', high: 82_737 })
    expect(planRecipe(recipe).pot.regulator!.high).not.toBe(82_737)
    expect(codes(planRecipe(recipe, { pot: potById('dutch-burner')!, gauge_Pa: 80_000 }))).toContain('gauge-ignored')
  })
  it('takes the altitude asked for before the one in the words', () => {
    expect(planRecipe(recipe).altitude_m).toBe(1600)
    expect(planRecipe(recipe, { altitude_m: 0 }).altitude_m).toBe(0)
  })
  it('refuses what is no altitude and no pressure', () => {
    expect(() => planRecipe(recipe, { altitude_m: Number.NaN })).toThrow(/altitude_m is NaN m/)
    expect(() => planRecipe(recipe, { gauge_Pa: 12 })).toThrow(/gauge_Pa is 12 Pa/)
  })
  it('uses the norms it is given', () => {
    const slow = { ...handTimes, lock: { ...handTimes.lock, low_s: 600, high_s: 900 } }
    expect(only(planRecipe(recipe, { handTimes: slow }), 'lock')[0].time_s).toEqual({ low: 600, high: 900 })
    expect(only(planRecipe(recipe), 'lock')[0].time_s.high).toBe(handTimes.lock.high_s)
  })
})
