import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { type Hand, type Outcome, openKitchen, patience_ms } from '../../src/web/cook/kitchen.ts'
import type { Order, Reply } from '../../src/web/cook/messages.ts'

/** A hand that cooks when it is told to. */
class TestHand implements Hand {
  orders: Order[] = []
  ended = false
  onmessage: Hand['onmessage'] = null
  onerror: Hand['onerror'] = null
  postMessage = (order: Order) => {
    this.orders.push(order)
  }
  terminate = () => {
    this.ended = true
  }
  serve = () => {
    const { number } = this.orders.at(-1)!
    this.onmessage?.({ data: { number, ok: true, cooked: {} } as Reply })
  }
}

let hands: TestHand[]
let served: Outcome[]
const dish = (text: string) => ({ text, pot: null, altitude_m: null })

function kitchen() {
  return openKitchen(
    () => {
      hands.push(new TestHand())
      return hands.at(-1)!
    },
    (outcome) => served.push(outcome),
  )
}

beforeEach(() => {
  vi.useFakeTimers()
  hands = []
  served = []
})
afterEach(() => void vi.useRealTimers())

describe('the kitchen', () => {
  it('cooks one order at a time and then the latest, not those between', () => {
    const { order } = kitchen()
    for (const text of ['a', 'b', 'c']) order(dish(text))
    expect(hands[0].orders.map((each) => each.text)).toEqual(['a'])
    hands[0].serve()
    expect(hands[0].orders.map((each) => each.text)).toEqual(['a', 'c'])
    hands[0].serve()
    expect(served.map((outcome) => outcome.number)).toEqual([1, 3])
  })

  it('replaces a hand that fails, says so, and cooks on', () => {
    const { order } = kitchen()
    order(dish('a'))
    hands[0].onerror?.({ message: 'out of memory' })
    expect(served).toEqual([{ number: 1, ok: false, message: 'out of memory' }])
    order(dish('b'))
    hands[1].serve()
    expect(served.at(-1)).toMatchObject({ number: 2, ok: true })
  })

  it('does not wait for ever', () => {
    const { order } = kitchen()
    order(dish('a'))
    order(dish('b'))
    vi.advanceTimersByTime(patience_ms)
    expect(hands[0].ended).toBe(true)
    expect(served[0].ok).toBe(false)
    expect(hands[1].orders.map((each) => each.text)).toEqual(['b'])
  })

  it('is quiet once closed', () => {
    const { order, close } = kitchen()
    order(dish('a'))
    close()
    vi.advanceTimersByTime(patience_ms)
    expect(served).toEqual([])
    expect(hands[0].ended).toBe(true)
  })
})
