import type { Character, Food } from '../larder/index.ts'
import type { Cut } from '../manuscript/index.ts'
import type { Pieces } from './plan.ts'
import { mid, piecesNamed } from './words.ts'

// From words to bodies. Shapes follow the kitchen: cubes are bricks, slices and rounds slabs, sticks and what grows
// round and long cylinders. Where the words give a shape without a size, sizes below are usual ones (assumed).

type Shape = Pieces['shape']
interface Body {
  readonly shape: Shape
  readonly thickness_m: number
  readonly width_m: number
  readonly length_m: number
}

/** Piece of a food that no words and no larder entry describe (assumed). */
const usual: Partial<Record<Character, { shape: Shape; size_m: number }>> = {
  'collagen cut': { shape: 'brick', size_m: 0.04 },
  'lean meat': { shape: 'slab', size_m: 0.025 },
  'poultry dark': { shape: 'slab', size_m: 0.0275 },
  'poultry light': { shape: 'slab', size_m: 0.028 },
  sausage: { shape: 'cylinder', size_m: 0.028 },
  fish: { shape: 'slab', size_m: 0.025 },
  'firm vegetable': { shape: 'brick', size_m: 0.02 },
  'soft vegetable': { shape: 'brick', size_m: 0.02 },
  'leafy vegetable': { shape: 'slab', size_m: 0.001 },
  aromatic: { shape: 'brick', size_m: 0.008 },
  mushroom: { shape: 'slab', size_m: 0.006 },
  fruit: { shape: 'brick', size_m: 0.02 },
  starch: { shape: 'brick', size_m: 0.03 },
  grain: { shape: 'sphere', size_m: 0.003 },
  pasta: { shape: 'cylinder', size_m: 0.003 },
  pulse: { shape: 'sphere', size_m: 0.008 },
  'cooked pulse': { shape: 'sphere', size_m: 0.01 },
  nut: { shape: 'sphere', size_m: 0.01 },
}

/** Usual size of a shape named without one, by character where it matters (assumed). */
function sizeOfShape_m(shape: Cut['shape'], food: Food, words: string): number | null {
  const meat = meats.has(food.character)
  const fine = /\b(fine|finely|thin|thinly|brunoise|(cut|chopped|diced) small|small (dice|cubes|pieces))\b/.test(words)
  const coarse = /\b(rough\w*|coarse\w*|thick\w*|chunk\w*|(large|big) (dice|cubes|pieces))\b/.test(words)
  if (small.test(words) && (shape === 'slices' || shape === 'chopped' || shape === 'cubes'))
    return shape === 'slices' ? 0.002 : 0.004
  switch (shape) {
    case 'minced':
      return meat ? 0.005 : 0.003
    case 'ground':
      return 0.005
    case 'shredded':
      return 0.003
    case 'chopped':
      return meat ? 0.02 : fine ? 0.005 : coarse ? 0.018 : 0.01
    case 'cubes':
      return meat ? (fine ? 0.015 : 0.025) : fine ? 0.006 : coarse ? 0.02 : 0.012
    case 'slices':
      return fine ? 0.003 : coarse ? 0.012 : meat ? 0.01 : 0.006
    case 'sticks':
      return 0.01
    case 'strips':
      return meat ? 0.012 : 0.006
    default:
      return null
  }
}

const minced = /\b(mince|minced|ground)\b/
const mince: { shape: Shape; size_m: number } = { shape: 'brick', size_m: 0.005 }

const meats: ReadonlySet<Character> = new Set([
  'collagen cut',
  'lean meat',
  'poultry dark',
  'poultry light',
  'fish',
  'sausage',
])

const spreads: Partial<Record<Cut['shape'], number>> = {
  cubes: 0.2,
  pieces: 0.2,
  slices: 0.15,
  sticks: 0.2,
  strips: 0.2,
  chopped: 0.25,
  minced: 0.25,
  shredded: 0.25,
  ground: 0.2,
  halves: 0.15,
  whole: 0.15,
}

/** Meat that is flat by nature keeps its own thickness, however long it is cut (assumed). */
const flat = /\b(brisket|flank|skirt|belly|plate|breast of lamb)\b/
const flat_m = 0.045
/** What grows round and long, with its usual thickness (assumed). */
const long: readonly (readonly [RegExp, number])[] = [
  [/\bcarrots?\b/, 0.025],
  [/\bparsnips?\b/, 0.03],
  [/\bleeks?\b/, 0.03],
  [/\b(spring onions?|scallions?)\b/, 0.01],
  [/\b(courgettes?|zucchini)\b/, 0.045],
  [/\bcucumbers?\b/, 0.045],
  [/\bcelery\b/, 0.012],
  [/\b(green|french|runner|string) beans?\b/, 0.008],
  [/\bokra\b/, 0.014],
  [/\baubergines?|eggplants?\b/, 0.07],
  [/\bsausages?|chorizo|frankfurters?\b/, 0.028],
  [/\bspaghetti|linguine\b/, 0.002],
]

