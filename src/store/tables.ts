// The tables as Kysely sees them. Both databases give these types back as they are: whole numbers are 32-bit (PostgreSQL
// hands 64-bit ones over as strings), yes and no are 1 and 0 (SQLite has no booleans), moments are ISO 8601 text in UTC,
// which sorts as time does.

export interface Tables {
  dish: DishTable
  draft: DraftTable
  revision: RevisionTable
  setting: SettingTable
}

type YesNo = 0 | 1

export interface DishTable {
  id: string
  title: string
  /** 1 when the title was given by hand, 0 when it follows the manuscript. */
  title_given: YesNo
  demonstration: YesNo
  put_away: YesNo
  created_at: string
  /** Last change of title, draft or revisions. */
  updated_at: string
}

/** The one text of a dish that changes; one row a dish. The pot and altitude it is cooked at are saved with it. */
export interface DraftTable {
  dish: string
  text: string
  pot: string | null
  altitude_m: number | null
  /** Counts the saves from 1; a save names the version it was made from. */
  version: number
  saved_at: string
  writer: string
}

/** Written once, never changed. Batches, panels and testers will name (dish, number). */
export interface RevisionTable {
  dish: string
  number: number
  /** The latest kept revision at the time. */
  parent: number | null
  kind: 'kept' | 'automatic'
  text: string
  note: string | null
  saved_at: string
}

/** What the application remembers about this database as a whole. */
export interface SettingTable {
  name: string
  value: string
}
