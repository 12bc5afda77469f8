// Server and page from the sources, each started again or redrawn at every change: `node scripts/dev/watch.mjs`.
// Dishes go to data-local/ in the project's folder, apart from your own.
import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { createServer } from 'vite'
import { root } from '../prepare.mjs'

const port = process.env.PORT || '4400'
const main = join('src', 'server', 'main.ts')
const server = spawn(
  process.execPath,
  ['--import', 'tsx', '--watch', main, '--port', port, '--data', join(root, 'data-local')],
  { cwd: root, stdio: 'inherit' },
)

// The name the page was asked under is handed on: the server takes writes only from a page of that name.
const proxy = { '/api': { target: `http://127.0.0.1:${port}`, changeOrigin: false } }
const page = await createServer({
  configFile: join(root, 'vite.config.ts'),
  server: { host: '127.0.0.1', proxy },
})
await page.listen()
page.printUrls()

server.on('exit', async (code) => {
  await page.close()
  process.exit(code ?? 0)
})
// The terminal sends Ctrl-C to the server too; leave when it has closed.
process.on('SIGINT', () => {})
process.on('SIGTERM', () => server.kill('SIGTERM'))
