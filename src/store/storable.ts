const unstorable = /\0|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g

/**
 * The text as both databases can hold it, of the same length, so that places in it stay true.
 *
 * A NUL would end the text in SQLite (the rest would be lost without a word) and be refused by PostgreSQL; half a
 * surrogate pair cannot be written in UTF-8. Neither has a meaning in a manuscript: they come from pasted binary.
 */
export function storable(text: string): string {
  return text.replace(unstorable, (unit) => (unit === '\0' ? '\u2400' : '\uFFFD'))
}
