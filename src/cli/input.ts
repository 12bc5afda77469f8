import { readFileSync, statSync } from 'node:fs'
import { basename } from 'node:path'
import { decodeText, longest_bytes } from './decode.ts'
import { CallError } from './failure.ts'

/** The manuscript named on the command line; `-` is standard input. */
export async function readManuscript(file: string): Promise<string> {
  if (file === '-') return decodeText(await standardInput(), 'Standard input')
  return decodeText(bytesOf(file), file)
}

function bytesOf(file: string): Uint8Array {
  try {
    const { size } = statSync(file)
    // A file far too large is refused by its size alone, before it fills the memory.
    if (size > 50 * longest_bytes) return decodeTooLarge(file, size)
    return readFileSync(file)
  } catch (error) {
    if (error instanceof CallError) throw error
    const { code } = error as NodeJS.ErrnoException
    if (code === 'ENOENT' || code === 'ENOTDIR') {
      throw new CallError(
        `There is no file ${file} here.`,
        `Check the name and the folder (you are in ${process.cwd()}), or give - to read from standard input.`,
      )
    }
    if (code === 'EISDIR') throw new CallError(`${file} is a folder.`, 'Give one file with the text of a recipe.')
    if (code === 'EACCES' || code === 'EPERM') {
      throw new CallError(
        `${basename(file)} may not be read.`,
        'Ask its owner, or copy the text into a file of your own.',
      )
    }
    throw new CallError(
      `${file} could not be read (${code ?? (error as Error).message}).`,
      'Try again, or copy it elsewhere.',
    )
  }
}

function decodeTooLarge(file: string, size: number): never {
  throw new CallError(
    `${file} has ${Math.round(size / 1e6)} million bytes; a recipe has a few thousand.`,
    'Give one recipe at a time.',
  )
}

async function standardInput(): Promise<Uint8Array> {
  if (process.stdin.isTTY) {
    process.stderr.write('Type or paste the recipe, then end with Ctrl-D.\n')
  }
  const parts: Uint8Array[] = []
  let total = 0
  for await (const part of process.stdin) {
    parts.push(part as Uint8Array)
    total += (part as Uint8Array).length
    if (total > 50 * longest_bytes) break
  }
  return Buffer.concat(parts)
}
