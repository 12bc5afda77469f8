import type { Cure, Finding } from '../findings/index.ts'
import { findFood } from '../larder/index.ts'
import { unitOfWord } from './amount-units.ts'
import { containing, figure, finding, type Understood, wordsAt } from './queries-finding.ts'
import type { Ingredient } from './recipe.ts'
import { tokenise } from './sentences-tokens.ts'
import type { Account, Unlisted } from './uses-book.ts'
import { canonical, generic } from './uses-words.ts'

// Where list and method have parted company.

export function askAboutUses(known: Understood): Finding[] {
  return [...unused(known), ...unlisted(known), ...divided(known)]
}

/** The whole line with its list mark and line break, to be struck. */
function lineCure(text: string, ingredient: Ingredient): Cure | undefined {
  const from = text.lastIndexOf('\n', ingredient.from - 1) + 1
  const end = text.indexOf('\n', ingredient.to)
  const rest = text.slice(ingredient.to, end < 0 ? text.length : end)
  const lead = text.slice(from, ingredient.from)
  // Only where the line holds nothing else.
  if (/[\p{L}\d]/u.test(lead.replace(/^\s*(?:[-*•]|\d+[.)])?\s*/u, '')) || /[\p{L}]/u.test(rest)) return undefined
  return { label: 'Strike the line', edits: [{ from, to: end < 0 ? text.length : end + 1, insert: '' }] }
}

const serving =
  /\b(?:to serve|for serving|to garnish|for garnish|garnish|for greasing|for the (?:tin|pan|dish)|to finish|accompan)/iu
const passing = /\b(?:optional|if you (?:like|want|wish)|to taste)\b/iu

/** Every word of the method, canonical. */
function methodWords(known: Understood): Set<string> {
  const words = new Set<string>()
  for (const step of known.layout.steps) {
    for (const token of tokenise(known.reading, step.from, step.to)) {
      if (token.kind !== 'word') continue
      words.add(canonical(token.low))
      if (token.low.includes('-')) for (const piece of token.low.split('-')) words.add(canonical(piece))
    }
  }
  return words
}

