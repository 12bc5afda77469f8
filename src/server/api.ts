import { Hono } from 'hono'
import {
  type Dish,
  type DishList,
  type DraftConflict,
  type DraftSaved,
  dishChange,
  dishId,
  draftWrite,
  type Health,
  newDish,
  newRevision,
  type Revision,
  type RevisionKept,
  type RevisionList,
} from '../contract/index.ts'
import type { Store } from '../store/index.ts'
import { readBody } from './read-body.ts'
import { Refused } from './refused.ts'

/** The addresses of the contract, under /api. Each handler reads, asks the store, answers. */
export function api(p: { store: Store; version: string; now: () => string }): Hono {
  const { store, version, now } = p

  const dishOf = async (id: string): Promise<Dish> => {
    const found = dishId.safeParse(id).success ? await store.getDish(id) : null
    if (found === null) throw noDish(id)
    const { createdAt: _, updatedAt: __, ...dish } = found
    return dish
  }

  return new Hono()
    .get('/health', (c) => c.json<Health>({ ok: true, name: 'underlid', version, store: store.kind }))

    .get('/dishes', async (c) => {
      const putAway = c.req.query('putAway') === 'true'
      return c.json<DishList>({ dishes: await store.listDishes({ putAway }) })
    })

    .post('/dishes', async (c) => {
      const given = await readBody(c, newDish)
      const id = await store.createDish({ ...given, writer: 'page', now: now() })
      return c.json<Dish>(await dishOf(id), 201)
    })

    .get('/dishes/:id', async (c) => c.json<Dish>(await dishOf(c.req.param('id'))))

    .patch('/dishes/:id', async (c) => {
      const { id } = await dishOf(c.req.param('id'))
      const change = await readBody(c, dishChange)
      await store.changeDish({ ...change, dish: id, now: now() })
      return c.json<Dish>(await dishOf(id))
    })

    .put('/dishes/:id/draft', async (c) => {
      const id = c.req.param('id')
      const write = await readBody(c, draftWrite)
      const saved = await store.saveDraft({ ...write, dish: id, now: now() })
      if (saved.ok) return c.json<DraftSaved>({ version: saved.version, savedAt: saved.savedAt })
      if (saved.code === 'not-found') throw noDish(id)
      const { current, kept } = saved
      return c.json<DraftConflict>(
        {
          error: {
            code: 'newer-draft',
            message: 'The manuscript was changed in another window meanwhile; nothing was overwritten.',
            cure: `Your text is kept as revision ${kept.number}. Take the newer draft, or compare the two.`,
          },
          current,
          kept,
        },
        409,
      )
    })

    .get('/dishes/:id/revisions', async (c) => {
      const { id } = await dishOf(c.req.param('id'))
      return c.json<RevisionList>({ revisions: await store.listRevisions(id) })
    })

    .post('/dishes/:id/revisions', async (c) => {
      const id = c.req.param('id')
      const { text, note } = await readBody(c, newRevision)
      const kept = await store.keepRevision({ dish: id, text, note, now: now() })
      if (kept === null) throw noDish(id)
      return c.json<RevisionKept>({ number: kept.number, savedAt: kept.savedAt }, kept.isNew ? 201 : 200)
    })

    .get('/dishes/:id/revisions/:number{[1-9][0-9]{0,8}}', async (c) => {
      const { id } = await dishOf(c.req.param('id'))
      const number = Number(c.req.param('number'))
      const revision = await store.getRevision(id, number)
      if (revision === null) {
        throw new Refused(404, 'not-found', `The dish "${id}" has no revision ${number}.`, 'See its list of revisions.')
      }
      return c.json<Revision>(revision)
    })

    .all('*', (c) => {
      throw new Refused(404, 'not-found', `There is nothing at ${c.req.method} ${c.req.path}.`, null)
    })
}

function noDish(id: string): Refused {
  return new Refused(404, 'not-found', `There is no dish "${id.slice(0, 64)}".`, 'See the list of dishes.')
}
