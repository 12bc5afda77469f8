import type { Stated } from './entry.ts'

const paper = 'Meat Sci. 1986;12:189, of the wet fat-free mass'

/** Total collagen of the wet fat-free mass, kg per kg. */
export const collagenOf = {
  beefForequarter: [0.032, `${paper}: beef forequarter`],
  beefHindquarter: [0.027, `${paper}: beef hindquarter`],
  beefShin: [0.048, `${paper}: beef shin`],
  beefLeg: [0.042, `${paper}: beef leg`],
  pig: [0.023, `${paper}: pig overall`],
  pigHand: [0.029, `${paper}: pig hand (fore-leg and shoulder)`],
  lambShoulder: [0.032, 'assumed: as beef forequarter'],
  lambLeg: [0.027, 'assumed: as beef hindquarter'],
  lambShank: [0.048, 'assumed: as beef shin'],
  chickenThigh: [0.025, 'assumed: dark meat with skin and tendon'],
  chickenBreast: [0.01, 'assumed: white meat'],
} satisfies Record<string, Stated>
