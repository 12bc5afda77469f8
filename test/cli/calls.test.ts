// The command line as a person calls it: in a process of its own.
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { call, callInside, projectFolder } from '../support/call.ts'

const folder = mkdtempSync(join(tmpdir(), 'underlid-cli-'))
afterAll(() => rmSync(folder, { recursive: true }))
const pork = join(projectFolder, 'examples/dishes/pork-shoulder-leeks-cider.txt')
const file = (name: string, content: string | Uint8Array) => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}
const noTrace = /\n\s+at |node:internal|\.ts:\d/

describe('read', { timeout: 120_000 }, () => {
  test('says what it understood, in columns and without colour', async () => {
    const { code, out, err } = await callInside(['read', pork])
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out).toMatch(/^Pork shoulder with leeks and cider\n/)
    expect(out).toContain('Makes 4 to 6 servings. Stated in all: 1 h 45 min.')
    expect(out).toMatch(/1\.2 kg +boneless pork/)
    expect(out).toMatch(/3\. +add/)
    expect(out).toMatch(/hold +30 min; high pressure/)
    expect(out).not.toContain('\u001b[')
    for (const line of out.split('\n')) expect([...line].length).toBeLessThanOrEqual(80)
  })

  test('prints the contract’s keys, and its places lead to the words', async () => {
    const { code, out } = await call(['read', '-', '--json'], { input: readFileSync(pork) })
    expect(code).toBe(0)
    const json = JSON.parse(out)
    const text = readFileSync(pork, 'utf8')
    expect(json.title).toBe('Pork shoulder with leeks and cider')
    expect(json.ingredients).toHaveLength(8)
    for (const one of json.ingredients) expect(text.slice(one.from, one.to)).toBe(one.line)
    for (const step of json.steps) {
      expect(text.slice(step.from, step.to)).toBe(step.text)
      for (const operation of step.operations) expect(operation.to).toBeGreaterThan(operation.from)
    }
  })
})

describe('cook', { timeout: 120_000 }, () => {
  test('says where, when and how it comes out, and writes the drawing', async () => {
    const svg = join(folder, 'strip.svg')
    const { code, out, err } = await call(['cook', pork, '--pot', 'electric-6qt', '--altitude', '1600m', '--svg', svg])
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out).toContain('Cooked in a 6-quart electric pot, at 1,600 m (5,249 ft), as asked.')
    expect(out).toMatch(/ 0:00 .*by hand\n/)
    expect(out).toMatch(/at pressure, 30 minutes +30 min\n/)
    expect(out).toMatch(/ in all, \d+ min by hand/)
    expect(out).toMatch(/In the end\n +pork +\w+/)
    expect(out).toMatch(/The water\n +went in +\d+ g/)
    expect(out).not.toContain('\u001b[')
    for (const line of out.split('\n')) expect([...line].length).toBeLessThanOrEqual(80)
    const drawing = readFileSync(svg, 'utf8')
    expect(drawing).toMatch(/^<\?xml[^>]*\?>\n<svg xmlns/)
    expect(drawing).toContain('</svg>')
  })

  test('prints the contract’s keys', async () => {
    const { code, out } = await callInside(['cook', pork, '--json', '--gauge', '12psi', '--altitude', '5250ft'])
    expect(code).toBe(0)
    const json = JSON.parse(out)
    for (const key of [
      'pot',
      'altitude_m',
      'clock',
      'events',
      'base',
      'fill',
      'pieces',
      'sauce',
      'account',
      'series',
      'findings',
    ])
      expect(json).toHaveProperty(key)
    expect(json.altitude_m).toBe(1600.2)
    expect(Math.max(...json.series.gauge_kPa)).toBeGreaterThan(75)
    expect(out).not.toMatch(/NaN|Infinity/)
  })

  test('a poem, a shopping list: a sentence, no trace, exit code 2', async () => {
    const poem = await callInside([
      'cook',
      file(
        'poem.txt',
        'The kettle hums, the window weeps,\nthe street lies grey below;\nand somewhere in the house there sleeps\na cat that does not know.\n',
      ),
    ])
    expect(poem.code).toBe(2)
    expect(poem.out).toBe('')
    expect(poem.err).toMatch(/^There is nothing to cook here\. /)
    expect(poem.err).not.toMatch(noTrace)
    const list = await callInside(['cook', file('list.txt', '2 onions\n1 kg carrots\n500 g beef\nmilk\n')])
    expect(list.code).toBe(2)
    expect(list.err).toMatch(/There is nothing to cook here\./)
  })
})

