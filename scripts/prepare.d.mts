export function isInstalled(folder: string): boolean
export function hashOf(folder: string, paths: readonly string[]): string