const volume_m3 = (body: Body): number =>
  body.shape === 'sphere'
    ? (Math.PI / 6) * body.thickness_m ** 3
    : body.shape === 'cylinder'
      ? (Math.PI / 4) * body.thickness_m ** 2 * body.length_m
      : body.thickness_m * body.width_m * body.length_m

const cube = (size_m: number): Body => ({ shape: 'brick', thickness_m: size_m, width_m: size_m, length_m: size_m })
const sphere = (size_m: number): Body => ({ shape: 'sphere', thickness_m: size_m, width_m: size_m, length_m: size_m })
const cylinder = (size_m: number, length_m: number): Body => ({
  shape: 'cylinder',
  thickness_m: size_m,
  width_m: size_m,
  length_m,
})
const slab = (size_m: number, across_m: number): Body => ({
  shape: 'slab',
  thickness_m: size_m,
  width_m: across_m,
  length_m: across_m,
})
/** A whole joint: 1 thick, 1.3 wide, 2 long (assumed; a boned shoulder of 1.2 kg is then 7.6 cm thick). */
function joint(each_m3: number): Body {
  const size_m = Math.cbrt(each_m3 / 2.6)
  return { shape: 'brick', thickness_m: size_m, width_m: 1.3 * size_m, length_m: 2 * size_m }
}
/** A body of a given thickness spread over what area its volume needs. */
function sheet(size_m: number, each_m3: number): Body {
  const across_m = Math.sqrt(each_m3 / size_m)
  // Thicker than wide is no sheet: it is a lump.
  return across_m >= size_m ? slab(size_m, across_m) : cube(Math.cbrt(each_m3))
}

/** A round body of a given thickness, as long as its volume needs; stout ones keep round. */
function rod(size_m: number, each_m3: number): Body {
  const length_m = each_m3 / ((Math.PI / 4) * size_m ** 2)
  if (length_m >= size_m) return cylinder(size_m, length_m)
  const round_m = Math.cbrt(each_m3 / (Math.PI / 4))
  return cylinder(round_m, round_m)
}

/** From this thickness on a slab in the larder is a joint, whose proportions follow its mass (assumed). */
const joint_m = 0.06

/** The body of one piece left whole, of this volume. */
function whole(food: Food, words: string, each_m3: number): Body {
  const piece = food.usualPiece ?? usual[food.character] ?? null
  if (meats.has(food.character)) {
    if (flat.test(words)) return sheet(flat_m, each_m3)
    if (piece?.shape === 'cylinder') return rod(piece.size_m, each_m3)
    if (piece?.shape === 'slab' && piece.size_m < joint_m) return sheet(piece.size_m, each_m3)
    return joint(each_m3)
  }
  const thin = long.find(([pattern]) => pattern.test(words))
  if (thin) return rod(thin[1], each_m3)
  return sphere(Math.cbrt(each_m3 / (Math.PI / 6)))
}

/** How far a slice reaches across: what is small by nature gives small slices (assumed). */
const across: readonly (readonly [RegExp, number])[] = [
  [/\bgarlic\b/, 0.013],
  [/\bchill?i(es|s)?\b|\bchiles?\b/, 0.012],
  [/\bginger\b/, 0.025],
  [/\bmushrooms?\b/, 0.035],
  [/\b(olives?|almonds?|apricots?)\b/, 0.018],
]
const small = /\b(garlic|ginger|chill?i(es|s)?|chiles?|lemongrass)\b/

function cutBody(cut: Pick<Cut, 'shape' | 'size_m'>, size_m: number, food: Food, words: string): Body {
  const thin = long.find(([pattern]) => pattern.test(words))
  switch (cut.shape) {
    case 'slices':
      // Rings and half-moons reach across what they are cut from.
      return slab(
        size_m,
        Math.max(
          size_m,
          thin?.[1] ??
            across.find(([pattern]) => pattern.test(words))?.[1] ??
            (meats.has(food.character) ? 0.06 : 0.045),
        ),
      )
    case 'sticks':
      // "in 5 cm lengths" names the length of what is thin by nature.
      return thin && size_m > thin[1] ? cylinder(thin[1], size_m) : cylinder(size_m, Math.max(0.05, 2 * size_m))
    case 'strips':
      return { shape: 'brick', thickness_m: size_m, width_m: 2 * size_m, length_m: Math.max(0.05, 2 * size_m) }
    case 'pieces':
      if (thin && !meats.has(food.character))
        return size_m > thin[1] ? cylinder(thin[1], size_m) : cylinder(size_m, size_m)
      return cube(size_m)
    case 'shredded':
      return food.character === 'leafy vegetable' ? slab(0.001, 0.03) : cylinder(size_m, 0.03)
    default:
      return cube(size_m)
  }
}

export interface PiecesAsked {
  readonly food: Food
  readonly mass_kg: number
  /** How the words cut it; null when they do not. */
  readonly cut: Pick<Cut, 'shape' | 'size_m'> | null
  /** Line and cutting order, lower case, for "thinly", "roast", "in 4 pieces". */
  readonly words: string
  /** Number bought, when the line counts pieces ("8 thighs"); null otherwise. */
  readonly bought: number | null
}

