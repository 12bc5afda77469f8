import { describe, expect, it } from 'vitest'
import { layOut } from '../../../src/core/manuscript/layout.ts'
import { lines, outline } from './outline.ts'

const reads = (text: string, expected: string) => expect(outline(text)).toEqual(lines(expected))

describe('a manuscript is laid out', () => {
  it('with headings, a yield and two times on one line', () => {
    reads(
      `LAMB WITH PLUMS

Serves 4 to 6
Active time 25 minutes   Total time 1 hour 10 minutes

INGREDIENTS

800 g lamb shoulder, in 4 cm pieces
2 onions, sliced
Salt and pepper

METHOD

1. Brown the lamb for 8 minutes.

2. Add the onions and simmer for 40 minutes.
`,
      `recipe
       title LAMB WITH PLUMS
       yield 4 to 6 servings
       total 70 min
       active 25 min
       i 800 g lamb shoulder, in 4 cm pieces
       i 2 onions, sliced
       i Salt and pepper
       s 1 Brown the lamb for 8 minutes.
       s 2 Add the onions and simmer for 40 minutes.`,
    )
  })

  it('pasted from a word processor: tabs behind bullets and numbers', () => {
    reads(
      'Gran’s Braise   (Dutch oven)\n\nServes: 6–8   Prep time: 30 mins   Cook time: 3½ hrs\n\n•\t1 (4–5 lb.) chuck roast, tied\n•\t3 Tbs. oil, divided\n\n1.\tHeat the oven to 325°F.\n2.\tSear the roast, about 12 minutes.\n\nMake Ahead: The braise can be chilled for up to 3 days.\n',
      `recipe
       title Gran’s Braise
       yield 6 to 8 servings
       total 240 min
       active 30 min
       cooking 210 min
       i 1 (4–5 lb.) chuck roast, tied
       i 3 Tbs. oil, divided
       s 1 Heat the oven to 325°F.
       s 2 Sear the roast, about 12 minutes.
       ahead Make Ahead: The braise can be chilled for up to 3 days.`,
    )
  })

  it('in Markdown with data on top, a table and emphasis', () => {
    reads(
      `---
title: Chickpeas
tags: [beans]
---
# Weeknight Chickpeas

> A dish from the cupboard.

**Serves** 4 | **Total time** 1 hr 20 min

## Ingredients

| Ingredient | Amount | Notes |
|---|---|---|
| dried chickpeas | 250 g | soaked overnight |
| red onion | 1 large | |
| salt | | to taste |

## Method

1. Drain the chickpeas.
2. **Sauté** the onion for 5 minutes.
`,
      `recipe
       title Weeknight Chickpeas
       yield 4 servings
       total 80 min
       i dried chickpeas | 250 g | soaked overnight
       i red onion | 1 large
       i salt | | to taste
       s 1 Drain the chickpeas.
       s 2 **Sauté** the onion for 5 minutes.
       headnote A dish from the cupboard.`,
    )
  })

  it('in HTML, every span in the text as given', () => {
    reads(
      '<html><body><h1>Lemon &amp; Jalape&ntilde;o Chicken</h1>\n<p>Serves 4&ndash;6</p><h2>Ingredients</h2>\n<ul><li>1&frac12; pounds <b>boneless</b> chicken thighs</li><li>2&nbsp;tbsp. olive oil</li></ul>\n<h2>Directions</h2><ol><li>Brown the chicken for 8&nbsp;minutes.</li><li>Lock the lid and cook on high pressure 9 minutes.</li></ol></body></html>',
      `recipe
       title Lemon &amp; Jalape&ntilde;o Chicken
       yield 4 to 6 servings
       i 1&frac12; pounds <b>boneless</b> chicken thighs
       i 2&nbsp;tbsp. olive oil
       s Brown the chicken for 8&nbsp;minutes.
       s Lock the lid and cook on high pressure 9 minutes.`,
    )
  })

  it('without headings and without capitals', () => {
    reads(
      `beef and barley soup

2lb shin of beef, diced
a knob of butter
salt n pepper
a few sprigs of thyme

brown the beef in the butter. add the thyme and fry for 5 mins.
bring to high pressure and cook 35 mins.
check seasoning and serve.`,
      `recipe
       title beef and barley soup
       i 2lb shin of beef, diced
       i a knob of butter
       i salt n pepper
       i a few sprigs of thyme
       s brown the beef in the butter. add the thyme and fry for 5 mins.
       s bring to high pressure and cook 35 mins.
       s check seasoning and serve.`,
    )
  })

  it('in the manner of the old books, the foods running on', () => {
    reads(
      `STEWED HOCK OF PORK.

12. INGREDIENTS.--A hock of pork, 3 carrots, 2 slices of ham, 1
tablespoonful of ketchup, cayenne, black pepper and salt to taste; 1
gill of port wine.

_Mode_.--Cut up the carrots, and put them into a stewpan with the pork
and just sufficient water to cover the whole. Simmer gently until the
meat is tender.

_Time_.--2-1/2 hours to simmer gently.

_Average cost_, 2s. 6d.

_Sufficient_ for 6 or 7 persons.
`,
      `recipe
       title STEWED HOCK OF PORK
       yield 6 to 7 persons
       cooking 150 min
       i A hock of pork
       i 3 carrots
       i 2 slices of ham
       i 1 tablespoonful of ketchup
       i cayenne, black pepper and salt to taste
       i 1 gill of port wine
       s Cut up the carrots, and put them into a stewpan with the pork and just sufficient water to cover the whole. Simmer gently until the meat is tender.
       s 2-1/2 hours to simmer gently.
       tip _Average cost_, 2s. 6d.
       tip _Sufficient_ for 6 or 7 persons.`,
    )
  })

  it('as one paragraph of prose, foods and all', () => {
    reads(
      `BRAISED BEEF.--Take four pounds of the round of beef, and put it in a
deep pan with a tablespoonful of dripping. Add two carrots, an onion stuck
with six cloves, salt to taste, and a pint of stock. Cover closely and bake
in a slow oven four hours. Serves eight.`,
      `recipe
       title BRAISED BEEF
       yield 8 servings
       i four pounds of the round of beef
       i a tablespoonful of dripping
       i two carrots
       i an onion
       i six cloves
       i salt to taste
       i a pint of stock
       s Take four pounds of the round of beef, and put it in a deep pan with a tablespoonful of dripping. Add two carrots, an onion stuck with six cloves, salt to taste, and a pint of stock. Cover closely and bake in a slow oven four hours. Serves eight.`,
    )
  })

  it('as a card with weight, measure and issue in columns', () => {
    reads(
      `MEAT AND POULTRY No. K 007 00
LAMB AND BARLEY

Yield 100 Portion 1 Cup

Ingredient Weight Measure Issue
LAMB,DICED,RAW 30 lbs
ONIONS,FRESH,CHOPPED 3-1/2 lbs 2 qts 2 cup 3-7/8 lbs
WATER,COLD 2-1/8 lbs 1 qts

Method
1 Cook lamb and onions about 5 minutes.
2 Add water. Simmer 1 hour 15 minutes.
3 Hold for service at 140 F.

Notes
1 In Step 1, 4 pounds leeks may be used.
`,
      `recipe
       title LAMB AND BARLEY
       yield 100 portions
       i LAMB,DICED,RAW 30 lbs
       i ONIONS,FRESH,CHOPPED 3-1/2 lbs 2 qts 2 cup 3-7/8 lbs
       i WATER,COLD 2-1/8 lbs 1 qts
       s 1 Cook lamb and onions about 5 minutes.
       s 2 Add water. Simmer 1 hour 15 minutes.
       s 3 Hold for service at 140 F.
       headnote MEAT AND POULTRY No. K 007 00
       tip 1 In Step 1, 4 pounds leeks may be used.`,
    )
  })

  it('with pictures for bullets, in any line ends, with a mark of byte order', () => {
    reads(
      '\ufeff✨ ONE POT MAC ✨\r\n\r\n🕒 15 min  👥 4 people\r\n\r\n🛒 What you need:\r\n✅ 450g macaroni\r\n✅ 300g cheddar 🧀, grated\r\n\r\n👩‍🍳 How to make it:\r\n1️⃣ Put the pasta into the pot.\r\n2️⃣ High pressure for 4 mins!\r\n',
      `recipe
       title ONE POT MAC
       yield 4 people
       total 15 min
       i 450g macaroni
       i 300g cheddar 🧀, grated
       s 1 Put the pasta into the pot.
       s 2 High pressure for 4 mins!`,
    )
  })

  it('with parts of the list under their own headings, and steps under theirs', () => {
    reads(
      `Beef in Spice Paste

Serves: 6

SPICE PASTE
10 shallots
5 cm ginger

STEW
1 kg beef shin, in large chunks
2 x 400ml cans coconut milk

MAKE THE PASTE
Blend the shallots and ginger.

COOK THE STEW
Fry the paste for 5 minutes. Add the beef.
Simmer for 2½ hours.`,
      `recipe
       title Beef in Spice Paste
       yield 6 servings
       i [SPICE PASTE] 10 shallots
       i [SPICE PASTE] 5 cm ginger
       i [STEW] 1 kg beef shin, in large chunks
       i [STEW] 2 x 400ml cans coconut milk
       s Blend the shallots and ginger.
       s Fry the paste for 5 minutes. Add the beef.
       s Simmer for 2½ hours.`,
    )
  })

  it('with entries that run over two lines, and a step named on its own line', () => {
    reads(
      `Lamb Shanks
INGREDIENTS
4 lamb shanks (about 12 ounces each),
   trimmed of excess fat
1 cup dried beans, soaked overnight and
drained

PREPARATION
Step 1
Heat the oven.

Step 2
Braise 2½ hours.

Tip
Ask the butcher to crack the bones.`,
      `recipe
       title Lamb Shanks
       i 4 lamb shanks (about 12 ounces each), trimmed of excess fat
       i 1 cup dried beans, soaked overnight and drained
       s 1 Heat the oven.
       s 2 Braise 2½ hours.
       tip Ask the butcher to crack the bones.`,
    )
  })

  it('in two columns that were pasted side by side', () => {
    reads(
      'Bean Soup\tServes 6\n\n1 lb navy beans\tSoak the beans overnight in water.\n1 ham hock\tLock the lid and cook for 30 minutes.\n',
      `recipe
       title Bean Soup
       yield 6 servings
       i 1 lb navy beans
       i 1 ham hock
       s Soak the beans overnight in water.
       s Lock the lid and cook for 30 minutes.`,
    )
  })

  it('all on one line', () => {
    reads(
      'Split Pea Dal. Serves 4. Ingredients: 1 cup split peas, 3 cups water, 1 onion, chopped, salt to taste. Directions: 1. Rinse the peas. 2. Put everything in the cooker. 3. Cook at high pressure for 10 minutes.',
      `recipe
       title Split Pea Dal
       yield 4 servings
       i 1 cup split peas
       i 3 cups water
       i 1 onion, chopped
       i salt to taste
       s 1 Rinse the peas.
       s 2 Put everything in the cooker.
       s 3 Cook at high pressure for 10 minutes.`,
    )
  })

  it('as a letter', () => {
    reads(
      `hi mum heres the recipe

you need about 500g of lamb mince, a big onion, 3 garlic cloves and a tin of tomatoes. also 1 tbsp cumin

fry the onion for 5 min then add the mince. add the tomatoes, lid on, simmer for 30 min.

feeds 4 xx`,
      `recipe
       title hi mum heres the recipe
       yield 4 servings
       i about 500g of lamb mince
       i a big onion
       i 3 garlic cloves
       i a tin of tomatoes
       i 1 tbsp cumin
       s fry the onion for 5 min then add the mince. add the tomatoes, lid on, simmer for 30 min.
       tip feeds 4 xx`,
    )
  })

  it('whose steps interrupt the list', () => {
    reads(
      `Pork in Leaves

* 5 lbs Pork Butt
* 2 Tsp Cumin seeds

- Grind the spices in a coffee grinder.

* 1/2 Cup Orange Juice
* 2 Tbsp salt

- Blend the juice and salt well.

- Put the pan in the oven for 4 hours.`,
      `recipe
       title Pork in Leaves
       i 5 lbs Pork Butt
       i 2 Tsp Cumin seeds
       i 1/2 Cup Orange Juice
       i 2 Tbsp salt
       s Grind the spices in a coffee grinder.
       s Blend the juice and salt well.
       s Put the pan in the oven for 4 hours.`,
    )
  })

  it('and the mix inside an entry is no list of its own', () => {
    reads(
      `Spiced Lamb

* 500 g ground lamb
* 20 g spice mix. My mix contains:
    * Paprika
    * Cumin
* 10 g lemon zest

Mix together and brown.`,
      `recipe
       title Spiced Lamb
       i 500 g ground lamb
       i 20 g spice mix. My mix contains:
       i 10 g lemon zest
       s Mix together and brown.`,
    )
  })
})

