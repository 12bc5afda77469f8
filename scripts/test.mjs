// `npm test`: installs what is missing, builds, then checks types, style and everything under test/.
// `npm test -- test/store` runs a part of the tests after the same checks.
import './prepare-node.mjs'

import('./prepare.mjs').then(async ({ build, install, run, runPackaged, stop }) => {
  await install()
  const chromium = await browser(run, stop)
  await build()

  const step = async (name, script, args) => {
    const { code } = await runPackaged(script, args)
    if (code !== 0) stop(`${name} failed; the reason stands above.`, 1)
  }
  await step('Checking the types', 'typescript/bin/tsc', ['-b'])
  await step('Checking the style', '@biomejs/biome/bin/biome', ['check', '.'])

  // Last, so that the run ends with the line that counts the tests.
  const { code } = await runPackaged('vitest/vitest.mjs', ['run', ...process.argv.slice(2)], {
    environment: { CHROMIUM_PATH: chromium },
  })
  process.exitCode = code
})

/** The browser for the journeys, installed where that can be done without asking. */
async function browser(run, stop) {
  const { findChromium } = await import('./lib-chromium.mjs')
  const found = findChromium()
  if (found !== null) return found
  if (process.env.CHROMIUM_PATH) {
    stop(
      `CHROMIUM_PATH is "${process.env.CHROMIUM_PATH}", where no browser runs. Correct it, or unset it to search.`,
      1,
    )
  }
  if (process.getuid?.() === 0 && (await run('apt-get', ['--version'], { show: false })).code === 0) {
    console.log('Installing Chromium for the journeys in a real browser; this happens once.')
    const environment = { DEBIAN_FRONTEND: 'noninteractive' }
    await run('apt-get', ['update', '-q'], { show: false, environment })
    const { code, output } = await run('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], {
      show: false,
      environment,
    })
    const installed = findChromium()
    if (installed !== null) return installed
    console.error(code === 0 ? '' : output.trim())
  }
  return stop(
    'The journeys need a Chromium browser, and none was found. Install one (Debian, Ubuntu: sudo apt-get install chromium; ' +
      'macOS: brew install --cask chromium), or set CHROMIUM_PATH to the program of one you have.',
    1,
  )
}
