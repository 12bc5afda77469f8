// Closed classes of the words that stand around a food in an ingredient line. Common usage, no source.

const set = (...lines: string[]): ReadonlySet<string> => new Set(lines.join(' ').split(' '))

/** Participles of work done by hand: before the food or behind it they are preparation, not part of its name. */
const handWork = set(
  'chopped minced diced sliced grated shredded crushed peeled pressed beaten mashed cubed cleaned torn julienned',
  'crumbled melted softened halved quartered trimmed squeezed rinsed drained washed scrubbed cored seeded deseeded',
  'de-seeded stemmed destemmed shelled thawed defrosted smashed bruised sifted packed whisked warmed strained sieved',
  'shaved pureed puréed cut slit split snapped shucked hulled stoned juiced zested pounded scored skinned boned deboned',
  'deveined de-veined picked flattened cracked broken separated unpeeled cut-up hand-torn spiralized blitzed',
)
/** Participles that say what was bought when they stand before the food, and what to do when they stand behind it. */
const eitherWay = set(
  'ground toasted roasted pitted cooked soaked boiled steamed blanched flaked chilled cooled frozen dried salted stuffed',
  'divided removed reserved discarded tied rolled sautéed sauteed fried browned charred butterflied refrigerated crisped',
  'loosened wiped patted mixed dissolved prepared processed blended combined heated microwaved tossed bashed topped tailed',
  'sterilised dry-roasted scraped steeped shaken stirred brushed cleaned husked marinated poached',
)
/** Before the food these name what was bought: "split peas", "cracked wheat", "shelled prawns". */
const keptBefore = set('split cracked broken boned deboned skinned picked hulled shelled stoned')
export const isHandWork = (word: string): boolean => handWork.has(word) && !keptBefore.has(word)
export const isPreparation = (word: string): boolean =>
  handWork.has(word) || eitherWay.has(word) || kitchenFrench.has(word)

const kitchenFrench = set('brunoise julienne chiffonade chiff concasse mirepoix batons bâtons macédoine')

const adverbs = set(
  'finely coarsely roughly thinly thickly freshly lightly very well loosely tightly firmly evenly diagonally lengthwise',
  'lengthways crosswise crossways fine coarse thin thick rough quite really gently neatly newly partially just not fairly',
  'medium-fine paper-thin super partly thoroughly carefully quickly',
)
export const isAdverb = (word: string): boolean => adverbs.has(word)

/** Behind a participle these go on describing the work; anything else is the food. */
const notFood = set(
  'and or into in to for with at on until but if plus per from by as off up out through over about & + then while when',
  'lengthwise lengthways crosswise crossways fine finely coarse coarsely thin thinly thick thickly very well against across',
  'small along before after which that each diagonally half',
)
export const isFoodStart = (word: string): boolean => !notFood.has(word)

/** Words that praise, point or count nothing: they are left out of the name. */
const dropped = set(
  'nice good best favourite favorite your the a an of any some my our total quality good-quality high-quality such whatever just',
)
export const isDropped = (word: string): boolean => dropped.has(word)

const modifiers = set(
  'boneless skinless bone-in skin-on skin-off boned fresh ripe firm large small medium dried dry low-sodium thick-cut thin-cut',
  'frozen cold warm hot raw cooked lean free-range organic unsalted salted sweet sour thick thin young tender mature red green',
  'yellow white black brown reduced-sodium low-fat full-fat fat-free no-salt-added unsweetened sweetened mild spicy fine coarse',
  'whole extra-large big plump smoked unsmoked good-quality long short flat-leaf curly peeled unpeeled trimmed uncooked soft hard',
  'freshly finely roughly heavy light dark plain self-raising skinned seedless pitted stoneless floury waxy starchy medium-sized',
)
/** Words that cannot be the food itself, so that a comma behind them does not end its name. */
export const isModifier = (word: string): boolean => modifiers.has(word) || handWork.has(word)

const kinds = set(
  'dried dry green split fresh frozen canned tinned smoked raw cooked white red yellow black brown ripe unsalted salted sweet',
  'mild whole ground unsweetened boneless skinless large small uncooked lean',
)
/** Words that say which kind of a food is meant. */
export const isKind = (word: string): boolean => kinds.has(word)

