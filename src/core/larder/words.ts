// How a cook's words are made comparable: lower case, no accents, singular, one spelling, what it is last.

const list = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter(Boolean))

/** Never matched and never missed: articles, amounts, shop talk. */
const noise =
  list(`a an the of and to into about approximately approx roughly finely coarsely thinly thickly lightly loosely
  tightly gently freshly very not too good best quality organic free range homegrown store bought shop favourite favorite
  your own my optional needed each per serving portion part rest remaining remainder some few any several
  rounded heaped heaping level packed scant generous total weight net size sized inch inches wide deep cm mm ca g kg ml l
  oz lb tsp tbsp cup tablespoon teaspoon pound ounce pint quart litre liter one two dozen teacup teacupful cupful
  spoonful tablespoonful teaspoonful wineglass wineglassful such as like also called aka quantity amount unit nice your additional`)

/** How a thing is cut, sized, kept or trimmed, hardly ever what it is: worth little in a name, nothing when left over. */
const neutral =
  list(`medium small large big little jumbo extra baby young ripe firm raw thick thin chopped diced sliced grated
  crushed peeled unpeeled trimmed cubed halved quartered shredded torn cut rinsed drained undrained soaked washed cleaned
  pitted stoned seeded deseeded seedless cored melted softened cold warm hot lukewarm boiling room temperature beaten
  separated to from piece chunk cube wedge strip half quarter ring slice floret spear stalk stick bunch sprig head knob
  thumb handful pinch dash fillet bulk regular plain pure natural skin skinon mild long short rough shaved julienned
  snipped picked stemmed leaf bruised smashed flattened tied rolled jointed whole thawed defrosted live uncooked stem top
  root tender crisp lump bottom middle end prime split stuck garnish taste serve freerange lean sifted strained unsweetened
  bone flat new old center centre single double mixed well done segment cap reserved splash
  glug drizzle dollop scoop bag jar bottle packet package carton box tub tube sachet envelope sheet block ball bulb couple`)

/** Changes what a thing is: worth nearly a word in a name, and missed when left over. */
const telling =
  list(`dried ground smoked tinned pickled frozen boneless bonein skinless cooked roasted toasted fried steamed
  boiled stewed salted unsalted sweet sour fresh cured candied instant low reduced fat sodium red white green black brown
  yellow dark light wild cracked pearl homemade mature sharp flaked condensed evaporated strong coarse fine sundried
  caramelized preserved seed minced corned clotted soured skimmed cultured creamed textured refried baked`)

/** How a thing is kept or made ready to keep; said already, the unit has nothing to add. */
const states = list('dried ground fresh tinned frozen cooked roasted smoked pickled instant cured whole preserved')

/** Neutral words that still say which of several things is meant: "rice, long grain". */
const choosing = list('long short medium round whole split baby mixed double single plain')

/** Said of a thing after a comma, these are work for the cook: the measure is of the state before the comma. */
const work = list('cooked roasted toasted fried steamed boiled stewed caramelized strained')

const spellings: Readonly<Record<string, string>> = {
  chili: 'chilli',
  chile: 'chilli',
  chilly: 'chilli',
  chilis: 'chilli',
  chillis: 'chilli',
  yogurt: 'yoghurt',
  yoghourt: 'yoghurt',
  broth: 'stock',
  canned: 'tinned',
  tin: 'tinned',
  can: 'tinned',
  jarred: 'tinned',
  powder: 'ground',
  powdered: 'ground',
  dry: 'dried',
  dehydrated: 'dried',
  desiccated: 'dried',
  dessicated: 'dried',
  shrimp: 'prawn',
  gelatine: 'gelatin',
  filet: 'fillet',
  wholemeal: 'wholewheat',
  catsup: 'ketchup',
  deboned: 'boneless',
  leftover: 'cooked',
  caramelised: 'caramelized',
  crystallised: 'crystallized',
  iodised: 'iodized',
  flavour: 'flavor',
  leave: 'leaf',
  halve: 'half',
  feet: 'foot',
  cardamon: 'cardamom',
  soya: 'soy',
  barbeque: 'barbecue',
  bbq: 'barbecue',
  worcester: 'worcestershire',
  raising: 'rising',
  confectioner: 'icing',
  stk: 'stock',
  veg: 'vegetable',
  tom: 'tomato',
}

