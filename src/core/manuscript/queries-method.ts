import type { Finding, Span } from '../findings/index.ts'
import { celsiusFromKelvin } from '../units/index.ts'
import type { SaidTemperature } from './operations-temperature.ts'
import { finding, type Understood, wordsAt } from './queries-finding.ts'
import type { Draft } from './steps-draft.ts'

// What the method leaves open.

const spanOf = (draft: Draft): Span => ({ from: draft.from, to: draft.to })
const inCourse = (draft: Draft): boolean => draft.aside === null

/** "come back to pressure", "bring to a boil": a way there, with its end in the words. */
const isWayThere = (draft: Draft): boolean => {
  const { clause, verb, kind } = draft.raw
  if (/^(?:bring|move|give)$/u.test(verb?.frame ?? '') || kind === 'set') return true
  return draft.tokens
    .slice(clause.head, clause.next)
    .some((token) => token.low === 'come' || token.low === 'comes' || (token.low === 'up' && draft.verb === 'boil'))
}

/** Queries about every single operation and the order they stand in. */
export function askAboutMethod(known: Understood): Finding[] {
  const { drafts } = known
  const course = drafts.filter(inCourse)
  return [
    ...drafts.flatMap((draft, index) => (inCourse(draft) ? askAboutOne(known, draft, index) : [])),
    ...askAboutReleases(known, course),
    ...askAboutLevels(known, course),
    ...askAboutScales(known),
    ...askAboutIt(known),
  ]
}

const doneWords =
  /^(?:or\s+)?(?:until|till)\s+(?:(?:it|they|the \w+) (?:is|are)\s+)?(?:just\s+)?(?:done|cooked|ready|cooked through|finished|nice|right)\.?$/iu
// Whoever boils water or pasta by its packet needs no minutes from us.
const elsewhere = /\b(?:package|packet|directions|instructions|according to)\b|\bboil(?:ing)? [^.]*\bwater\b/iu
const thickWords = /\b(?:thick|thicken(?:ed|s)?|reduced?|desired consistency|right consistency|sauce consistency)\b/iu

function askAboutOne(known: Understood, draft: Draft, index: number): Finding[] {
  const { text } = known
  const { verb, cue, time, reduceTo } = draft
  const span = spanOf(draft)
  const cueSpan = draft.cueSpan ?? span
  if (cue && !time && doneWords.test(cue)) {
    return [
      finding({
        code: 'vague-cue',
        severity: 'warning',
        span: cueSpan,
        title: '"Done" is what the reader wants to know.',
        message: `"${wordsAt(text, cueSpan)}" gives neither a time nor a sign to look for.`,
        advice: 'Give minutes, and what to see, feel or measure: fork-tender, 74 °C (165 °F) in the middle.',
      }),
    ]
  }
  const boilsDown = verb === 'simmer' || verb === 'reduce' || verb === 'boil'
  if (
    boilsDown &&
    !time &&
    !reduceTo &&
    ((cue && thickWords.test(cue) && !/\bsyrup|\bspoon|\bhalf|\bthird/iu.test(cue)) || (verb === 'reduce' && !cue))
  ) {
    return [
      finding({
        code: 'reduce-no-target',
        severity: 'warning',
        span: cue ? cueSpan : span,
        title: 'How thick is thick?',
        message: cue
          ? `"${wordsAt(text, cueSpan)}" names no time, volume or sign. Two cooks will stop at two sauces.`
          : 'The liquid is to be reduced, but neither how far nor how long.',
        advice: 'Say about how many minutes, how much should be left ("to about 300 ml"), or what it does on a spoon.',
      }),
    ]
  }
  if (time || cue || reduceTo || isWayThere(draft)) return []
  if (verb === 'hold') {
    return [
      finding({
        code: 'no-time',
        severity: 'warning',
        span,
        title: 'How long at pressure?',
        message: 'Nobody can look under a locked lid: the minutes at pressure have to stand in the words.',
        advice: 'Give the minutes at pressure.',
      }),
    ]
  }
  if (elsewhere.test(wordsAt(text, span))) return []
  if ((verb === 'simmer' || verb === 'bake' || verb === 'boil') && !carriesTimeLater(known.drafts, draft, index)) {
    return [
      finding({
        code: 'no-time-no-cue',
        severity: 'hint',
        span,
        title: 'For how long?',
        message: `"${wordsAt(text, span)}" has neither a time nor a sign that it is done.`,
        advice: 'Give minutes, or what to look for.',
      }),
    ]
  }
  return []
}

