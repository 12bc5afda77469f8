import type { Operation, Recipe, VerbCode } from '../manuscript/index.ts'
import { sentenceAround } from './words.ts'

/** Where an operation happens: at the bench, in the vessel of the plan, in another pan, or it only heats the oven. */
export type Where = 'bench' | 'main' | 'side' | 'oven'

/** An operation of the manuscript in its place, with the words round it. */
export interface Placed {
  readonly op: Operation
  readonly step: number
  readonly where: Where
  /** Lower-case words of the operation and of the sentence it stands in. */
  readonly words: string
  readonly sentence: string
}

const alwaysBench: ReadonlySet<VerbCode> = new Set(['soak', 'pickle', 'marinate'])
const benchBeforeHeat: ReadonlySet<VerbCode> = new Set([
  'mix',
  'season',
  'chill',
  'drain',
  'add',
  'rest',
  'mash',
  'cut',
  'lift',
  'strain',
  'skim',
  'thicken',
  'settle',
])
const cooking: ReadonlySet<VerbCode> = new Set([
  'heat',
  'brown',
  'sweat',
  'bloom',
  'fry',
  'deglaze',
  'boil',
  'simmer',
  'reduce',
  'lock',
  'hold',
  'release',
  'bake',
])
/** Cooking that settles which vessel the dish is about. */
const long: ReadonlySet<VerbCode> = new Set(['simmer', 'hold', 'lock', 'release', 'bake', 'boil', 'reduce'])

const intoVessel = /\b(pot|cooker|casserole|pan|saucepan|dutch oven|kettle|skillet|wok|stewpan|insert)\b/
const anotherVessel =
  /\b(2nd|second|another|separate) (p\/c|pot|pan|cooker|pressure cooker|saucepan|casserole|burner|frying pan|skillet)\b/
const bowlWords =
  /\b(bowl|(?<!(casserole|baking|roasting|oven|gratin|braising) )dish|plate|jug|basin|tray|bag|board|blender|processor|mortar)\b/

/** The same words with none of them after. */
const lastOf = (pattern: RegExp): RegExp => new RegExp(`${pattern.source}(?![^]*${pattern.source})`)

