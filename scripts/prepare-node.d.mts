export function newEnough(version: string): boolean
