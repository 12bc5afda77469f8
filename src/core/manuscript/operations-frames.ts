import { bring, dial, letHappen, lid, reduce } from './operations-dial.ts'
import {
  after,
  fats,
  fond,
  has,
  infinitive,
  innerVerb,
  type Look,
  lids,
  named,
  servings,
  settings,
  sieves,
  within,
  wordAt,
} from './operations-look.ts'
import { move, take } from './operations-move.ts'
import type { RawKind } from './operations-raw.ts'
import { participle, type VerbEntry } from './verbs.ts'

/** What one clause asks for; mostly one thing. */
export function interpret(look: Look): RawKind[] {
  const { clause, slots, verb } = look
  if (clause.nominal === 'in') return ['add']
  if (clause.nominal === 'out') return ['lift']
  if (!verb) return [verbless(look)]
  const kinds = meaningOf(look)
  const boils = kinds[0] === 'simmer' || kinds[0] === 'boil' || kinds[0] === 'cook'
  const down = after(look, 1) === 'down' && /^(?:boil|simmer|cook)$/u.test(look.lemma)
  return boils && (slots.reduceTo || down) ? ['reduce', ...kinds.slice(1)] : kinds
}

/** "HP 25 min", "Lid on", "fridge o/n", "Cold water to max line", "about 15 minutes". */
function verbless(look: Look): RawKind {
  const { slots, clause } = look
  // "Lid on & valve closed."
  if (has(look, lids) && has(look, /^(?:valve|vent)$/u) && has(look, /^(?:closed|sealed|sealing|shut)$/u)) return 'lock'
  if (has(look, lids) && slots.lid) return 'lid'
  if (slots.pressure && slots.time) return 'hold'
  const iced = has(look, /^ice$/u) && has(look, /^bath$/u)
  if (iced || (slots.place === 'fridge' && (slots.time || slots.temperatures.length > 0))) return 'chill'
  if (slots.heat && slots.mentions.length === 0) return 'set'
  if (slots.place === 'oven' && slots.time) return 'bake'
  const fronts = /^(?:in|on|over|with|for|at|from|under|after|before|by|using|to|if|when|as)$/u.test(
    wordAt(look, clause.at),
  )
  if (named(look) && !fronts) {
    if (!slots.time && has(look, /^(?:in|into|to|thru|through|over|on|onto|\+)$/u)) return 'add'
    // "Garlic, 1 min.": into the pot and cooked.
    if (slots.time && clause.at === 0) return 'cook'
  }
  return slots.time ? 'time' : 'none'
}

/** Meaning of the verb that the look stands on. */
function meaningOf(look: Look): RawKind[] {
  const { slots, verb, lemma } = look
  switch (verb?.frame) {
    case 'plain':
      return [plain(look, verb)]
    case 'cook':
      if (lemma === 'hold') return [slots.temperatures.length > 0 && !slots.pressure ? 'rest' : 'hold']
      return verb.code === 'sweat' ? ['sauté'] : ['cook']
    case 'move':
      return move(look, meaningOf)
    case 'take':
      return take(look)
    case 'pour':
      if (/^(?:off|away|out)$/u.test(after(look, 1)) || (has(look, /^off$/u) && has(look, fats))) return ['drain']
      return has(look, servings) && !has(look, /^(?:pot|pan)$/u) ? ['serve'] : ['add']
    case 'stir':
      return [stir(look)]
    case 'bring':
      return bring(look)
    case 'reduce':
      return reduce(look)
    case 'lid':
      return lid(look)
    case 'uncover':
      return /^(?:unlock|unseal)$/u.test(lemma) ? ['open'] : ['lid']
    case 'open':
      return ['open']
    case 'dial':
      return dial(look, meaningOf)
    case 'let':
      return letHappen(look, meaningOf)
    case 'repeat':
      return ['repeat']
    default:
      return meaningOfSmall(look)
  }
}

/** Frames that look at a word or two. */
function meaningOfSmall(look: Look): RawKind[] {
  const { slots, verb, lemma } = look
  switch (verb?.frame) {
    case 'scrape':
      return [scrape(look)]
    case 'taste':
      if (lemma === 'taste' || has(look, /^(?:seasonings?|salt|seasoned|flavou?ring|spices?|pepper|acidity)$/u))
        return ['season']
      return has(look, settings) ? ['set'] : ['none']
    case 'coat':
      if (has(look, sieves)) return ['strain']
      return has(look, /^(?:oil|butter)$/u) && has(look, /^(?:bottom|pan|pot|base)$/u) ? ['add'] : ['season']
    case 'vent':
      return has(look, /^(?:aroma|fragrance|flavou?r|juices|liquid|water)$/u) ? ['none'] : ['release']
    case 'sieve':
      if (has(look, sieves)) return ['strain']
      return lemma === 'press' ? dial(look, meaningOf) : ['none']
    case 'make':
      return has(look, /^(?:thickening|roux|slurry)$/u) ? ['thicken'] : ['none']
    case 'break':
      return has(look, /^(?:up|down|apart)$/u) ? ['mash'] : ['none']
    case 'wait':
      return slots.time ? ['rest'] : ['none']
    case 'give':
      if (slots.time && has(look, /^sides?$/u)) return ['cook']
      if (has(look, /^boil$/u)) return ['boil']
      if (has(look, /^simmer$/u)) return ['simmer']
      return has(look, /^(?:stir|shake|toss|mix)$/u) ? ['mix'] : ['none']
    case 'have':
      return done(look)
    case 'use':
      return has(look, sieves) ? ['strain'] : byInfinitive(look)
    case 'keep':
      return keep(look)
    default:
      return verb?.code ? [verb.code] : timed(look)
  }
}

