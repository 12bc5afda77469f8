import type { Finding, Span } from '../findings/index.ts'
import type { PlanOperation } from '../method/index.ts'
import { foams } from './foam.ts'
import type { Run } from './run.ts'
import type { Walk } from './walk.ts'

// What the run has to say, tied to the words that caused it. Every finding names its cause and a cure. After a burn
// stop the rest of the method is a different dish: only the stop is reported, not what it leaves raw.

type Draft = Omit<Run, 'findings'>

const make = (
  code: string,
  severity: Finding['severity'],
  span: Span | null,
  title: string,
  message: string,
  advice: string | null,
  source: string,
): Finding => ({
  code,
  severity,
  span,
  title,
  message,
  source,
  advice,
  cure: null,
})

const ml = (m3: number): string => `${Math.round((m3 * 1e6) / 5) * 5} ml`
const minutes = (s: number): string => {
  const m = Math.max(1, Math.round(s / 60))
  return m === 1 ? '1 minute' : `${m} minutes`
}
const spanOf = (op: PlanOperation | undefined): Span | null => (op ? { from: op.from, to: op.to } : null)

export function findingsOf(run: Draft, w: Walk): Finding[] {
  return [
    ...run.plan.findings,
    ...floorFindings(run),
    ...fillFindings(run, w),
    ...pressureFindings(run, w),
    ...(run.base.trips && w.everTripped ? [] : pieceFindings(run)),
    ...browningFindings(run, w),
  ]
}

const causeWords = {
  liquid: 'Too little liquid reached the floor: part of it fell dry.',
  thickness: 'The liquor is too thick to carry the heat away: a layer dries on the floor.',
  fond: 'What browning left on the floor was not lifted, and it keeps the heat in.',
  floor: 'Paste, starch or sugar lies on the floor and catches.',
} as const

const cureWords = {
  liquid: 'More thin liquid before the lid is locked.',
  thickness: 'Thin it, or bring it to the boil with stirring before the lid goes on; thicken after opening.',
  fond: 'Add part of the liquid first and scrape the floor clean before anything else goes in.',
  floor: 'Thin liquid first; put what is thick on top, unstirred, and stir after opening.',
} as const

/** Words to which a cause is tied: the last operation that could have prevented it. */
function placeOf(run: Draft, cause: keyof typeof causeWords): Span | null {
  const ops = run.plan.operations
  const hold = ops.findIndex((op) => op.kind === 'hold')
  const before = hold < 0 ? ops : ops.slice(0, hold)
  const last = (test: (op: PlanOperation) => boolean): Span | null => spanOf([...before].reverse().find(test))
  if (cause === 'fond') return last((op) => op.kind === 'brown') ?? last((op) => op.kind === 'fry')
  const wants =
    cause === 'liquid'
      ? ['thin liquid', 'alcohol']
      : cause === 'thickness'
        ? ['thick liquid', 'paste', 'thickener', 'dairy']
        : ['paste', 'thickener', 'sweetener', 'dairy', 'starch']
  const load = [...run.plan.loads]
    .filter((l) => wants.includes(l.food.character))
    .sort((a, b) => b.mass_kg - a.mass_kg)[0]
  return load?.span ?? last((op) => op.kind === 'add') ?? spanOf(ops[hold])
}

function floorFindings(run: Draft): Finding[] {
  if (run.clock.comeUp_s === null && !run.base.trips) return []
  const { base, plan } = run
  const cause = base.cause ?? 'liquid'
  const trip = plan.pot.trip_K !== null
  const when = base.at_s - (run.events.find((e) => e.code === 'locked')?.time_s ?? 0)
  if (base.trips) {
    return [
      make(
        trip ? 'burn-stop' : 'scorches',
        'blocking',
        placeOf(run, cause),
        trip ? `The pot stops ${minutes(when)} after locking.` : `It catches ${minutes(when)} after locking.`,
        `${causeWords[cause]} The floor reaches ${Math.round((trip ? plan.pot.trip_K! : plan.pot.scorch_K) - 273.15)} °C, where ${trip ? 'such a pot cuts the heat' : 'food scorches'}.`,
        cureWords[cause],
        "the run; trip temperature assumed, see the pot's card",
      ),
    ]
  }
  const near = plan.pot.tripSpread_dK
  if (base.margin_dK < near) {
    return [
      make(
        'burn-near',
        'warning',
        placeOf(run, cause),
        `Only ${Math.max(0, Math.round(base.margin_dK))} K from a burn stop.`,
        `${base.cause ? causeWords[base.cause] : ''} Pots differ by ${near} K or so: some would stop.`.trim(),
        base.cause ? cureWords[base.cause] : null,
        'the run; spread between pots assumed',
      ),
    ]
  }
  return []
}

