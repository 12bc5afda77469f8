// The command line from its source, for tests: what bin/underlid.js does with the built program.
import { main } from '../../src/cli/main.ts'

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0)
  throw error
})
const code = await main(process.argv.slice(2), {
  version: '0.0.0-test',
  serve: async (args) => process.stdout.write(`served ${JSON.stringify(args)}\n`),
})
if (code !== null) process.exitCode = code
