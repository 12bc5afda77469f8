import type { Command } from 'commander'
import { readRecipe } from '../../core/manuscript/index.ts'
import { readManuscript } from '../input.ts'
import { readJson } from '../json-read.ts'
import { print, printJson } from '../print.ts'
import { thisTerminal } from '../terminal.ts'
import { readText } from '../text-read.ts'

export function addRead(program: Command): void {
  program
    .command('read')
    .helpOption('-h, --help', 'this')
    .description('what a careful stranger understands of a manuscript, and what it leaves open')
    .argument('<file>', 'the manuscript, plain text; - for standard input')
    .option('--json', 'as JSON, for programs')
    .action(async (file: string, options: { json?: boolean }) => {
      const recipe = readRecipe(await readManuscript(file))
      if (options.json) printJson(readJson(recipe))
      else print(readText(recipe, thisTerminal()))
    })
}
