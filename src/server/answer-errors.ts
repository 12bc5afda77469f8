import type { Context } from 'hono'
import type { ErrorBody } from '../contract/index.ts'
import { StoreError } from '../store/index.ts'
import { Refused } from './refused.ts'

/** Every error in the one shape of the contract: a sentence, a cure, no inner workings. */
export function answerError(error: Error, c: Context): Response {
  if (error instanceof Refused) {
    const { code, message, cure } = error
    return c.json<ErrorBody>({ error: { code, message, cure } }, error.status)
  }
  if (error instanceof StoreError) {
    const { message, cure } = error
    return c.json<ErrorBody>({ error: { code: 'store', message, cure } }, error.code === 'full' ? 507 : 503)
  }
  // For whoever mends it: the page gets the sentence, the terminal the trace.
  console.error(error)
  const message = `Underlid could not do this: ${c.req.method} ${c.req.path} met a fault of its own.`
  const cure = 'Try again; nothing saved before is lost. If it comes back, the terminal shows the reason.'
  return c.json<ErrorBody>({ error: { code: 'fault', message, cure } }, 500)
}
