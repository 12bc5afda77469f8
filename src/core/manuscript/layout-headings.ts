import type { Note } from './layout.ts'

/** What a heading opens. 'group' heads a part of the list or of the method. */
export type Section = 'ingredients' | 'method' | 'notes' | 'group'

const ingredients =
  /^(?:the )?(?:main |recipe )?ingredients?(?: list)?(?: for .{1,40}| serves .{1,20}| \(.{1,40}\))?$|^(?:what )?you(?:'ll| will)? (?:also )?need$|^(?:shopping|grocery) list$|^things you(?:'ll| will)? need$|^what you need$/
const method =
  /^(?:the )?(?:cooking |recipe |preparation )?(?:methods?|mode|directions?|instructions?|preparation|procedure|process|steps?|step[- ]by[- ]step|preparation and cooking)(?: (?:of|for) .{1,40})?$|^how (?:to|i) (?:make|cook|prepare|do)\b.{0,40}$|^(?:to (?:make|cook|prepare)(?: (?:it|the .{1,30}))?|making it|cooking|what to do|here's how|let's cook)$/
const notes =
  /^(?:(?:recipe|cook's|chef's|test kitchen|kitchen|serving|storage|helpful|pro|some|extra) )?(?:notes?|tips?(?: (?:and|&) (?:tricks|notes))?|suggestions?|source|sources|storage|storing|variations?|nutrition(?:al)?(?: .{1,30})?|make[- ]ahead|substitutions?|comments?|credits?|references?|leftovers?|faqs?|video|history|allergens?)$/
const equipment =
  /^(?:special |you(?:'ll| will)? (?:also )?need )?(?:equipment|tools|utensils|kit|hardware)(?: needed)?$/

/** Words of a heading without case, emphasis and closing colon or stop. */
export const headingName = (words: string): string =>
  words
    .replace(/[*_#]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/\s*[:.\-–—]+$/, '')
    .replace(/\s*[:\-–—]\s*(?=\(|serves|for \d|\d)/i, ' ')
    .toLowerCase()

/** What the words open when they stand alone as a heading; null when the name says nothing. */
export function sectionOf(name: string): Exclude<Section, 'group'> | null {
  if (ingredients.test(name)) return 'ingredients'
  if (method.test(name)) return 'method'
  if (notes.test(name) || equipment.test(name)) return 'notes'
  return null
}

export const isEquipment = (name: string): boolean => equipment.test(name)

/** A heading that shares its line with what it heads: "INGREDIENTS.--4 lbs. of mutton", "You need: 1 red cabbage". */
const runIn =
  /^\s*(?:\d{1,4}\.\s*)?((?:ingredients?|you(?:'ll| will)? (?:also )?need|mode|methods?|directions?|instructions?|preparation|to make|notes?|tips?))\s*(?:\.?\s*(?:--+|—|–)|:)\s*(?=\S)/i

export function runInHeading(
  line: string,
): { readonly name: string; readonly nameFrom: number; readonly length: number } | null {
  const found = runIn.exec(line.slice(0, 60))
  if (!found) return null
  const nameFrom = found[0].indexOf(found[1]!)
  return { name: found[1]!.toLowerCase(), nameFrom, length: found[0].length }
}

/** "BEANS BOILED IN A BAG.--Soak a pint": the old way to set the name of a dish before its text. */
export function runInTitle(line: string): number | null {
  const mixed = /^[\p{Lu}\d][^.;:!?\n]{3,60}\.?\s*(?:--+|—)\s*(?=\p{Lu})/u.exec(line.slice(0, 90))
  if (mixed) return mixed[0].length
  const found = /^[\p{Lu}\d][\p{Lu}\d ,'&()-]{3,70}(?:\.?\s*(?:--+|—)\s*(?=\S)|\.\s+(?=\p{Lu}\p{Ll}))/u.exec(
    line.slice(0, 90),
  )
  return found ? found[0].length : null
}

const storage =
  /^(?:to (?:store|freeze|keep|reheat)|storage|storing|store leftovers|leftovers?|keeps|freezes|refrigerate leftovers|any leftovers|reheats?\b|will keep|the (?:soup|stew|dish|leftovers) (?:keeps|freezes))\b/i
const ahead =
  /^(?:(?:to )?make[- ]ahead|to prepare ahead|do ahead|ahead of time|can be made|you can make (?:this|it) ahead|get ahead)\b/i
const kit = /^(?:you(?:'ll| will)? (?:also |will )?need (?:an? |some |the )?|special equipment|equipment)\b/i
const tip =
  /^(?:tags?|source|notes?|note that|tips?|cook's note|chef's tip|recipe (?:by|from|adapted)|adapted from|from a printed|originally|optional:|variations?|variation|serving suggestion|nutrition|calories|per serving|allergens?|p\.?s\.?)\b\s*[:.\-–—]?|^\*+note/i
const almanac = /^(?:average cost|seasonable|sufficient|time)\s*(?:[,.:]|--|—|for\b|at\b|in\b|all\b|from\b|$)/i

/** The kind of note a paragraph is by its first words; null when they do not say. */
export function noteKind(words: string): Note['kind'] | null {
  const head = words.slice(0, 60).trimStart()
  if (ahead.test(head)) return 'ahead'
  if (storage.test(head)) return 'storage'
  if (kit.test(head)) return 'equipment'
  if (tip.test(head)) return 'tip'
  return null
}

/** Cost, season and the like at the foot of an old recipe. */
export const isAlmanac = (words: string): boolean => almanac.test(words.trimStart())
