import {
  after,
  boilWord,
  destination,
  dishes,
  fats,
  has,
  infinitive,
  innerVerb,
  type Look,
  type Meaning,
  movesLid,
  named,
  objectIs,
  servings,
  within,
  wordAt,
} from './operations-look.ts'
import type { RawKind } from './operations-raw.ts'

// Verbs of moving: what they mean depends on what is moved and where to.

const durable = /^(?:simmer|boil|soak|marinate|brown|bake|rest|drain|chill|sweat)$/u

/** add, put, place, set, return, pour over, spoon, scatter … */
export function move(look: Look, meaning: Meaning): RawKind[] {
  const { slots, lemma } = look
  const early = settingByMove(look, meaning) ?? backAgain(look)
  if (early) return early
  if (has(look, /^aside$/u)) return named(look) && lemma === 'set' ? ['lift'] : ['none']
  if (movesLid(look) && !named(look)) return ['lid']
  // "Place the pressure regulator on the vent pipe": the lid is on and shut.
  if (objectIs(look, /^(?:regulator|weight|rocker|petcock|jiggler)$/u)) return ['lock']
  if (slots.place === 'fridge') return ['chill']
  const inner = infinitive(look)
  if (slots.place === 'oven') return slots.time || inner?.entry.code === 'bake' ? ['bake'] : ['oven-in']
  // "set the pan on the side of the fire to simmer gently", "add beef to brown"
  if (inner && durable.test(inner.entry.code ?? '')) {
    const kinds = meaning(within(look, inner))
    return lemma === 'add' && named(look) ? ['add', ...kinds] : kinds
  }
  return served(look) ?? taken(look) ?? ['add']
}

/** "lower the heat", "set to high", "set the timer for 60 minutes", "set the valve to sealing". */
function settingByMove(look: Look, meaning: Meaning): RawKind[] | null {
  const { slots, lemma } = look
  if (!/^(?:lower|drop|set|put|place|return|position)$/u.test(lemma)) return null
  if (has(look, /^(?:valve|vent)$/u)) return has(look, /^(?:venting|release|open)$/u) ? ['release'] : ['lock']
  if (objectIs(look, /^(?:heat|flame|gas|temperature)$/u)) return slots.temperatures.length > 0 ? ['heat'] : ['set']
  if (lemma !== 'set') return null
  const inner = infinitive(look)
  if (has(look, /^(?:timer|sauté|saute|manual|program|control|regulator|selector|gauge)$/u) || slots.pressure) {
    if (inner?.entry.frame === 'cook' && inner.entry.code !== 'sweat') return meaning(within(look, inner))
    return slots.time ? ['hold'] : ['set']
  }
  if (/^(?:to|it|on)$/u.test(after(look, 1)) && slots.heat && !named(look))
    return inner ? meaning(within(look, inner)) : ['set']
  const loose = after(look, 1) === 'to' ? innerVerb(look) : null
  return loose ? meaning(within(look, loose)) : null
}

/** "return to a simmer", "put the casserole back on the hob". */
function backAgain(look: Look): RawKind[] | null {
  if (look.lemma !== 'return' && look.lemma !== 'put') return null
  const boil = /^(?:to|the|a|back)$/u.test(after(look, 1)) ? boilWord(look) : null
  if (boil) return [boil]
  if (/^(?:to|up|back)$/u.test(after(look, 1)) && has(look, /^pressure$/u) && !has(look, /^cooker$/u)) return ['heat']
  return has(look, /^(?:hob|stove|stovetop|burner)$/u) && !named(look) ? ['oven-out'] : null
}

/** "ladle into bowls", "spoon around the duck". */
function served(look: Look): RawKind[] | null {
  const { lemma, clause } = look
  if (/^(?:spoon|ladle|pile|divide|spread)$/u.test(lemma) && has(look, servings)) return ['serve']
  if (lemma === 'divide') return /^(?:among|between)$/u.test(after(look, 1)) ? ['serve'] : ['cut']
  if (lemma !== 'spoon' && lemma !== 'ladle') return null
  if (after(look, 1) === 'off') return ['skim']
  let to = look.head + 1
  while (to < clause.next && !/^(?:over|around|into|onto|in|on|to)$/u.test(wordAt(look, to))) to += 1
  const sauce = !named(look, look.head + 1, to) && /^(?:over|around|into)$/u.test(after(look, 1))
  return sauce && !has(look, /^(?:pot|pan|basin|top)$/u) ? ['serve'] : null
}

