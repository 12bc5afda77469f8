import type { Command } from 'commander'

/** Opens the workbench. The server is another room: who starts this program says how to reach it. */
export type Serve = (args: readonly string[]) => Promise<unknown>

export function addServe(program: Command, serve: Serve): void {
  program
    .command('serve')
    .description('opens the workbench on this machine, for a browser')
    .helpOption(false)
    .allowUnknownOption()
    .argument('[options...]', '--port NUMBER, --data FOLDER; serve --help says more')
    .action(async (options: string[]) => {
      await serve(options)
    })
}