describe('calls that are wrong say where and how to put it right', { timeout: 120_000 }, () => {
  test.each<[string, string[], RegExp]>([
    [
      'a file that is not there',
      ['read', 'no-such-dinner.txt'],
      /^There is no file no-such-dinner\.txt here\. Check the name and the folder/,
    ],
    ['a folder', ['read', folder], /is a folder\. Give one file/],
    ['an unknown pot', ['cook', pork, '--pot', 'cauldron'], /There is no pot "cauldron"[\s\S]*electric-6qt/],
    [
      'an altitude without unit',
      ['cook', pork, '--altitude', '1600'],
      /has no unit\. Write it with its unit, like 1600m or 5250ft/,
    ],
    ['an unknown option', ['read', pork, '--jsn'], /Unknown option '--jsn'\. Did you mean --json\?/],
    ['an unknown command', ['bake', pork], /Unknown command 'bake'\./],
    ['no file', ['cook'], /Missing required argument 'file'\./],
    [
      'a drawing that cannot be written',
      ['cook', pork, '--svg', join(folder, 'nowhere', 'x.svg')],
      /could not be written to .*\(ENOENT\)/,
    ],
  ])('%s', async (_, args, sentence) => {
    const { code, out, err } = await callInside(args)
    expect(code).toBe(2)
    expect(out).toBe('')
    expect(err).toMatch(sentence)
    expect(err).not.toMatch(noTrace)
  })

  test('bytes on standard input', async () => {
    const { code, err } = await call(['read', '-'], { input: new Uint8Array(500).map((_, i) => (i * 91) % 256) })
    expect(code).toBe(2)
    expect(err).toMatch(/^Standard input is not text/)
  })
})

describe('other texts are met with a plain sentence', { timeout: 120_000 }, () => {
  test.each<[string, string, RegExp]>([
    ['right to left', 'מרק שעועית\n\n500 גרם שעועית\n2 בצלים\n\nמבשלים את השעועית במים שעה.\n', /Hebrew script/],
    [
      'a poem',
      'The kettle hums, the window weeps,\nthe street lies grey below.\n',
      /Nothing in this text could be followed as a recipe/,
    ],
  ])('%s', async (_, text, sentence) => {
    const { code, out, err } = await callInside(['read', file('text.txt', text)])
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out.replace(/\s+/g, ' ')).toMatch(sentence)
  })
})

describe('the program itself', { timeout: 120_000 }, () => {
  test('help, version and serve', async () => {
    const help = await callInside(['--help'])
    expect(help.code).toBe(0)
    expect(help.out).toMatch(/read .*<file>[\s\S]*cook .*<file>[\s\S]*serve/)
    expect(help.out).not.toMatch(/\b(kitchens|ask|edition|proof|panel)\b.*<file>/)
    expect(await callInside(['--version'])).toMatchObject({ code: 0, out: '0.0.0-test\n' })
    expect(await callInside(['serve', '--port', '0', '--data', 'x'])).toMatchObject({
      code: null,
      out: 'served ["--port","0","--data","x"]\n',
    })
    expect(await callInside([])).toMatchObject({ code: 2, out: '' })
  })

  const built = join(projectFolder, 'dist/src/cli/main.js')
  test.runIf(existsSync(built))('as it is built and called', async () => {
    const program = [join(projectFolder, 'bin/underlid.js')]
    const { version } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8'))
    expect(await call(['--version'], { program })).toEqual({ code: 0, out: `${version}\n`, err: '' })
    const { code, out } = await call(['read', pork, '--json'], { program, cwd: folder })
    expect(code).toBe(0)
    expect(JSON.parse(out).title).toBe('Pork shoulder with leeks and cider')
  })
})
