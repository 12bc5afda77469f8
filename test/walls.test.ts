// The house as the design draws it: who may import whom, what core may not touch, what has a test.
// The compiler holds the walls between the parts (project references); this test holds those between the rooms of core.
import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, sep } from 'node:path'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'

/** Rooms of core. Each may import those above it. */
const rooms = [
  'findings',
  'units',
  'numerics',
  'steam',
  'heat',
  'doneness',
  'larder',
  'pots',
  'manuscript',
  'method',
  'cook',
  'kitchens',
  'trials',
  'tasting',
  'editions',
  'proof',
  'press',
]

/** Parts of the house, with the parts and the packages each may import besides its own files. */
const parts: Record<string, { parts: string[]; packages: RegExp }> = {
  core: { parts: [], packages: /^(d3-scale|d3-shape)$/ },
  contract: { parts: ['core'], packages: /^zod\// },
  store: { parts: ['core'], packages: /^(node:|kysely$|libsql$|pg$)/ },
  server: { parts: ['core', 'contract', 'store'], packages: /^(node:|hono|@hono\/|zod\/)/ },
  web: { parts: ['core', 'contract'], packages: /^(?!node:|hono|@hono|kysely|libsql|pg$)/ },
  cli: { parts: ['core', 'store'], packages: /^(?!hono|@hono|react|@codemirror)/ },
}

/** Rooms whose every file with behaviour has a test. A room joins when it is finished, and never leaves. */
const tested = ['steam', 'heat', 'doneness', 'units']

/** What would make a run of core differ from the last: clock, chance, surroundings. */
const impure = new Set(['Date', 'performance', 'console', 'process', 'globalThis', 'crypto'])

const root = dirname(dirname(fileURLToPath(import.meta.url)))

interface Source {
  /** From the project's folder, with slashes. */
  readonly path: string
  readonly tree: ts.SourceFile
}

function sourcesIn(folder: string): Source[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => {
      const path = join(folder, name).split(sep).join('/')
      return { path, tree: ts.createSourceFile(path, readFileSync(join(root, path), 'utf8'), ts.ScriptTarget.ES2023) }
    })
}

function walk(node: ts.Node, visit: (node: ts.Node, parent: ts.Node) => void): void {
  ts.forEachChild(node, (child) => {
    visit(child, node)
    walk(child, visit)
  })
}

/** Everything a file imports: by statement, by re-export, by call, as a type. */
function imports({ path, tree }: Source): string[] {
  const found: string[] = []
  const add = (name: ts.Node | undefined) => {
    if (name !== undefined && ts.isStringLiteralLike(name)) found.push(name.text)
  }
  walk(tree, (node) => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) add(node.moduleSpecifier)
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) add(node.arguments[0])
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) add(node.argument.literal)
  })
  return found.map((name) =>
    name.startsWith('.')
      ? relative(root, join(root, dirname(path), name))
          .split(sep)
          .join('/')
      : name,
  )
}

const place = (path: string) => {
  const [top, part, room] = path.split('/')
  if (top === 'data') return { part: 'core', room: part!, inRoom: true }
  const inRoom = part === 'core' && path.split('/').length > 3
  return { part: part!, room: inRoom ? room! : '', inRoom }
}