function unused(known: Understood): Finding[] {
  const { ingredients, touches, drafts, layout, text } = known
  // "Mix together and brown": a method that names nothing uses everything.
  if (drafts.length === 0 || touches.accounts.every((account) => account.takings.length === 0)) return []
  let words: ReadonlySet<string> | null = null
  return ingredients.flatMap((ingredient, index) => {
    if (touches.accounts[index]!.takings.length > 0 || touches.handled.has(index)) return []
    // A line inside the method is its own use.
    if (containing(layout.steps, ingredient)) return []
    const names = [...known.pantry.known[index]!.own].filter((word) => !generic.has(word))
    const heads = [...known.pantry.known[index]!.heads]
    words ??= methodWords(known)
    const inMethod = (word: string): boolean => words!.has(word)
    if (names.length === 0 || heads.some(inMethod) || names.every(inMethod)) return []
    const mild =
      ingredient.optional || passing.test(ingredient.line) || serving.test(ingredient.line) || ingredient.toTaste
    return [
      finding({
        code: 'listed-unused',
        severity: mild ? 'hint' : 'warning',
        span: ingredient.itemSpan ?? ingredient,
        title: `${capital(ingredient.item)}: listed, never used.`,
        message: `"${wordsAt(text, ingredient)}" stands in the list; no step says what to do with it.`,
        advice: 'Say where it goes in, or strike the line.',
        cure: lineCure(text, ingredient),
      }),
    ]
  })
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

const everyday = /^(?:water|salt|pepper)$/u

function unlisted(known: Understood): Finding[] {
  const { touches, text, ingredients, drafts } = known
  if (ingredients.length === 0) return []
  const seen = new Set<string>()
  return touches.unlisted.flatMap((one) => {
    if (
      seen.has(one.head) ||
      !isFoodNamed(known, one) ||
      known.pantry.known.some((ingredient) => ingredient.aside.has(one.head))
    )
      return []
    const draft = drafts[one.draft]!
    if (draft.aside || draft.verb === 'serve') return []
    seen.add(one.head)
    const words = wordsAt(text, one)
    const measured = hasAmount(known, one)
    // Water that food is washed, soaked, blanched or cooled in is nobody's purchase.
    if (
      one.water &&
      (draft.verb !== 'add' ||
        !known.pressed ||
        /\b(?:cold|running|iced?|salted|fresh|tap|plenty|enough|sufficient)\b/iu.test(
          known.reading.slice(draft.from, one.to),
        ))
    )
      return []
    if (one.water && (measured || ingredients.some((ingredient) => /\bwater\b/u.test(ingredient.item)))) return []
    const mild =
      measured ||
      everyday.test(one.head) ||
      /\b(?:some|optional|if)\b/iu.test(known.reading.slice(draft.from, draft.to))
    return [
      finding({
        code: 'used-unlisted',
        severity: mild ? 'hint' : 'warning',
        span: one,
        title: `${capital(words)}: used, not listed.`,
        message: measured
          ? `The method gives its amount, but whoever shops from the list comes home without it.`
          : `"${words}" goes in, but the list has neither it nor its amount.`,
        advice: 'Add a line with its amount to the list.',
        cure: newLine(known, words),
      }),
    ]
  })
}

/** A line behind the last one of the list, with the same list mark. */
function newLine(known: Understood, words: string): Cure | undefined {
  const { text, ingredients, layout } = known
  const last = ingredients.at(-1)
  if (!last || containing(layout.steps, last)) return undefined
  const start = text.lastIndexOf('\n', last.from - 1) + 1
  const mark = /^\s*[-*•]\s+/u.exec(text.slice(start, last.from))?.[0] ?? ''
  const end = text.indexOf('\n', last.to)
  const at = end < 0 ? text.length : end
  return { label: `List "${words}"`, edits: [{ from: at, to: at, insert: `\n${mark}${words}` }] }
}

function hasAmount(known: Understood, one: Unlisted): boolean {
  const before = known.reading.slice(Math.max(0, one.from - 24), one.from)
  return /(?:\d|[¼½¾⅓⅔⅛]|\b(?:a|an|half|pinch|little|splash|some|few|spoonful)\b)[^.,;]{0,22}$/iu.test(before)
}

const joiners = /^(?:,|and|&|\+|plus)$/u

/** A food by the larder, or an unknown word that stands in a list of foods that go in. */
function isFoodNamed(known: Understood, one: Unlisted): boolean {
  if (everyday.test(one.head)) return true
  const words = known.reading.slice(one.from, one.to).toLowerCase()
  const draft = known.drafts[one.draft]!
  if (unitOfWord(one.head)) return false
  if (
    /^(?:add|mix|fry|brown|sweat|bloom|simmer|boil|deglaze|season|thicken|heat|soak|marinate)$/u.test(draft.verb) &&
    findFood(words)
  )
    return true
  if (draft.verb !== 'add') return false
  const at = draft.tokens.findIndex((token) => token.from === one.from)
  const end = draft.tokens.findIndex((token) => token.to === one.to)
  const inList =
    joiners.test(draft.tokens[at - 1]?.low ?? '') ||
    joiners.test(draft.tokens[end + 1]?.low ?? '') ||
    joiners.test(draft.tokens[at - 2]?.low ?? '')
  return (
    inList &&
    known.touches.uses[one.draft]!.length >= 2 &&
    /^[\p{L}-]{4,}$/u.test(one.head) &&
    draft.raw.clause.nominal !== null
  )
}

/** Portions of one line that do not add up to it. */
function divided(known: Understood): Finding[] {
  return known.ingredients.flatMap((ingredient, index) => {
    const account = known.touches.accounts[index]!
    // A part went where no operation is ("grease the pan with the remaining oil").
    if (known.touches.handled.has(index) && account.takings.some((taking) => taking.portion))
      return wrongRest(known, ingredient, account)
    return [...wrongRest(known, ingredient, account), ...wrongSum(known, ingredient, account)].slice(0, 1)
  })
}

function wrongRest(known: Understood, ingredient: Ingredient, account: Account): Finding[] {
  for (const taking of account.takings) {
    const { portion, share, leftBefore } = taking
    if (!portion?.rest || !portion.amount || share === null || ingredient.low === null) continue
    if (Math.abs(share - leftBefore) <= 0.04 || ingredient.low !== ingredient.high) continue
    const left = (leftBefore / share) * portion.amount.low
    const unit = portion.amount.unit ?? ''
    const amountAt = /[\d¼½¾⅓⅔⅛⅜⅝⅞./]+/u.exec(known.reading.slice(taking.from, taking.to))
    return [
      finding({
        code: 'divided-mismatch',
        severity: 'warning',
        span: taking,
        title: `The ${ingredient.item} does not add up.`,
        message:
          `"${wordsAt(known.text, ingredient)}" is listed; by here ${figure(left)} ${unit} should remain, not ${figure(portion.amount.low)} ${unit}.`.replace(
            / +([,;.])/gu,
            '$1',
          ),
        advice: 'Bring the list and the portions together.',
        cure:
          amountAt && left > 0 && Number.isFinite(left)
            ? {
                label: `Write ${figure(left)} ${unit}`.trim(),
                edits: [
                  {
                    from: taking.from + amountAt.index,
                    to: taking.from + amountAt.index + amountAt[0].length,
                    insert: figure(left),
                  },
                ],
              }
            : undefined,
      }),
    ]
  }
  return []
}

const openEnded = /\b(?:plus (?:more|extra)|as needed|or more|to taste|or as required|approximately|about)\b/iu

function wrongSum(known: Understood, ingredient: Ingredient, account: Account): Finding[] {
  if (ingredient.low === null || openEnded.test(ingredient.line)) return []
  const counted = account.takings.filter(
    (taking) => taking.spends && !taking.again && !known.drafts[taking.draft]!.aside,
  )
  const portions = counted.filter(
    (taking) => taking.portion !== null && (taking.portion.amount !== null || taking.portion.share !== null),
  )
  if (portions.length === 0 || counted.some((taking) => taking.share === null)) return []
  // "25 biscuits in each pan": how many pans is not said here.
  if (counted.some((taking) => known.drafts[taking.draft]!.tokens.some((token) => token.low === 'each'))) return []
  const sum = counted.reduce((all, taking) => all + (taking.share ?? 0), 0)
  const range = ingredient.high !== null && ingredient.high > ingredient.low
  if (sum >= (range ? 0.6 : 0.95) && sum <= 1.05) return []
  if (range && sum <= 1.4 && sum >= 0.6) return []
  const short = sum < 1
  const percent = Math.round(Math.abs(1 - sum) * 100)
  return [
    finding({
      code: 'divided-mismatch',
      severity: ingredient.divided || !short ? 'warning' : 'hint',
      span: ingredient.amountSpan ?? ingredient,
      title: short ? `Some of the ${ingredient.item} is never used.` : `More ${ingredient.item} is used than listed.`,
      message:
        `"${wordsAt(known.text, ingredient)}" is listed; the method uses ${counted.map((taking) => `"${wordsAt(known.text, taking)}"`).join(' and ')}, ` +
        (short ? `which leaves ${percent} % of it.` : `which is ${percent} % more.`),
      advice: 'Bring the list and the portions together.',
    }),
  ]
}