/** Turns of phrase that are one word to a cook; read before the phrase is taken apart. */
const turns: readonly (readonly [RegExp, string])[] = [
  [/\bbone[- ]in\b|\bon the bone\b/g, 'bonein'],
  [/\bskin[- ]on\b/g, 'skinon'],
  [/\bhalf[- ](and|&|n)[- ]half\b/g, 'halfandhalf'],
  [/\bsun[- ]dried\b/g, 'sundried'],
  [/\bhome[- ]?made\b/g, 'homemade'],
  [/\bwhole[- ]?(wheat|meal)\b/g, 'wholewheat'],
  [/\bde[- ]?boned\b/g, 'boneless'],
  [/\bau jus\b/g, 'aujus'],
]

// Most phrases are a few plain words: three tests spare them a dozen replacements.
const turning = /bone|skin|half|sun|home|whole|jus/
const foreign = /[^ -~]/
const simple = /^[a-z]+(?: [a-z]+)*$/

/** Words that end in s and are singular. */
const unchanged = list('hummus molasses swiss bass ras jus couscous haricots asparagus')

function singular(word: string): string {
  if (word.length <= 3 || !word.endsWith('s') || /(ss|us|is)$/.test(word)) return word
  if (/ies$/.test(word)) return word.length > 4 ? `${word.slice(0, -3)}y` : word.slice(0, -1)
  if (/(oes|ches|shes|xes|sses|zes)$/.test(word)) return word.slice(0, -2)
  return word.slice(0, -1)
}

/** One word as the index spells it. */
export function stem(word: string): string {
  if (unchanged.has(word)) return word
  const one = singular(word)
  return spellings[word] ?? spellings[one] ?? one
}

export const isNoise = (word: string): boolean => noise.has(word)
// "studded", "boned", "scrubbed": what a cook did to it. Linseed and seaweed are things.
const participle = /[^e]ed$/
export const isNeutral = (word: string): boolean =>
  neutral.has(word) || (word.length > 4 && participle.test(word) && !telling.has(word))
export const isState = (word: string): boolean => states.has(word)
export const isTelling = (word: string): boolean => telling.has(word)
/** Says what the thing is, rather than how it is cut or kept. */
export const isContent = (word: string): boolean => !isNeutral(word) && !telling.has(word)

/** Lower case, no accents, figures or hyphens; letters, spaces and the marks that part a phrase stay. */
export function plain(text: string): string {
  let words = text.toLowerCase()
  if (foreign.test(words)) words = words.normalize('NFD').replace(/[\u0300-\u036f]/g, '')
  if (turning.test(words)) for (const [turn, word] of turns) words = words.replace(turn, word)
  if (simple.test(words)) return words
  return words
    .replace(/['’`]s?\b/g, '')
    .replace(/&|\+/g, ' and ')
    .replace(/[([]/g, ', ')
    .replace(/[)\];:]/g, ', ')
    .replace(/[^a-z/, ]+/g, ' ')
    .replace(/ +/g, ' ')
    .trim()
}

export interface Phrase {
  /** Stemmed words, what it is last: "shin of beef" reads beef, shin. */
  readonly main: readonly string[]
  /** What stands after a comma or in brackets and may say more: "pepper, black". */
  readonly after: readonly string[]
  /** What stands after "in", "with": "pineapple in juice". */
  readonly beside: readonly string[]
  /** The last word of `main` that says what it is. */
  readonly head: string
  /** Words as written, for names that only the plural tells apart. */
  readonly raw: string
}

const prepositions = / (?:in|with|for|from|on|like|plus|at|if|without|per|as) /

/** The last word that says what the thing is. */
export const headOf = (words: readonly string[]): string =>
  words.findLast(isContent) ?? words.findLast(isTelling) ?? words[words.length - 1]

/** Takes a plain phrase apart. Names of foods go through the same function, so both sides agree. */
export function phraseOf(words: string): Phrase | null {
  const [first, ...rest] = words
    .split(',')
    .map((part) => part.trim())
    .filter(Boolean)
  if (!first) return null
  const [before, ...besides] = first.split(prepositions)
  const ofs = before.split(' of ')
  const ordered = (ofs.length > 1 ? [...ofs.slice(1).reverse(), ofs[0]].join(' ') : before).split(' ')
  const main: string[] = []
  const raw: string[] = []
  for (const word of ordered) {
    const one = stem(word)
    if (one === '' || isNoise(one) || isNoise(word)) continue
    main.push(one)
    if (!isNeutral(one)) raw.push(word)
  }
  if (main.length === 0) return null
  const stems = (texts: string[]) =>
    texts
      .join(' ')
      .split(' ')
      .map(stem)
      .filter((word) => word !== '' && !isNoise(word))
  return {
    main,
    after: stems(rest).filter((word) => (!isNeutral(word) || choosing.has(word)) && !work.has(word)),
    beside: stems(besides),
    head: headOf(main),
    raw: raw.join(' '),
  }
}
