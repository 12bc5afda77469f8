// What has to be there before anything runs: the packages and the built program. Uses nothing but Node.
import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = dirname(dirname(fileURLToPath(import.meta.url)))

/** Ends with a sentence instead of a trace. */
export function stop(sentence, code = 2) {
  console.error(sentence)
  process.exit(code)
}

/** Runs a program in the project's folder and answers with its exit code and, where it was kept, its output. */
export function run(file, args, { show = true, environment = {} } = {}) {
  return new Promise((resolve) => {
    const child = spawn(file, args, {
      cwd: root,
      env: { ...process.env, ...environment },
      stdio: ['ignore', show ? 'inherit' : 'pipe', show ? 'inherit' : 'pipe'],
      // npm is a script on Windows, which only a shell can start.
      shell: process.platform === 'win32' && file === 'npm',
    })
    let output = ''
    child.stdout?.on('data', (chunk) => {
      output += chunk
    })
    child.stderr?.on('data', (chunk) => {
      output += chunk
    })
    child.on('error', (error) => resolve({ code: 127, output: `${output}${error.message}\n` }))
    child.on('close', (code) => resolve({ code: code ?? 1, output }))
  })
}

/** Runs a program that a package brings, with this Node. */
export function runPackaged(script, args, options) {
  return run(process.execPath, [join('node_modules', script), ...args], options)
}

/**
 * Whether node_modules holds what the lock asks for. npm writes down what it installed; packages for other systems
 * are missing there by right.
 */
export function isInstalled(folder) {
  try {
    const read = (path) => JSON.parse(readFileSync(join(folder, path), 'utf8')).packages
    const installed = read('node_modules/.package-lock.json')
    return Object.entries(read('package-lock.json')).every(
      ([path, { version, optional }]) =>
        path === '' || installed[path]?.version === version || (optional === true && installed[path] === undefined),
    )
  } catch {
    return false
  }
}

export async function install() {
  if (isInstalled(root)) return
  console.log('Installing the packages Underlid is built from; this happens once and takes a minute.')
  // npm tells its children where it lies; without npm above us, it is looked for in PATH.
  const npm = process.env.npm_execpath
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error']
  const { code, output } = await (npm
    ? run(process.execPath, [npm, ...args], { show: false })
    : run('npm', args, { show: false }))
  if (code === 0) return
  console.error(output.trim())
  stop('The packages could not be installed (npm says why above). Look at the network connection and try again.')
}

/** One hash over every file that the build reads. */
export function hashOf(folder, paths) {
  const hash = createHash('sha256')
  const add = (path) => {
    const full = join(folder, path)
    if (!existsSync(full)) return
    hash.update(`${relative(folder, full)}\0`)
    hash.update(readFileSync(full)).update('\0')
  }
  for (const path of paths) {
    if (path.endsWith('/')) {
      const inside = existsSync(join(folder, path))
        ? readdirSync(join(folder, path), { recursive: true, withFileTypes: true })
        : []
      inside
        .filter((entry) => entry.isFile())
        .map((entry) => relative(folder, join(entry.parentPath ?? entry.path, entry.name)))
        .sort()
        .forEach(add)
    } else add(path)
  }
  return hash.digest('hex')
}

const sources = ['src/', 'data/', 'package-lock.json', 'tsconfig.base.json', 'vite.config.ts']
const stamp = join(root, 'dist', '.built-from')

/** Builds what runs in Node (tsc) and the page (vite), when a source has changed since the last time. */
export async function build() {
  const now = hashOf(root, sources)
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === now) return
  console.log('Building; this happens after a change only and takes a few seconds.')
  // While it goes on, and if it fails, nothing counts as built.
  rmSync(stamp, { force: true })
  const rooms = ['core', 'contract', 'store', 'server', 'cli'].map((room) => join('src', room))
  const [node, page] = await Promise.all([
    runPackaged('typescript/bin/tsc', ['-b', ...rooms], { show: false }),
    runPackaged('vite/bin/vite.js', ['build', '--logLevel', 'warn'], { show: false }),
  ])
  for (const { code, output } of [node, page]) if (code !== 0) console.error(output.trim())
  if (node.code !== 0) stop('The program does not compile; the compiler says where above.')
  if (page.code !== 0) stop('The page could not be built; the reason stands above.')
  mkdirSync(dirname(stamp), { recursive: true })
  writeFileSync(stamp, now)
}
