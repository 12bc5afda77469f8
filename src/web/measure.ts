import { type RefObject, useLayoutEffect, useState, useSyncExternalStore } from 'react'

/** Width of an element in whole pixels, followed as it changes; 0 before it stands. */
export function useWidth(ref: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0)
  useLayoutEffect(() => {
    const element = ref.current
    if (!element) return
    const read = () => setWidth(Math.floor(element.clientWidth))
    read()
    const observer = new ResizeObserver(read)
    observer.observe(element)
    return () => observer.disconnect()
  }, [ref])
  return width
}

/** Follows a media query: the page lays things out differently, not only larger. */
export function useMedia(query: string): boolean {
  return useSyncExternalStore(
    (changed) => {
      const list = matchMedia(query)
      list.addEventListener('change', changed)
      return () => list.removeEventListener('change', changed)
    },
    () => matchMedia(query).matches,
  )
}

/** Height of the window, followed as it changes. */
export function useWindowHeight(): number {
  return useSyncExternalStore(
    (changed) => {
      window.addEventListener('resize', changed)
      return () => window.removeEventListener('resize', changed)
    },
    () => window.innerHeight,
  )
}

/** Pot beside the sheet and the strip below both. */
export const wide = '(min-width: 73.75rem)'
/** Notes beside their words instead of under their lines. */
export const margin = '(min-width: 47.5rem)'