/** Places every operation of a recipe, in the order of the text. */
export function placeOperations(recipe: Recipe): Placed[] {
  const lower = recipe.text.toLowerCase()
  const flat = courseOf(recipe)
  // A pan is only a side vessel when the dish itself cooks in something else.
  const otherVessel = flat.some(
    ({ op }) =>
      (op.place === 'pot' && long.has(op.verb)) ||
      op.verb === 'hold' ||
      op.verb === 'lock' ||
      (op.verb === 'bake' && op.place === 'oven'),
  )
  const longInPan = flat.some(({ op }) => op.place === 'pan' && long.has(op.verb) && (op.time_s?.high ?? 0) > 900)
  const panIsSide = otherVessel && !longInPan
  const placed: Placed[] = []
  let heated = false
  let entered = new Set<number>()
  let sideStep = -1
  let sideLocks = false
  const sideways = new Set<number>()
  for (const [at, { op, step }] of flat.entries()) {
    const words = lower.slice(op.from, op.to)
    const sentence = sentenceAround(lower, op)
    const where = placeOf()
    if (where === 'main') {
      if (cooking.has(op.verb)) heated = true
      for (const use of op.uses) entered.add(use.ingredient)
    }
    if (where === 'side') for (const use of op.uses) sideways.add(use.ingredient)
    sideStep = where === 'side' ? step : op.place !== null || where === 'main' ? -1 : sideStep
    placed.push({ op, step, where, words, sentence })

    function placeOf(): Where {
      if (
        op.verb === 'heat' &&
        (op.place === 'oven' || (op.temperature_K !== null && /\boven\b/.test(sentence) && op.uses.length === 0))
      )
        return 'oven'
      if (alwaysBench.has(op.verb)) return 'bench'
      if (op.place === 'fridge') return op.verb === 'serve' ? 'main' : 'bench'
      if (op.verb === 'cut') return 'bench'
      if (op.verb === 'serve') return 'main'
      const outside = op.uses.length > 0 && op.uses.every((use) => !entered.has(use.ingredient))
      if (op.place === 'bowl') {
        // "Transfer to a bowl" takes food out of the pot; only what never was in it is bench work.
        if (op.verb === 'lift' || op.verb === 'rest' || op.verb === 'strain' || op.verb === 'drain')
          return heated ? 'main' : 'bench'
        return op.verb === 'mash' && heated ? 'main' : cooking.has(op.verb) ? (heated ? 'main' : 'side') : 'bench'
      }
      if (op.place === 'pan' && panIsSide) {
        sideLocks = false
        return 'side'
      }
      // "Char the onion under the grill".
      if (op.place === 'oven' && (op.verb === 'brown' || op.verb === 'fry' || op.verb === 'bloom')) return 'side'
      const soFar = sentence.slice(0, sentence.indexOf(words) + words.length)
      if (anotherVessel.test(words) || (anotherVessel.test(soFar) && !intoVessel.test(words))) {
        sideLocks = true
        return 'side'
      }
      // "… and pour over the curry": what was fried apart comes to the dish.
      if (op.verb === 'add' && op.uses.length > 0 && op.uses.every((use) => sideways.has(use.ingredient))) return 'main'
      // "In a small pan fry the leaves. Stir in the chilli" stays there until the step ends or another vessel is named.
      if (
        op.place === null &&
        sideStep === step &&
        (cooking.has(op.verb) || op.verb === 'add' || op.verb === 'mix') &&
        // A frying pan has no lid to lock; a second cooker has.
        (sideLocks || (op.verb !== 'lock' && op.verb !== 'hold' && op.verb !== 'release')) &&
        !intoVessel.test(words)
      )
        return 'side'
      // "Roast the marinated chicken … add the chicken": done apart, before the dish itself begins.
      if (op.verb === 'bake' && !heated && op.uses.length > 0 && addedLater(at)) return 'side'
      if (heated) return (op.verb === 'mix' || op.verb === 'season') && outside && benchLater(at) ? 'bench' : 'main'
      if (!benchBeforeHeat.has(op.verb)) return 'main'
      if (op.verb === 'add') return op.place === 'pot' || op.place === 'rack' || !inBowl(at) ? 'main' : 'bench'
      if (op.verb === 'mix' && (op.place === 'pot' || intoVessel.test(sentence))) return 'main'
      return 'bench'
    }
  }
  entered = new Set()
  return placed

  /** Whether an addition before any heat goes on in the bowl that the step has last spoken of, or been mixing in. */
  function inBowl(at: number): boolean {
    const { op, step } = flat[at]
    const before = lower.slice(recipe.steps[step].from, op.to)
    if (/\bsoak/.test(sentenceAround(lower, op))) return true
    const bowl = before.search(lastOf(bowlWords))
    const vessel = before.search(lastOf(intoVessel))
    if (bowl !== vessel) return bowl > vessel
    const last = placed.at(-1)
    return last?.step === step && last.where === 'bench' && (last.op.verb === 'mix' || last.op.verb === 'add')
  }

  function addedLater(at: number): boolean {
    return flat
      .slice(at + 1)
      .some(
        ({ op }) =>
          op.verb === 'add' &&
          op.uses.some((use) => flat[at].op.uses.some((mine) => mine.ingredient === use.ingredient)),
      )
  }

  /** Seasoned or mixed with the pot already hot, but put into it only by a later operation of the same step or after. */
  function benchLater(at: number): boolean {
    const { op } = flat[at]
    const solids = op.uses.filter((use) => !use.again)
    if (solids.length < (op.verb === 'season' ? 1 : 2)) return false
    return flat
      .slice(at + 1)
      .some(
        ({ op: later }) =>
          (later.verb === 'add' || later.verb === 'brown' || later.verb === 'fry' || later.verb === 'sweat') &&
          later.uses.some((use) => op.uses.some((mine) => mine.ingredient === use.ingredient)),
      )
  }
}

/** The operations that are the course of the method: one of two ways, and times said again, are not. */
function courseOf(recipe: Recipe): { op: Operation; step: number }[] {
  const all = recipe.steps.flatMap((step, index) => step.operations.map((op) => ({ op, step: index })))
  const sure = new Set(all.flatMap(({ op }) => (op.aside ? [] : op.uses.map((use) => use.ingredient))))
  return all.filter(({ op }) => {
    if (!op.aside) return true
    // "If you are using garlic, add it here": what is listed is bought, and this is the only place it goes in.
    return op.aside === 'condition' && op.uses.some((use) => !sure.has(use.ingredient))
  })
}
