import type { Token } from './sentences-tokens.ts'

// How pressure leaves the pot, in the usual wordings of the trade. The rules look at the words of one clause, set side
// by side with single blanks.

export interface ReleaseCue {
  readonly natural: boolean
  readonly vented: boolean
  readonly iced: boolean
}

const natural: ReleaseCue = { natural: true, vented: false, iced: false }
const vented: ReleaseCue = { natural: false, vented: true, iced: false }
const naturalThenVented: ReleaseCue = { natural: true, vented: true, iced: false }
const iced: ReleaseCue = { natural: false, vented: false, iced: true }

const ownWay = /\b(?:natural|naturally|unaided|unassisted|itself)\b/u
const ownWill = /\b(?:own|accord)\b/u
const shortNatural = /(?:^| )(?:nr|npr)(?: |$)/u
const shortVented = /(?:^| )(?:qr|qpr)(?: |$)/u
const goingDown =
  /\b(?:drops?|dropped|falls?|fallen|subsides?|subsided|releases?|released|reduces?|reduced|dissipates?|dissipated|escape|down|lowers?|decreases?|depressuri[sz]e|out|gone|zero|comes?|goes?)\b/u
const releasing = /\b(?:releas(?:e|es|ing|ed)|quick-release|vent(?!-| pipe)|venting|depressuri[sz]e)\b/u
const fast =
  /\b(?:quick-release|quick|quickly|fast|rapid|rapidly|fast-release|qr|qpr|manual|manually|immediately|instant)\b/u
const valve = /\b(?:valve|vent(?! pipe)|knob|toggle|handle|switch|steam-release)\b/u
const opening = /\b(?:venting|vent(?! pipe)|open|release|releasing)\b/u
const shutting = /\b(?:to|is|the) (?:seal|sealing|sealed|closed|close|shut|locked)\b|\bto pressure\b/u
const remaining = /\b(?:rest|remaining|anything|any|residual|remainder|remains|left|all)\b/u
const pressureWord = /\bpressure(?! cook)\b/u
const running = /\b(?:under|running|sink|tap)\b/u
const vessel = /\b(?:pot|cooker|pan|lid|pressure|rest|p\/c)\b/u
const weight = /\b(?:weight|petcock|jiggler|gauge)\b/u

/** Without one of these words a clause is about something else. */
const hints: ReadonlySet<string> = new Set(
  (
    'pressure steam valve vent venting release releases released releasing quick-release fast-release depressurise depressurize nr npr qr qpr ' +
    'natural naturally knob toggle handle switch steam-release weight petcock jiggler gauge water tap'
  ).split(' '),
)

const ventVerbs = /^(?:vent|quick-release|depressurise|depressurize|qr|fast-release)$/u
const valveVerbs = /^(?:open|turn|flick|flip|move|switch|set|push|slide|twist|press|lift|release|rotate|adjust|vent)$/u
const waitVerbs = /^(?:let|allow|leave|wait|stand|rest|cool|sit|give|take|keep)$/u
const coolVerbs = /^(?:cool|run|hold|put|place|set|stand|plunge|chill|carry|release|let|)$/u

/**
 * What a clause says about letting the pressure go; null when it is about something else. `head` is the verb's lemma
 * or an empty string; `skip` marks what is only told in front ("After the pressure is released, …").
 */
export function readRelease(
  tokens: readonly Token[],
  at: number,
  next: number,
  head: string,
  skip: readonly boolean[],
): ReleaseCue | null {
  let hinted = ventVerbs.test(head)
  for (let i = at; i < next && !hinted; i += 1) hinted = hints.has(tokens[i]!.low)
  if (!hinted) return null
  const words: string[] = []
  for (let i = at; i < next; i += 1) if (!skip[i]) words.push(tokens[i]!.low)
  const line = words.join(' ')
  const pressure = pressureWord.test(line)
  const steam = head !== 'steam' && /\bsteam\b/u.test(line)
  const own = ownWay.test(line)
  const releases = releasing.test(line)

  if (ventVerbs.test(head)) return own ? natural : vented
  if (fast.test(line) && releases) return vented
  if (shortNatural.test(line)) return natural
  if (shortVented.test(line)) return vented
  if (own && (pressure || steam || releases || (goingDown.test(line) && (waitVerbs.test(head) || head === 'come')))) {
    // "naturally for 15 minutes before switching the valve to venting": both in one breath.
    const both = !shutting.test(line) && opening.test(line) && (valve.test(line) || (remaining.test(line) && releases))
    return both ? naturalThenVented : natural
  }
  if (head === 'release') {
    if (own || ownWill.test(line)) return natural
    if (pressure || steam || remaining.test(line) || valve.test(line) || words.length <= 3) return vented
  }
  return byHand(line, head, { pressure, steam, releases }) ?? byItself(line, head, { pressure, steam, releases })
}

interface Named {
  readonly pressure: boolean
  readonly steam: boolean
  readonly releases: boolean
}

/** Valve, weight or cold water. */
function byHand(line: string, head: string, { pressure, steam, releases }: Named): ReleaseCue | null {
  if (valve.test(line) && !shutting.test(line)) {
    const opens = opening.test(line) || steam || remaining.test(line) || /^(?:flick|flip|twist)$/u.test(head)
    if (valveVerbs.test(head) && opens) return vented
    if ((steam || pressure) && releases) return vented
  }
  if (weight.test(line) && /^(?:lift|remove|raise|take|tilt|knock)$/u.test(head) && (steam || pressure || releases))
    return vented
  const water = /\b(?:water|tap)\b/u.test(line)
  if (
    water &&
    /\b(?:cold|running|cool)\b/u.test(line) &&
    vessel.test(line) &&
    running.test(line) &&
    coolVerbs.test(head)
  )
    return vented
  return water && pressure && /\b(?:ice|iced|icy)\b/u.test(line) ? iced : null
}

/** Waiting until the pressure has gone. */
function byItself(line: string, head: string, { pressure, steam, releases }: Named): ReleaseCue | null {
  if (waitVerbs.test(head)) {
    if (steam && (goingDown.test(line) || releases) && !ownWill.test(line)) return vented
    if (pressure && (goingDown.test(line) || ownWill.test(line) || releases)) return fast.test(line) ? vented : natural
  }
  return head === '' && pressure && (goingDown.test(line) || releases) && ownWay.test(line) ? natural : null
}
