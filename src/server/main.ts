// The program behind `npm start` and `underlid serve`. Exit code 2: it could not start, and has said why.
import { run, sentence } from './run.ts'
import type { Serving } from './serve.ts'

const voice = { out: (line: string) => console.log(line), err: (line: string) => console.error(line) }

function stopOnSignal(serving: Serving): void {
  let since_ms: number | null = null
  const stop = () => {
    if (since_ms === null) {
      since_ms = Date.now()
      voice.out('Closing.')
      serving.close().then(
        () => process.exit(0),
        (error: unknown) => {
          voice.err(sentence(error))
          process.exit(1)
        },
      )
    } else if (Date.now() - since_ms > 500) {
      // npm passes on the Ctrl-C that the terminal has sent already; only a later one means "at once".
      process.exit(1)
    }
  }
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, stop)
}

const outcome = await run(process.argv.slice(2), process.env, voice)
if (typeof outcome === 'number') process.exitCode = outcome
else stopOnSignal(outcome)
