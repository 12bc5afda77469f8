// Words by which a method calls its ingredients. Kitchen English of both sides of the ocean; common practice, no source.

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '))

const irregular = new Map<string, string>(
  Object.entries({
    leaves: 'leaf',
    loaves: 'loaf',
    halves: 'half',
    knives: 'knife',
    calves: 'calf',
    olives: 'olive',
    chives: 'chive',
    endives: 'endive',
    cloves: 'clove',
    chiles: 'chilli',
    chile: 'chilli',
    chili: 'chilli',
    chilis: 'chilli',
    chilies: 'chilli',
    chillies: 'chilli',
    chillis: 'chilli',
    cookies: 'cookie',
    pies: 'pie',
    anchovies: 'anchovy',
    haricots: 'haricot',
    potatoes: 'potato',
    tomatoes: 'tomato',
    mangoes: 'mango',
    molasses: 'molasses',
    couscous: 'couscous',
    hummus: 'hummus',
    asparagus: 'asparagus',
    citrus: 'citrus',
    swiss: 'swiss',
    brussels: 'brussels',
    bayleaf: 'bay',
    bayleaves: 'bay',
    'bay-leaf': 'bay',
    'bay-leaves': 'bay',
    veggies: 'vegetable',
    veg: 'vegetable',
    veges: 'vegetable',
    stk: 'broth',
    tom: 'tomato',
    toms: 'tomato',
    oj: 'orange',
  }),
)

// One name for things that go by two. The left is what may be written, the right what is compared.
const sameAs = new Map<string, string>(
  Object.entries({
    stock: 'broth',
    bouillon: 'broth',
    bullion: 'broth',
    broth: 'broth',
    chilli: 'chilli',
    aubergine: 'eggplant',
    courgette: 'zucchini',
    cilantro: 'coriander',
    cornflour: 'cornstarch',
    prawn: 'shrimp',
    yoghurt: 'yogurt',
    catsup: 'ketchup',
    garbanzo: 'chickpea',
    bicarb: 'soda',
    bicarbonate: 'soda',
    purée: 'puree',
    crème: 'cream',
    creme: 'cream',
    pimento: 'allspice',
    tinned: 'canned',
    tin: 'can',
    mangetout: 'pea',
    rocket: 'arugula',
    beetroot: 'beet',
    swede: 'rutabaga',
    soya: 'soy',
    whisky: 'whiskey',
    stick: 'stalk',
    rib: 'stalk',
  }),
)

/** Singular and under its common name: "stocks" and "broth" are one word. */
export function canonical(low: string): string {
  const word = irregular.get(low) ?? singular(low)
  return sameAs.get(word) ?? word
}

function singular(low: string): string {
  const bare = low.endsWith("'s") ? low.slice(0, -2) : low
  if (!bare.endsWith('s')) return bare
  if (/(?:sh|ch|x|ss|zz)es$/.test(bare)) return bare.slice(0, -2)
  if (/[^aeiou]ies$/.test(bare)) return `${bare.slice(0, -3)}y`
  return bare.length > 3 && !/[su]s$/.test(bare) ? bare.slice(0, -1) : bare
}

/** Adjectives that do not name a food by themselves ("red", "large"). */
export const generic = set(
  'fresh dried dry ground large small medium big extra red green white black brown yellow golden hot cold boiling warm cool lukewarm whole ' +
    'freshly finely coarsely roughly thinly thickly fine coarse kosher sea table iodized plain light dark heavy double single thick thin sweet ripe raw ' +
    'cooked unsalted salted low-sodium reduced-sodium low-salt no-salt organic good best-quality quality virgin extra-virgin mild strong hard soft ' +
    'boneless skinless bone-in skin-on lean fatty fat-free canned frozen chilled smoked unsmoked sliced chopped minced diced grated crushed shredded ' +
    'peeled drained rinsed soaked toasted roasted melted softened beaten cracked split pitted trimmed cubed halved quartered juiced zested prepared ' +
    'instant quick-cooking regular long short long-grain short-grain medium-grain all-purpose plain self-raising strong-flavoured neutral free-range new baby ' +
    'young old tender medium-sized bite-sized bite-size generous scant heaped level rounded packed additional optional cut torn picked washed cleaned scrubbed ' +
    'blanched reserved browned seared remaining leftover larger smaller bigger deeper wider heavier accumulated residual other different favourite favorite desired nice mixed assorted tiny leafy flat-leaf ' +
    'flat curly crusty steamed fluffy creamy juicy smooth runny sticky warmed squeezed pressed cubed separated crumbled meaty stewing braising cooking soaking ' +
    'strained hot-smoked semi-pearled pearled waxy floury thick-cut day-old clear stemmed deveined split divided marinated coated floured caramelized caramelised',
)

