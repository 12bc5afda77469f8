// A process that saves without pause and says each number once its save is acknowledged; it ends by being killed.
import { openStore } from '../../src/store/index.ts'
import { textOf } from './written.ts'

const folder = process.argv[2]!
const store = await openStore({ at: { folder }, titleOf: (text) => text.slice(0, 20) })
const [line] = await store.listDishes({ putAway: false })
const dish = line?.id ?? (await store.createDish({ text: textOf(1), writer: 'writer', now: 'start' }))
let { version } = (await store.getDish(dish))!
// An end of its own, for the case that nobody is left to kill it.
for (let saves = 0; saves < 400; saves++) {
  const text = textOf(version + 1)
  const saved = await store.saveDraft({
    dish,
    text,
    pot: null,
    altitude_m: null,
    version,
    writer: 'writer',
    now: 'now',
  })
  if (!saved.ok) throw new Error('refused')
  version = saved.version
  const kept = await store.keepRevision({ dish, text, now: 'now' })
  process.stdout.write(`${version} ${kept!.number}\n`)
}
