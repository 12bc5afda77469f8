import type { Finding } from '../core/findings/index.ts'
import type { Ingredient, Measure, Operation, Range, Recipe, Step } from '../core/manuscript/index.ts'
import { celsiusFromKelvin } from '../core/units/index.ts'
import { rounded } from './rounded.ts'

// What `read --json` prints. Names and meanings are a contract with scripts: fields may be added, none renamed.
// Offsets count UTF-16 code units into the text as given; what is not known is null.

export function readJson(recipe: Recipe) {
  const { yield: makes, stated } = recipe
  return {
    kind: recipe.kind,
    title: recipe.title?.text ?? null,
    yield: makes ? { low: makes.low, high: makes.high, unit: makes.unit } : null,
    stated: {
      total_s: stated.total ? [stated.total.low_s, stated.total.high_s] : null,
      active_s: stated.active ? [stated.active.low_s, stated.active.high_s] : null,
    },
    ingredients: recipe.ingredients.map(ingredientJson),
    steps: recipe.steps.map(stepJson),
    queries: recipe.queries.map(queryJson),
  }
}

function ingredientJson(line: Ingredient) {
  return {
    line: line.line,
    from: line.from,
    to: line.to,
    low: line.low,
    high: line.high,
    unit: line.unit,
    pack: line.pack ? measureJson(line.pack) : null,
    also: line.also.map(measureJson),
    item: line.item,
    larder: line.larder,
    prep: line.prep,
    optional: line.optional,
    toTaste: line.toTaste,
    divided: line.divided,
    mass_g: line.mass_kg ? { low: rounded(line.mass_kg.low * 1000), high: rounded(line.mass_kg.high * 1000) } : null,
    massFrom: line.massFrom,
  }
}

function measureJson({ low, high, unit }: Measure) {
  return { low, high, unit }
}

function stepJson(step: Step) {
  return { text: step.text, from: step.from, to: step.to, operations: step.operations.map(operationJson) }
}

function operationJson(operation: Operation) {
  return {
    verb: operation.verb,
    from: operation.from,
    to: operation.to,
    minutes: pair(operation.time_s, (s) => s / 60),
    temperature_C: pair(operation.temperature_K, celsiusFromKelvin),
    heat: operation.heat,
    pressure: operation.pressure,
    release: operation.release,
    releaseMinutes: operation.releaseTime_s === null ? null : rounded(operation.releaseTime_s / 60),
    ingredients: [...new Set(operation.uses.map((use) => use.ingredient))],
  }
}

function pair(range: Range | null, of: (value: number) => number): [number, number] | null {
  return range ? [rounded(of(range.low)), rounded(of(range.high))] : null
}

function queryJson(query: Finding) {
  return {
    code: query.code,
    severity: query.severity,
    from: query.span?.from ?? null,
    to: query.span?.to ?? null,
    message: messageOf(query),
    cure: query.cure?.label ?? query.advice,
  }
}

/** The finding in one piece: its title, then the figures and the reason. */
export function messageOf({ title, message }: Finding): string {
  return `${title} ${message}`.trim()
}
