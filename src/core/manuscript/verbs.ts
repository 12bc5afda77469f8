import type { VerbCode } from './recipe.ts'

/**
 * How a verb is read. A frame says what to look at besides the verb:
 * plain = the code stands; cook = the pot decides (fry, simmer, hold, bake); move = where to decides (add, lift, chill);
 * none = an order without an operation of its own (pat, wash, grease), still the head of its clause.
 */
export type Frame =
  | 'plain'
  | 'cook'
  | 'move'
  | 'take'
  | 'stir'
  | 'bring'
  | 'let'
  | 'dial'
  | 'lid'
  | 'uncover'
  | 'open'
  | 'scrape'
  | 'pour'
  | 'taste'
  | 'use'
  | 'have'
  | 'give'
  | 'keep'
  | 'reduce'
  | 'vent'
  | 'repeat'
  | 'coat'
  | 'wait'
  | 'sieve'
  | 'make'
  | 'break'
  | 'none'

/** Is the word a noun too? never; seldom (verb after "and" or a comma); often (verb only with an object behind it). */
export type NounToo = 'never' | 'seldom' | 'often'

export interface VerbEntry {
  readonly lemma: string
  readonly frame: Frame
  /** The code it stands for when nothing else decides. */
  readonly code: VerbCode | null
  readonly noun: NounToo
}

type Row = readonly [frame: Frame, code: VerbCode | null, noun: NounToo, words: string]

// Kitchen verbs of British and American usage, old and new. Common practice, no source.
const rows: readonly Row[] = [
  ['plain', 'heat', 'never', 'preheat reheat rewarm melt pre-heat'],
  ['plain', 'heat', 'seldom', 'heat warm'],
  ['plain', 'brown', 'never', 'sear caramelise caramelize char gild'],
  ['plain', 'brown', 'seldom', 'brown toast'],
  ['plain', 'brown', 'often', 'colour color crisp'],
  ['plain', 'sweat', 'never', 'soften'],
  ['plain', 'sweat', 'seldom', 'sweat'],
  ['cook', 'sweat', 'never', 'sauté saute sautée s/té s/te sautee'],
  ['plain', 'sweat', 'never', 'wilt'],
  ['plain', 'fry', 'never', 'render'],
  ['plain', 'fry', 'seldom', 'fry stir-fry pan-fry shallow-fry deep-fry sizzle flash-fry'],
  ['plain', 'bloom', 'seldom', 'bloom temper'],
  ['cook', 'fry', 'seldom', 'cook'],
  ['plain', 'deglaze', 'never', 'deglaze'],
  ['scrape', 'deglaze', 'never', 'scrape loosen'],
  [
    'move',
    'add',
    'never',
    'add put place tip arrange return throw slide tuck nestle pop dump empty sprinkle scatter strew drizzle crumble lay ' +
      'stick immerse submerge insert fill thin moisten incorporate reintroduce set position distribute lower bury sink dredge dissolve',
  ],
  ['move', 'add', 'seldom', 'drop spread pile layer splash dot dust slip load squeeze sift tear stuff'],
  ['move', 'add', 'often', 'spoon ladle top crown'],
  ['move', 'serve', 'never', 'divide'],
  ['pour', 'add', 'never', 'pour'],
  ['stir', 'mix', 'seldom', 'stir whisk beat mix blend swirl toss fold'],
  ['plain', 'mix', 'never', 'slake combine fluff knead emulsify whip cream'],
  ['bring', 'boil', 'never', 'bring come get raise'],
  ['plain', 'boil', 'seldom', 'boil parboil blanch blanche bubble par-boil scald'],
  ['plain', 'simmer', 'seldom', 'simmer poach braise stew steam seethe slow-cook blip casserole'],
  ['reduce', 'reduce', 'never', 'reduce'],
  ['plain', 'reduce', 'never', 'concentrate evaporate'],
  [
    'lid',
    'lock',
    'never',
    'lock seal close shut secure fasten clamp latch reseal re-seal relock re-lock attach fit replace screw click snap',
  ],
  ['lid', null, 'seldom', 'cover re-cover recover'],
  ['uncover', null, 'never', 'uncover unlock unseal'],
  ['open', null, 'never', 'open'],
  ['plain', 'hold', 'never', 'pressure-cook pressurise pressurize'],
  ['cook', 'hold', 'seldom', 'hold'],
  ['cook', 'hold', 'never', 'maintain'],
  ['vent', 'release', 'never', 'vent quick-release depressurise depressurize release fast-release qr'],
  ['plain', 'rest', 'seldom', 'rest stand sit'],
  ['plain', 'rest', 'seldom', 'cool'],
  ['wait', 'rest', 'seldom', 'wait'],
  ['take', 'lift', 'never', 'remove take fish transfer move rmv retrieve pick pull'],
  ['take', 'lift', 'seldom', 'lift scoop discard'],
  ['plain', 'strain', 'seldom', 'strain sieve'],
  ['plain', 'strain', 'often', 'filter'],
  ['plain', 'drain', 'seldom', 'drain'],
  ['plain', 'settle', 'never', 'settle'],
  ['plain', 'skim', 'never', 'skim defat degrease'],
  ['plain', 'thicken', 'never', 'thicken'],
  ['plain', 'season', 'never', 'season'],
  ['plain', 'season', 'often', 'salt pepper flavour flavor spice'],
  ['coat', 'season', 'seldom', 'rub coat massage'],
  ['taste', 'season', 'seldom', 'taste adjust check correct'],
  ['plain', 'chill', 'seldom', 'chill refrigerate freeze'],
  ['plain', 'bake', 'seldom', 'bake roast broil grill'],
  [
    'plain',
    'cut',
    'never',
    'chop dice mince shred halve quarter carve julienne grate debone slice slit crack grind pare peel saw trim',
  ],
  ['plain', 'cut', 'seldom', 'cut cube flake snip separate butterfly joint'],
  ['plain', 'cut', 'often', 'bone core'],
  ['plain', 'soak', 'seldom', 'soak steep brine rehydrate'],
  ['plain', 'pickle', 'often', 'pickle'],
  ['plain', 'marinate', 'never', 'marinate marinade dry-brine'],
  [
    'plain',
    'mash',
    'seldom',
    'mash purée puree crush pulverise liquidise liquidize blitz whizz mashup process pulse smash',
  ],
  ['break', 'mash', 'never', 'break'],
  ['plain', 'serve', 'seldom', 'serve garnish eat enjoy'],
  ['plain', 'serve', 'often', 'plate dish'],
  ['dial', 'heat', 'never', 'turn select hit switch adjust lower raise increase crank flick flip'],
  ['let', null, 'never', 'let allow leave'],
  ['use', null, 'seldom', 'use'],
  ['have', null, 'never', 'have'],
  ['give', null, 'never', 'give'],
  ['keep', null, 'never', 'keep continue finish start begin proceed go'],
  ['repeat', null, 'seldom', 'repeat'],
  [
    'none',
    null,
    'never',
    'pat wash rinse grease line tie wrap prick prepare reserve reconstitute roll shape form score pound dry clean wipe ' +
      'remember ensure skip follow reckon assemble bind examine crowd test poke thread scrub rotate ' +
      'render-down flatten baste brush spray stud score truss pit deseed destem shell shuck devein dab drape smear leave-out unplug baste glaze ' +
      'shake do try trust freshen save store accompany send stretch skewer cancel weigh measure note see',
  ],
  ['sieve', null, 'seldom', 'run pass push press'],
  ['make', null, 'never', 'make'],
  ['none', null, 'often', 'butter oil time watch flip line batch tap stem seed zest juice'],
]