/** "use the fat to brown the beef": what it is used for. */
function byInfinitive(look: Look): RawKind[] {
  const inner = infinitive(look)
  return inner ? meaningOf(within(look, inner)) : ['none']
}

/** An order without a code that carries a time: "time 20 minutes", "prepare it by putting it to soak all night". */
function timed(look: Look): RawKind[] {
  if (!look.slots.time) return ['none']
  return /^(?:time|reckon|do|follow)$/u.test(look.lemma) ? ['time'] : byInfinitive(look)
}

/** "Have the bone sawn into pieces". */
function done(look: Look): RawKind[] {
  for (let i = look.head + 1; i < look.clause.next; i += 1) {
    const entry = participle(wordAt(look, i))
    if (entry?.code) return [entry.code]
  }
  return ['none']
}

/** "continue cooking", "finish with the lime juice", "start the legs in a cold pan", "keep warm". */
function keep(look: Look): RawKind[] {
  if (/^(?:finish|start|begin)$/u.test(look.lemma)) {
    if (/^(?:with|off)$/u.test(after(look, 1)) || (named(look) && has(look, /^(?:in|into)$/u))) return ['add']
  }
  if (/^(?:warm|hot|cool|stirring)$/u.test(after(look, 1))) return ['none']
  const inner = innerVerb(look)
  return inner ? meaningOf(within(look, inner)) : ['none']
}

function scrape(look: Look): RawKind {
  if (has(look, /^(?:into|onto)$/u) && !has(look, /^(?:bits|fond|bottom|base)$/u))
    return look.lemma === 'scrape' ? 'add' : 'none'
  if (has(look, /^sides?$/u) && !has(look, /^(?:bottom|base|bits)$/u)) return 'none'
  return has(look, fond) || look.slots.mentions.length === 0 ? 'deglaze' : 'none'
}

/** "stir in the cream" adds, "stir for 2 minutes" mixes, "whisk the soup mix into the water" mixes. */
function stir(look: Look): RawKind {
  const { lemma, slots, tokens, clause } = look
  const first = after(look, 1)
  if (first === 'fry') return 'fry'
  if (first === 'in' || first === 'into' || (first === 'through' && named(look))) return 'add'
  if (has(look, /^loosen$/u) && has(look, /^bits$/u)) return 'deglaze'
  if (has(look, /^(?:into|through)$/u) && named(look)) return /^(?:whisk|beat|blend|mix)$/u.test(lemma) ? 'mix' : 'add'
  // "stir the cream in", "stir it back in"
  const last =
    wordAt(look, clause.next - 1) === 'in' ||
    tokens.some(
      (token, i) => i > look.head && i < clause.next - 1 && token.low === 'in' && tokens[i + 1]!.kind === 'mark',
    )
  if (last && !/^(?:mix|toss|fold)$/u.test(lemma)) return 'add'
  if (lemma === 'blend' && !slots.time && !named(look)) return 'mash'
  if (lemma === 'fold') return has(look, /^(?:over|sides?)$/u) ? 'none' : 'add'
  return 'mix'
}

/** Longest time that is still cooking, s: "freeze for 3 months" is how it keeps. */
const keepingTime_s = 72 * 3600

function plain(look: Look, verb: VerbEntry): RawKind {
  const { slots, lemma } = look
  const code = verb.code!
  if (slots.time && slots.time.low_s > keepingTime_s) return 'none'
  if (code === 'rest') return resting(look)
  if (code === 'brown' && slots.place === 'oven' && lemma === 'brown') return 'bake'
  if (code === 'simmer' && slots.place === 'oven') return 'bake'
  if (lemma === 'dish' && after(look, 1) !== 'up') return 'none'
  if (lemma === 'crack' && !has(look, /^pepper(?:corns?)?$/u)) return 'none'
  return code
}

/** rest, stand, sit, cool. */
function resting(look: Look): RawKind {
  const { slots, lemma } = look
  const bath = has(look, /^(?:cold|iced?|ice)$/u) && has(look, /^(?:water|bath)$/u)
  if (slots.place === 'fridge' || bath || slots.temperatures.some((one) => one.high_K < 290)) return 'chill'
  // "rest the lid on top without sealing" moves the lid.
  if (lids.test(after(look, 1)) || (lids.test(after(look, 2)) && /^(?:the|its|your)$/u.test(after(look, 1))))
    return 'lid'
  // "Sit the duck on top"
  const sits = (lemma === 'sit' || lemma === 'stand') && !slots.time && named(look)
  return sits && has(look, /^(?:on|in|into|top)$/u) ? 'add' : 'rest'
}
