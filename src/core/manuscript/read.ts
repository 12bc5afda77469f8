import type { Span } from '../findings/index.ts'
import { findFood, foodById } from '../larder/index.ts'
import { readIngredients } from './ingredient.ts'
import { type Layout, layOut } from './layout.ts'
import { askAbout } from './queries.ts'
import { containing } from './queries-finding.ts'
import { askAboutKind, askAboutText, foreignLanguage, longest } from './queries-kind.ts'
import { readNamed } from './read-pot.ts'
import type { Ingredient, Operation, Recipe, Step, Use } from './recipe.ts'
import { draftOperations } from './steps.ts'
import type { Draft } from './steps-draft.ts'
import { resolveUses } from './uses.ts'
import { stockPantry } from './uses-match.ts'

/** Signs that a manuscript cooks under pressure, in small letters. */
const pressureWords = new RegExp(
  [
    'pressure[- ]?(?:cook|pan|pot|release|valve|regulator)',
    '(?:high|medium|low|full|to|at|under|let|the) pressure\\b',
    'lock(?:ed)? (?:on )?(?:the )?lid\\b',
    '(?:psi|p/c|hp|lp|qr|npr)\\b',
    'nr \\d',
    'to \\d{1,2} (?:lb|lbs|pounds)\\b',
    'manual high',
    'quick[- ]release',
    'natural (?:steam |pressure )?release',
    '(?:first|second) (?:red )?ring\\b',
    'control at \\d',
    'valve\\b',
  ]
    .map((sign) => `\\b${sign}`)
    .join('|'),
  'u',
)
const hurried = / \+ |\bw\/ |\bthru\b|\bs\/t[ée]\b|\bo\/n\b/u
const tags = /<\/?(?:p|div|br|li|ul|ol|h[1-6]|table|tr|td|span|html|body)\b/iu

const hasTags = (text: string): boolean => text.includes('<') && tags.test(text)

/** Small letters, in a text as long as it was: a few capitals grow by a mark when they are made small. */
function smallLetters(reading: string): string {
  const small = reading.toLowerCase()
  return small.length === reading.length ? small : reading.replace(/[A-Z]/gu, (letter) => letter.toLowerCase())
}

/** The food of an ingredient line, by its larder entry or by its words. */
const foodOf = (ingredient: Ingredient) =>
  (ingredient.larder ? foodById(ingredient.larder) : null) ?? findFood(ingredient.item, { unit: ingredient.unit })

function operationOf(draft: Draft, uses: readonly Use[]): Operation {
  const { clause } = draft.raw
  const verb = draft.raw.verb && clause.head >= 0 ? draft.tokens[clause.head] : undefined
  const reduceTo = draft.raw.slots.reduceTo
  const temperature = draft.raw.slots.temperatures[0]
  const span = (at: Span): Span => ({ from: at.from, to: at.to })
  return {
    verb: draft.verb,
    from: draft.from,
    to: draft.to,
    time_s: draft.time,
    batches: draft.batches,
    perBatch: draft.perBatch,
    temperature_K: draft.temperature_K,
    heat: draft.heat,
    pressure: draft.pressure,
    release: draft.release,
    releaseTime_s: draft.releaseTime_s,
    uses,
    cue: draft.cue,
    lid: draft.lid,
    scrapes: draft.scrapes,
    stirs: draft.stirs,
    reduceTo: draft.reduceTo,
    place: draft.place,
    ...(draft.perSide && { perSide: true }),
    ...(draft.aside && { aside: draft.aside }),
    ...(draft.meanwhile && { meanwhile: true }),
    places: {
      ...(verb && { verb: span(verb) }),
      ...(draft.timeSpan && { time: span(draft.timeSpan) }),
      ...(temperature && draft.temperature_K && { temperature: span(temperature) }),
      ...(draft.heatSpan && { heat: span(draft.heatSpan) }),
      ...(draft.pressureSpan && { pressure: span(draft.pressureSpan) }),
      ...(draft.cueSpan && { cue: span(draft.cueSpan) }),
      ...(reduceTo && draft.reduceTo && { reduceTo: span(reduceTo) }),
    },
  }
}

/** A manuscript that is laid out and whose list is read, understood as a whole. */
function understand(layout: Layout, ingredients: readonly Ingredient[]): Recipe {
  const { text, reading } = layout
  const small = smallLetters(reading)
  const pressed = pressureWords.test(small)
  const pantry = stockPantry(ingredients, foodOf, hurried.test(small))
  const method = draftOperations({ reading, steps: layout.steps, pantry, pressed })
  const { drafts } = method
  const groupOf = ingredients.map((ingredient) => {
    const group = containing(layout.ingredients, ingredient)?.group
    return group ? reading.slice(group.from, group.to) : ''
  })
  const touches = resolveUses(drafts, pantry, reading, (index) => groupOf[index]!)
  const operations: Operation[][] = layout.steps.map(() => [])
  drafts.forEach((draft, i) => {
    operations[draft.step]!.push(operationOf(draft, touches.uses[i]!))
  })
  const steps: Step[] = layout.steps.map((step, index) => ({
    from: step.from,
    to: step.to,
    text: step.text,
    operations: operations[index]!,
  }))
  const language =
    layout.kind === 'recipe' || layout.kind === 'prose' || layout.kind === 'list' ? foreignLanguage(reading) : null
  const kind: Recipe['kind'] = language ? 'prose' : layout.kind
  const known = {
    text,
    reading,
    layout,
    kind,
    ingredients,
    pantry,
    drafts,
    touches,
    pressed,
    twoVessels: method.twoVessels,
  }
  return {
    text,
    title: layout.title
      ? { from: layout.title.from, to: layout.title.to, text: text.slice(layout.title.from, layout.title.to) }
      : null,
    yield: layout.yield,
    stated: { total: layout.stated.total, active: layout.stated.active },
    named: readNamed(small, pressed),
    ingredients,
    steps,
    queries: [
      ...askAboutText(text, hasTags(text)),
      ...askAboutKind(kind, language),
      ...(kind === 'recipe' ? askAbout(known) : []),
    ],
    kind,
  }
}

/**
 * Reads a manuscript as a careful stranger would: what is listed, what is asked for in which order, what each order
 * touches, and what the words leave open. Never throws, whatever the text; time grows in proportion to the text.
 */
export function readRecipe(text: string): Recipe {
  const layout = layOut(text.length > longest ? text.slice(0, longest) : text)
  const recipe = understand(layout, readIngredients(layout, layout.text))
  if (layout.text.length === text.length) return recipe
  return {
    ...recipe,
    text,
    queries: [
      ...askAboutText(text, hasTags(layout.text)),
      ...recipe.queries.filter((query) => query.code !== 'markup-passed-over'),
    ],
  }
}
