import { describe, expect, it } from 'vitest'
import { brief, operationsOf, ordered, readMethod } from './reading.ts'

/** Rows of "words -> operations", operations parted by " | ". */
const rows = (table: string): [string, string[]][] =>
  table
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((line) => {
      const [words, wanted] = line.split(' -> ')
      return [words!, wanted === 'nothing' ? [] : wanted!.split(' | ')]
    })

const locked = 'Add the stock. Lock the lid and cook at high pressure for 30 minutes. '

describe('times', () => {
  it.each(
    rows(`
    Simmer for 45 minutes. -> simmer 45
    Simmer 1 hour 15 minutes. -> simmer 75
    Simmer for 1 hour and 15 minutes. -> simmer 75
    Simmer for an hour and a half. -> simmer 90
    Simmer for 2-1/2 hours. -> simmer 150
    Simmer for 2 1/2 to 3 hours. -> simmer 150-180
    Simmer for 2½ – 3 hours. -> simmer 150-180
    Simmer for three to three and a half hours. -> simmer 180-210
    Simmer for half an hour. -> simmer 30
    Simmer for 1/4 hour. -> simmer 15
    Simmer for a good quarter of an hour. -> simmer 15
    Simmer for three quarters of an hour. -> simmer 45
    Simmer for a couple of minutes. -> simmer 2
    Simmer for a minute or two. -> simmer 1-2
    Simmer for ten to fifteen minutes. -> simmer 10-15
    Simmer 10-12min. -> simmer 10-12
    Simmer 5 or 6 minutes more. -> simmer 5-6
    Simmer 1h30. -> simmer 90
    Simmer 1 hr. 15 min. -> simmer 75
    Simmer for at least 4 hours. -> simmer 240
    Simmer for a further 20 minutes. -> simmer 20
    Simmer for ~15-20 minutes. -> simmer 15-20
    Simmer 30 seconds. -> simmer 30 s
    Simmer an additional 2-3 minutes. -> simmer 2-3
    Soak the beans overnight. -> soak 480-720
    Soak the beans over night. -> soak 480-720
    Soak the beans for 8 to 12 hours. -> soak 480-720
    Chill for at least 2 hours or overnight. -> chill 120-720
    Chill for at least an hour, or overnight. -> chill 60-720
    Refrigerate for at least 1 hour and up to overnight. -> chill 60-720
    Simmer for a few minutes. -> simmer
    Simmer on low heat, stirring once every 10-15 minutes. -> simmer low stirs
    Let the pot stand off the heat; reckon on 10 minutes. -> rest 10
    Simmer until tender. This takes about 40 minutes. -> simmer 40`),
  )('%s', (words, wanted) => {
    expect(ordered(words)).toEqual(wanted)
  })

  it('keeps the place of the figure', () => {
    const recipe = readMethod('Simmer, covered, for 2 1/2 to 3 hours.')
    const { places } = operationsOf(recipe)[0]!
    expect(recipe.text.slice(places!.time!.from, places!.time!.to)).toBe('2 1/2 to 3 hours')
    expect(recipe.text.slice(places!.verb!.from, places!.verb!.to)).toBe('Simmer')
  })
})

describe('temperatures', () => {
  it.each(
    rows(`
    Heat the oven to 150C/130C fan/gas mark 2. -> heat 150C @oven
    Preheat the oven to 375°F (190°C). -> heat 190C @oven
    Preheat an oven to 300°F. -> heat 149C @oven
    Preheat oven to 325 degrees. -> heat 163C @oven
    Preheat oven to 180 degrees. -> heat 180C @oven
    Heat the oven to gas mark 4. -> heat 177C @oven
    Raise the oven to 400°F and roast for 15 minutes. -> heat 204C @oven | bake 15
    Bake at 350 F. for 10 to 15 minutes. -> bake 10-15 177C
    Add the stock. Bake 1-1/2 hours at 350 F. or until tender. -> add | bake 90 177C
    Add 3 C of stock. -> add
    Hold at 140 F. or higher. -> rest 60C`),
  )('%s', (words, wanted) => {
    expect(ordered(words)).toEqual(wanted)
  })
})

