import type { Finding } from '../findings/index.ts'
import type { Recipe } from '../manuscript/index.ts'
import { defaultPotId, type PotCard, potById, potCards } from '../pots/index.ts'
import { methodWords, numberOf } from './words.ts'

const electricWords =
  /\belectric\b|saut[eé]\s*(setting|function|button|mode|,|on\b|med|low|high|for\b)|\b(on|to|using|select|press|hit|turn on)\s+(the\s+)?saut[eé]\b|s\/t[eé]|press cancel|keep warm|set the valve|multi-?cooker|manual high|\bp\/c\b/
const stovetopWords =
  /stove-?top|pressure pan|\b15\s*-?\s*(psi|lbs?|pounds)\b|(off|from) the (heat|burner|flame)|over (a )?(high|medium|low|moderate)|without the weight|lower (the )?heat|flame|under (cold )?running water/
const pressureWords = /pressure|\bpsi\b|lock (the )?lid|seal (the )?(lid|cooker|pot)|\b(hp|lp)\s+\d/
const ovenWords = /\boven\b/
const hobWords =
  /casserole|dutch oven|\bpot\b|saucepan|\bpan\b|skillet|\bwok\b|stewpan|kettle|\bhob\b|\bburner\b|stovetop/

/** Capacity named in the words, m3; null when none is. */
function sizeNamed_m3(words: string): number | null {
  const found = /(\d+(?:[.,]\d+)?)\s*-?\s*(quart|qt|litre|liter|l)\b/.exec(words)
  const value = found && numberOf(found[1])
  if (!found || !value || value < 2 || value > 14) return null
  return value * (found[2].startsWith('q') ? 0.946353e-3 : 1e-3)
}

const nearest = (cards: readonly PotCard[], capacity_m3: number): PotCard =>
  cards.reduce((best, card) =>
    Math.abs(card.capacity_m3 - capacity_m3) < Math.abs(best.capacity_m3 - capacity_m3) ? card : best,
  )

/** The card that the words of a method point to; null when they name no vessel. */
export function potInWords(recipe: Recipe): PotCard | null {
  const head = recipe.text.slice(0, recipe.ingredients[0]?.from ?? 0).toLowerCase()
  const words = `${head}\n${methodWords(recipe)}`
  const verbs = new Set(recipe.steps.flatMap((step) => step.operations.map((operation) => operation.verb)))
  if (verbs.has('hold') || pressureWords.test(words)) {
    // An electric word settles it: "over the top" or "lower the heat" is said of both.
    const kind = electricWords.test(words) ? 'electric' : stovetopWords.test(words) ? 'stovetop' : null
    const size_m3 = sizeNamed_m3(words)
    if (!kind && size_m3 === null) return null
    const cards = potCards.filter((card) => card.kind === (kind ?? 'electric'))
    return cards.length > 0 ? nearest(cards, size_m3 ?? potById(defaultPotId)?.capacity_m3 ?? 0) : null
  }
  if (verbs.has('bake') && ovenWords.test(words)) return potById('dutch-oven')
  return hobWords.test(words) ? potById('dutch-burner') : null
}

/** The pot of a plan: asked for, else named or pointed to by the manuscript, else the default. */
export function choosePot(
  recipe: Recipe,
  options: { readonly pot?: PotCard; readonly gauge_Pa?: number },
): { pot: PotCard; potFrom: 'asked' | 'manuscript' | 'default'; findings: Finding[] } {
  const findings: Finding[] = []
  const named = recipe.named.pot ? potById(recipe.named.pot.id) : null
  const said = named ?? potInWords(recipe)
  const card = options.pot ?? said ?? potById(defaultPotId) ?? potCards[0]
  const potFrom = options.pot ? 'asked' : said ? 'manuscript' : 'default'
  if (options.gauge_Pa === undefined) return { pot: card, potFrom, findings }
  if (!card.regulator) {
    findings.push({
      code: 'gauge-ignored',
      severity: 'hint',
      span: null,
      title: 'No gauge to set.',
      message: `A ${card.name} holds no pressure, so the gauge pressure asked for changes nothing.`,
      source: 'the pot’s card',
      advice: null,
      cure: null,
    })
    return { pot: card, potFrom, findings }
  }
  const { regulator } = card
  const gaugeBefore = regulator.holds === 'gauge'
  const pot: PotCard = {
    ...card,
    regulator: {
      holds: 'gauge',
      high: options.gauge_Pa,
      low: Math.min(gaugeBefore ? regulator.low : options.gauge_Pa / 2, options.gauge_Pa),
      // A band in kelvin means nothing for a gauge: 4 kPa is what the electric cards carry (assumed).
      band: regulator.holds === 'temperature' ? 4_000 : regulator.band,
      vents: regulator.vents,
    },
  }
  return { pot, potFrom, findings }
}
