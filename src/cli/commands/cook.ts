import { writeFileSync } from 'node:fs'
import type { Command } from 'commander'
import { cookManuscript, type UnderGlass } from '../../core/index.ts'
import { strip, svgText } from '../../core/press/index.ts'
import { CallError } from '../failure.ts'
import { readManuscript } from '../input.ts'
import { cookJson } from '../json-cook.ts'
import { altitudeOption_m, gaugeOption_Pa, potList, potOption } from '../options.ts'
import { print, printJson } from '../print.ts'
import { showsUnicode, thisTerminal } from '../terminal.ts'
import { cookText } from '../text-cook.ts'
import { nothingToCook } from '../understood.ts'

interface CookCall {
  readonly json?: boolean
  readonly pot?: string
  readonly altitude?: string
  readonly gauge?: string
  readonly svg?: string
}

export function addCook(program: Command): void {
  program
    .command('cook')
    .helpOption('-h, --help', 'this')
    .description('cooks the manuscript in a pot made of physics and shows what happens under the lid')
    .argument('<file>', 'the manuscript, plain text; - for standard input')
    .option('--pot <id>', 'the pot to cook in, whatever the manuscript says')
    .option('--altitude <height>', 'height over the sea, like 1600m or 5250ft')
    .option('--gauge <pressure>', 'working pressure of the pot, like 12psi or 80kPa')
    .option('--svg <out>', 'also write the strip of time as a drawing')
    .option('--json', 'as JSON, for programs')
    .addHelpText('after', `\nPots:\n${potList()}`)
    .action(async (file: string, options: CookCall) => {
      const pot = options.pot === undefined ? null : potOption(options.pot)
      const altitude_m = options.altitude === undefined ? null : altitudeOption_m(options.altitude)
      const gauge_Pa = options.gauge === undefined ? null : gaugeOption_Pa(options.gauge)
      const under = cookManuscript(await readManuscript(file), { pot, altitude_m, gauge_Pa })
      if (under.run.phases.length === 0) {
        throw new CallError(
          `There is nothing to cook here. ${nothingToCook(under.recipe)}`,
          'Give the text of a recipe, with what goes in and what is done.',
        )
      }
      if (options.svg !== undefined) writeSvg(options.svg, under)
      if (options.json) printJson(cookJson(under.run, under.findings))
      else {
        const altitudeFrom =
          altitude_m !== null ? 'asked' : under.recipe.named.altitude_m !== null ? 'manuscript' : 'default'
        print(cookText({ ...under, altitudeFrom, unicode: showsUnicode() }, thisTerminal()))
      }
    })
}

function writeSvg(path: string, { run }: UnderGlass): void {
  const drawing = svgText(strip(run, { width: 1200, height: 300 }), { standalone: true })
  try {
    writeFileSync(path, drawing)
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    throw new CallError(
      `The drawing could not be written to ${path} (${code}).`,
      'Name a file in a folder that exists and may be written to.',
    )
  }
}
