import type { Span } from '../findings/index.ts'
import { findFood } from '../larder/index.ts'
import { type Amount, amountAt, isSizeWord } from './amount.ts'
import { unitOfWord } from './amount-units.ts'
import { isAdverb, isDropped, isPreparation, isShape, isTemperature } from './ingredient-words.ts'
import type { Token } from './sentences-tokens.ts'
import { bareVerb } from './verbs.ts'
import { wordsIn } from './words.ts'

// Foods named in the prose of a method that has no list: "put 25 g dried porcini in a jug, cover with 300 ml boiling water".

const word = (tokens: readonly Token[], i: number): string => tokens[i]?.low ?? ''

const notAfterAmount =
  /^(?:minutes?|mins?|hours?|hrs?|seconds?|secs?|days?|weeks?|months?|nights?|servings?|portions?|people|persons|times?|inch|inches|cm|mm|degrees|°|%|more|or|and|to|at|of|[cf]|psi|deep|thick|long|wide|batches|sides?|layers?|parts?|goes|whistles?)$/
const vessels =
  /^(?:pot|pan|cooker|basin|bowl|dish|casserole|jug|tin|skillet|tray|stewpan|saucepan|kettle|mould|ramekin|oven|plate|colander|sieve|spoon|fork|forks|knife|lid|board|bag|cloth|towel)s?$/
const stops =
  /^(?:in|into|to|with|over|for|from|on|onto|at|then|until|till|which|that|when|while|if|by|upon|through|around|it|them|also|as|but|so|let|is|are|be|has|have|each|all|both|plus|per|than|before|after|about)$/

/** Last token (exclusive) of the food that begins at `i`; `i` when no food does. */
function foodEnd(reading: string, tokens: readonly Token[], i: number): number {
  let at = i
  let food = i
  while (at < tokens.length && at < i + 10) {
    const token = tokens[at]!
    const { low } = token
    if (token.kind === 'mark') {
      const inside = (low === '/' || low === '&' || low === '-') && at > i
      if (!inside) break
      at += 1
      continue
    }
    if (token.kind === 'number') break
    if (at > i && stops.test(low)) break
    if (low === 'and' || low === 'or' || low === 'nor') {
      // "beef or vegetable stock" goes on; "and simmer", "and 2 carrots", "and a small onion" do not.
      const next = word(tokens, at + 1)
      const amount = amountAt(reading, tokens, at + 1)
      if (low !== 'or' || amount || bareVerb(next)?.noun === 'never') break
      at += 1
      continue
    }
    if (at > i && bareVerb(low) && bareVerb(low)!.noun !== 'often' && !isPreparation(low)) {
      // "thin cream", "vegetable stock": the verb is the food's own name when the words before it name none.
      const named = findFood(phraseOf(tokens, i, at + 1))
      if (!named || (bareVerb(low)!.noun === 'never' && findFood(phraseOf(tokens, i, at)))) break
    }
    if (at > i && food > i && isPreparation(low)) break
    if (/ly$/.test(low) && at > i && !isAdverb(low)) break
    at += 1
    if (
      !isPreparation(low) &&
      !isAdverb(low) &&
      !isTemperature(low) &&
      !isSizeWord(low) &&
      low !== 'of' &&
      !isDropped(low)
    )
      food = at
  }
  return food
}

