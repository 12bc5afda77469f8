import { Command, CommanderError } from 'commander'
import { addCook } from './commands/cook.ts'
import { addRead } from './commands/read.ts'
import { addServe, type Serve } from './commands/serve.ts'
import { CallError } from './failure.ts'

/** Exit codes: 0 done, 1 blocking findings (of commands that judge), 2 the call or the file is wrong. */
export const wrongCall = 2

export interface Around {
  readonly serve: Serve
  readonly version: string
}

/** Runs one call and answers with its exit code; null while a server goes on. Never throws, never prints a trace. */
export async function main(args: readonly string[], { serve, version }: Around): Promise<number | null> {
  let serving = false
  const program = new Command('underlid')
    .description(
      'Reads a closed-pot recipe as prose, cooks it in a pot made of physics, and says what the words leave open.',
    )
    .version(version, '--version', 'the version of Underlid')
    .helpOption('-h, --help', 'this')
    .helpCommand('help [command]', 'how a command is called')
    .showSuggestionAfterError(true)
    .exitOverride()
    .configureOutput({ writeErr: (text) => process.stderr.write(plainError(text)) })
    .addHelpText(
      'after',
      '\nFILE is plain text, or - for standard input. Exit code 0: done; 2: the call or\nthe file is wrong.',
    )
  addRead(program)
  addCook(program)
  addServe(program, async (rest) => {
    serving = true
    await serve(rest)
  })
  for (const command of program.commands) command.exitOverride()
  try {
    if (args.length === 0) {
      program.outputHelp({ error: true })
      return wrongCall
    }
    await program.parseAsync([...args], { from: 'user' })
    return serving ? null : 0
  } catch (error) {
    return failed(error)
  }
}

function failed(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : wrongCall
  if (error instanceof CallError) process.stderr.write(`${error.sentence}\n`)
  else {
    const reason = error instanceof Error ? error.message : String(error)
    process.stderr.write(
      `Underlid stumbled over this: ${reason} This is a fault of the program, not of your text; please report it with the text.\n`,
    )
    if (process.env.UNDERLID_TRACE) process.stderr.write(`${(error as Error).stack ?? ''}\n`)
  }
  return wrongCall
}

/** "error: unknown option '--jsn'" as a sentence with the way out. */
function plainError(text: string): string {
  const found = /^error: (.*?)\.?\n([\s\S]*)$/.exec(text)
  if (!found) return text
  const [, what, more] = found
  const guess = /\(Did you mean (.*?)\?\)/.exec(more)
  return `${what.charAt(0).toUpperCase()}${what.slice(1)}. ${guess ? `Did you mean ${guess[1]}? ` : ''}underlid --help lists what there is.\n`
}
