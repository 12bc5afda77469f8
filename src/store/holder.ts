import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** Who has the data open. Only for the sentence that a second copy prints: the lock itself is the database's. */
export interface Holder {
  readonly pid: number
  /** Where that copy can be reached; null while it is starting. */
  readonly address: string | null
}

const note = (folder: string) => join(folder, 'open-by.json')

export function describeHolder(folder: string): Holder | null {
  try {
    const holder = JSON.parse(readFileSync(note(folder), 'utf8')) as Partial<Holder>
    if (typeof holder.pid !== 'number') return null
    return { pid: holder.pid, address: typeof holder.address === 'string' ? holder.address : null }
  } catch {
    return null
  }
}

export function leaveNote(folder: string, holder: Holder): void {
  try {
    writeFileSync(note(folder), `${JSON.stringify(holder)}\n`)
  } catch {
    // A missing note costs a second copy the process number in its sentence, nothing else.
  }
}

export function forgetHolder(folder: string): void {
  rmSync(note(folder), { force: true })
}
