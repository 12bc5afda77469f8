// Small sentences that several places need.

export const count = (n: number, one: string, many = `${one}s`): string => `${numberWord(n)} ${n === 1 ? one : many}`

const small = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']
export const numberWord = (n: number): string => small[n] ?? String(n)

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** "just now", "20 minutes ago", "yesterday", "Tuesday", "3 March", "3 March 2025". */
export function ago(iso: string, now_ms: number): string {
  const then = new Date(iso)
  const minutes = Math.floor((now_ms - then.getTime()) / 60_000)
  if (Number.isNaN(minutes)) return ''
  if (minutes < 1) return 'just now'
  if (minutes < 60) return minutes === 1 ? 'a minute ago' : `${minutes} minutes ago`
  const now = new Date(now_ms)
  const days = Math.round((midnight(now) - midnight(then)) / 86_400_000)
  if (days === 0) return `today, ${clock(then)}`
  if (days === 1) return `yesterday, ${clock(then)}`
  if (days < 7) return then.toLocaleDateString('en-GB', { weekday: 'long' })
  const year = then.getFullYear() === now.getFullYear() ? undefined : 'numeric'
  return then.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year })
}

const midnight = (day: Date): number => new Date(day.getFullYear(), day.getMonth(), day.getDate()).getTime()

const clock = (then: Date): string => then.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' })

/** First line with something in it, for a dish that has no other title. */
export function titleOf(text: string): string {
  const line = text.split('\n').find((each) => each.trim() !== '')
  return line?.trim().slice(0, 120) ?? 'Untitled'
}
