import type { Character } from '../larder/index.ts'
import type { Lid } from './operations-manner.ts'
import type { Slots } from './operations-raw.ts'
import type { VerbCode } from './recipe.ts'
import type { Mention, Pantry } from './uses-match.ts'

/** What the words so far have made of the pot. */
export interface PotState {
  /** Lid locked, not yet opened. */
  locked: boolean
  /** Pressure has been held since the lid was locked. */
  held: boolean
  oven: boolean
  lid: Lid | null
  /** Liquid stands in the pot. */
  wet: boolean
  /** Ingredients named by the last operation that named any. */
  lastAdded: readonly number[]
}

const meats: ReadonlySet<Character> = new Set([
  'collagen cut',
  'lean meat',
  'poultry dark',
  'poultry light',
  'sausage',
  'fish',
] as const)
const starchy: ReadonlySet<Character> = new Set(['starch', 'grain', 'pasta', 'pulse'] as const)
const wetters: ReadonlySet<Character> = new Set(['thin liquid', 'thick liquid', 'alcohol'] as const)
const madeWet = /^(?:sauce|soup|stew|curry|gravy|mixture)$/u
const softened: ReadonlySet<Character> = new Set([
  'aromatic',
  'firm vegetable',
  'soft vegetable',
  'leafy vegetable',
  'mushroom',
] as const)
const liquidWords = /^(?:water|broth|wine|beer|cider|milk|passata|ale|stout|liquid|juice|liquor|tea|brandy)$/u

export const isMeat = (character: Character | null): boolean => character !== null && meats.has(character)

/** Do the named things bring liquid into the pot? */
export function isWet(mentions: readonly Mention[], pantry: Pantry): boolean {
  return mentions.some((mention) => {
    if (liquidWords.test(mention.head) || (mention.found.length === 0 && madeWet.test(mention.head))) return true
    return mention.found.some((index) => {
      const known = pantry.known[index]!
      return (
        (known.character !== null && wetters.has(known.character)) ||
        [...known.heads].some((head) => liquidWords.test(head))
      )
    })
  })
}

const brownCue = /\b(?:brown|browned|golden|gold|crisp|crust|colou?red|caramel)/iu
const softCue = /\b(?:soft|softe|translucent|tender|wilt|limp|collapse|transparent|glassy)/iu
const smellCue = /\b(?:fragrant|aroma|smell|smells)/iu
const thickCue = /\b(?:thick|reduce|syrup|evaporat|absorb)/iu

/** Characters of what an order is about: what it names, else what was named last. */
function about(state: PotState, slots: Slots, pantry: Pantry): (Character | null)[] {
  const named = slots.mentions.filter((mention) => !mention.late)
  const found = named.flatMap((mention) => [...mention.found])
  const groups = slots.mentions.flatMap((mention): Character[] =>
    mention.group === 'meat'
      ? ['lean meat']
      : mention.group === 'vegetables'
        ? ['soft vegetable']
        : mention.group === 'spices'
          ? ['spice']
          : [],
  )
  if (groups.length > 0) return [...groups, ...found.map((index) => pantry.known[index]?.character ?? null)]
  const characters = found.map((index) => pantry.known[index]?.character ?? null)
  // "cook them in two spoons of lard": the fat is only the means.
  if (characters.some((one) => one !== 'fat')) return characters
  return state.lastAdded.map((index) => pantry.known[index]?.character ?? null)
}

/** "cook" in an open pot. */
export function cookedAs(state: PotState, slots: Slots, pantry: Pantry): VerbCode {
  const characters = about(state, slots, pantry)
  const cue = slots.cue?.value ?? ''
  const long = slots.time !== null && slots.time.low_s >= 15 * 60
  const covered = slots.lid === 'on' || state.lid === 'on' || slots.lid === 'ajar' || state.lid === 'ajar'
  const wetNow = state.wet || isWet(slots.mentions, pantry)
  if (brownCue.test(cue) && /evaporat/iu.test(cue)) return 'fry'
  const short = slots.time !== null && slots.time.high_s <= 180
  // A paste or spices stirred in for a minute are fried, whatever else the pot holds.
  if (!covered && short && /^(?:paste|spice|herb)$/u.test(characters[0] ?? ''))
    return characters.includes('spice') ? 'bloom' : 'fry'
  if (smellCue.test(cue)) return characters.includes('spice') ? 'bloom' : 'fry'
  if (wetNow || covered) return 'simmer'
  if (thickCue.test(cue)) return 'simmer'
  const soft = characters.some((one) => one !== null && softened.has(one))
  if (soft && softCue.test(cue) && !brownCue.test(cue) && !characters.some(isMeat)) return 'sweat'
  if (characters.some(isMeat)) return long && !brownCue.test(cue) ? 'simmer' : brownCue.test(cue) ? 'brown' : 'fry'
  if (characters.some((one) => one !== null && starchy.has(one)) && !brownCue.test(cue))
    return long || softCue.test(cue) || slots.time === null ? 'simmer' : 'fry'
  if (long) return 'simmer'
  if (characters.length > 0 && characters.includes('spice') && slots.time !== null && slots.time.high_s <= 180)
    return 'bloom'
  if (brownCue.test(cue)) return 'fry'
  if (softCue.test(cue)) return 'sweat'
  const vegetable = characters.some(
    (one) => one === 'firm vegetable' || one === 'soft vegetable' || one === 'leafy vegetable',
  )
  // Onions take minutes to soften; garlic for half a minute is fried.
  const softens = characters.includes('aromatic') && (slots.time === null || slots.time.low_s >= 150)
  return vegetable || softens ? 'sweat' : 'fry'
}

/** "sauté": meat and spices fry, vegetables sweat. */
export function sautéedAs(state: PotState, slots: Slots, pantry: Pantry): VerbCode {
  const cue = slots.cue?.value ?? ''
  const characters = about(state, slots, pantry)
  if (brownCue.test(cue)) return 'fry'
  if (characters.length > 0 && characters.every((one) => one === 'spice' || one === 'herb' || one === 'seasoning'))
    return slots.time ? 'bloom' : 'fry'
  if (characters.some(isMeat)) return 'fry'
  return 'sweat'
}
