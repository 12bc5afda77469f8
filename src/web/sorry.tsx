import type { ReactNode } from 'react'

/** What is wrong, and what to do about it, where a page cannot be shown. */
export function Sorry({ title, cure, children }: { title: string; cure: string | null; children?: ReactNode }) {
  return (
    <main className="sorry" role="alert">
      <h2>{title}</h2>
      <p>
        {cure} {children}
      </p>
    </main>
  )
}
