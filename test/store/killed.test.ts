// Nothing acknowledged is lost when the process is killed. (A power cut cannot be tried here; synchronous=FULL stands
// for it, see docs/decisions/store.md.)
import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'
import { openStore } from '../../src/store/index.ts'
import { firstLine } from '../support/stores.ts'
import { whichText } from './written.ts'

const writer = fileURLToPath(new URL('./writer.ts', import.meta.url))

/** Lets a writer save so many times, kills it in the middle of the next, and answers with what it was told is saved. */
async function killedAfter(folder: string, saves: number): Promise<{ version: number; revision: number }> {
  const child = spawn(process.execPath, ['--import', 'tsx', writer, folder], { stdio: ['ignore', 'pipe', 'inherit'] })
  const told: string[] = []
  for await (const line of createInterface(child.stdout)) {
    // Lines that were on their way when the writer was killed have been told as well.
    told.push(line)
    if (told.length === saves) setTimeout(() => child.kill('SIGKILL'), saves % 4)
  }
  const [version, revision] = told.at(-1)!.split(' ').map(Number)
  return { version: version!, revision: revision! }
}

it('keeps every acknowledged save through kill -9, again and again', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'underlid-killed-'))
  try {
    let before = 0
    for (const saves of [1, 7, 18, 30]) {
      const told = await killedAfter(folder, saves)
      expect(told.version - before).toBeGreaterThanOrEqual(saves)
      before = told.version
      const store = await openStore({ at: { folder }, titleOf: firstLine })
      try {
        const [line] = await store.listDishes({ putAway: false })
        const dish = (await store.getDish(line!.id))!
        // One save may have reached the disk without being told any more.
        expect(dish.version - told.version).toBeOneOf([0, 1])
        expect(whichText(dish.text)).toBe(dish.version)
        const revisions = await store.listRevisions(dish.id)
        expect(revisions.length - told.revision).toBeOneOf([0, 1])
        // Whole texts, in the order they were written; a kill between the save and the revision leaves a gap.
        const kept = []
        for (const { number } of revisions) kept.push(whichText((await store.getRevision(dish.id, number))?.text))
        expect(kept).not.toContain(null)
        expect(kept).toEqual([...new Set(kept)].sort((a, b) => b! - a!))
        expect(kept[0]! - dish.version).toBeOneOf([0, -1])
      } finally {
        await store.close()
      }
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}, 60_000)
