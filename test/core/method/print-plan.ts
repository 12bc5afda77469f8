import type { Load, Plan, PlanOperation } from '../../../src/core/method/index.ts'

const round = (x: number, digits = 3) => Number(x.toPrecision(digits))
const minutes = (range: { low: number; high: number } | null | undefined): string =>
  !range
    ? '?'
    : range.low === range.high
      ? `${round(range.low / 60)} min`
      : `${round(range.low / 60)}-${round(range.high / 60)} min`

/** A load as a line: name, mass, temperature, how many pieces of which shape and size. */
export function loadLine(load: Load): string {
  const p = load.pieces
  const size = p && [p.thickness_m, p.width_m, p.length_m].map((m) => round(m * 1000)).join('x')
  const pieces = p ? `, ${p.count} ${p.shape} ${size} mm (${p.from})` : ''
  const soaked = load.soaked_kg ? `, soaked +${round(load.soaked_kg * 1000)} g` : ''
  const marks = `${load.frozen ? ', frozen' : ''}${load.assumed ? ', assumed' : ''}`
  return `${load.id} ${load.name} [${load.food.id}] ${round(load.mass_kg * 1000, 4)} g ${round(load.start_K - 273.15)} °C${soaked}${marks}${pieces}`
}

/** A plan as lines of text, for reading and for exact tests. */
export const printPlan = (plan: Plan): string =>
  [
    `${plan.pot.id} (${plan.potFrom}) ${plan.altitude_m} m`,
    ...plan.loads.map(loadLine),
    ...plan.operations.map(line),
    ...plan.findings.map((each) => `! ${each.severity} ${each.code}: ${each.title} ${each.message}`),
    '',
  ].join('\n')

export function line(op: PlanOperation): string {
  const loads = 'loads' in op && op.loads.length > 0 ? ` [${op.loads.join(' ')}]` : ''
  const time =
    op.kind === 'release'
      ? op.natural_s === null
        ? ''
        : ` ${minutes({ low: op.natural_s, high: op.natural_s })}`
      : ` ${minutes(op.time_s)}`
  const more =
    op.kind === 'brown'
      ? ` x${op.batches}${op.liftsOut ? ' out' : ''}`
      : op.kind === 'deglaze'
        ? ` ${op.scraped}`
        : op.kind === 'simmer'
          ? ` ${op.vigour} lid ${op.lid} ${op.setting}`
          : op.kind === 'fry'
            ? ` ${op.mode} ${op.setting}`
            : op.kind === 'release'
              ? ` ${op.how}`
              : op.kind === 'hold'
                ? ` ${op.level}`
                : op.kind === 'bake'
                  ? ` ${Math.round(op.oven_K - 273.15)} °C lid ${op.lid}`
                  : op.kind === 'reduce'
                    ? ` to ${op.toShare ?? op.toVolume_m3 ?? '?'}`
                    : op.kind === 'heat'
                      ? ` ${op.setting}`
                      : op.kind === 'add' || op.kind === 'return'
                        ? ` ${op.how}`
                        : op.kind === 'bench'
                          ? `${op.apart ? ' apart' : ''}${op.beside ? ' beside' : ''}`
                          : ''
  return `${op.kind}${loads}${more}${time} | ${op.label}${op.handsOn ? ' *' : ''}${op.implied ? ' (implied)' : ''}${op.timed ? '' : ' ~'}`
}