const shapes = set(
  'piece pieces chunk chunks cube cubes dice slice slices round rounds ring rings wedge wedges strip strips ribbon ribbons',
  'stick sticks baton batons matchstick matchsticks coin coins half halves quarter quarters lengths length segments florets',
  'half-moons half-moon eighths thirds bite-sized bite-size squares pieces. disc discs thick thin large small big',
)
export const isShape = (word: string): boolean => shapes.has(word)

/** Liquids and fats: "hot", "cold" and "soft" before them say a temperature, elsewhere they may be part of the name. */
const warmable = set(
  'water milk stock broth cream butter tea coffee wine juice beer buttermilk margarine ghee oil bouillon lard stk yogurt yoghurt cheese rice',
)
const temperatures = set(
  'boiling hot cold warm lukewarm tepid iced ice-cold chilled melted softened soft room-temperature warmed',
)
export const isWarmable = (word: string): boolean => warmable.has(word)
export const isTemperature = (word: string): boolean => temperatures.has(word)

const tomatoes = /^(?:tomato(?:es)?|tom|toms)$/
const meats = /^(?:beef|pork|lamb|veal|turkey|chicken|meat|mutton|venison)$/

/**
 * Is the work named before the food part of what is bought? "Crushed tomatoes" come so, "diced tomatoes" in a can or by
 * weight; "minced beef" is a kind of meat, "sliced almonds" and "shredded coconut" are sold under that name.
 */
export function isBoughtSo(work: readonly string[], food: readonly string[], held: boolean, weighed: boolean): boolean {
  if (held) return true
  const last = food.at(-1) ?? ''
  const has = (test: (word: string) => boolean) => food.some(test)
  const fresh = has((w) => w === 'fresh' || w === 'ripe')
  if (tomatoes.test(last) && !fresh) {
    return weighed || work.some((w) => /^(?:crushed|pureed|puréed|strained|sieved)$/.test(w))
  }
  if (work.includes('minced') && meats.test(food[0] ?? '') && food.length <= 2) return true
  if (work.includes('crushed')) {
    return (
      has((w) => /^(?:pepper|chili|chilli|chile|chillies|chilies|chiles|pineapple|ice)$/.test(w)) &&
      has((w) => w !== 'black') &&
      !has((w) => w === 'black')
    )
  }
  if (work.includes('mashed')) return has((w) => w === 'potato' || w === 'potatoes')
  if (work.includes('shredded')) return has((w) => w === 'coconut' || w === 'wheat' || w === 'suet')
  if (work.includes('sliced') || work.includes('chopped'))
    return has((w) => w === 'almonds' || w === 'hazelnuts') && work.includes('sliced')
  return false
}

const partFoods: Readonly<
  Record<string, { readonly only?: ReadonlySet<string>; readonly never?: ReadonlySet<string> }>
> = {
  clove: { only: set('garlic') },
  rib: { only: set('celery chard rhubarb cardoon') },
  head: {
    only: set(
      'garlic lettuce cabbage broccoli cauliflower celery fennel radicchio endive frisée romaine chicory choy escarole',
    ),
  },
  // The leaf of a tree is itself the spice; the leaf of a herb is a piece of it.
  leaf: {
    never: set(
      'bay curry lime banana vine grape fig pandan avocado makrut kaffir lotus bamboo tea lemon betel cassava',
    ),
  },
  stick: { never: set('cinnamon cassia crab fish bread mozzarella cheese vanilla liquorice lollipop bamboo') },
  sprig: {},
  stalk: {},
  slice: {},
  rasher: {},
  bunch: {},
}
/** Does "N FOOD PARTs" count parts of the food ("2 garlic cloves"), and not foods of that name ("2 cinnamon sticks")? */
export function countsParts(part: string, food: readonly string[]): boolean {
  const rule = partFoods[part]
  if (!rule || food.length === 0) return false
  if (rule.only) return food.some((word) => rule.only!.has(word))
  return !food.some((word) => rule.never?.has(word))
}
