import { kelvinFromCelsius } from '../units/index.ts'
import type { Placed } from './classify.ts'
import { common, type Desk } from './desk.ts'
import { takeIn } from './enter.ts'
import { lidSaid, slowest } from './heat-words.ts'
import { simmerUntilDone } from './norms.ts'
import { finding } from './say.ts'
import { spoken, timeOf } from './words.ts'

const ovenDefault_K = kelvinFromCelsius(150)

export function bake(desk: Desk, item: Placed, index: number): void {
  const { op } = item
  takeIn(desk, item, index)
  lidSaid(desk, item)
  if (!op.lid && /\b(cover|covered|lid on)\b/.test(item.sentence)) desk.lid = 'on'
  const said = timeOf(item.op)
  const norm = slowest(desk, simmerUntilDone) ?? { low: 1800, high: 3600 }
  const time = said ?? norm
  if (!said)
    desk.findings.push(
      finding(
        'time-assumed',
        'hint',
        op,
        'How long in the oven?',
        `No time is said; ${spoken(norm)} is taken.`,
        'Write the time.',
        'common practice, no source',
      ),
    )
  const named = op.temperature_K ? (op.temperature_K.low + op.temperature_K.high) / 2 : null
  const oven_K = named !== null && named > 320 && named < 600 ? named : desk.oven_K
  desk.oven_K = oven_K
  if (desk.pot.kind === 'electric' || desk.pot.kind === 'stovetop') {
    desk.findings.push(
      finding(
        'pot-cannot-bake',
        'warning',
        op,
        'This pot does not go into an oven.',
        `The words ask for the oven; in a ${desk.pot.name} the same time ${desk.lid === 'on' ? 'under a lid that lies on' : 'with the lid off'} at a simmer is cooked instead.`,
        'Choose a pot for the oven, or write the time at pressure.',
        'the pot’s card',
      ),
    )
    desk.operations.push({
      ...common(item, `simmer${desk.lid === 'on' ? ', lid on' : ''}`, {
        handsOn: false,
        timed: said !== null,
        verb: 'simmer',
        implied: true,
      }),
      kind: 'simmer',
      lid: desk.lid,
      setting: 'low',
      vigour: 'simmer',
      time_s: time,
      stirred: false,
    })
    return
  }
  if (oven_K === null)
    desk.findings.push(
      finding(
        'oven-assumed',
        'warning',
        op,
        'How hot an oven?',
        'No oven temperature is said; 150 °C is taken.',
        'Write the temperature.',
      ),
    )
  desk.operations.push({
    ...common(item, `in the oven, ${spoken(time)}`, { handsOn: false, timed: said !== null }),
    kind: 'bake',
    oven_K: oven_K ?? ovenDefault_K,
    lid: desk.lid,
    time_s: time,
  })
  desk.hot = true
}