/** Moves that add nothing: onto a plate, away, or of a thing of the kitchen. */
function taken(look: Look): RawKind[] | null {
  const { lemma, slots } = look
  if (/^(?:tip|empty|throw)$/u.test(lemma) && /^(?:away|off|out)$/u.test(after(look, 1))) return ['drain']
  if (/^(?:top|crown|dot|dust|scatter|sprinkle|strew|drizzle)$/u.test(lemma)) return ['add']
  // "Set the meat on a hot dish", "arrange on a platter": out of the pot.
  const to = destination(look, /^(?:on|onto|to)$/u)
  const plated =
    to !== null &&
    (/^(?:plate|plates|platter|board)$/u.test(to) || (to === 'dish' && has(look, /^(?:hot|warm|serving|warmed)$/u)))
  if (plated && /^(?:set|put|place|lay|arrange)$/u.test(lemma)) return ['lift']
  if (slots.heat && !named(look) && lemma !== 'return' && lemma !== 'add') return ['set']
  if (/^(?:lower|set|lay|put|place|insert|position|fill|stick|return)$/u.test(lemma) && movesThing(look))
    return ['none']
  if (/^(?:distribute|spread|squeeze)$/u.test(lemma) && !named(look)) return ['none']
  if (lemma === 'tear' && after(look, 1) !== 'in' && !has(look, /^(?:over|into)$/u)) return ['cut']
  return null
}

const things =
  /^(?:trivet|rack|foil|paper|sling|basket|steamer|inset|insert|cloth|parchment|wrap|pan|pot|saucepan|skillet|casserole|basin|bowl|dish|cooker)$/u

/** "set the trivet in place", "Lower in the bowl with the sling", "Lay a piece of damp baking paper on the cabbage". */
function movesThing(look: Look): boolean {
  for (let k = 1; k <= 8; k += 1) {
    const low = after(look, k)
    // "Lower in the bowl" moves the bowl; "put in a large pan" says where to.
    const into = after(look, 1) === 'in' && !/^(?:bowl|basin|trivet|rack|basket|steamer|sling)$/u.test(low)
    if (things.test(low) && !into) return true
    if (/^(?:into|onto|to|over|with|and|,|)$/u.test(low) || (k > 1 && /^(?:in|on)$/u.test(low))) return false
  }
  return false
}

const waste =
  /^(?:skin|skins|bone|bones|stem|stems|seeds|seed|core|cores|tendon|tendons|ribs|rind|shell|shells|peel|gristle|tape|string|twine|foil|paper|scum)$/u
const steeped = /^(?:bay|bouquet|thyme|rosemary|herbs|cinnamon|sprigs|stalks|cloth|muslin)$/u

/** remove, take out, lift, transfer, discard … */
export function take(look: Look): RawKind[] {
  const { slots, lemma } = look
  if (movesLid(look) && !named(look)) return ['lid']
  if (has(look, /^(?:heat|burner|flame|hob|fire|stove)$/u) && has(look, /^(?:from|off)$/u)) return ['off-heat']
  if (slots.place === 'oven') return has(look, /^(?:from|out)$/u) ? ['oven-out'] : slots.time ? ['bake'] : ['oven-in']
  if (slots.place === 'fridge' && !has(look, /^from$/u)) return ['chill']
  if (lemma === 'transfer' || lemma === 'move') {
    const to = destination(look)
    return to && !dishes.test(to) ? ['add'] : ['lift']
  }
  if (lemma === 'discard') return discard(look)
  if (takesFat(look)) return ['skim']
  if (lemma === 'pull') return has(look, /^apart$/u) ? ['cut'] : has(look, /^(?:from|out)$/u) ? ['lift'] : ['none']
  if (lemma === 'pick') return has(look, /^out$/u) ? ['lift'] : ['none']
  // "Take two pounds of lamb" takes it from the larder.
  if (lemma === 'take') return has(look, /^(?:out|up|from)$/u) || after(look, 1) === 'off' ? ['lift'] : ['none']
  if (lemma === 'remove' && (waste.test(after(look, 1)) || (!named(look) && objectIs(look, waste)))) return ['none']
  return ['lift']
}

/** Bones go in the bin; the bay leaf comes out of the pot. */
function discard(look: Look): RawKind[] {
  const bones = look.slots.mentions.some(
    (mention) => mention.found.length === 0 && waste.test(wordAt(look, mention.next - 1)),
  )
  return (named(look) && !bones) || has(look, steeped) ? ['lift'] : ['none']
}

function takesFat(look: Look): boolean {
  if (look.lemma === 'take' || look.lemma === 'fish') return false
  for (let k = 1; k <= 6; k += 1) {
    const low = after(look, k)
    if (fats.test(low)) return true
    if (k > 1 && /^(?:to|with|from|and|,|)$/u.test(low)) return false
  }
  return false
}
