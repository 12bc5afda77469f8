import { execFileSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'

const root = join(import.meta.dirname, '..', '..')
const readme = readFileSync(join(root, 'README.md'), 'utf8')

it('the library block of the README runs and prints a result', () => {
  const block = /```ts\n([\s\S]*?)```/.exec(readme)?.[1]
  expect(block).toBeDefined()
  // Beside the sources, so that the package's own name can stand for them.
  const folder = mkdtempSync(join(root, 'test', 'docs', 'run-'))
  try {
    const file = join(folder, 'block.ts')
    writeFileSync(file, block!.replace("'underlid'", "'../../../src/core/index.ts'"))
    const printed = execFileSync(process.execPath, ['--import', 'tsx', file], { cwd: root, encoding: 'utf8' })
    expect(printed).toContain('Pork shoulder with leeks and cider')
    expect(printed).toMatch(/base \d+ K below its trip/)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
})

it('the README names only files and commands that are there', () => {
  for (const [, path] of readme.matchAll(/`((?:docs|examples|check|src)\/[\w./-]+)`/g)) {
    expect(existsSync(join(root, path)), path).toBe(true)
  }
})
