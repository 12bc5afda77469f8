import {
  after,
  boilWord,
  coverings,
  has,
  infinitive,
  innerVerb,
  type Look,
  lids,
  type Meaning,
  named,
  objectIs,
  settings,
  within,
  wordAt,
} from './operations-look.ts'
import type { Lid } from './operations-manner.ts'
import type { RawKind } from './operations-raw.ts'

// Verbs that work the pot and its fire rather than the food: dials, lids, "bring to", "let".

/** turn, select, hit, press, adjust, raise … */
export function dial(look: Look, meaning: Meaning): RawKind[] {
  const { slots, lemma } = look
  if (lemma === 'turn' && after(look, 1) === 'out') return ['serve']
  if (lemma === 'turn' && has(look, /^everything$/u)) return ['mix']
  if (has(look, /^(?:valve|vent|weight|regulator|steam)$/u)) {
    const opens = has(look, /^(?:venting|vent|release|open|releasing)$/u) && !has(look, /^(?:seal|sealing)$/u)
    return opens ? ['release'] : ['lock']
  }
  if (has(look, /^cancel$/u)) return ['none']
  if (slots.temperatures.length > 0 || (has(look, /^oven$/u) && !has(look, /^off$/u))) return ['heat']
  if (has(look, /^off$/u)) return ['off-heat']
  const inner = infinitive(look)
  // "Turn the cooker on to Brown" names a button.
  if (inner && inner.entry.code !== 'sweat' && inner.entry.code !== 'heat' && inner.entry.lemma !== 'brown') {
    // "turn down heat to simmer, and cook": only with a time of its own is it the simmer.
    return slots.time || !has(look, /^(?:heat|flame|gas)$/u) ? meaning(within(look, inner)) : ['set']
  }
  if (slots.pressure) return slots.time ? ['hold'] : ['set']
  if (has(look, settings) || slots.heat) return slots.time && !has(look, /^(?:sauté|saute)$/u) ? ['time'] : ['set']
  return lemma === 'turn' && /^(?:hot|boiling|water)$/u.test(after(look, 1)) ? ['add'] : ['none']
}

/** reduce: the sauce, or the heat. */
export function reduce(look: Look): RawKind[] {
  const { slots } = look
  // "reduce the cooking time to 5 minutes" is advice.
  if (objectIs(look, /^(?:time|amount|quantity)$/u)) return ['none']
  if (objectIs(look, /^(?:heat|flame|gas|fire|temperature|burner|oven|hob|setting)$/u)) {
    if (slots.temperatures.length > 0 || has(look, /^oven$/u)) return ['heat']
    // "reduce the heat to a simmer, cover and cook": the simmer is what the heat is for.
    return has(look, /^simmer$/u) && slots.time ? ['simmer'] : ['set']
  }
  if (has(look, /^(?:simmer|bubble)$/u) && has(look, /^to$/u)) return ['simmer']
  return after(look, 1) === 'to' && slots.heat ? ['set'] : ['reduce']
}

/** bring, come, get, raise: to the boil, to pressure, to a temperature. */
export function bring(look: Look): RawKind[] {
  const { slots, lemma } = look
  const boil = boilWord(look)
  if (boil) return [boil]
  if (slots.pressure || has(look, /^pressure$/u)) return slots.time ? ['hold'] : ['heat']
  if (lemma === 'raise' || lemma === 'get') {
    if (slots.temperatures.length > 0 || has(look, /^oven$/u)) return ['heat']
    return has(look, /^(?:heat|flame|gas|burner)$/u) ? ['set'] : ['none']
  }
  return slots.temperatures.length > 0 && !has(look, /^room$/u) ? ['heat'] : ['none']
}

/** cover, lock, close, seal, fit: the lid, or a covering of water. */
export function lid(look: Look): RawKind[] {
  const { lemma } = look
  if (/^(?:cover|re-cover|recover)$/u.test(lemma)) {
    // "cover with 300 ml boiling water", "cover by 1 inch", "cover with a layer of oil"
    const covered = has(look, coverings)
    if (has(look, /^(?:water|stock|broth|oil|wine|milk|liquid|brine)$/u) && !covered) return ['add']
    if (has(look, /^by$/u) && has(look, /^(?:inch|inches|cm)$/u)) return ['add']
    let means = look.head + 1
    while (means < look.clause.next && wordAt(look, means) !== 'with') means += 1
    return !covered && named(look, means, look.clause.next) ? ['add'] : ['lid']
  }
  if (has(look, /^(?:bag|bags|jar|jars|container|foil|edges|parcel)$/u) && !has(look, lids)) return ['none']
  if (has(look, /^oven$/u)) return ['none']
  if (/^(?:fit|replace|clamp|screw|click|snap|attach)$/u.test(lemma) && !has(look, lids)) return ['none']
  return ['lock']
}

/** How the lid lies after an order that moves it. */
export function lidAfter(look: Look): Lid {
  const frame = look.verb?.frame
  if (has(look, /^(?:halfway|partially|partly|slightly|half|ajar|askew)$/u) && !has(look, /^closed$/u)) return 'ajar'
  if (has(look, /^loosely$/u)) return has(look, lids) ? 'ajar' : 'on'
  if (frame === 'uncover' || frame === 'take') return 'off'
  if (frame === 'move' || frame === 'lid') return 'on'
  return look.slots.lid ?? 'on'
}

/** let, allow, leave: what is let happen. */
export function letHappen(look: Look, meaning: Meaning): RawKind[] {
  const { slots } = look
  if (has(look, /^(?:aroma|fragrance)$/u)) return ['bloom']
  if (has(look, /^(?:leak|drip)$/u)) return ['drain']
  const inner = innerVerb(look)
  const kinds = inner ? meaning(within(look, inner)) : (['none'] as RawKind[])
  if (kinds[0] !== 'none') return slots.place === 'fridge' && kinds[0] === 'rest' ? ['chill'] : kinds
  if (slots.place === 'fridge') return ['chill']
  if (has(look, /^(?:aside|overnight)$/u)) return ['rest']
  // "leave them undisturbed until the skin is crisp": the fire is on.
  const browns = /\b(?:brown|golden|crisp|render|caramel|colou?r)/iu.test(slots.cue?.value ?? '')
  if (browns) return ['cook']
  if (slots.time) return has(look, /^(?:be|undisturbed)$/u) ? ['cook'] : ['rest']
  return /^(?:dry|evaporate|reduce)$/u.test(after(look, 2)) || has(look, /^evaporate$/u) ? ['reduce'] : ['none']
}
