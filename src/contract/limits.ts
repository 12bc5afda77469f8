/** Longest manuscript, in UTF-16 code units: a thick cookbook chapter is a tenth of it. */
export const maxTextUnits = 1_500_000

export const maxTitleUnits = 300

/** Largest request. A manuscript at `maxTextUnits` fits whatever its script: at most 3 bytes a unit in UTF-8. */
export const maxBody_bytes = 6 * 1024 * 1024

/** From the lowest dry shore to above the highest town; beyond it a number is a slip of the keyboard. */
export const altitudeLimits_m = { low: -450, high: 6000 } as const