/** Why `from` may not import `to`; null when it may. */
function fault(from: string, to: string): string | null {
  const here = place(from)
  if (!to.startsWith('src/') && !to.startsWith('data/')) {
    if (to.includes('/') && /^(test|scripts|examples|check|dist)\//.test(to)) return 'no part of the house'
    return parts[here.part]!.packages.test(to) ? null : 'no package for this part'
  }
  const there = place(to)
  if (here.part !== there.part) {
    if (!parts[here.part]!.parts.includes(there.part)) return `${here.part} may not import ${there.part}`
    const isFace = there.part === 'core' ? /^src\/core\/(\w+\/)?index\.ts$/ : /^src\/\w+\/index\.ts$/
    return isFace.test(to) ? null : 'not through index.ts'
  }
  if (here.part !== 'core' || here.room === there.room) return null
  if (!here.inRoom) return there.inRoom && !to.endsWith('/index.ts') ? 'not through index.ts' : null
  // Beside the rooms stands one list for all of them: the sources.
  if (!there.inRoom) return to === 'src/core/sources.ts' ? null : 'a room may not import the library above it'
  if (rooms.indexOf(there.room) > rooms.indexOf(here.room)) return `${there.room} is below ${here.room}`
  return to.endsWith('/index.ts') ? null : 'not through index.ts'
}

const core = [...sourcesIn('src/core'), ...sourcesIn('data')]
const others = ['contract', 'store', 'server', 'web', 'cli'].flatMap((part) => sourcesIn(join('src', part)))

describe('the walls', () => {
  it('stand where they should: the rules say no to what they must', () => {
    const no = [
      ['src/core/steam/water.ts', 'src/core/heat/index.ts'],
      ['src/core/heat/slab.ts', 'src/core/steam/water.ts'],
      ['src/core/steam/water.ts', 'src/core/index.ts'],
      ['src/core/index.ts', 'src/core/steam/water.ts'],
      ['src/core/steam/water.ts', 'src/store/index.ts'],
      ['src/core/steam/water.ts', 'node:fs'],
      ['src/core/steam/water.ts', 'react'],
      ['src/core/larder/foods.ts', 'data/pots/cards.ts'],
      ['data/pots/cards.ts', 'src/core/cook/index.ts'],
      ['src/store/open.ts', 'src/contract/index.ts'],
      ['src/server/api.ts', 'src/store/drafts.ts'],
      ['src/server/api.ts', 'src/cli/index.ts'],
      ['src/web/main.tsx', 'src/store/index.ts'],
      ['src/web/main.tsx', 'src/core/steam/water.ts'],
      ['src/web/main.tsx', 'node:fs'],
      ['src/cli/read.ts', 'src/server/index.ts'],
      ['src/cli/read.ts', 'test/support/stores.ts'],
    ] as const
    expect(no.filter(([from, to]) => fault(from, to) === null)).toEqual([])
    const yes = [
      ['src/core/heat/slab.ts', 'src/core/steam/index.ts'],
      ['src/core/heat/slab.ts', 'src/core/heat/thermal.ts'],
      ['src/core/heat/slab.ts', 'src/core/sources.ts'],
      ['src/core/index.ts', 'src/core/press/index.ts'],
      ['src/core/pots/index.ts', 'data/pots/cards.ts'],
      ['data/pots/cards.ts', 'src/core/pots/card.ts'],
      ['src/server/api.ts', 'src/store/index.ts'],
      ['src/web/bench/pot.tsx', 'src/core/cook/index.ts'],
      ['src/store/sqlite.ts', 'node:fs'],
    ] as const
    expect(yes.filter(([from, to]) => fault(from, to) !== null)).toEqual([])
  })

  it('are kept by every import', () => {
    const sources = [...core, ...others]
    expect(sources.length).toBeGreaterThan(100)
    const broken = sources.flatMap((source) =>
      imports(source).flatMap((to) => {
        const why = fault(source.path, to)
        return why === null ? [] : [`${source.path} imports ${to}: ${why}`]
      }),
    )
    expect(broken).toEqual([])
  })

  it('go round every room: none is missing in the table', () => {
    const folders = readdirSync(join(root, 'src/core'), { withFileTypes: true }).filter((entry) => entry.isDirectory())
    expect(folders.map(({ name }) => name).filter((name) => !rooms.includes(name))).toEqual([])
  })
})

/** Places where a file of core reaches for a clock, for chance or for its surroundings. */
function impurities({ path, tree }: Source): string[] {
  const found: string[] = []
  walk(tree, (node, parent) => {
    const isName = ts.isIdentifier(node) && impure.has(node.text)
    const isMember = ts.isPropertyAccessExpression(parent) && parent.name === node
    const isKey = (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node
    const isChance =
      ts.isPropertyAccessExpression(node) &&
      node.name.text === 'random' &&
      ts.isIdentifier(node.expression) &&
      node.expression.text === 'Math'
    if ((isName && !isMember && !isKey) || isChance) {
      const { line } = tree.getLineAndCharacterOfPosition(node.getStart(tree))
      found.push(`${path}:${line + 1} ${node.getText(tree)}`)
    }
  })
  return found
}

describe('core', () => {
  it('would be caught with a clock or with chance', () => {
    const text = 'export const a = Math.random() + Date.now()\nconsole.log(performance.now(), { Date: 1 }.Date)'
    const tree = ts.createSourceFile('x.ts', text, ts.ScriptTarget.ES2023)
    expect(impurities({ path: 'x.ts', tree })).toEqual([
      'x.ts:1 Math.random',
      'x.ts:1 Date',
      'x.ts:2 console',
      'x.ts:2 performance',
    ])
  })

  it('has no clock, no chance and no surroundings', () => {
    expect(core.flatMap(impurities)).toEqual([])
  })
})

/** A file of types and tables has nothing to test by itself: those who use it test it. */
function behaves({ tree }: Source): boolean {
  let found = false
  walk(tree, (node) => {
    if (ts.isFunctionDeclaration(node) || ts.isArrowFunction(node) || ts.isFunctionExpression(node)) found = true
    if (ts.isClassDeclaration(node)) found = true
  })
  return found
}

/** Names that a file imports from one place. */
function namesFrom({ path, tree }: Source, target: string): string[] {
  return tree.statements.flatMap((statement) => {
    if (!ts.isImportDeclaration(statement) && !ts.isExportDeclaration(statement)) return []
    if (!statement.moduleSpecifier || !ts.isStringLiteral(statement.moduleSpecifier)) return []
    if (join(dirname(path), statement.moduleSpecifier.text).split(sep).join('/') !== target) return []
    const list = ts.isImportDeclaration(statement) ? statement.importClause?.namedBindings : statement.exportClause
    if (list === undefined || ts.isNamespaceImport(list) || ts.isNamespaceExport(list)) return ['*']
    return list.elements.map((element) => (element.propertyName ?? element.name).text)
  })
}

/** Files of a room that some test calls: by the test's name, by importing the file, or by a name the room gives out. */
function calledByTests(room: string, files: Source[], tests: Source[]): Set<string> {
  const face = files.find(({ path }) => path === `src/core/${room}/index.ts`)!
  const wanted = new Set(tests.flatMap((test) => namesFrom(test, face.path)))
  const called = new Set([
    ...tests.map(({ path }) => path.replace(/^test\//, 'src/').replace(/\.test\.ts$/, '.ts')),
    ...tests.flatMap(imports),
    ...files.map(({ path }) => path).filter((path) => namesFrom(face, path).some((name) => wanted.has(name))),
  ])
  // What a called file needs within its room is called with it, as far as the room does not give it out by itself.
  for (const path of called) {
    const file = files.find((one) => one.path === path)
    if (file === undefined || file === face) continue
    for (const inner of imports(file)) if (namesFrom(face, inner).length === 0) called.add(inner)
  }
  return called
}

describe('the finished rooms', () => {
  it.each(tested)('%s: every file with behaviour is called by a test', (room) => {
    const tests = sourcesIn('test/core').filter(({ path }) => path.endsWith('.test.ts'))
    const files = core.filter(({ path }) => path.startsWith(`src/core/${room}/`))
    expect(files.length).toBeGreaterThan(0)
    const called = calledByTests(room, files, tests)
    const untested = files.filter(
      (source) => !source.path.endsWith('/index.ts') && behaves(source) && !called.has(source.path),
    )
    expect(untested.map(({ path }) => path)).toEqual([])
  })
})
