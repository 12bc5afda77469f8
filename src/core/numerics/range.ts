/**
 * Refuses a value outside its range. Written so that NaN fails too.
 * The message carries name, value, unit and range, because the caller is a programmer who has to find the slip.
 */
export function requireRange(name: string, value: number, low: number, high: number, unit: string): void {
  if (!(value >= low && value <= high)) {
    throw new RangeError(`${name} = ${value} ${unit}: allowed is ${low} to ${high} ${unit}`)
  }
}
