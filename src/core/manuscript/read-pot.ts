import type { Span } from '../findings/index.ts'
import { metresFromFeet } from '../units/index.ts'

/** Litres of a US quart, rounded as pots are labelled. */
const litresPerQuart = 0.946

interface Named {
  readonly pot: (Span & { readonly id: string }) | null
  readonly altitude_m: number | null
}

const cooker =
  /\b(?:(?:electric|stove-?top|stove|jiggle-top|spring-valve|\d{1,2}(?:[.,]\d)?|qt|quart|litre|liter|l|multi)[\s-]{1,2}){0,4}(?:pressure[\s-]*(?:cooker|pan|pot)|multi-?cooker|p\/c)\b/gu
const size =
  /\b(\d{1,2}(?:[.,]\d{1,2})?)\s?-?\s?(qt|quarts?|litres?|liters?|l)\b\.?(?:[\s-]+(?:electric|elec\.?|stove-?top|stovetop|oval|round|heavy|programmable|multi)){0,3}[\s-]*(?:pressure|cooker|pan|pot|p\/c|multi|elec|stove|dutch|casserole)/u
const electricSigns =
  /\belec(?:tric|\.)?\b|\bsaut[ée]\b|\bs\/t[ée]\b|\bmanual\b|\bkeep warm\b|\bmulti-?cooker\b|\bcancel\b|\bpress\b|\bsealing\b|\bdisplay\b|\bbeeps?\b|\bbutton\b|\bprogram|\bslow[- ]cook setting\b/u
const stovetopSigns =
  /\bstove-?top pressure|\bstove-?top p\/c|\bburner\b|\bring\b|\bpsi\b|\b(?:to|at) \d{1,2} ?(?:lb|lbs|pounds)\b|\bhob\b|\bregulator\b|\bvent pipe\b|\brock(?:s|ing)\b|\bflame\b|\bpressure pan\b|\bweight\b|\bjiggle|\boff the heat\b|\bover (?:a )?(?:high|medium|moderate|medium-high|low) heat\b|\bunder (?:(?:cold|running) ){0,2}(?:water|tap)\b/u
const lidded =
  /\b(?:dutch oven|casserole|cocotte|(?:heavy|lidded|ovenproof|flameproof|cast-iron)[^.\n]{0,40}\b(?:pot|pan|casserole)|braiser|stewpan|stew pot|lidded pot)\b/gu
const inOven =
  /\b(?:in|to|into) (?:the|a) (?:(?:hot|low|slow|moderate|preheated) )?oven\b|\bbake\b|\bbraise in the oven\b/u

function electricId(litres: number | null): string {
  if (litres === null) return 'electric-6qt'
  return litres < 4.2 ? 'electric-3qt' : litres > 6.8 ? 'electric-8qt' : 'electric-6qt'
}

/**
 * The pot and the place that the manuscript itself names, by its words; the span is the first name of the pot. `low` is
 * the manuscript in small letters, as long as it.
 */
export function readNamed(low: string, pressed: boolean): Named {
  return { pot: pressed ? pressurePot(low) : braisingPot(low), altitude_m: altitude(low) }
}

function pressurePot(reading: string): Named['pot'] {
  cooker.lastIndex = 0
  const found = cooker.exec(reading)
  const measure = size.exec(reading)
  // The name of the pot settles it without a look at the rest.
  const named = found ? (/\belec/u.test(found[0]) ? 'electric' : /\bstove/u.test(found[0]) ? 'stovetop' : null) : null
  const electric = named ? named === 'electric' : electricSigns.test(reading)
  const stovetop = named ? named === 'stovetop' : stovetopSigns.test(reading)
  if (!found && !electric && !stovetop) return null
  const litres = measure ? Number(measure[1]!.replace(',', '.')) * (/^q/u.test(measure[2]!) ? litresPerQuart : 1) : null
  const place = found ?? measure ?? electricSigns.exec(reading) ?? stovetopSigns.exec(reading)!
  const explicit = /\belec/u.test(found?.[0] ?? '') ? true : /\bstove/u.test(found?.[0] ?? '') ? false : null
  const isElectric = explicit ?? (electric && !(stovetop && !/\bsaut[ée]|\bs\/t[ée]|\belec|\bmanual\b/u.test(reading)))
  if (!isElectric && !stovetop && litres === null && !found) return null
  const span = { from: place.index, to: place.index + place[0].length }
  if (isElectric) return { ...span, id: electricId(litres) }
  // "6-qt pan", "pressure cooker" with a flame under it.
  return stovetop || explicit === false ? { ...span, id: 'stovetop-6qt' } : { ...span, id: electricId(litres) }
}

function braisingPot(reading: string): Named['pot'] {
  lidded.lastIndex = 0
  const found = lidded.exec(reading)
  if (!found) return null
  const span = { from: found.index, to: found.index + found[0].length }
  return { ...span, id: inOven.test(reading) ? 'dutch-oven' : 'dutch-burner' }
}

const heights =
  /\b(\d{1,2}[,.]?\d{3}|\d{3,4})\s*(feet|ft|foot|metres|meters|m)\b\.?\s*(?:above sea level|altitude|elevation|up\b)?/gu

/** "tested at 5,280 feet": only a height that is called one. */
function altitude(reading: string): number | null {
  heights.lastIndex = 0
  for (const found of reading.matchAll(heights)) {
    const around = reading.slice(Math.max(0, found.index - 40), found.index + found[0].length + 40)
    if (!/\b(?:altitude|elevation|sea level|tested at|cooked at|kitchen at)\b/u.test(around)) continue
    const value = Number(found[1]!.replace(/[,.]/u, ''))
    return /^m/u.test(found[2]!) ? value : metresFromFeet(value)
  }
  return null
}
