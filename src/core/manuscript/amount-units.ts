import type { UnitCode } from '../units/index.ts'
import type { Token } from './sentences-tokens.ts'

/**
 * What a unit measures. A holder is bought full (can, jar); a part is a natural piece of the food (clove, sprig); a lump
 * is a household measure without a fixed size (handful, pinch).
 */
export type UnitKind = 'mass' | 'volume' | 'length' | 'holder' | 'part' | 'lump'

export interface UnitWord {
  /** Null for a measure the contract has no code for ("glass"): it stays a bare count of `word`. */
  readonly code: UnitCode | null
  /** How many of the code make one of the word: a decilitre is 100 ml. */
  readonly factor: number
  readonly kind: UnitKind
  /** The word in the singular, as cooks say it. */
  readonly word: string
}

/** A unit found among tokens; `next` is the place after it. */
export interface UnitFound extends UnitWord {
  readonly next: number
}

const lexicon = new Map<string, UnitWord>()
function enter(kind: UnitKind, code: UnitCode | null, words: string, factor = 1): void {
  const names = words.split(' ')
  for (const name of names) lexicon.set(name, { code, factor, kind, word: names[0]! })
}

enter('mass', 'g', 'gram grams g gm gms gr gramme grammes')
enter('mass', 'kg', 'kilogram kilograms kg kgs kilo kilos kilogramme kilogrammes')
enter('mass', 'mg', 'milligram milligrams mg')
enter('mass', 'oz', 'ounce ounces oz ozs')
enter('mass', 'lb', 'pound pounds lb lbs')
enter('volume', 'ml', 'millilitre millilitres milliliter milliliters ml mls cc')
enter('volume', 'ml', 'centilitre centilitres centiliter centiliters cl', 10)
enter('volume', 'ml', 'decilitre decilitres deciliter deciliters dl', 100)
enter('volume', 'l', 'litre litres liter liters l lt ltr')
enter('volume', 'tsp', 'teaspoon teaspoons tsp tsps teaspoonful teaspoonfuls teaspoonsful ts')
enter(
  'volume',
  'tbsp',
  'tablespoon tablespoons tbsp tbsps tbs tbl tbls tblsp tblsps tb tablespoonful tablespoonfuls tablespoonsful',
)
enter(
  'volume',
  'dessertspoon',
  'dessertspoon dessertspoons dsp dstspn dessertspoonful dessertspoonfuls dessertspoonsful',
)
enter('volume', 'floz', 'fl-oz fl-ounce fluid-ounce fluid-ounces floz')
enter('volume', 'cup', 'cup cups cupful cupfuls cupsful')
enter('volume', 'pint', 'pint pints pt pts')
enter('volume', 'quart', 'quart quarts qt qts')
enter('volume', 'gallon', 'gallon gallons gal gals ga')
enter('volume', 'gill', 'gill gills')
enter('volume', 'teacup', 'teacup teacups teacupful teacupfuls teacupsful')
enter('volume', 'peck', 'peck pecks')
enter('length', 'inch', 'inch inches')
enter('length', 'cm', 'centimetre centimetres centimeter centimeters cm cms')
enter('length', 'cm', 'millimetre millimetres millimeter millimeters mm', 0.1)
enter('holder', 'can', 'can cans tin tins cn')
enter('holder', 'jar', 'jar jars')
enter(
  'holder',
  'packet',
  'packet packets package packages pack packs pkg pkgs pkt pkts pk pks sachet sachets envelope envelopes pouch pouches',
)
enter('holder', null, 'bottle bottles btl')
enter('holder', null, 'bag bags')
enter('holder', null, 'box boxes')
enter('holder', null, 'carton cartons')
enter('holder', null, 'tub tubs')
enter('holder', null, 'tube tubes')
enter('holder', null, 'container containers')
enter('holder', null, 'punnet punnets')
enter('holder', null, 'block blocks')
enter('holder', null, 'loaf loaves')
enter('part', 'clove', 'clove cloves')
enter('part', 'sprig', 'sprig sprigs twig twigs')
enter('part', 'stalk', 'stalk stalks')
enter('part', 'rib', 'rib ribs')
enter('part', 'head', 'head heads hd')
enter('part', 'slice', 'slice slices sl')
enter('part', 'leaf', 'leaf leaves lf lvs')
enter('part', 'piece', 'piece pieces pc pcs')
enter('part', 'stick', 'stick sticks')
enter('part', null, 'blade blades')
enter('part', null, 'knob knobs')
enter('part', null, 'thumb thumbs')
enter('part', null, 'rasher rashers')
enter('part', null, 'strip strips')
enter('part', null, 'wedge wedges')
enter('part', null, 'cube cubes')
enter('part', null, 'strand strands')
enter('part', null, 'ball balls')
enter('lump', 'bunch', 'bunch bunches bch bn')
enter('lump', 'pinch', 'pinch pinches pn')
enter('lump', 'dash', 'dash dashes ds')
enter('lump', 'drop', 'drop drops')
enter('lump', 'handful', 'handful handfuls handfull handfulls handsful')
enter('lump', null, 'glass glasses glassful')
enter('lump', null, 'wineglass wineglasses wineglassful wineglassfuls')
enter('lump', null, 'shot shots')
enter('lump', null, 'splash splashes')
enter('lump', null, 'squeeze squeezes')
enter('lump', null, 'drizzle')
enter('lump', null, 'glug glugs')
enter('lump', null, 'spoonful spoonfuls spoon spoons')
enter('lump', null, 'ladle ladles ladleful ladlefuls')
enter('lump', null, 'mug mugs mugful')
enter('lump', null, 'grating gratings')
enter('lump', null, 'grind grinds grinding grindings')
enter('lump', null, 'faggot faggots')
enter('lump', null, 'dollop dollops')
enter('lump', null, 'sprinkle sprinkling')

