import { type CookOptions, cookPlan, type Run } from './cook/index.ts'
import { byPlace, type Finding } from './findings/index.ts'
import { type Recipe, readRecipe } from './manuscript/index.ts'
import { type Plan, planRecipe } from './method/index.ts'
import { type PotCard, potById, potCards } from './pots/index.ts'
import { headlineTime } from './proof/index.ts'

export interface GlassOptions extends CookOptions {
  /** Pot id or a card of the user's own; the manuscript's own words, else the 6-quart electric pot, when left out. */
  readonly pot?: string | PotCard | null
  readonly altitude_m?: number | null
  readonly gauge_Pa?: number | null
}

export interface UnderGlass {
  readonly recipe: Recipe
  readonly plan: Plan
  readonly run: Run
  /** Queries of the reader and findings of the run in one list, in the order of the manuscript. */
  readonly findings: readonly Finding[]
}

/**
 * The main job in one call: reads a manuscript, plans it for a pot and cooks it.
 * Never throws on text; RangeError for an unknown pot or an altitude outside −500 to 6000 m.
 */
export function cookManuscript(text: string, options: GlassOptions = {}): UnderGlass {
  const recipe = readRecipe(text)
  const pot = typeof options.pot === 'string' ? potById(options.pot) : (options.pot ?? undefined)
  if (pot === null)
    throw new RangeError(`pot = ${String(options.pot)}: known are ${potCards.map((card) => card.id).join(', ')}`)
  const plan = planRecipe(recipe, {
    ...(pot ? { pot } : {}),
    ...(options.altitude_m != null ? { altitude_m: options.altitude_m } : {}),
    ...(options.gauge_Pa != null ? { gauge_Pa: options.gauge_Pa } : {}),
  })
  const run = cookPlan(plan, options)
  const headline = headlineTime(recipe, run)
  const found = headline ? [...run.findings, headline] : run.findings
  // The run has summed the clock: what the words alone said about it is settled either way, unless the run broke off.
  const queries = run.base.trips
    ? recipe.queries
    : recipe.queries.filter((q) => q.code !== 'headline-time-short' || headline === null)
  return { recipe, plan, run, findings: together(queries, found) }
}

/**
 * Where the run knows better than the words alone, the run speaks; and what was filled in to be able to cook at all is
 * said in the query about the same words: one note, not two, about one thing.
 */
function together(queries: readonly Finding[], found: readonly Finding[]): Finding[] {
  const said = new Set(found.map((f) => f.code))
  const asked = queries.filter((q) => !said.has(q.code))
  const kept: Finding[] = []
  for (const f of found) {
    const about = filledIn.has(f.code) ? asked.findIndex((q) => q.code !== f.code && overlap(q, f)) : -1
    if (about < 0) kept.push(f)
    else
      asked[about] = {
        ...asked[about],
        message: `${asked[about].message} ${f.code === 'time-assumed' ? f.message : f.title}`.trim(),
      }
  }
  return [...asked, ...kept].sort(byPlace)
}

/** Codes of the method room that only say what was taken where the words are silent. */
const filledIn = new Set([
  'amount-assumed',
  'unlisted-assumed',
  'to-cover-assumed',
  'size-not-said',
  'time-assumed',
  'level-assumed',
  'release-assumed',
  'oven-assumed',
])

function overlap(a: Finding, b: Finding): boolean {
  return a.span !== null && b.span !== null && a.span.from < b.span.to && b.span.from < a.span.to
}
