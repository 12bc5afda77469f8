import { foodById } from '../core/larder/index.ts'
import type { Ingredient, Operation, Recipe } from '../core/manuscript/index.ts'
import { celsiusFromKelvin } from '../core/units/index.ts'
import { amount, grams, kitchenNumber, minutes, size } from './figures.ts'
import { findingLines } from './findings-text.ts'
import { columnsOf, paragraph, table } from './layout.ts'
import type { Terminal } from './terminal.ts'
import { understood } from './understood.ts'

/** What the careful stranger understood, as a cook can read it aloud. */
export function readText(recipe: Recipe, out: Terminal): string {
  const parts = [
    headLines(recipe, out),
    paragraph(understood(recipe), out.columns),
    section('Ingredients', ingredientLines(recipe, out), out),
    section('Method', stepLines(recipe, out), out),
    section(
      recipe.queries.length === 0
        ? 'No queries'
        : recipe.queries.length === 1
          ? 'One query'
          : `${recipe.queries.length} queries`,
      findingLines(recipe.text, recipe.queries, out),
      out,
    ),
  ]
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join('\n'))
    .join('\n\n')}\n`
}

export function section(heading: string, lines: readonly string[], out: Terminal): string[] {
  if (lines.length === 0 && !heading.startsWith('No ')) return []
  return [out.bold(heading), ...lines]
}

function headLines(recipe: Recipe, out: Terminal): string[] {
  const { title, yield: makes, stated, named } = recipe
  const said = [
    makes ? `Makes ${range(makes.low, makes.high)} ${makes.unit}.` : '',
    stated.total ? `Stated in all: ${minutes({ low: stated.total.low_s, high: stated.total.high_s })}.` : '',
    stated.active ? `Stated by hand: ${minutes({ low: stated.active.low_s, high: stated.active.high_s })}.` : '',
    named.altitude_m !== null ? `Written for ${Math.round(named.altitude_m)} m.` : '',
  ].filter((one) => one !== '')
  return [
    ...paragraph(title?.text ?? '(no title)', out.columns).map(out.bold),
    ...(said.length > 0 ? paragraph(said.join(' '), out.columns) : []),
  ]
}

function range(low: number, high: number): string {
  return low === high ? kitchenNumber(low) : `${kitchenNumber(low)} to ${kitchenNumber(high)}`
}

function ingredientLines(recipe: Recipe, out: Terminal): string[] {
  if (recipe.ingredients.length === 0) return []
  const rows = recipe.ingredients.map((one) => [
    amount(one),
    foodWords(one),
    cutWords(one),
    massWords(one),
    larderWords(one),
  ])
  const head = ['amount', 'food', 'cut', 'grams', 'taken for']
  const narrow = out.columns < 60
  const room = out.columns - 2
  const lines = table(
    narrow ? rows.map(([a, b, , d]) => [a, b, d]) : [head, ...rows],
    narrow
      ? [{ side: 'right', most: 12 }, { most: Math.floor(room * 0.45) }, {}]
      : [
          { side: 'right', most: 16 },
          { most: Math.floor(room * 0.28) },
          { most: Math.floor(room * 0.2) },
          { side: 'right', most: 14 },
          { most: 26 },
        ],
    out.columns,
  )
  return narrow ? lines : [out.soft(lines[0]), ...lines.slice(1)]
}

function foodWords(one: Ingredient): string {
  const notes = [
    one.optional ? 'optional' : '',
    one.divided ? 'divided' : '',
    one.toTaste && one.low !== null ? 'to taste' : '',
  ]
  const said = notes.filter((note) => note !== '')
  return `${one.item}${said.length > 0 ? ` (${said.join(', ')})` : ''}`
}

function cutWords({ cut, state }: Ingredient): string {
  const words = cut ? `${cut.size_m ? `${size(cut.size_m)} ` : ''}${cut.shape}` : ''
  return [words, state ?? ''].filter((word) => word !== '').join(', ')
}

function massWords({ mass_kg }: Ingredient): string {
  return mass_kg ? grams(mass_kg) : 'not known'
}

function larderWords({ larder }: Ingredient): string {
  return larder === null ? 'not in the larder' : (foodById(larder)?.name ?? larder)
}

function stepLines(recipe: Recipe, out: Terminal): string[] {
  const verbs = Math.max(4, ...recipe.steps.flatMap((step) => step.operations.map((o) => columnsOf(o.verb))))
  return recipe.steps.flatMap((step, i) => {
    const number = `${i + 1}.`.padStart(4)
    if (step.operations.length === 0) return [`${number} ${out.soft('nothing to do in the pot')}`]
    return step.operations.flatMap((operation, k) => {
      const lead = `${k === 0 ? number : '    '} ${operation.verb.padEnd(verbs)}  `
      const lines = paragraph(operationWords(recipe, operation), out.columns, lead.length, 0)
      return lines.length === 0 ? [lead.trimEnd()] : [lead + lines[0].trimStart(), ...lines.slice(1)]
    })
  })
}

function operationWords(recipe: Recipe, o: Operation): string {
  const used = [...new Map(o.uses.map((use) => [use.ingredient, use])).values()].map((use) => {
    const name = recipe.ingredients[use.ingredient]?.item ?? '?'
    const share = use.share !== null && use.share > 0 && use.share < 0.995 ? `${shareWords(use.share)} of the ` : ''
    return `${share}${name}${use.again ? ' (back)' : ''}`
  })
  const time = o.time_s
    ? `${minutes(o.time_s)}${o.batches && o.batches > 1 ? (o.perBatch ? ` each, ${o.batches} batches` : ` in all, ${o.batches} batches`) : ''}`
    : o.batches && o.batches > 1
      ? `${o.batches} batches`
      : ''
  const temperature = o.temperature_K
    ? `${range(Math.round(celsiusFromKelvin(o.temperature_K.low)), Math.round(celsiusFromKelvin(o.temperature_K.high)))} °C`
    : ''
  const release = o.release
    ? o.release === 'natural-then-vented'
      ? `naturally${o.releaseTime_s !== null ? ` for ${minutes({ low: o.releaseTime_s, high: o.releaseTime_s })}` : ''}, then vented`
      : { natural: 'naturally', vented: 'vented at once', iced: 'under ice' }[o.release]
    : ''
  const boiled = o.reduceTo
    ? o.reduceTo.share !== null
      ? `to ${shareWords(o.reduceTo.share)}`
      : o.reduceTo.volume_m3 !== null
        ? `to ${Math.round(o.reduceTo.volume_m3 * 1e6)} ml`
        : ''
    : ''
  return [
    used.join(', '),
    time,
    o.pressure ? `${o.pressure} pressure` : '',
    o.heat ? `${o.heat} heat` : '',
    temperature,
    release,
    boiled,
    o.scrapes ? 'scraping the base' : '',
    o.stirs ? 'stirring' : '',
    o.lid ? `lid ${o.lid}` : '',
    o.place && o.place !== 'pot' ? `in the ${o.place}` : '',
    o.cue ? `until ${o.cue.replace(/^until\s+/i, '')}` : '',
  ]
    .filter((part) => part !== '')
    .join('; ')
}

function shareWords(share: number): string {
  const known: [number, string][] = [
    [1 / 2, 'half'],
    [1 / 3, 'a third'],
    [2 / 3, 'two thirds'],
    [1 / 4, 'a quarter'],
    [3 / 4, 'three quarters'],
  ]
  return known.find(([value]) => Math.abs(value - share) < 0.01)?.[1] ?? `${Math.round(share * 100)} %`
}
