import { useMemo } from 'react'
import type { Run } from '../../core/cook/index.ts'
import { readings } from '../../core/press/index.ts'

/** Four figures of the moment, each with the sentence that explains it; bare at the foot of a phone. */
export function ReadingsView({ run, time_s, bare = false }: { run: Run; time_s: number; bare?: boolean }) {
  const cursor_s = Math.round(time_s)
  const list = useMemo(() => readings(run, cursor_s), [run, cursor_s])
  return (
    <dl className={bare ? 'readings readings-bare' : 'readings'}>
      {list.map(({ id, value, unit, words, accent }) => (
        <div key={id} className={`reading reading-${accent}`} data-reading={id}>
          <dt>{words}</dt>
          <dd>
            {value}
            {unit && ` ${unit}`}
          </dd>
        </div>
      ))}
    </dl>
  )
}
