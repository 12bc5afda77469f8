import type { HeatWord, Range } from '../manuscript/index.ts'
import type { Placed } from './classify.ts'
import { common, type Desk } from './desk.ts'
import { assumeTime, dialled } from './heat-words.ts'
import { timeOf } from './words.ts'

export function lastSetting(desk: Desk): HeatWord | null {
  const last = desk.operations.findLast(
    (operation) => operation.kind === 'heat' || operation.kind === 'brown' || operation.kind === 'fry',
  )
  return last && 'setting' in last ? last.setting : null
}

export function fryFor(desk: Desk, item: Placed, mode: 'sweat' | 'bloom' | 'fry', norm: Range, names: string): void {
  const time = timeOf(item.op)
  const gentle = mode === 'sweat' ? 'medium' : (lastSetting(desk) ?? 'medium')
  desk.operations.push({
    ...common(item, `${mode === 'bloom' ? 'bloom' : mode === 'sweat' ? 'soften' : 'fry'} ${names}`.trim(), {
      handsOn: true,
      timed: time !== null,
    }),
    kind: 'fry',
    mode,
    setting: item.op.heat ?? dialled(desk) ?? gentle,
    time_s:
      time ??
      assumeTime(
        desk,
        item,
        norm,
        mode === 'sweat' ? 'softening' : mode === 'bloom' ? 'frying until fragrant' : 'frying',
      ),
    stirred: true,
  })
  desk.hot = true
}
