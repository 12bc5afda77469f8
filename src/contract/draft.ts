import * as z from 'zod/mini'
import { refusal } from './error.ts'
import { altitude_m, draftVersion, moment, pot, revisionNumber, text, writer } from './parts.ts'

/** PUT `paths.draft(id)`. `version` is the one the writer last read or was given. */
export const draftWrite = z.strictObject({ text, pot, altitude_m, version: draftVersion, writer })
export type DraftWrite = z.infer<typeof draftWrite>

/** 200: on disk. Sending the same write twice (a lost answer) is answered the same way twice. */
export const draftSaved = z.object({ version: draftVersion, savedAt: moment })
export type DraftSaved = z.infer<typeof draftSaved>

/** 409: another writer was faster. The draft stands as `current`; the text that came too late is revision `kept`. */
export const draftConflict = z.object({
  error: refusal,
  current: z.object({
    text: z.string(),
    version: draftVersion,
    pot,
    altitude_m,
    savedAt: moment,
    writer: z.string(),
  }),
  kept: z.object({ number: revisionNumber, savedAt: moment }),
})
export type DraftConflict = z.infer<typeof draftConflict>
