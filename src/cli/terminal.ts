import pc from 'picocolors'

/** Where a command prints: how wide, in colour or not. Passed down, so that tests can set both. */
export interface Terminal {
  readonly columns: number
  readonly bold: (text: string) => string
  readonly soft: (text: string) => string
  readonly heat: (text: string) => string
  readonly water: (text: string) => string
}

const widest = 100

/** The terminal of this process: 80 columns when nobody says otherwise, colour only where somebody looks. */
export function thisTerminal(): Terminal {
  const said = Number(process.stdout.columns || process.env.COLUMNS)
  const colour = process.stdout.isTTY === true && !process.env.NO_COLOR && process.env.TERM !== 'dumb'
  return terminal(said >= 40 ? Math.min(said, widest) : 80, colour)
}

export function terminal(columns: number, colour: boolean): Terminal {
  const c = pc.createColors(colour)
  return { columns, bold: c.bold, soft: c.dim, heat: c.red, water: c.cyan }
}

/** Whether the terminal can be trusted with more than ASCII. A pipe is taken to be read as UTF-8, as everything here is. */
export function showsUnicode(): boolean {
  const { LC_ALL, LC_CTYPE, LANG, TERM } = process.env
  if (process.stdout.isTTY !== true || process.platform === 'win32') return true
  if (TERM === 'linux') return false
  return /utf-?8/i.test(LC_ALL || LC_CTYPE || LANG || 'utf-8')
}
