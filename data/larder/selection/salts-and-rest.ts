import { assumed, common, type Entry } from './entry.ts'

const salt = { character: 'salt', record: '02047', tags: 'salt', ownWeights: false } as const
/** Grams a level teaspoon; tablespoon, cup and pinch follow by volume. */
const kind = (low: number, high: number, from: string) =>
  [
    ['tsp', '', low, high, from],
    ['tbsp', '', 3 * low, 3 * high, from],
    ['cup', '', 48.7 * low, 48.7 * high, from],
    ['pinch', '', low / 16, low / 8, `a sixteenth to an eighth of a teaspoon, ${common}`],
  ] as const
const leaven = { character: 'leavening', tags: 'leavening' } as const

export const saltsAndRest: readonly Entry[] = [
  {
    ...salt,
    id: 'salt',
    name: 'table salt',
    also: 'salt, iodised salt, iodized salt, cooking salt, salt to taste, ordinary salt, common salt, iodized table salt, table salt',
    weights: [
      ['tsp', '', 5.7, 6.1, `6.0 g USDA SR28 02047; level spoons, ${common}`],
      ['tbsp', '', 17.1, 18.3, `18 g USDA SR28 02047; level spoons, ${common}`],
      ['cup', '', 273, 300, `292 g USDA SR28 02047; ${common}`],
      ['dash', '', 0.4, 0.4, 'USDA SR28 02047'],
      ['pinch', '', 0.3, 0.6, `a sixteenth to an eighth of a teaspoon and more by fingers, ${common}`],
    ],
  },
  {
    ...salt,
    id: 'fine-sea-salt',
    also: 'fine salt, fine-grain sea salt, sea salt, fine sea salt, himalayan salt, pink himalayan salt, fine-grained sea salt, unrefined salt, pink salt, himalayan pink salt',
    weights: kind(5, 6, common),
  },
  {
    ...salt,
    id: 'kosher-salt',
    name: 'kosher salt',
    also: 'kosher salt, coarse kosher salt, coarse kosher sea salt, kosher sea salt',
    weights: kind(2.8, 5, `hollow flakes 3 g, rolled flakes 5 g: the kind is not said; ${common}`),
  },
  {
    ...salt,
    id: 'coarse-kosher-salt-dense',
    name: 'dense rolled-flake kosher salt',
    also: 'dense kosher salt, rolled-flake kosher salt',
    weights: kind(4.8, 5, common),
  },
  {
    ...salt,
    id: 'kosher-salt-light',
    name: 'hollow-flake kosher salt',
    also: 'light kosher salt, hollow-flake kosher salt',
    weights: kind(2.8, 3, common),
  },
  {
    ...salt,
    id: 'salt-flakes',
    name: 'sea salt flakes',
    also: 'salt flake, sea salt flake, flaky sea salt, flaked sea salt, flaky salt, flake salt, fleur de sel, flaked salt, finishing salt, flake sea salt, smoked salt, smoked sea salt flake, smoked sea salt',
    weights: kind(2, 3.5, common),
  },
  {
    ...salt,
    id: 'coarse-salt',
    name: 'coarse sea salt',
    also: 'coarse salt, coarse sea salt, rock salt, gros sel, grey sea salt, celtic sea salt, coarse grey salt',
    weights: kind(4.5, 6, common),
  },
  {
    ...salt,
    id: 'pickling-salt',
    also: 'canning salt, preserving salt, pickling and canning salt, dairy salt',
    weights: kind(5.7, 6.3, common),
  },
  {
    ...salt,
    id: 'curing-salt',
    also: 'pink curing salt, nitrite salt, saltpetre, saltpeter',
    tags: 'salt curing',
    weights: kind(5.5, 6.5, common),
    note: 'holds sodium nitrite: weigh it, follow its maker',
  },
  { ...salt, id: 'black-salt', also: 'kala namak, indian black salt', weights: kind(5, 6.5, common) },
  // Leavening and yeast
  {
    ...leaven,
    id: 'baking-soda',
    also: 'bicarbonate of soda, bicarb, sodium bicarbonate, bicarb soda, saleratus, bicarbonate soda, bread soda, soda bicarbonate',
    record: '18372',
    remainder: 'ash',
    salt: [0, 'its sodium is bicarbonate, not salt'],
    tags: 'leavening alkali',
  },
  {
    ...leaven,
    id: 'baking-powder',
    also: 'double-acting baking powder, aluminum-free baking powder, gluten-free baking powder',
    record: '18369',
    starch: 'rest',
    salt: [0, 'its sodium is leavening acid and bicarbonate, not salt'],
    checkLabel: 'wheat',
  },
  {
    ...leaven,
    id: 'cream-of-tartar',
    also: 'tartaric acid',
    record: '18373',
    acid: [0.6, assumed('potassium bitartrate')],
  },
  {
    ...leaven,
    id: 'yeast',
    name: 'dried yeast',
    also: 'yeast, active dry yeast, instant yeast, fast-action yeast, dried active yeast, fresh yeast, easy-blend yeast, easy bake yeast, dry yeast, quick yeast, rapid rise yeast',
    record: '18375',
    checkLabel: 'wheat',
    sugars: [0, assumed('next to none')],
    weights: [['packet', '', 7, 7, common]],
  },
  // Bits that fit nowhere else
  {
    character: 'leafy vegetable',
    id: 'banana-leaf',
    edible: [1, assumed('used as bought')],
    name: 'banana leaves',
    also: 'banana leaf, corn husk, lotus leaf, dried corn husk, cedar plank, banana leaf wrapper',
    record: '11974',
    sugars: [0.06, assumed('as vine leaves')],
    ownWeights: false,
    tags: 'wrapper',
    note: 'wrapping, not eaten; composition of raw vine leaves stands in',
  },
  {
    character: 'seasoning',
    id: 'annatto-and-sazon',
    name: 'coriander and annatto seasoning',
    also: 'coriander and annatto seasoning packet, sazon packet, sazon with coriander and annatto',
    record: '02074',
    sugars: [0, assumed('next to none')],
    fibre: [0, assumed('not recorded')],
    tags: 'salty spice',
    weights: [['packet', '', 5, 5, common]],
  },
  {
    character: 'seasoning',
    id: 'liquid-smoke',
    also: 'smoke flavouring, smoke flavor',
    record: '14411',
    ownWeights: false,
    tags: 'liquid',
    note: 'composition of water stands in: a few drops',
  },
]