describe('heat words', () => {
  it.each(
    rows(`
    Fry the onions over medium-high heat. -> fry medium-high
    Fry the onions over a medium heat. -> fry medium
    Fry the onions on medium/high heat. -> fry medium-high
    Fry the onions over medium to medium-high heat. -> fry medium-high
    Fry the onions on the lowest heat. -> fry low
    Fry the onions over very low heat. -> fry low
    Fry the onions over a gentle heat. -> fry low
    Fry the onions on a fierce heat. -> fry high
    Fry the onions on low for 5 minutes. -> fry 5 low
    Fry the onions on SAUTE, low, 5 min. -> fry 5 low
    Set the pot to sauté on high and heat the oil. -> heat high
    Set the multicooker to sauté. -> heat
    Turn the cooker to sauté, medium. Add the onions. -> heat medium | add
    Turn the heat up to medium, add the beef and fry for 5 minutes. -> add | fry 5 medium
    Turn the heat to high and bring to a boil. -> boil high
    Reduce the heat to low; simmer for 20 minutes. -> simmer 20 low
    Place a large pan over medium heat and add the oil. -> heat medium | add
    Turn up the heat to medium. -> heat medium
    Mix at medium speed 5 minutes. -> mix 5
    Bake at 180C on high fan for 10 minutes. -> bake 10 180C`),
  )('%s', (words, wanted) => {
    expect(ordered(words)).toEqual(wanted)
  })
})

describe('lid, lock and pressure', () => {
  it.each(
    rows(`
    Lock the lid in place and cook at high pressure for 35 minutes. -> lock lid on | hold 35 at high
    Close the lid, set the valve to sealing and cook on high for 5 minutes. -> lock lid on | hold 5 at high
    Secure the lid and close the valve. Cook on high pressure for 8 minutes. -> lock lid on | hold 8 at high
    Close lid and seal. Set to LOW pressure, 6 min. -> lock lid on | hold 6 at low
    Lid on, seal. HP 25 min. -> lock lid on | hold 25 at high
    Lid on, HP, 20 min. -> lock lid on | hold 20 at high
    Lid on & valve closed. Pressure cook (HIGH) 9 mins. -> lock lid on | hold 9 at high
    Lock lid. Manual high 90 min, keep warm OFF. -> lock lid on | hold 90 at high
    Lock the lid and pressure-cook on HIGH for 25 minutes. -> lock lid on | hold 25 at high
    Lock the lid, bring to 15 psi over high heat, lower the heat and cook for 60 minutes. -> lock lid on | heat high at high | hold 60 at high
    Lock the lid. Bring to 15 psi and set the timer for 60 minutes. -> lock lid on | heat at high | hold 60 at high
    Lock lid. Bring up to 15 lb over high heat; lower heat & hold 20 min. -> lock lid on | heat high at high | hold 20 at high
    Put on the lid, bring to high pressure and cook for 18 minutes. -> lock lid on | heat at high | hold 18 at high
    Fit the lid, bring to full pressure (second ring), then cook for 50 mins. -> lock lid on | heat at high | hold 50 at high
    Seal the cooker, bring up to the first ring and cook for 10 minutes. -> lock lid on | heat at low | hold 10 at low
    Cover, set the control at 15, and place over high heat. When it rocks, cook 40 minutes. -> lock lid on | heat high | hold 40 at high
    Lock the lid; once up to high pressure, drop the heat and time 30 minutes. -> lock lid on | hold 30 at high
    Lock the lid and bring to pressure. Maintain pressure for 22 minutes. -> lock lid on | heat | hold 22
    Cook under high pressure for 1 hour and 25 minutes. -> hold 85 at high
    Lock the lid and cook at medium pressure for 10 minutes. -> lock lid on | hold 10 at medium
    Lock the lid and cook at low pressure for 4 hours. -> lock lid on | hold 240 at low`),
  )('%s', (words, wanted) => {
    expect(ordered(words)).toEqual(wanted)
  })

  it('a locked lid makes "cook" a hold, a cover a simmer, the open pot a fry', () => {
    expect(ordered(`${locked}`).at(-1)).toBe('hold 30 at high')
    expect(ordered('Heat the oil. Add the onions and cook for 5 minutes.').at(-1)).toBe('sweat 5')
    expect(ordered('Heat the oil. Add the beef and cook for 5 minutes.').at(-1)).toBe('fry 5')
    expect(ordered('Heat the oil. Add the cumin and cook for 30 seconds.').at(-1)).toBe('bloom 30 s')
    expect(ordered('Add the stock and cook for 30 minutes.').at(-1)).toBe('simmer 30')
    expect(ordered('Add the onions, cover and cook for 10 minutes.').at(-1)).toBe('simmer 10 lid on')
    expect(ordered('Cover and cook in the oven for 2 hours.').at(-1)).toBe('bake 120 lid on @oven')
    expect(ordered('Cover and transfer to the oven. Cook for 2 hours.').at(-1)).toBe('bake 120 lid on')
  })

  it('slow cooking under a lid holds nothing', () => {
    expect(ordered(`${locked}Quick-release the pressure. Lock the lid and cook on low for 8 hours.`).at(-1)).toBe(
      'simmer 480 low lid on',
    )
  })
})

