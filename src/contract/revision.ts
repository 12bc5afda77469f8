import * as z from 'zod/mini'
import { moment, revisionNumber, text } from './parts.ts'

/** POST `paths.revisions(id)`. Keeping the same text twice running gives the same revision. */
export const newRevision = z.strictObject({
  text,
  note: z.optional(z.string().check(z.maxLength(2000))),
})
export type NewRevision = z.infer<typeof newRevision>

/** 201 for a new revision, 200 when the latest already had this text. */
export const revisionKept = z.object({ number: revisionNumber, savedAt: moment })
export type RevisionKept = z.infer<typeof revisionKept>

export const revisionLine = z.object({
  number: revisionNumber,
  /** The kept revision before it; null for the first. */
  parent: z.nullable(revisionNumber),
  /** Kept by hand, or kept by itself because a save came too late. */
  kind: z.enum(['kept', 'automatic']),
  note: z.nullable(z.string()),
  savedAt: moment,
})
export type RevisionLine = z.infer<typeof revisionLine>

/** GET `paths.revisions(id)`: latest first. */
export const revisionList = z.object({ revisions: z.array(revisionLine) })
export type RevisionList = z.infer<typeof revisionList>

/** GET `paths.revision(id, number)`. Never changes once read. */
export const revision = z.extend(revisionLine, { text: z.string() })
export type Revision = z.infer<typeof revision>
