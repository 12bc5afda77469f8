import { describe, expect, it } from 'vitest'
import { readCut } from '../../../src/core/manuscript/cut.ts'

const said = (line: string): string => {
  const cut = readCut(line, 0, line.length)
  if (!cut) return 'none'
  const mm = (m: number): string => String(Math.round(m * 1e5) / 100)
  const { size_m: size } = cut
  return size
    ? `${cut.shape} ${size.low === size.high ? mm(size.low) : `${mm(size.low)} to ${mm(size.high)}`} mm`
    : cut.shape
}

describe('the cut that a line gives', () => {
  it.each([
    ['2 pounds chuck, cut into 1 1/2- to 2-inch pieces', 'pieces 38.1 to 50.8 mm'],
    ['2 medium leeks, trimmed and cut into 2cm rounds', 'slices 20 mm'],
    ['700 g butternut pumpkin, peeled, cut into 3 cm pieces', 'pieces 30 mm'],
    ['1 kg bone-in goat shoulder, in 4 cm pieces', 'pieces 40 mm'],
    ['1 pound red potatoes, cut in 3/4-inch cubes', 'cubes 19.05 mm'],
    ['400 g squash, in 1.5 cm cubes', 'cubes 15 mm'],
    ['450g steak, cut into 2.5cm/1in cubes', 'cubes 25 mm'],
    ['3 spring onions, cut in 5 cm lengths', 'pieces 50 mm'],
    ['salt pork cut into 1 by 1/4 inch by 1/4 inch pieces', 'pieces 6.35 mm'],
    ['1 lb carrots, sliced 1/4" thick', 'slices 6.35 mm'],
    ['1 zucchini, sliced 1/2 inch thick', 'slices 12.7 mm'],
    ['beef, cubes of about 3 cm', 'cubes 30 mm'],
    ['4 ounces pancetta, cut into 1/4-inch dice', 'cubes 6.35 mm'],
    ['chicken, cut into strips 1 cm wide', 'strips 10 mm'],
    ['1800 g lamb neck fillet, 60 g dice', 'cubes 38.52 mm'],
    ['3 lb beef, cut into chunks', 'pieces'],
    ['2 onions, cut in thick half-moons', 'slices'],
    ['2 onions, halved', 'halves'],
    ['1 cabbage, quartered, cored and shredded', 'shredded'],
    ['2 carrots, finely diced', 'cubes'],
    ['1 lg onion, chopped', 'chopped'],
    ['3 garlic cloves, minced', 'minced'],
    ['500 g beef mince', 'minced'],
    ['1 lb ground beef', 'ground'],
    ['1 bch mint, chiff.', 'strips'],
    ['12 whole peppercorns', 'whole'],
    ['1 medium red cabbage', 'none'],
    ['2 slices of ham', 'none'],
    ['3 cm piece ginger', 'none'],
    ['4 chicken pieces', 'none'],
    ['half a lemon', 'none'],
    ['2 celery sticks', 'none'],
    ['1 cup water', 'none'],
  ])('%s: %s', (line, cut) => expect(said(line)).toBe(cut))

  it('reads an order of the method too, with its place', () => {
    const step = 'Cut the pork into 2 inch cubes and place in a bag.'
    const cut = readCut(step, 0, step.length)!
    expect(cut).toMatchObject({ shape: 'cubes', size_m: { low: 0.0508, high: 0.0508 } })
    expect(step.slice(cut.from, cut.to)).toBe('2 inch cubes')
  })
})