/** "Simmer, covered; cook 20 minutes": the time stands with the next words. */
function carriesTimeLater(drafts: readonly Draft[], draft: Draft, index: number): boolean {
  const next = drafts[index + 1]
  return (
    next !== undefined &&
    next.sentence <= draft.sentence + 1 &&
    /^(?:simmer|boil|bake|reduce)$/u.test(next.verb) &&
    next.time !== null
  )
}

const opensPot: ReadonlySet<string> = new Set([
  'add',
  'lift',
  'strain',
  'skim',
  'mix',
  'simmer',
  'reduce',
  'boil',
  'thicken',
  'season',
  'serve',
  'mash',
  'cut',
  'drain',
  'lock',
  'heat',
  'fry',
  'bake',
  'chill',
])

/** Every time under pressure wants a word on how the pressure goes. */
function askAboutReleases(known: Understood, course: readonly Draft[]): Finding[] {
  const found: Finding[] = []
  for (let i = 0; i < course.length; i += 1) {
    if (course[i]!.verb !== 'hold' || course[i + 1]?.verb === 'hold') continue
    let k = i + 1
    while (k < course.length && course[k]!.verb !== 'release' && !opensPot.has(course[k]!.verb)) k += 1
    const next = course[k]
    if (next?.verb === 'release') continue
    const told = next
      ? /\b(?:pressure|steam)\b[^.]{0,40}\b(?:released|gone|down|dropped|fallen|zero)\b/iu.test(
          known.reading.slice(course[i]!.to, next.to),
        )
      : false
    found.push(
      finding({
        code: 'no-release',
        severity: told ? 'hint' : 'warning',
        span: spanOf(course[i]!),
        title: 'How does the pressure go?',
        message: next
          ? `The next order is "${wordsAt(known.text, spanOf(next))}"; how the pressure is let go before that is not said. It decides 10 to 25 minutes of cooking.`
          : 'The method ends with the lid locked: how the pressure is let go is not said.',
        advice: 'Say whether the pressure drops by itself (for how long) or is vented at once.',
        source: 'common practice, no source',
      }),
    )
  }
  return found
}

function askAboutLevels(known: Understood, course: readonly Draft[]): Finding[] {
  // A cooker with a loose weight mostly has one pressure.
  const weighted = /\b(?:regulator|jiggl\w*|rock(?:s|ing)|weight)\b/iu.test(known.reading)
  let level: string | null = null
  const found: Finding[] = []
  for (const draft of course) {
    if (draft.pressure) level = draft.pressure
    if (draft.verb !== 'hold' || draft.pressure || level) continue
    const head = draft.raw.clause.head
    const compound = draft.tokens[head]?.low === 'pressure' ? 1 : 0
    const verb = head >= 0 ? (draft.tokens[head + compound] ?? null) : null
    found.push(
      finding({
        code: 'no-pressure-level',
        severity: weighted ? 'hint' : 'warning',
        span: spanOf(draft),
        title: 'High pressure or low?',
        message: `"${wordsAt(known.text, spanOf(draft))}" does not say at which pressure. Most cookers have two.`,
        advice: 'Say "at high pressure" (or low).',
        cure: verb
          ? {
              label: `Write "${verb.low} at high pressure"`,
              edits: [{ from: verb.to, to: verb.to, insert: ' at high pressure' }],
            }
          : undefined,
      }),
    )
    level = 'asked'
  }
  return found
}

/** Two figures side by side that are meant to be one temperature may differ by the rounding of an oven dial, K. */
const roundingOfDials_K = 12