const named = (n: number | null): n is number => n !== null && Number.isFinite(n) && n >= 1

/** The bodies of a solid; null for what has none (liquids, powders, fats). */
export function piecesOf({ food, mass_kg, cut, words, bought }: PiecesAsked): Pieces | null {
  // Tinned tomatoes and their like are liquor with solids in it, however coarse they come.
  if (food.character === 'thick liquid' || !(mass_kg > 0)) return null
  const ground = meats.has(food.character) && minced.test(`${food.id} ${words}`)
  const fallback = food.usualPiece ?? (ground ? mince : (usual[food.character] ?? null))
  if (!fallback) return null
  const total_m3 = mass_kg / food.density_kg_per_m3
  const finish = (body: Body, spread: number, from: Pieces['from']): Pieces => ({
    ...body,
    spread,
    count: Math.max(1, Math.round(total_m3 / volume_m3(body))),
    from,
  })
  const number = named(bought) ? bought : null

  // Dry and small as it comes: words like "sliced" belong to something else on the line.
  if (
    food.character === 'pulse' ||
    food.character === 'cooked pulse' ||
    food.character === 'grain' ||
    food.character === 'pasta'
  )
    return finish(bodyOfUsual(fallback, food, words), 0.1, 'usual')

  // Half a millimetre to half a metre: anything else is a slip of the pen, not a cut.
  if (cut?.size_m && cut.size_m.low >= 5e-4 && cut.size_m.high <= 0.5) {
    const size_m = mid(cut.size_m)
    const width = (cut.size_m.high - cut.size_m.low) / 4 / size_m
    return finish(cutBody(cut, size_m, food, words), Math.max(spreads[cut.shape] ?? 0.2, width), 'words')
  }
  const inPieces = piecesNamed(words)
  if (cut?.shape === 'pieces' && inPieces) {
    const each_m3 = total_m3 / (inPieces * Math.max(1, number ?? 1))
    return finish(
      flat.test(words) ? sheet(flat_m, each_m3) : meats.has(food.character) ? joint(each_m3) : cube(Math.cbrt(each_m3)),
      0.2,
      'words',
    )
  }
  if (cut?.shape === 'halves' || (cut?.shape === 'pieces' && number && /\bquarter|\bwedge/.test(words))) {
    const parts = cut.shape === 'halves' ? 2 : /\bwedge/.test(words) ? 8 : 4
    const body = number ? whole(food, words, total_m3 / number) : bodyOfUsual(fallback, food, words)
    const thickness_m = body.thickness_m * (parts === 2 ? 0.5 : parts === 4 ? 0.45 : 0.35)
    const each_m3 = volume_m3(body) / parts
    return finish(sheet(thickness_m, each_m3), 0.2, 'words')
  }
  const size_m = cut ? sizeOfShape_m(cut.shape, food, words) : null
  if (cut && size_m !== null) return finish(cutBody(cut, size_m, food, words), spreads[cut.shape] ?? 0.2, 'words')
  // "Whole-kernel corn" is no single piece: only meat, and what is counted, is left whole.
  const left =
    (cut?.shape === 'whole' && (number !== null || meats.has(food.character))) ||
    (meats.has(food.character) &&
      /\b(roast|joint|whole|in one piece|fillets?|steaks?|chops?|shanks?|thighs?|legs?|drumsticks?|wings?|breasts?|cheeks?|hocks?|bones?|ribs?)\b/.test(
        words,
      ))
  const countedWhole = number !== null && cut === null
  if (left || countedWhole) {
    const n = number ?? (cut?.shape === 'whole' ? 1 : /\b(roast|joint|whole|in one piece)\b/.test(words) ? 1 : null)
    if (n !== null && n >= 1) return finish(whole(food, words, total_m3 / n), 0.15, 'words')
  }
  // Nobody said to cut it, and it is sold as a joint: it goes in as it comes.
  if (meats.has(food.character) && fallback.size_m >= joint_m)
    return finish(whole(food, words, total_m3 / (number ?? 1)), 0.15, 'usual')
  return finish(bodyOfUsual(fallback, food, words), 0.2, 'usual')
}

function bodyOfUsual(piece: { shape: Shape; size_m: number }, food: Food, words: string): Body {
  const { shape, size_m } = piece
  if (shape === 'sphere') return sphere(size_m)
  if (shape === 'brick') return cube(size_m)
  const seeds = food.character === 'pulse' || food.character === 'cooked pulse' || food.character === 'grain'
  const across_m = seeds ? 1.5 * size_m : food.character === 'pasta' ? 0.02 : meats.has(food.character) ? 0.07 : 0.04
  if (shape === 'slab') return slab(size_m, Math.max(across_m, size_m))
  if (food.character === 'pasta') return cylinder(size_m, /\b(spaghetti|linguine|noodles?)\b/.test(words) ? 0.25 : 0.03)
  const slender = food.character === 'sausage' ? 4 : 2
  return cylinder(size_m, food.character === 'grain' ? 3 * size_m : Math.max(slender * size_m, 0.02))
}