function fillFindings(run: Draft, w: Walk): Finding[] {
  const found: Finding[] = []
  const { pot } = run.plan
  if (run.fill.volume_m3 > pot.capacity_m3) {
    return [
      make(
        'does-not-fit',
        'blocking',
        spanOf(run.plan.operations.find((op) => op.kind === 'lock' || op.kind === 'simmer' || op.kind === 'bake')),
        `It does not fit: ${(run.fill.volume_m3 * 1e3).toFixed(1)} litres.`,
        `The ${pot.name} holds ${(pot.capacity_m3 * 1e3).toFixed(1)} litres to the brim. What the run says of so much food in it is not to be relied on.`,
        'A larger pot, or less at once.',
        "the pot's card",
      ),
    ]
  }
  if (!pot.regulator || (run.clock.hold_s === null && !run.base.trips && !w.neverAtPressure)) return found
  const swells = foams(run.plan)
  const line = `${swells ? 'half' : 'two thirds'} of the pot, ${(run.fill.limit * pot.capacity_m3 * 1e3).toFixed(1)} litres`
  const lockOp = spanOf(run.plan.operations.find((op) => op.kind === 'lock' || op.kind === 'hold'))
  const has = `${(run.fill.volume_m3 * 1e3).toFixed(1)} litres`
  if (run.fill.fraction > run.fill.limit * 1.02) {
    found.push(
      make(
        swells ? 'over-foam-line' : 'over-fill-line',
        'blocking',
        lockOp,
        `Too full: ${has}.`,
        `The line for ${swells ? 'what foams or swells' : 'anything'} is ${line}. Over it, food can rise into the valve and block it. Follow the pot's manual.`,
        'Cook less at once, or use a larger pot.',
        "makers' manuals: two thirds in general, half for what foams or swells",
      ),
    )
  } else if (run.fill.fraction > run.fill.limit * 0.94) {
    found.push(
      make(
        swells ? 'at-foam-line' : 'at-fill-line',
        'warning',
        lockOp,
        `Close to the ${swells ? 'foam' : 'fill'} line: ${has}.`,
        `The line is ${line}. A generous measure or large vegetables would pass it${swells ? '; foam can reach the valve: a spoonful of oil, a natural release' : ''}. Follow the pot's manual.`,
        swells
          ? 'A little less liquid, or say that the pot must not be more than half full.'
          : 'A little less, or say where the line is.',
        "makers' manuals: two thirds in general, half for what foams or swells",
      ),
    )
  }
  const thin = run.plan.loads
    .filter((l) => l.pieces === null && ['thin liquid', 'alcohol'].includes(l.food.character))
    .reduce((s, l) => s + l.mass_kg / l.food.density_kg_per_m3, 0)
  if (run.clock.hold_s !== null && thin < pot.leastLiquid_m3 * 0.98) {
    found.push(
      make(
        'under-manual-liquid',
        'hint',
        placeOf(run, 'liquid'),
        `${ml(thin)} poured; manuals for this size ask for ${ml(pot.leastLiquid_m3)}.`,
        run.base.trips || run.base.margin_dK < pot.tripSpread_dK
          ? 'The run bears them out here.'
          : `The food gives up enough juice in this run: the base stays ${Math.round(run.base.margin_dK)} K below its trip. The manual's figure is a margin for all dishes.`,
        "Follow the pot's manual, or say why less will do.",
        "makers' manuals, as a rule of the pot's card",
      ),
    )
  }
  return found
}

function pressureFindings(run: Draft, w: Walk): Finding[] {
  if (!w.neverAtPressure) return []
  return [
    make(
      'never-at-pressure',
      'blocking',
      spanOf(run.plan.operations.find((op) => op.kind === 'hold')),
      'It never comes to pressure.',
      `After ${minutes(w.c.neverAtPressure_s)} the pot has still not reached its pressure. There is too little liquid to make steam, or too much food for the heat.`,
      'More thin liquid, or a smaller batch.',
      'the run',
    ),
  ]
}