const entries = new Map<string, VerbEntry>()
for (const [frame, code, noun, words] of rows) {
  for (const lemma of words.split(' ')) {
    // The first row that names a verb wins, so that the rows can be read from the top.
    if (!entries.has(lemma)) entries.set(lemma, { lemma, frame, code, noun })
  }
}

/** The verb whose bare form (as in an order) this word is. */
export const bareVerb = (low: string): VerbEntry | undefined => entries.get(low)

function stems(stem: string): string[] {
  const last = stem.at(-1)
  const doubled = last !== undefined && last === stem.at(-2) && !/[aeiousl]/u.test(last) ? [stem.slice(0, -1)] : []
  return [stem, `${stem}e`, ...doubled, ...(last === 'i' ? [`${stem.slice(0, -1)}y`] : [])]
}

const irregular = new Map<string, string>(
  Object.entries({
    sawn: 'saw',
    beaten: 'beat',
    brought: 'bring',
    left: 'leave',
    kept: 'keep',
    cut: 'cut',
    put: 'put',
    set: 'set',
    frozen: 'freeze',
    ground: 'grind',
    stood: 'stand',
    taken: 'take',
    shaken: 'shake',
    made: 'make',
    fried: 'fry',
    dried: 'dry',
    lying: 'lay',
    sat: 'sit',
    let: 'let',
    stirring: 'stir',
    bubbling: 'bubble',
  }),
)

function inflected(low: string, ending: 'ing' | 'ed'): VerbEntry | undefined {
  if (!low.endsWith(ending)) return undefined
  for (const stem of stems(low.slice(0, -ending.length))) {
    const entry = entries.get(stem)
    if (entry) return entry
  }
  return undefined
}

/** The verb of a form in -ing ("stirring"). */
export function gerund(low: string): VerbEntry | undefined {
  const odd = low.endsWith('ing') ? irregular.get(low) : undefined
  return odd ? entries.get(odd) : inflected(low, 'ing')
}

/** The verb of a past participle ("drained", "sawn"). */
export function participle(low: string): VerbEntry | undefined {
  const odd = irregular.get(low)
  return odd && !low.endsWith('ing') ? entries.get(odd) : inflected(low, 'ed')
}

/** The verb of a third person ("simmers"); also "the juices boil" needs none. */
export function thirdPerson(low: string): VerbEntry | undefined {
  if (!low.endsWith('s')) return undefined
  return entries.get(low.slice(0, -1)) ?? (low.endsWith('es') ? entries.get(low.slice(0, -2)) : undefined)
}
