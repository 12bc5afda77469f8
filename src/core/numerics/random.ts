/** Uniform deviates in [0, 1), 32 bits of them. */
export type Random = () => number

/**
 * A reproducible source of chance: sfc32 (chaotic, counter-driven, 128 bits of state), seeded through splitmix32
 * so that seeds 1, 2, 3 give unrelated streams. Equal seeds give equal streams on every machine.
 */
export function seededRandom(seed: number): Random {
  let s = seed >>> 0
  const mix = () => {
    s = (s + 0x9e3779b9) | 0
    let t = s ^ (s >>> 16)
    t = Math.imul(t, 0x21f0aaad)
    t ^= t >>> 15
    t = Math.imul(t, 0x735a2d97)
    return (t ^ (t >>> 15)) | 0
  }
  let a = mix()
  let b = mix()
  let c = mix()
  let d = 1
  const next = () => {
    const t = (((a + b) | 0) + d) | 0
    d = (d + 1) | 0
    a = b ^ (b >>> 9)
    b = (c + (c << 3)) | 0
    c = ((c << 21) | (c >>> 11)) + t
    c |= 0
    return (t >>> 0) / 4294967296
  }
  for (let i = 0; i < 12; i++) next()
  return next
}

/**
 * Standard normal deviates from a uniform source (polar method of Marsaglia). Keeps the second of each pair, so
 * one `normal` belongs to one stream.
 */
export function normalFrom(random: Random): () => number {
  let spare = Number.NaN
  return () => {
    if (!Number.isNaN(spare)) {
      const kept = spare
      spare = Number.NaN
      return kept
    }
    for (;;) {
      const u = 2 * random() - 1
      const v = 2 * random() - 1
      const s = u * u + v * v
      if (s > 0 && s < 1) {
        const f = Math.sqrt((-2 * Math.log(s)) / s)
        spare = v * f
        return u * f
      }
    }
  }
}