describe('release', () => {
  it.each(
    rows(`
    Quick-release the pressure. -> release vented
    Quick release. -> release vented
    QR. -> release vented
    Do a quick release. -> release vented
    Vent the steam right away. -> release vented
    Release the pressure at once by turning the valve. -> release vented
    Open the valve and let all the steam out in one go. -> release vented
    Turn the valve to venting. -> release vented
    Manually release the pressure. -> release vented
    Cool the cooker under cold running water. -> release vented
    Run the pot under cold water until the lid opens freely. -> release vented
    Let the pressure drop by itself. -> release natural
    Let the pressure come down naturally, about 25 minutes. -> release 25 natural:25
    Leave until the pressure falls of its own accord, about 15 minutes. -> release 15 natural:15
    Natural release, about 15 minutes. -> release 15 natural:15
    NR 15 min. -> release 15 natural:15
    Let it come down naturally (30 min or so). -> release 30 natural:30
    Take off the heat and leave the pressure to fall naturally. -> release natural
    Let the pressure drop by itself; reckon on 10 minutes. -> release 10 natural:10
    Natural release for 10 minutes, then release the rest. -> release 10 natural-then-vented:10
    Let the pressure release naturally for 15 minutes, then vent what remains. -> release 15 natural-then-vented:15
    Give the pot 15 minutes of natural release, then flick the valve. -> release 15 natural-then-vented:15
    Allow the pressure to release naturally for 10 minutes, then carefully open the valve to release any remaining steam. -> release 10 natural-then-vented:10
    Wait 20 minutes for the pressure to come down naturally, then turn the valve to release anything left. -> release 20 natural-then-vented:20
    Let the pressure release naturally for at least 15 minutes before switching the valve to Venting. -> release 15 natural-then-vented:15
    Let the pressure drop on its own for 10 minutes; cool under running water to release the rest. -> release 10 natural-then-vented:10
    Allow 10 minutes, then open the valve. -> release 10 natural-then-vented:10
    Leave for 10 minutes, then release the remaining pressure. -> release 10 natural-then-vented:10
    Let stand 10 minutes, then quick-release. -> release 10 natural-then-vented:10
    NR 10 min, vent. -> release 10 natural-then-vented:10
    NPR for 5 mins then QPR. -> release 5 natural-then-vented:5`),
  )('%s', (words, wanted) => {
    expect(ordered(locked + words).slice(3)).toEqual(wanted)
  })

  it('in the breath of the hold it is an operation of its own', () => {
    expect(
      ordered('Add the stock. Lock the lid. Cook for 45 minutes on high with natural steam release.').slice(1),
    ).toEqual(['lock lid on', 'hold 45 at high', 'release natural'])
  })

  it('is not seen where steam, water and vents are about something else', () => {
    expect(ordered('Put the beef in a pan of cold water and bring to the boil.')).toEqual(['add', 'boil'])
    expect(ordered('Bake on high fan, closed vent, for 10 minutes.')).toEqual(['bake 10'])
    expect(ordered('After the pressure is released, take out the beef.')).toEqual(['lift'])
    expect(ordered('Let the aroma be released for a minute.')).toEqual(['bloom 1'])
  })
})

describe('batches, sides and how far to boil down', () => {
  it.each(
    rows(`
    Brown the beef in two batches, 6 minutes per batch. -> brown 6 x2 each
    Brown the beef in two batches for 6–8 minutes in all. -> brown 6-8 x2
    Brown the beef, 3 batches, 4-5 min ea. -> brown 4-5 x3 each
    Brown the beef, 4 minutes a side. Do it in two goes. -> brown 4 x2 each a side
    Brown the beef on two sides, 7 minutes. -> brown 7
    Brown the beef, 5 to 6 minutes per side. -> brown 5-6 a side
    Add the wine and reduce by half. -> add | reduce to 0.5
    Add the wine and boil until reduced by two-thirds. -> add | reduce to 0.333
    Add the wine and bubble until reduced by about a third, 5 minutes. -> add | reduce 5 to 0.667
    Boil the sauce down to about 300 ml. -> reduce to 300 ml
    Simmer until the sauce is reduced to about 3 cups. -> reduce to 710 ml
    Add the wine and let it boil away completely. -> add | reduce to 0`),
  )('%s', (words, wanted) => {
    expect(ordered(words)).toEqual(wanted)
  })
})

