/** Words beside a size or a count that add nothing. */
const beside = new Set(
  'whole fruit root bulb ear raw fresh stalk head leaf leave pod seed kernel cap berry bean nut small medium large extra jumbo with without skin skinless yields thick thin egg mushroom of or and'.split(
    ' ',
  ),
)

/**
 * What a household weight of the USDA tables says, as unit and form; null when it is no kitchen measure, or counts
 * something else than the food ("jigger", "small box"): `names` are the words of the food's own names.
 */
export function readMeasure(text: string, names: ReadonlySet<string>): { unit: string; form: string } | null {
  const plain = text
    .toLowerCase()
    .replace(/\(.*?\)|".*$/g, ' ')
    .replace(/[^a-z0-9 ,]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
  if (/yield from|serving|nlea|package|prepared|recipe|^(oz|lb|pkg)\b/.test(plain)) return null
  const volume = /^(cups?|tbsp|tablespoons?|tsp|teaspoons?|fl oz|quart|pint|dash)\b[ ,]*(.*)$/.exec(plain)
  if (volume) return { unit: volumes[volume[1]] ?? volume[1], form: formOf(volume[2]) }
  const sized = /\b(small|medium|large|extra large|jumbo)\b/.exec(plain)?.[1]
  const unit = /\b(clove|stalk|sprig|slice|bunch|head|leaf|leave|stick|spear|ear|link|can)s?\b/.exec(plain)?.[1]
  if (unit) return { unit: parts[unit] ?? unit, form: sized ?? (/\bthin\b/.test(plain) ? 'thin' : '') }
  if (
    /\b(strip|wedge|ring|piece|cubic|half|oz|lb|floweret|kernel|package|container|patty|steak|chop|roast|fillet|block|rack|unit)/.test(
      plain,
    )
  )
    return null
  const itself = plain
    .split(/[ ,]+/)
    .every(
      (word) => beside.has(word) || names.has(word) || names.has(word.replace(/e?s$/, '')) || names.has(`${word}s`),
    )
  if (plain === '' || !itself) return null
  // "leek", "thigh with skin", "fruit", "lemon yields": a count of the thing itself.
  return { unit: 'each', form: sized === 'extra large' || sized === 'jumbo' ? 'extra large' : (sized ?? '') }
}

const volumes: Record<string, string> = {
  cups: 'cup',
  tablespoon: 'tbsp',
  tablespoons: 'tbsp',
  teaspoon: 'tsp',
  teaspoons: 'tsp',
  'fl oz': 'floz',
}
const parts: Record<string, string> = { leave: 'leaf', spear: 'stalk', link: 'each', ear: 'each' }

function formOf(rest: string): string {
  const words = rest
    .replace(/\b(or|and|about|approx|pieces?|fluid|firmly|of|each|unthawed|broken)\b/g, ' ')
    .replace(/[ ,]+/g, ' ')
    .trim()
  if (/\d/.test(words)) return ''
  return words.replace('unpacked', 'loose').replace('strips slices', 'sliced').replace('slices', 'sliced')
}
