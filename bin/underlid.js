#!/usr/bin/env node
// The command `underlid`: looks whether this Node will do and whether the program is built, then hands over.
import '../scripts/prepare-node.mjs'
import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const built = new URL('../dist/src/cli/main.js', import.meta.url)
if (!existsSync(built)) await build()

// A reader that has seen enough (`| head`) closes the pipe; that is no fault.
process.stdout.on('error', (error) => {
  if (error.code === 'EPIPE') process.exit(0)
  throw error
})

const { main } = await import(built.href)
const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'))
const code = await main(process.argv.slice(2), { version, serve })
if (code !== null) process.exitCode = code

/** The server reads its own options, so it gets them as if it had been called itself. */
async function serve(args) {
  process.argv.splice(2, process.argv.length, ...args)
  await import(new URL('../dist/src/server/main.js', import.meta.url).href)
}

async function build() {
  const script = new URL('../scripts/prepare.mjs', import.meta.url)
  if (!existsSync(script)) {
    console.error('Underlid is not built yet. Run `npm run build` in its folder, then try again.')
    process.exit(2)
  }
  // What is being built goes to standard error: standard output belongs to the answer, which may be JSON.
  const { log } = console
  console.log = console.error
  const prepare = await import(script.href)
  await prepare.install()
  await prepare.build()
  console.log = log
  if (!existsSync(built)) {
    console.error(
      `The build did not make ${fileURLToPath(built)}. Run \`npm run build\` in the project's folder and look at what it says.`,
    )
    process.exit(2)
  }
}
