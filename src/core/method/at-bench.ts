import type { Ingredient, Range, VerbCode } from '../manuscript/index.ts'
import type { Placed } from './classify.ts'
import { common, type Desk, lineLoads, move, namesOf, soakUptake, touch } from './desk.ts'
import { type HandTimeId, handTime, potTimes } from './norms.ts'
import type { BenchPart } from './plan.ts'
import { isMeat, isSolid, type Stock } from './stocks.ts'
import { cutIn, mid, sumOf, timeOf } from './words.ts'

// Work before the pot: what the ingredient lines ask for, and what the method does in bowls and on boards.

/** The words put it beside what came before. */
const isMeanwhile = (item: Placed): boolean =>
  item.op.meanwhile ?? /\b(meanwhile|in the meantime)\b/.test(item.sentence)

/** Waiting of an hour or more is printed apart from the time of the cook ("plus overnight soaking"). */
const apart_s = 3600

/** Bench work that one ingredient line asks for by its words: the cutting, peeling, opening, draining. */
export function workOfLine(stock: Stock, hands: Desk['hands'], cut = stock.ingredient.cut): Omit<BenchPart, 'load'>[] {
  const { ingredient, food, mass_kg } = stock
  const prep = `${ingredient.prep ?? ''}`.toLowerCase()
  const line = ingredient.line.toLowerCase()
  const name = ingredient.item
  const parts: Omit<BenchPart, 'load'>[] = []
  const put = (label: string, id: HandTimeId, amount = 1) => parts.push({ label, time_s: handTime(id, amount, hands) })
  const tins =
    ingredient.unit === 'can' || ingredient.unit === 'jar'
      ? Math.max(1, ingredient.low ?? 1)
      : /\b(tins?|cans?)\b/.test(line)
        ? 1
        : 0
  if (tins > 0) put(`open ${name}`, 'tin', tins)
  if (/\b(drained|rinsed|washed|picked over)\b/.test(line)) put(`rinse ${name}`, 'drain')
  if (/\bpeeled\b/.test(line) && isSolid(food.character)) put(`peel ${name}`, 'peel', mass_kg)
  if (isMeat(food.character)) {
    if (/\b(trimmed|skinned|boned|deboned)\b/.test(prep)) put(`trim ${name}`, 'trimMeat', mass_kg)
    // Mince, thighs and chops come cut from the shop.
    if (cut && cut.shape !== 'whole' && cut.shape !== 'ground') put(`cut ${name}`, 'cutMeat', mass_kg)
    return parts
  }
  if (food.character === 'herb') {
    if (cut || /\b(chopped|torn|picked|shredded)\b/.test(line)) put(`chop ${name}`, 'herb')
    return parts
  }
  if (/\b(zest|juiced?|juice of)\b/.test(line) && food.character === 'fruit')
    put(`juice ${name}`, 'juice', Math.max(1, Math.round(mass_kg / 0.11)))
  if (
    !cut ||
    !(isSolid(food.character) || food.character === 'dairy' || food.character === 'nut') ||
    food.character === 'pulse' ||
    food.character === 'grain' ||
    food.character === 'pasta' ||
    food.character === 'cooked pulse'
  )
    return parts
  if (food.character === 'aromatic' && /\bgarlic\b/.test(food.name.toLowerCase() + name)) {
    put(`peel and cut ${name}`, 'garlic', Math.max(1, Math.round(mass_kg / 0.005)))
    return parts
  }
  const fine =
    cut.shape === 'minced' ||
    (/\b(fine|finely|brunoise|(cut|chopped|diced) small|small (dice|cubes|pieces))\b/.test(line) &&
      (cut.shape === 'chopped' || cut.shape === 'cubes'))
  if (cut.shape === 'shredded' || /\bgrated\b/.test(line)) put(`shred ${name}`, 'shred', mass_kg)
  else if (fine) put(`chop ${name}`, 'chopFine', mass_kg)
  else if (cut.shape === 'slices' || cut.shape === 'strips' || cut.shape === 'sticks')
    put(`slice ${name}`, 'slice', mass_kg)
  else if (cut.shape === 'chopped' || cut.shape === 'cubes') put(`chop ${name}`, 'chop', mass_kg)
  else if (cut.shape !== 'whole') put(`cut ${name}`, 'piecesVegetable', mass_kg)
  return parts
}

/** "soaked overnight", "soaked 4 hours" in an ingredient line, s. */
export function soakInLine(ingredient: Ingredient): Range | null {
  const line = ingredient.line.toLowerCase()
  if (!/\bsoak(ed|ing)?\b/.test(line) || /\b(no soak|not soaked|unsoaked|for soaking|soaking water)\b/.test(line))
    return null
  const hours = /(\d+)(?:\s*(?:to|-|–)\s*(\d+))?\s*(?:hours?|hrs?|h)\b/.exec(line)
  if (hours) return { low: Number(hours[1]) * 3600, high: Number(hours[2] ?? hours[1]) * 3600 }
  const minutes = /(\d+)(?:\s*(?:to|-|–)\s*(\d+))?\s*(?:minutes?|mins?)\b/.exec(line)
  if (minutes) return { low: Number(minutes[1]) * 60, high: Number(minutes[2] ?? minutes[1]) * 60 }
  return potTimes.soak
}