describe('what a text is taken for', () => {
  it.each([
    ['', 'empty'],
    [' \n\t\r\n ', 'empty'],
    ['PNG\u0000\u0001\u0002\u0003\ufffd\ufffd\u0007\u0008 IHDR\u0000\u0000', 'not-text'],
    ['1234 5678 %%% 9999 ---- 0000', 'not-text'],
    ['Shopping list\n2 kg onions\n1 bag spinach\neggs\nmilk 2 l', 'list'],
    ['2 eggs', 'list'],
    [
      'The pressure cooker is an old invention. It was first shown in London in 1679, where it was used to soften bones. In this chapter I tell the story of three families.',
      'prose',
    ],
    ['{"a": [1, 2], "b": null}', 'prose'],
    ['Cook 500 g rice in 1 l water for 12 minutes, then add 20 g butter and serve.', 'recipe'],
  ])('%j', (text, kind) => {
    expect(layOut(text).kind).toBe(kind)
  })
})

describe('yield and times', () => {
  it.each([
    ['Makes abt 8 c.', '8 cups'],
    ['Yield: about 9 cups', '9 cups'],
    ['enough for 4', '4 servings'],
    ['6-qt electric cooker / 6 servings', '6 servings'],
    ['Makes 4 generous servings', '4 servings'],
    ['LENTILS -- 10 px', '10 portions'],
    ['Broth, yields 3 L', '3 litres'],
    ['Serves 8 hungry people', '8 servings'],
    ['For 6', '6 servings'],
    ['Servings:5', '5 servings'],
    ['MAKES ABOUT 6 CUPS  •  ACTIVE 45 MIN', '6 cups'],
  ])('%j', (head, made) => {
    const found = layOut(`A Dish\n${head}\n\n2 onions\n1 kg beef\n\nBrown the beef.`).yield
    expect(found && `${found.low} ${found.unit}`).toBe(made)
  })

  it.each([
    ['Ready in 45 minutes', 45, null],
    ['Takes about 1½ hours', 90, null],
    ['3 hours, mostly unattended', 180, null],
    ['35 min hands-on  |  about 2-1/4 hours in all', 135, 35],
    ['Prep: 20 minutes / Cook: 1 hour', 80, 20],
    ['Prep time: 20', null, 20],
    ['On the table in 1 hour', 60, null],
    ['Time: about 1 hour 45 minutes, plus 4 hours for soaking', 345, null],
    ['Start to finish, about 2½ hours.', 150, null],
  ])('%j', (head, total, active) => {
    const { stated } = layOut(`A Dish\n${head}\n\n2 onions\n1 kg beef\n\nBrown the beef.`)
    expect(stated.total && stated.total.high_s / 60).toBe(total)
    expect(stated.active && stated.active.high_s / 60).toBe(active)
  })

  it('takes no time from the story above the recipe', () => {
    const { stated } = layOut(
      'Pork\n\nMy first try was dry after 25 minutes, so please trust the timing below.\n\n2 onions\n1 kg pork\n\nBrown the pork.',
    )
    expect(stated.total).toBeNull()
  })
})