function pieceFindings(run: Draft): Finding[] {
  const found: Finding[] = []
  for (const p of run.pieces) {
    const load = run.plan.loads[p.load]
    const span = load.span
    if (p.tender !== null && p.tenderBand) {
      const pct = Math.round(p.tender * 100)
      // Bones, hocks and smoked joints are there for their flavour; nobody promised them tender.
      const flavouring = load.food.tags?.includes('cured') || load.food.composition.protein < 0.12
      if (p.tender < 0.6 && !flavouring) {
        found.push(
          make(
            'tough',
            'warning',
            span,
            `The ${load.name} stays ${p.word}.`,
            `${pct} % of its collagen has turned to gelatin at the coldest point; about 70 % makes it tender.`,
            'More minutes at pressure, a longer natural release, or smaller pieces.',
            'the run; collagen rates assumed',
          ),
        )
      } else if (p.tenderBand[0] < 0.7 && p.tender < 0.7 && !flavouring) {
        found.push(
          make(
            'barely-tender',
            'hint',
            span,
            `The ${load.name} is on the edge of tender.`,
            `${pct} % of its collagen turned (${Math.round(p.tenderBand[0] * 100)} to ${Math.round(p.tenderBand[1] * 100)} % between animals); about 70 % makes it tender.`,
            'A few minutes more would make it sure.',
            'the run; collagen rates assumed',
          ),
        )
      } else if (p.tender > 0.97) {
        found.push(
          make(
            'falls-apart',
            'hint',
            span,
            `The ${load.name} falls apart.`,
            `${pct} % of its collagen has turned: it shreds rather than slices.`,
            'Say so, or take minutes off.',
            'the run; collagen rates assumed',
          ),
        )
      }
    }
    const poultry = load.food.character.startsWith('poultry')
    const meat = ['collagen cut', 'lean meat', 'sausage'].includes(load.food.character)
    const least_K = poultry || load.food.character === 'sausage' ? 347.04 : 335.93
    if ((poultry || meat) && p.coldest_K < least_K && load.mass_kg > 0.05) {
      found.push(
        make(
          'underdone',
          'blocking',
          span,
          `The ${load.name} is underdone at its core.`,
          `Its coldest point never passes ${Math.round(p.coldest_K - 273.15)} °C; ${poultry ? 'poultry needs 74 °C (165 °F)' : load.food.character === 'sausage' ? 'minced meat needs 71 °C (160 °F)' : 'whole cuts need 63 °C (145 °F) and a rest'}. Check with a thermometer; local food codes rule.`,
          'Smaller pieces or more time.',
          'FSIS safe minimum temperatures',
        ),
      )
    }
    if (load.food.character === 'pulse' && p.firm !== null && p.firm > 0.35 && run.clock.hold_s !== null) {
      found.push(
        make(
          'beans-hard',
          'warning',
          span,
          `The ${load.name} are not soft.`,
          `${Math.round(p.firm * 100)} % of their firmness is left at the core. Underdone kidney beans can make people ill.`,
          'Soak longer, more minutes, acid and salt water after they are soft.',
          'Silva 1981; FDA Bad Bug Book on kidney beans',
        ),
      )
    }
  }
  return found
}

function browningFindings(run: Draft, w: Walk): Finding[] {
  const found: Finding[] = []
  for (const c of w.crowded) {
    if (c.brown > 0.35) continue
    const op = run.plan.operations.find((o) => o.kind === 'brown' && o.loads.includes(c.load))
    const name = run.plan.loads[c.load].name
    const crowd = c.coverage > 0.75
    // Mince gives up its juice whatever one does; cooks know it.
    const fine = (run.plan.loads[c.load].pieces?.thickness_m ?? 1) < 0.012
    found.push(
      make(
        'stews-instead',
        fine ? 'hint' : 'warning',
        spanOf(op),
        `The ${name} stews instead of browning.`,
        crowd
          ? `It covers ${Math.round(c.coverage * 100)} % of the floor at once, and the juice boils away too slowly.`
          : 'The faces are still wet when the time is up.',
        crowd ? 'Brown in more batches.' : 'A hotter floor or more minutes.',
        'the run',
      ),
    )
  }
  return found
}