/** The bench work of the whole list, as one operation before everything else, and the soaking the list asks for. */
export function listWork(desk: Desk, used: ReadonlySet<number>): void {
  const list = desk.recipe.ingredients
  if (list.length === 0) return
  const span = { from: Math.min(...list.map((line) => line.from)), to: Math.max(...list.map((line) => line.to)) }
  for (const stock of desk.stocks) {
    const time = soakInLine(stock.ingredient)
    if (!time || stock.food.character !== 'pulse' || !used.has(stock.ingredient.index)) continue
    desk.operations.push({
      from: stock.ingredient.from,
      to: stock.ingredient.to,
      verb: 'soak',
      step: 0,
      label: `soak the ${stock.ingredient.item}`,
      handsOn: false,
      timed: true,
      kind: 'bench',
      loads: [],
      time_s: time,
      soaked_kg: stock.mass_kg * soakUptake(desk, stock),
      ...(mid(time) >= apart_s ? { apart: true } : {}),
    })
  }
  const parts: BenchPart[] = []
  for (const stock of desk.stocks) {
    if (!used.has(stock.ingredient.index)) continue
    for (const part of workOfLine(stock, desk.hands)) parts.push({ ...part, load: null })
  }
  const lines = used.size
  if (lines === 0) return
  parts.unshift({
    label: `fetch and measure ${lines} ${lines === 1 ? 'thing' : 'things'}`,
    load: null,
    time_s: handTime('gather', lines, desk.hands),
  })
  desk.operations.push({
    ...span,
    verb: 'cut',
    step: 0,
    label: parts.length > 1 ? 'gather, measure, cut' : 'gather and measure',
    handsOn: true,
    timed: false,
    kind: 'bench',
    loads: [],
    time_s: sumOf(parts.map((part) => part.time_s)),
    parts,
  })
}

const unattended: ReadonlySet<VerbCode> = new Set(['soak', 'pickle', 'marinate', 'chill', 'rest'])

