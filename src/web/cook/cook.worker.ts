/// <reference lib="webworker" />
import { cookManuscript } from '../../core/index.ts'
import type { Order, Reply } from './messages.ts'

// The kitchen works apart from the page, so that typing never waits for it.
self.addEventListener('message', (event: MessageEvent<Order>) => {
  self.postMessage(reply(event.data))
})

function reply({ number, text, pot, altitude_m }: Order): Reply {
  try {
    const cooked = cookManuscript(text, { pot: pot ?? undefined, altitude_m: altitude_m ?? undefined })
    return { number, ok: true, cooked }
  } catch (error) {
    return { number, ok: false, message: error instanceof Error ? error.message : String(error) }
  }
}