/** "300°F (180°C)": one temperature, printed twice, must be one temperature. */
function askAboutScales(known: Understood): Finding[] {
  const found: Finding[] = []
  const seen = new Set<number>()
  for (const draft of known.drafts) {
    const said = draft.raw.slots.temperatures
    for (let i = 0; i + 1 < said.length; i += 1) {
      const a = said[i]!
      const b = said[i + 1]!
      if (
        seen.has(a.from) ||
        b.from - a.to > 12 ||
        a.fan ||
        b.fan ||
        a.scale === b.scale ||
        a.scale === 'none' ||
        b.scale === 'none'
      )
        continue
      seen.add(a.from)
      const limit_K = a.scale === 'gas' || b.scale === 'gas' ? 2 * roundingOfDials_K : roundingOfDials_K
      if (Math.abs(a.low_K - b.low_K) <= limit_K) continue
      found.push(mismatch(known, a, b))
    }
  }
  return found
}

const shown = (one: SaidTemperature): string =>
  one.scale === 'gas' ? `gas mark ${one.low}` : `${one.low} °${one.scale}`

function mismatch(known: Understood, a: SaidTemperature, b: SaidTemperature): Finding {
  const span = { from: a.from, to: known.text[b.to] === ')' ? b.to + 1 : b.to }
  const second_C = celsiusFromKelvin(a.low_K)
  const should =
    b.scale === 'C'
      ? Math.round(second_C / 10) * 10
      : b.scale === 'F'
        ? Math.round((second_C * 1.8 + 32) / 25) * 25
        : null
  const digits = /\d+/u.exec(known.reading.slice(b.from, b.to))
  const at = digits ? b.from + digits.index : b.from
  return finding({
    code: 'temperature-pair-mismatch',
    severity: 'warning',
    span,
    title: `${shown(a)} is not ${shown(b)}.`,
    message: `${shown(a)} is ${Math.round(celsiusFromKelvin(a.low_K))} °C, ${shown(b)} is ${Math.round(celsiusFromKelvin(b.low_K))} °C. One of the two is wrong.`,
    advice: 'Find out which one was cooked, and convert the other.',
    source: 'C = (F − 32) × 5/9',
    cure:
      should !== null && digits
        ? {
            label: `Keep ${shown(a)}, write ${should} °${b.scale}`,
            edits: [{ from: at, to: at + digits[0].length, insert: String(should) }],
          }
        : undefined,
  })
}

/** "it" that may be one of two things. */
function askAboutIt(known: Understood): Finding[] {
  const found: Finding[] = known.twoVessels.map((span) =>
    finding({
      code: 'ambiguous-reference',
      severity: 'warning',
      span,
      title: 'Which one is "it"?',
      message: 'The sentence before names two vessels, and either may be meant.',
      advice: 'Name the vessel.',
    }),
  )
  const { drafts, touches } = known
  drafts.forEach((draft, i) => {
    const before = drafts[i - 1]
    if (!before || before.sentence !== draft.sentence || !/^(?:add|lift|cut|drain)$/u.test(draft.verb)) return
    if (!/^(?:brown|fry|cut|boil|bake|chill|soak|sweat)$/u.test(before.verb) || before.raw.verb?.frame === 'cook')
      return
    const { clause } = draft.raw
    const it = draft.tokens.findIndex(
      (token, k) => k > clause.head && k < clause.next && token.low === 'it' && !draft.raw.told[k],
    )
    if (it < 0 || draft.raw.slots.mentions.some((mention) => mention.at < it && mention.found.length > 0)) return
    const things = touches.uses[i - 1]!.filter((use) => use.from >= before.from)
    if (things.length < 2 || new Set(things.map((use) => use.from)).size < 2) return
    const joined = before.tokens
      .slice(before.raw.clause.head, before.raw.clause.next)
      .some((token) => /^(?:and|&|\+)$/u.test(token.low))
    if (!joined) return
    const names = things.slice(0, 2).map((use) => wordsAt(known.text, use))
    found.push(
      finding({
        code: 'ambiguous-reference',
        severity: 'warning',
        span: spanOf(draft),
        title: '"It" or "them"?',
        message: `"it" follows "${names.join('" and "')}": one of them, or both?`,
        advice: 'Write "them", or name the one.',
        cure: {
          label: 'Write "them"',
          edits: [{ from: draft.tokens[it]!.from, to: draft.tokens[it]!.to, insert: 'them' }],
        },
      }),
    )
  })
  return found
}