const phraseOf = (tokens: readonly Token[], from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map((t) => t.low)
    .join(' ')

/** What still belongs to the phrase behind the food: "(cut in eighths)", ", sliced", "if desired", "to taste". */
function tailEnd(tokens: readonly Token[], i: number): number {
  let at = i
  if (word(tokens, at) === '(') {
    let close = at
    while (close < tokens.length && close < at + 14 && word(tokens, close) !== ')') close += 1
    if (word(tokens, close) === ')') at = close + 1
  }
  if (word(tokens, at) === ',' || isPreparation(word(tokens, at))) {
    let end = word(tokens, at) === ',' ? at + 1 : at
    while (isAdverb(word(tokens, end))) end += 1
    while (isPreparation(word(tokens, end))) {
      end += 1
      if (/^(?:and|or)$/.test(word(tokens, end)) && isPreparation(word(tokens, end + 1))) end += 1
    }
    // Only where the clause ends with it: ", sliced, and cook", not ", chopped nuts".
    if (end > at + (word(tokens, at) === ',' ? 1 : 0) && /^(?:,|;|\.|and|then|)$/.test(word(tokens, end))) at = end
  }
  if (word(tokens, at) === 'to' && word(tokens, at + 1) === 'taste') return at + 2
  if (word(tokens, at) === 'if' && /^(?:desired|liked|preferred)$/.test(word(tokens, at + 1))) return at + 2
  if (word(tokens, at) === 'if' && word(tokens, at + 1) === 'you' && /^(?:like|wish)$/.test(word(tokens, at + 2)))
    return at + 3
  return at
}

/** Does an amount at `i` count a food, and not minutes, degrees, vessels or goes? */
function counts(tokens: readonly Token[], i: number, amount: Amount, end: number): boolean {
  const next = word(tokens, amount.next)
  if (end <= amount.next) return false
  if (notAfterAmount.test(next) && !(next === 'of' && amount.word !== null)) return false
  const words = tokens.slice(amount.next, end).map((t) => t.low)
  if (words.some((w) => vessels.test(w)) || word(tokens, i - 1) === '-') return false
  if (amount.kind === 'length') return false
  // "butter the size of a walnut"
  if (word(tokens, i - 1) === 'of' && word(tokens, i - 2) === 'size') return false
  // "150 C" is no cup count, "at 300" no amount.
  if (amount.unit === 'cup' && (amount.low ?? 0) > 40) return false
  if (/^(?:step|steps|no|number|page|gas|mark|at)$/.test(word(tokens, i - 1))) return false
  const food = findFood(words.filter((w) => w !== 'of').join(' '), { unit: amount.unit ?? undefined })
  if (amount.kind === 'mass' || amount.kind === 'volume' || amount.kind === 'holder') return true
  return food !== null
}

const single = (low: string): string => low.replace(/([^s])s$/, '$1')

const makes =
  /^(?:sauce|powder|paste|oil|juice|mix|seasoning|extract|essence|flakes?|seeds?|leaves|leaf|root|bones?|fat|skins?|cream|milk|stock|broth|sugar|flour|meal|wine|vinegar|beans?|nuts?|greens|herbs?|spice|jelly|jam|syrup|puree|purée|crumbs|meat)$/
/** Is it a word of the larder, or one of shape, part or make? */
const says = (low: string): boolean =>
  makes.test(low) || isShape(low) || unitOfWord(low) !== null || findFood(low) !== null

interface Named extends Span {
  readonly food: string | null
}

/** Foods with an amount, in order. */
function measured(reading: string, tokens: readonly Token[]): { found: Named[]; taken: boolean[] } {
  const found: Named[] = []
  const taken = tokens.map(() => false)
  for (let i = 0; i < tokens.length; i += 1) {
    const first = tokens[i]!
    if (first.kind === 'mark' && first.low !== '~') continue
    // "pour over 400 ml": in prose these are prepositions more often than not.
    if (/^(?:over|up|at|to|just|under|more|than|least|only|each|exactly)$/.test(first.low)) continue
    const amount = amountAt(reading, tokens, i)
    if (!amount || (first.kind === 'word' && amount.low === null && !/^(?:an?|plenty|some)$/.test(first.low))) continue
    let start = amount.next
    if (word(tokens, start) === 'of') start += 1
    while (/^(?:the|an?|nice|good)$/.test(word(tokens, start))) start += 1
    let end = foodEnd(reading, tokens, start)
    // "an onion stuck with cloves": the food is as much of it as has a name.
    if (!findFood(phraseOf(tokens, start, end))) {
      for (let far = end - 1; far > start; far -= 1) {
        if (findFood(phraseOf(tokens, start, far))) {
          end = far
          break
        }
      }
    }
    // Unless the last word says something of a food, it is no longer one.
    while (end > start + 1 && !says(word(tokens, end - 1)) && findFood(phraseOf(tokens, start, end - 1))) end -= 1
    // "six cloves": the part is the food where nothing is there for it to be a part of.
    if (
      end === start &&
      amount.kind === 'part' &&
      findFood(word(tokens, amount.next - 1)) &&
      !/^(?:of|in|to)$/.test(word(tokens, start))
    ) {
      found.push({
        from: first.from,
        to: tokens[amount.next - 1]!.to,
        food: findFood(word(tokens, amount.next - 1))!.id,
      })
      for (let k = i; k < amount.next; k += 1) taken[k] = true
      i = amount.next - 1
      continue
    }
    if (end === start || !counts(tokens, i, amount, end)) continue
    const last = tailEnd(tokens, end)
    // "the juice of a lemon"
    const juice = word(tokens, i - 1) === 'of' && /^(?:juice|zest|rind)$/.test(word(tokens, i - 2)) ? i - 2 : i
    found.push({
      from: tokens[juice]!.from,
      to: tokens[last - 1]!.to,
      food: findFood(phraseOf(tokens, start, end))?.id ?? null,
    })
    for (let k = juice; k < last; k += 1) taken[k] = true
    i = last - 1
  }
  return { found, taken }
}

/** What cooking makes of the foods is no food to be listed. */
const made =
  /^(?:gravy|soup|stew|sauce|juices?|liquor|liquid|mixture|dish|broth|curry|size|dinner|supper|table|recipe)s?$/
const pair = /^(?:salt|pepper)$/

/** Foods without an amount, at their first mention: "Clean and cut chicken", "season with salt and pepper". */
function bare(
  tokens: readonly Token[],
  taken: readonly boolean[],
  known: Set<string>,
  said: ReadonlySet<string>,
): Named[] {
  const found: Named[] = []
  for (let i = 0; i < tokens.length; i += 1) {
    if (taken[i] || tokens[i]!.kind !== 'word') continue
    let end = i
    let id: string | null = null
    for (let far = Math.min(tokens.length, i + 3); far > i; far -= 1) {
      const words = tokens.slice(i, far)
      if (words.some((t, k) => t.kind !== 'word' || taken[i + k])) continue
      const last = words.at(-1)!.low
      if (
        words.some(
          (t) =>
            stops.test(t.low) ||
            /^(?:and|or|the|a|an|of|boil|skin|skins|top|liquid|whole|this)$/.test(t.low) ||
            vessels.test(t.low),
        )
      )
        continue
      if (bareVerb(last)?.noun === 'never' || (i === far - 1 && bareVerb(last) && !pair.test(last))) continue
      // "lard it with strips of pork", "butter them": here it is a verb.
      if (i === far - 1 && /^(?:it|them)$/.test(word(tokens, far))) continue
      if (made.test(last) || isPreparation(last) || isSizeWord(last) || isDropped(last)) continue
      const food = findFood(phraseOf(tokens, i, far))
      // The first word must say something: "add salt" is salt.
      if (food && (far === i + 1 || findFood(phraseOf(tokens, i + 1, far))?.id !== food.id)) {
        end = far
        id = food.id
        break
      }
    }
    if (id === null) continue
    // "then take out the veal" speaks of the knuckle of veal.
    if (!known.has(id) && !said.has(single(word(tokens, end - 1)))) {
      known.add(id)
      let last = end
      // "salt and pepper", "pepper and salt"
      const other = word(tokens, end + 1)
      if (pair.test(word(tokens, end - 1)) && word(tokens, end) === 'and' && pair.test(other)) {
        last = end + 2
        const partner = findFood(other)
        if (partner) known.add(partner.id)
      }
      if (word(tokens, last) === 'to' && word(tokens, last + 1) === 'taste') last += 2
      found.push({ from: tokens[i]!.from, to: tokens[last - 1]!.to, food: id })
      end = last
    }
    i = end - 1
  }
  return found
}

/** Every food the paragraphs of a method name, the measured ones as often as they are measured, others once. */
export function proseFoods(reading: string, steps: readonly Span[]): Span[] {
  const all: Named[] = []
  const rest: { tokens: Token[]; taken: boolean[] }[] = []
  const known = new Set<string>()
  for (const step of steps) {
    const tokens = wordsIn(reading, step)
    const { found, taken } = measured(reading, tokens)
    all.push(...found)
    for (const { food } of found) if (food) known.add(food)
    rest.push({ tokens, taken })
  }
  const said = new Set(
    rest.flatMap(({ tokens, taken }) =>
      tokens.filter((t, i) => taken[i] && t.kind === 'word').map((t) => single(t.low)),
    ),
  )
  for (const { tokens, taken } of rest) all.push(...bare(tokens, taken, known, said))
  return all.sort((a, b) => a.from - b.from).map(({ from, to }) => ({ from, to }))
}
