import type { Finding } from '../findings/index.ts'
import { finding } from './queries-finding.ts'
import type { Recipe } from './recipe.ts'
import { tokenise } from './sentences-tokens.ts'

/** Longest manuscript that is read, in characters: some forty printed pages. */
export const longest = 120_000

const english = new Set(
  'the and of to in for with until add cook heat on into or a is it over from then at salt water oil'.split(' '),
)
const others: readonly [string, ReadonlySet<string>][] = [
  [
    'German',
    new Set(
      'und der die das mit in den dem ein eine einen zu auf bis für nach dann lassen geben kochen bei el tl'.split(' '),
    ),
  ],
  [
    'French',
    new Set(
      'le la les de des du et un une avec dans pendant jusque puis au aux sur faire ajouter cuire pour'.split(' '),
    ),
  ],
  [
    'Spanish',
    new Set('el la los las de y con en un una hasta por añadir cocinar durante sal agua aceite se al del'.split(' ')),
  ],
  [
    'Italian',
    new Set(
      'il lo la gli le di e con in un una per fino aggiungere cuocere che del della al sale acqua olio'.split(' '),
    ),
  ],
  [
    'Dutch',
    new Set('de het een en met in van op tot voor dan laat voeg toe snijd bak kook minuten zout water olie'.split(' ')),
  ],
  [
    'Portuguese',
    new Set('o a os as de e com em um uma até por adicione cozinhe minutos sal água óleo do da no na'.split(' ')),
  ],
]

/** Characters looked at: enough to know, however long the text is. */
const sample = 2500

/** Language the text is in when it is plainly not English; null for English and for too little text to tell. */
export function foreignLanguage(reading: string): string | null {
  const tokens = tokenise(reading, 0, Math.min(reading.length, sample)).filter((token) => token.kind === 'word')
  if (tokens.length >= 20) {
    const share = (words: ReadonlySet<string>): number =>
      tokens.filter((token) => words.has(token.low)).length / tokens.length
    const own = share(english)
    // No other language has half as many of these words as English has.
    if (own > 0.12) return null
    const [name, best] = others
      .map(([name, words]) => [name, share(words)] as const)
      .reduce((a, b) => (b[1] > a[1] ? b : a))
    return best > 0.12 && best > 2 * own ? name : null
  }
  const letters = reading.slice(0, sample).match(/\p{L}/gu) ?? []
  const latin = letters.filter((letter) => /\p{Script=Latin}/u.test(letter)).length
  return letters.length > 80 && latin < letters.length / 2 ? 'another script' : null
}

/** What to say of a text that is no recipe. */
export function askAboutKind(kind: Recipe['kind'], language: string | null): Finding[] {
  if (kind === 'empty') {
    return [
      finding({
        code: 'empty-text',
        severity: 'blocking',
        span: null,
        title: 'Nothing to read yet.',
        message: 'There are no words here.',
        advice: 'Type or paste a manuscript: a list of ingredients, and the method as you would write it.',
      }),
    ]
  }
  if (kind === 'not-text') {
    return [
      finding({
        code: 'not-text',
        severity: 'blocking',
        span: null,
        title: 'This is not text.',
        message: 'It looks like the bytes of a picture, a word-processor file or an archive.',
        advice: 'Open it in its own program, copy the words and paste them.',
      }),
    ]
  }
  if (language) {
    return [
      finding({
        code: 'other-language',
        severity: 'blocking',
        span: null,
        title: language === 'another script' ? 'This is not in English.' : `This looks like ${language}.`,
        message: 'Only English manuscripts are read. What was understood of this one is not to be trusted.',
        advice: 'Translate it first.',
      }),
    ]
  }
  if (kind === 'list') {
    return [
      finding({
        code: 'no-method',
        severity: 'blocking',
        span: null,
        title: 'A list without a method.',
        message: 'There are foods here, but nothing says what to do with them. A shopping list cannot be cooked.',
        advice: 'Add the method, in sentences or numbered steps.',
      }),
    ]
  }
  if (kind === 'prose') {
    return [
      finding({
        code: 'not-a-recipe',
        severity: 'blocking',
        span: null,
        title: 'This does not read as a recipe.',
        message: 'No list of ingredients and no order to cook was found in it.',
        advice: 'A manuscript needs foods with amounts, and sentences that say what to do with them.',
      }),
    ]
  }
  return []
}

/** Things about the text as such that are worth a word. */
export function askAboutText(text: string, markup: boolean): Finding[] {
  const found: Finding[] = []
  if (text.length > longest) {
    found.push(
      finding({
        code: 'text-too-long',
        severity: 'warning',
        span: { from: longest, to: text.length },
        title: 'Too long to be one recipe.',
        message: `Only the first ${longest.toLocaleString('en-GB')} characters were read.`,
        advice: 'Give every dish its own manuscript.',
      }),
    )
  }
  if (markup) {
    found.push(
      finding({
        code: 'markup-passed-over',
        severity: 'hint',
        span: null,
        title: 'Tags were passed over.',
        message: 'The text holds markup of a web page. The words were read, the tags were not.',
        advice: 'Paste the words alone if something is missing.',
      }),
    )
  }
  return found
}
