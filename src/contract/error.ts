import * as z from 'zod/mini'

/** Stable; messages may be reworded, codes not. */
export const errorCodes = [
  /** The request does not have the shape of the contract. */
  'not-understood',
  /** No dish, revision or address of that name. */
  'not-found',
  /** Somebody saved a newer draft meanwhile; nothing was overwritten. */
  'newer-draft',
  /** The request is larger than `maxBody_bytes`. */
  'too-large',
  /** The request was addressed to another host name, or came from a page of another site. */
  'stranger',
  /** The store cannot be read or written. */
  'store',
  /** A fault of the server's own. */
  'fault',
] as const
export type ErrorCode = (typeof errorCodes)[number]

const refusal = z.object({
  code: z.enum(errorCodes),
  /** What is wrong and where, as a sentence. */
  message: z.string(),
  /** What to do, as a sentence; null when nothing can be done from here. */
  cure: z.nullable(z.string()),
})
export type Refusal = z.infer<typeof refusal>

/** Every answer with a status of 400 or more. */
export const errorBody = z.object({ error: refusal })
export type ErrorBody = z.infer<typeof errorBody>

/** @internal Shared with the conflict of drafts. */
export { refusal }