describe('manner', () => {
  it.each(
    rows(`
    Add the onions and cook, stirring often, for 5 minutes. -> add | sweat 5 stirs
    Cook without stirring for 4 minutes. -> fry 4
    Pour in the wine and boil hard for 2 minutes, scraping up the brown bits. -> add | boil 2 scrapes
    Add the wine and scrape the bottom of the pot clean. -> add | deglaze scrapes
    Add the wine and scrape, scrape, scrape. -> add | deglaze scrapes
    Scrape the mixture into a bowl. -> add @bowl
    Scrape down the sides of the pot. -> nothing
    Simmer, lid off, for 10 minutes. -> simmer 10 lid off
    Simmer, partially covered, for 10 minutes. -> simmer 10 lid ajar
    Cover the pot halfway, and simmer for 10 minutes. -> simmer 10 lid ajar
    Uncover and simmer for 10 minutes. -> simmer 10 lid off
    Whisk the stock and flour in a bowl. -> mix @bowl
    In a small skillet, fry the cumin for 30 seconds. -> fry 30 s @pan`),
  )('%s', (words, wanted) => {
    expect(ordered(words)).toEqual(wanted)
  })

  it('keeps the cue as written', () => {
    const cue = (method: string): string | null | undefined => operationsOf(readMethod(method)).at(-1)?.cue
    expect(cue('Brown the beef until deep golden, about 6 minutes.')).toBe('until deep golden')
    expect(cue('Cook for 5 minutes or until fragrant.')).toBe('until fragrant')
    expect(cue('Reduce the sauce 12 min to nappe.')).toBe('to nappe')
    expect(cue('Sear until nicely browned - around 6 mins.')).toBe('until nicely browned')
  })
})

describe('what is an order and what is not', () => {
  it.each(
    rows(`
    Add the onions, salt and pepper. -> add
    Salt the beef. -> season
    Add the stock. Salt & pepper. -> add | season
    Add brown sugar, brown rice and mustard. -> add
    Peel, slice and brown the onions. -> cut | cut | brown
    Add the carrots, cut into cubes, and simmer. -> add | simmer
    Drain, rinse and cut into 3 cm cubes. -> drain | cut
    In a small skillet add the oil and fry the onions. -> add @pan | fry
    Once melted add your onions, cook until translucent. -> add | sweat
    When the juices run clear, lift out the beef. -> lift
    Bring to a boil; cover; reduce heat; simmer 1 hour. -> boil | simmer 60 lid on
    Give it one boil, skim well. -> boil | skim
    Use half the fat to brown the beef. -> brown
    Continue cooking for 10 minutes. -> fry 10
    Finish the sauce by stirring in the lemon juice. -> add
    Return to a simmer and cook for 10 minutes. -> simmer | simmer 10
    Don't crowd the pot. -> nothing
    Press CANCEL. -> nothing
    Put the trivet in the cooker. -> nothing
    Lift out the bay leaves and discard. -> lift
    Discard skin, bone and tendons. -> nothing
    The beans may be first parboiled for half an hour, and then drained. -> boil 30 | drain`),
  )('%s', (words, wanted) => {
    expect(ordered(words)).toEqual(wanted)
  })

  it('telegraphic lines', () => {
    expect(
      ordered('Beef out -> tray, covered. Onions + garlic in, cook out 2 min. S/té high. Beef back in. Skim.'),
    ).toEqual(['lift', 'add', 'fry 2', 'heat high', 'add', 'skim'])
  })

  it('lower case without stops', () => {
    expect(ordered('1. brown the beef\n2. add the stock\n3. simmer for 35 minutes\n4. season with salt')).toEqual([
      'brown',
      'add',
      'simmer 35',
      'season',
    ])
  })

  it('marks what stands beside the course of the method', () => {
    expect(ordered('Serve warm, or chill for 3 hours and serve cold.')).toEqual([
      'serve',
      'chill 180 (alternative)',
      'serve (alternative)',
    ])
    expect(ordered('If you like it thicker, simmer for 5 minutes.')).toEqual(['simmer 5 (condition)'])
    expect(ordered('Meanwhile, boil the carrots for 5 minutes.')).toEqual(['boil 5 (meanwhile)'])
    expect(ordered('Stew the beef gently. 2 hours to stew the beef.')).toEqual(['simmer', 'simmer 120 (restated)'])
  })

  it('notes on keeping and making ahead are no operations', () => {
    for (const note of [
      'To store: keep in the fridge, reheat gently.',
      'Make ahead: cook the beef up to 2 days before and chill.',
      'Better made the day before: cool, chill overnight and reheat.',
      'Leftovers keep 3 days; freeze for 2 months.',
    ]) {
      expect(ordered(`Simmer for 5 minutes.\n\n${note}`), note).toEqual(['simmer 5'])
    }
  })

  it('a heading that shares the line orders nothing', () => {
    expect(ordered('Release: Let the pressure come down naturally. Finish: Stir in the parsley.')).toEqual([
      'release natural',
      'add',
    ])
  })
})

describe('repetition', () => {
  it('does the last browning and what followed it once more', () => {
    const recipe = readMethod(
      'Brown half of the beef for 7 minutes and transfer to a bowl. Repeat with the remaining oil and beef.',
    )
    expect(operationsOf(recipe).map(brief)).toEqual(['brown 7', 'lift @bowl', 'brown 7', 'lift @bowl'])
  })
})
