import { expect, it } from 'vitest'
import { statedSum } from '../../../src/core/method/index.ts'
import { recipeOf } from './hand-made.ts'

it('sums the minutes a method prints, batches multiplied, waiting apart', () => {
  const recipe = recipeOf({
    lines: [{ line: '500 g beans', item: 'beans', larder: 'pulse', kg: 0.5 }],
    steps: [
      {
        text: 'Soak for 8 to 12 hours. Brown in two batches, 6 minutes per batch. Cook at high pressure for 30 to 35 minutes. Release naturally for 10 minutes. Serve.',
        ops: [
          { words: 'Soak for 8 to 12 hours', verb: 'soak', min: [480, 720] },
          {
            words: 'Brown in two batches, 6 minutes per batch',
            verb: 'brown',
            min: 6,
            more: { batches: 2, perBatch: true },
          },
          { words: 'Cook at high pressure for 30 to 35 minutes', verb: 'hold', min: [30, 35] },
          {
            words: 'Release naturally for 10 minutes',
            verb: 'release',
            more: { release: 'natural', releaseTime_s: 600 },
          },
          { words: 'Serve', verb: 'serve' },
        ],
      },
    ],
  })
  const sum = statedSum(recipe)
  expect(sum.time_s).toEqual({ low: (12 + 30 + 10) * 60, high: (12 + 35 + 10) * 60 })
  expect(sum.apart_s).toEqual({ low: 480 * 60, high: 720 * 60 })
  expect(sum.parts.map((part) => recipe.text.slice(part.from, part.to))).toEqual([
    'Soak for 8 to 12 hours',
    'Brown in two batches, 6 minutes per batch',
    'Cook at high pressure for 30 to 35 minutes',
    'Release naturally for 10 minutes',
  ])
})
it('counts a batch time once when it is said in all', () => {
  const recipe = recipeOf({
    lines: [{ line: 'beef', item: 'beef', larder: null, kg: 1 }],
    steps: [
      {
        text: 'Brown in two batches, 8 minutes in all.',
        ops: [
          {
            words: 'Brown in two batches, 8 minutes in all',
            verb: 'brown',
            min: 8,
            more: { batches: 2, perBatch: false },
          },
        ],
      },
    ],
  })
  expect(statedSum(recipe).time_s).toEqual({ low: 480, high: 480 })
})