/** Parts and forms: an item with such a head is called by the word before it ("chicken thighs": "the chicken"). */
export const formWords = set(
  'thigh breast leg drumstick wing shoulder neck chuck fillet filet belly cheek loin tenderloin chop rump shank shin knuckle hock bone rib brisket butt ' +
    'roast steak joint cutlet mince carcass tail tails ox-tail kidney liver heart tongue trotter oxtail topside silverside seed leaf clove pod thread ' +
    'flake stalk sprig stick head bulb rind zest peel slice piece half chunk cube strip ribbon floret kernel berry corn bunch root pepper bean pea ' +
    'lentil nut mushroom drippings dripping chilli cheese noodle pasta rice barley plum pear',
)

/** Foods that lend only their taste: "chicken broth" is not chicken. */
export const flavoured = set(
  'broth stock paste sauce soup mix cube bouillon puree juice extract seasoning granule gravy oil water milk ketchup mustard jam jelly butter wine vinegar salt flake',
)
export const lending = set(
  'chicken beef veal lamb pork turkey fish vegetable tomato garlic onion mushroom potato potatoes celery almond peanut coconut wine ham bacon shrimp',
)

/** Things of the kitchen, no food. */
export const equipment = set(
  'pot pan saucepan skillet casserole cooker oven kettle stewpan stockpot wok bowl jug basin dish plate platter tray rack trivet basket steamer sling foil paper ' +
    'lid cover valve weight knob button setting function mode timer burner hob stove stovetop range heat flame fire gas fridge refrigerator freezer spoon fork knife ' +
    'tong tongs whisk sieve colander strainer blender processor mixer masher towel cloth bag twine string tape cheesecloth filter board surface counter side sides bottom ' +
    'base top center centre edge middle sink tap water-bath thermometer oven-proof dutch grill broiler container jar boil simmer bubble pressure steam minute hour ' +
    'second time batch batche goe lot round half-full line level indicator element machine instant walk-in p/c pass pressure-cooker ladle pieces stage room temperature ' +
    'medium medium-high medium-low low high max power warmer manual slow cancel start program programme setting sauté saute s/té button vessel stockpot drain table hand finger',
)

/** Made on the way, not bought: never "used but not listed". */
export const derived = set(
  'lard juice liquid liquor sauce gravy fat scum foam grease mixture mix marinade batter dough filling stew soup curry dhal risotto pottage chili ragu braise pudding broth ' +
    'everything all rest whole lot content contents remainder it them other one bit drop fond sediment skin bone tendon rind shell stem core seed peel rib gristle peeling scrap ' +
    'ingredient thing dish meal serving portion piece chunk strip slice cube half quarter end part surface grain edge colour color flavour flavor seasoning taste consistency ' +
    'dripping drippings slurry paste puree roux crust topping base layer packet package instruction direction bowl bag meatball ball roll water solid tough leave leftover ' +
    'service portion pack note step recipe use order minute garnish accompaniment syrup glaze stuffing cooking roasting thickness size sizes half-moon amount line time ' +
    'vegetable veggie meat green herb spice aromatic seasonings spicing trimming excess food bouquet garni poaching starch steam',
)

export type Group =
  | 'pasta'
  | 'beans'
  | 'grains'
  | 'nuts'
  | 'fish'
  | 'mushrooms'
  | 'meat'
  | 'vegetables'
  | 'herbs'
  | 'spices'
  | 'aromatics'
  | 'greens'
  | 'all'
  | 'rest'
  | 'fat'
  | 'liquids'
  | 'seasonings'

const groups = new Map<string, Group>(
  Object.entries<Group>({
    meat: 'meat',
    meats: 'meat',
    joint: 'meat',
    roast: 'meat',
    bird: 'meat',
    vegetable: 'vegetables',
    herb: 'herbs',
    spice: 'spices',
    aromatic: 'aromatics',
    green: 'greens',
    pasta: 'pasta',
    noodle: 'pasta',
    bean: 'beans',
    pulse: 'beans',
    grain: 'grains',
    nut: 'nuts',
    fish: 'fish',
    mushroom: 'mushrooms',
    seasoning: 'seasonings',
    everything: 'all',
    ingredient: 'all',
  }),
)
/** Word for many ingredients at once, by its canonical form. */
export const groupWord = (word: string): Group | undefined => groups.get(word)
