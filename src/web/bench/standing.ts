import { type Keep, unsent } from '../keep/keep.ts'

/** How the text is kept, in a few words for the running head. */
export function standing(keep: Keep): string {
  switch (keep.trouble?.kind) {
    case 'no-answer':
      return `${here(keep)}; the server does not answer`
    case 'fault':
      return `${here(keep)}; the server cannot write it`
    case 'refused':
      return `${here(keep)}; the server refused it`
    case 'gone':
      return `${here(keep)}; the server has no such dish any more`
  }
  return keep.sent || unsent(keep) ? 'saving' : 'saved'
}

const here = (keep: Keep): string => (keep.keptHere ? 'kept on this device' : 'on this page only')

/** What to do about it, as a sentence under the head; null when there is nothing to do. */
export function standingCure(keep: Keep): string | null {
  const full = keep.keptHere
    ? ''
    : 'This device has no room to keep a copy: copy the text somewhere before you close the page.'
  const { trouble } = keep
  if (!trouble) return null
  if (trouble.kind === 'no-answer') return full || null
  if (trouble.kind === 'gone') return full || null
  return [trouble.message, trouble.cure, full].filter(Boolean).join(' ')
}

export function revisionWords(number: number | null, changed: boolean | null): string {
  if (number === null) return 'no revision kept'
  return changed ? `revision ${number} and changes` : `revision ${number}`
}
