export function findChromium(environment?: Readonly<Record<string, string | undefined>>): string | null
