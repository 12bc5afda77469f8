import { count } from '../words.ts'
import type { Note } from './reading.ts'

/** What a listener is told when the notes have changed; empty when they have not. */
export function newsOf(before: readonly Note[], after: readonly Note[]): string {
  const known = new Set(before.map((note) => note.key))
  const left = new Set(after.map((note) => note.key))
  const fresh = after.filter((note) => !known.has(note.key))
  const gone = before.filter((note) => !left.has(note.key))
  if (fresh.length === 0 && gone.length === 0) return ''
  const all = after.length === 0 ? 'No notes.' : `${capital(count(after.length, 'note'))}.`
  const settled = gone.length > 0 ? ` Settled: ${titles(gone)}` : ''
  const news = fresh.length > 0 && before.length > 0 ? ` New: ${titles(fresh)}` : ''
  return all + settled + news
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

const titles = (notes: readonly Note[]): string =>
  notes
    .slice(0, 3)
    .map((note) => note.finding.title)
    .join(' ')
