import * as z from 'zod/mini'
import { altitudeLimits_m, maxTextUnits, maxTitleUnits } from './limits.ts'

/** Dish ids: lower case, digits and hyphens, safe in an address and in a file name. */
export const dishId = z.string().check(z.regex(/^[a-z0-9][a-z0-9-]{0,63}$/))

export const text = z.string().check(z.maxLength(maxTextUnits))

export const title = z.string().check(z.trim(), z.minLength(1), z.maxLength(maxTitleUnits))

/** A pot's id; null = taken from the manuscript's own words. */
export const pot = z.nullable(z.string().check(z.minLength(1), z.maxLength(100)))

/** Altitude of the kitchen in m; null = not said, cooked at 0 m. */
export const altitude_m = z.nullable(z.number().check(z.gte(altitudeLimits_m.low), z.lte(altitudeLimits_m.high)))

/** ISO 8601 in UTC: 2026-11-25T09:30:00.000Z. */
export const moment = z.string()

/** Revisions of a dish count from 1. */
export const revisionNumber = z.int().check(z.gte(1))

/** Drafts count their saves from 1. */
export const draftVersion = z.int().check(z.gte(1))

/** Names the window that writes, so that a page can tell its own saves from another window's. */
export const writer = z.string().check(z.minLength(1), z.maxLength(100))