// Written with one letter; only the capital tells a tablespoon from a teaspoon.
const letters: Readonly<Record<string, UnitWord>> = {
  T: lexicon.get('tbsp')!,
  t: lexicon.get('tsp')!,
  C: lexicon.get('cup')!,
  c: lexicon.get('cup')!,
  G: lexicon.get('g')!,
  L: lexicon.get('l')!,
}

/** Abbreviations may carry a stop that is theirs, not the sentence's. */
const skipStop = (tokens: readonly Token[], i: number): number =>
  tokens[i]?.low === '.' && tokens[i]!.joined && tokens[i]!.kind === 'mark' ? i + 1 : i

/**
 * The unit at token `i`, in any usual spelling; null when there is none. `text` is needed where only the capital tells
 * ("T" and "t").
 */
export function unitAt(text: string, tokens: readonly Token[], i: number): UnitFound | null {
  const token = tokens[i]
  if (!token) return null
  if (token.kind === 'mark') {
    // 2" piece, 3# beef: only right behind the number.
    if (!token.joined) return null
    if (token.low === '#') return { ...lexicon.get('lb')!, next: i + 1 }
    if (token.low === '"') return { ...lexicon.get('inch')!, next: i + 1 }
    if (token.low === "'" && tokens[i + 1]?.low === "'" && tokens[i + 1]!.joined) {
      return { ...lexicon.get('inch')!, next: i + 2 }
    }
    return null
  }
  const low = token.low
  if (low === 'fl' || low === 'fluid') {
    let next = skipStop(tokens, i + 1)
    if (tokens[next]?.low === '-') next += 1
    if (/^(?:oz|ozs|ounces?)$/.test(tokens[next]?.low ?? '')) {
      return { ...lexicon.get('floz')!, next: skipStop(tokens, next + 1) }
    }
    return null
  }
  // "1 table spoon", "1 tea cup"
  const second = tokens[i + 1]?.low ?? ''
  if (/^(?:table|tea|dessert)$/.test(low) && /^(?:spoons?|spoonfuls?|spoonsful|cups?|cupfuls?)$/.test(second)) {
    const whole = lexicon.get(low + second)
    if (whole) return { ...whole, next: skipStop(tokens, i + 2) }
  }
  if (low === 'in') {
    // "1-in pieces", "2 in. piece": bare "in" is nearly always the preposition.
    const stop = tokens[i + 1]?.low === '.' && tokens[i + 1]!.joined
    const hyphen = tokens[i - 1]?.low === '-' && token.joined
    return stop || hyphen ? { ...lexicon.get('inch')!, next: stop ? i + 2 : i + 1 } : null
  }
  if (token.to - token.from === 1) {
    const letter = letters[text.slice(token.from, token.to)]
    if (letter) return { ...letter, next: skipStop(tokens, i + 1) }
  }
  // "2cm-piece": the hyphen ties what belongs to the number to what is counted.
  const piece = /^(.+)-(?:piece|knob)$/.exec(low)
  const found = lexicon.get(piece ? piece[1]! : low)
  return found ? { ...found, next: skipStop(tokens, i + 1) } : null
}

/** The unit of a word that is known to be one, for words behind the food ("garlic cloves"). */
export const unitOfWord = (low: string): UnitWord | null => lexicon.get(low) ?? null
