import { type Operation, type Recipe, readRecipe } from '../../../src/core/manuscript/index.ts'

const list = [
  '900 g beef chuck, cut into 3-cm pieces',
  '2 tsp salt',
  '2 tbsp olive oil',
  '2 onions, chopped',
  '3 carrots, sliced',
  '4 garlic cloves, crushed',
  '1 tsp ground cumin',
  '2 tbsp tomato paste',
  '200 ml red wine',
  '500 ml beef stock',
  '250 g dried white beans',
  '2 bay leaves',
  '1 tbsp lemon juice',
  '20 g parsley, chopped',
]

/** A manuscript with a usual list and the given method, in an electric pressure cooker unless the method says other. */
export const manuscript = (method: string, lines: readonly string[] = list): string =>
  `Beef and beans\n\nServes 6\n\n${lines.join('\n')}\n\n${method}\n`

export const readMethod = (method: string, lines: readonly string[] = list): Recipe =>
  readRecipe(manuscript(method, lines))

const minutes = (time: { low: number; high: number }): string => {
  const shown = (seconds: number): string => (seconds < 60 ? `${seconds} s` : `${Number((seconds / 60).toFixed(2))}`)
  return time.low === time.high ? shown(time.low) : `${shown(time.low)}-${shown(time.high)}`
}

/** One operation in a few words: "hold 35 high", "release 10 natural-then-vented:10", "brown 6 x2 each". */
export function brief(operation: Operation): string {
  const { verb, time_s, batches, perBatch, perSide, temperature_K, heat, pressure, release, releaseTime_s } = operation
  const said = [
    time_s && minutes(time_s),
    batches && `x${batches}`,
    perBatch && 'each',
    perSide && 'a side',
    temperature_K && `${Math.round(temperature_K.low - 273.15)}C`,
    heat,
    pressure && `at ${pressure}`,
    release && `${release}${releaseTime_s === null ? '' : `:${releaseTime_s / 60}`}`,
    operation.lid && `lid ${operation.lid}`,
    operation.reduceTo?.share != null && `to ${Number(operation.reduceTo.share.toFixed(3))}`,
    operation.reduceTo?.volume_m3 != null && `to ${Math.round(operation.reduceTo.volume_m3 * 1e6)} ml`,
    operation.place && `@${operation.place}`,
    operation.stirs && 'stirs',
    operation.scrapes && 'scrapes',
    operation.aside && `(${operation.aside})`,
    operation.meanwhile && '(meanwhile)',
  ]
  return [verb, ...said.filter(Boolean)].join(' ')
}

export const operationsOf = (recipe: Recipe): Operation[] => recipe.steps.flatMap((step) => step.operations)

/** Operations of a method, each in a few words. `sides` leaves out what a test does not ask about. */
export const ordered = (method: string): string[] => operationsOf(readMethod(method)).map(brief)

/** Uses of an operation: "beef chuck 0.5", "beef chuck 1 again", "salt ?". */
export const usesOf = (recipe: Recipe, operation: Operation): string =>
  operation.uses
    .map(({ ingredient, share, again }) => {
      const part = share === null ? '?' : Number(share.toFixed(3))
      return `${recipe.ingredients[ingredient]!.item} ${part}${again ? ' again' : ''}`
    })
    .join(', ')

/** A recipe as lines: one an operation, with what it touches. */
export const course = (recipe: Recipe): string[] =>
  operationsOf(recipe).map((operation) => `${brief(operation)} | ${usesOf(recipe, operation)}`)

export const lines = (expected: string): string[] =>
  expected
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
