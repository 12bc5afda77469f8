// Classes of a drawing and the colours they stand for. The page takes `drawingCss()` with its own custom properties;
// the standalone writer puts in the values of the printer's proof. One table, so that the two cannot part.

export const colourNames = ['paper', 'desk', 'ink', 'soft', 'rule', 'heat', 'heat-tint', 'water', 'water-tint'] as const
export type ColourName = (typeof colourNames)[number]
export type Theme = 'light' | 'dark'

export const themes: Record<Theme, Record<ColourName, string>> = {
  light: {
    paper: '#fbf9f4',
    desk: '#efebe2',
    ink: '#1d1b18',
    soft: '#6a645a',
    rule: '#cfc8ba',
    heat: '#b8441f',
    'heat-tint': '#f0c9b5',
    water: '#2d6a80',
    'water-tint': '#c9dde2',
  },
  dark: {
    paper: '#1b1a18',
    desk: '#131210',
    ink: '#ece6da',
    soft: '#a39b8d',
    rule: '#3a3732',
    heat: '#ee7d52',
    'heat-tint': '#5a2c1b',
    water: '#7fb6c8',
    'water-tint': '#1f3c46',
  },
}

const sansStack = "'Source Sans 3 Variable', 'Source Sans 3', 'Helvetica Neue', Arial, sans-serif"
const serifStack = "'Literata Variable', Literata, Georgia, 'Times New Roman', serif"

/**
 * Rules for the classes used by drawings. `f-` fills, `s-` strokes, `line` is not filled, `g-` stops of a shade, `t-`
 * faces; `halo` keeps words readable over lines. `colour` says how a colour is written: `var(--ink)` in the page, `#1d1b18` in a file.
 */
export function drawingCss(
  colour: (name: ColourName) => string = (name) => `var(--${name})`,
  ground = 'var(--drawing-ground, var(--desk))',
): string {
  const rules = colourNames.flatMap((name) => [
    `.drawing .f-${name}{fill:${colour(name)}}`,
    `.drawing .s-${name}{stroke:${colour(name)}}`,
    `.drawing .g-${name}{stop-color:${colour(name)}}`,
  ])
  return [
    `.drawing{overflow:visible;display:block}`,
    ...rules,
    `.drawing .line{fill:none}`,
    `.drawing .t-sans{font-family:${sansStack};font-variant-numeric:tabular-nums lining-nums}`,
    `.drawing .t-bold{font-family:${sansStack};font-weight:600;font-variant-numeric:tabular-nums lining-nums}`,
    `.drawing .t-serif{font-family:${serifStack}}`,
    `.drawing .t-italic{font-family:${serifStack};font-style:italic}`,
    `.drawing .halo{paint-order:stroke;stroke:${ground};stroke-width:3px;stroke-linejoin:round}`,
    `.drawing .f-ground{fill:${ground}}`,
  ].join('\n')
}
