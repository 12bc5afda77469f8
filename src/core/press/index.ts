// Drawings of a run, as plain data.

// The same in words and characters
export { baseSentence, describePot, describeStrip, outcomeSentence } from './describe.ts'
// The pot cut open
export { glassPot, type PotOptions } from './glass-pot.ts'
// Elements and how they are written
export { camelAttrs, type Mark, mark, marksOf } from './mark.ts'
export { type GroupMoment, type Moment, momentOf } from './moment.ts'
export { shortNames } from './names.ts'
// The figures under it
export { causeWords, type Reading, readings } from './readings.ts'
// The strip of time
export { type StripOptions, type StripScale, strip, stripScale } from './strip.ts'
export { momentSentence, totalSentence } from './strip-words.ts'
export { type ColourName, colourNames, drawingCss, type Theme, themes } from './style.ts'
export { type SvgOptions, svgText } from './svg.ts'
export { type ChartInk, type ChartOptions, terminalChart } from './terminal-chart.ts'
export { duration, durationRange, listed, percent } from './words.ts'
