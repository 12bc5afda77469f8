// The hand-kept selection, in the order in which ties between names are settled.

import { aromatics } from './aromatics.ts'
import { beef } from './beef.ts'
import { cookedPulses } from './cooked-pulses.ts'
import { driedFruitAndJuice } from './dried-fruit-and-juice.ts'
import { eggsAndDairy } from './eggs-dairy.ts'
import type { Entry } from './entry.ts'
import { fats } from './fats.ts'
import { fishAndShellfish } from './fish.ts'
import { flourAndBread } from './flour-and-bread.ts'
import { fruits } from './fruit.ts'
import { grains } from './grains.ts'
import { herbs } from './herbs.ts'
import { lambVealGame } from './lamb-veal-game.ts'
import { leaves } from './leaves.ts'
import { liquids } from './liquids.ts'
import { nuts } from './nuts.ts'
import { pastes } from './pastes.ts'
import { pork } from './pork.ts'
import { poultry } from './poultry.ts'
import { pulses } from './pulses.ts'
import { roots } from './roots.ts'
import { saltsAndRest } from './salts-and-rest.ts'
import { sauces } from './sauces.ts'
import { spiceBlends } from './spice-blends.ts'
import { spices } from './spices.ts'
import { sweet } from './sweet.ts'
import { tomatoes } from './tomatoes.ts'
import { vegetables } from './vegetables.ts'

export const selection: readonly Entry[] = [
  ...roots,
  ...vegetables,
  ...leaves,
  ...aromatics,
  ...tomatoes,
  ...beef,
  ...pork,
  ...lambVealGame,
  ...poultry,
  ...fishAndShellfish,
  ...eggsAndDairy,
  ...liquids,
  ...fats,
  ...saltsAndRest,
  ...sweet,
  ...sauces,
  ...pastes,
  ...pulses,
  ...cookedPulses,
  ...grains,
  ...flourAndBread,
  ...fruits,
  ...driedFruitAndJuice,
  ...spices,
  ...spiceBlends,
  ...herbs,
  ...nuts,
]