/** An operation of the method that happens at the bench. */
export function bench(desk: Desk, item: Placed, index: number): void {
  const { op } = item
  const touched = touch(desk, index)
  const host = desk.draws.host[index]
  if (host !== null) {
    const carried = touched.fresh.filter((id) => desk.loads[id].ingredient !== host)
    desk.attached.set(host, [...(desk.attached.get(host) ?? []), ...carried])
  }
  const names = namesOf(desk, touched.fresh)
  const said = timeOf(item.op)
  const idle = unattended.has(op.verb)
  const lines = op.uses.map((use) => use.ingredient).filter((line) => line in desk.stocks)
  const mass_kg = lines.reduce(
    (sum, line) => sum + (isSolid(desk.stocks[line].food.character) ? desk.stocks[line].mass_kg : 0),
    0,
  )
  const meanwhile = isMeanwhile(item)
  // Tossed with salt and spice is seasoned, whatever the verb.
  const dry = /^(salt|spice|seasoning|herb|fat|thickener)$/
  const seasons =
    op.verb === 'season' ||
    (op.verb === 'mix' &&
      host !== null &&
      isSolid(desk.stocks[host].food.character) &&
      lines.every((line) => line === host || dry.test(desk.stocks[line].food.character)))
  const soakedLine = op.verb === 'soak' ? lines.find((line) => desk.stocks[line].food.character === 'pulse') : undefined
  // "Ladle a third into a bowl" puts nothing new anywhere.
  if ((op.verb === 'add' || op.verb === 'skim') && lines.length === 0 && touched.fresh.length === 0) return
  const time = said ?? norm()
  if (time === null) return
  desk.operations.push({
    ...common(item, label(), { handsOn: !idle, timed: said !== null }),
    kind: 'bench',
    loads: [...touched.fresh, ...lines.flatMap((line) => lineLoads(desk, line).map((load) => load.id))].filter(
      (id, at, all) => all.indexOf(id) === at,
    ),
    time_s: time,
    ...(soakedLine !== undefined
      ? { soaked_kg: desk.stocks[soakedLine].mass_kg * soakUptake(desk, desk.stocks[soakedLine]) }
      : {}),
    ...(idle && mid(time) >= apart_s ? { apart: true } : {}),
    ...(meanwhile ? { beside: true } : {}),
  })

  function norm(): Range | null {
    if (seasons)
      return sumOf([
        handTime('seasonMeat', 1, desk.hands),
        ...(/\bpat\b|\bdry\b/.test(item.sentence) ? [handTime('patDry', mass_kg, desk.hands)] : []),
      ])
    switch (op.verb) {
      case 'soak':
        return soakedLine !== undefined ? potTimes.soak : potTimes.soakBrief
      case 'marinate':
      case 'pickle':
        return potTimes.marinate
      case 'chill':
        return /\b(water|ice bath)\b/.test(item.words) ? handTime('rinseCold', 1, desk.hands) : potTimes.chill
      case 'rest':
        return /\b(stand|rest|sit)\b/.test(item.words) ? potTimes.rest : null
      case 'drain':
        return handTime('drain', 1, desk.hands)
      case 'cut':
        return cutting()
      case 'mash':
        return handTime('mash', 1, desk.hands)
      case 'mix':
        return handTime('mix', 1, desk.hands)
      case 'add':
        return handTime('pour', Math.max(1, lines.length), desk.hands)
      case 'lift':
        return handTime('drain', 1, desk.hands)
      default:
        return handTime('cutOther', 1, desk.hands)
    }
  }

  /** Cutting named in the method, unless the list has asked for the same already. */
  function cutting(): Range | null {
    const parts: Range[] = []
    if (/\bpat\b|\bdry\b/.test(item.words)) parts.push(handTime('patDry', mass_kg, desk.hands))
    for (const line of new Set(lines)) {
      const stock = desk.stocks[line]
      // The list has asked for it already, or an earlier phrase has.
      if (stock.ingredient.cut || desk.cutLines.has(line)) continue
      desk.cutLines.add(line)
      const named = cutIn(item.words) ?? { shape: 'pieces' as const, size_m: null }
      const work = workOfLine(stock, desk.hands, { ...named, from: op.from, to: op.to })
      parts.push(...work.filter((part) => !/^(open|rinse|trim)/.test(part.label)).map((part) => part.time_s))
    }
    if (parts.length === 0) return lines.length > 0 ? null : handTime('cutOther', 1, desk.hands)
    return sumOf(parts)
  }

  function label(): string {
    const distinct = [...new Set(lines)].map(nameOf)
    const more =
      distinct.length > 3 ? ` and ${distinct.length - 2} more` : distinct.length > 1 ? ` and ${distinct.at(-1)}` : ''
    const first = distinct.length > 3 ? distinct.slice(0, 2) : distinct.length > 1 ? distinct.slice(0, -1) : distinct
    const named = distinct.length > 0 ? ` the ${first.join(', ')}${more}` : names && ` ${names}`
    const solid = host !== null && isSolid(desk.stocks[host].food.character)
    const carrier = solid ? ` the ${nameOf(host)}` : named && ` with${named}`
    if (seasons) return /\bpat\b/.test(item.sentence) ? `pat dry and season${carrier}` : `season${carrier}`
    return `${op.verb}${named}`
  }

  function nameOf(line: number): string {
    return desk.stocks[line].ingredient.item
  }
}

/** Cooking in another pan beside the pot: hands are busy, the vessel of the plan is not. */
export function side(desk: Desk, item: Placed, index: number): void {
  const { op } = item
  const touched = touch(desk, index)
  move(desk, touched.fresh, 'side')
  const said = timeOf(item.op)
  const norm: Partial<Record<VerbCode, Range>> = {
    heat: { low: 60, high: 180 },
    brown: potTimes.brownMeat,
    sweat: potTimes.sweat,
    fry: potTimes.fry,
    bloom: potTimes.bloom,
    boil: { low: 300, high: 600 },
    simmer: { low: 600, high: 1200 },
    reduce: potTimes.reduce,
    bake: { low: 900, high: 1800 },
  }
  const time = said ?? norm[op.verb] ?? handTime('mix', 1, desk.hands)
  const quiet = /^(bake|simmer|boil|hold|release|rest)$/.test(op.verb)
  desk.operations.push({
    ...common(item, `${op.verb} ${namesOf(desk, [...touched.fresh, ...touched.within])} apart`.replace(/ {2,}/g, ' '), {
      handsOn: !quiet,
      timed: said !== null,
    }),
    kind: 'bench',
    loads: touched.fresh,
    time_s: time,
    ...(isMeanwhile(item) ? { beside: true } : {}),
  })
}

/** The oven is put on: nobody waits for it until it is wanted. */
export function heatOven(desk: Desk, item: Placed): void {
  const { temperature_K } = item.op
  if (temperature_K) desk.oven_K = mid(temperature_K)
  desk.operations.push({
    ...common(item, 'heat the oven', { handsOn: false, timed: item.op.time_s !== null }),
    kind: 'bench',
    loads: [],
    time_s: timeOf(item.op) ?? potTimes.preheatOven,
    beside: true,
  })
}
