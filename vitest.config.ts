import { defineConfig } from 'vitest/config'

// Two groups, one after the other: what computes, then whole errands in a real browser. A browser that shares two
// cores with the property tests waits longer than any honest time limit.
export default defineConfig({
  test: {
    reporters: ['default', './scripts/closing-line.mjs'],
    projects: [
      {
        test: {
          name: 'rooms',
          include: ['test/**/*.test.ts'],
          exclude: ['test/journeys/**'],
          testTimeout: 30_000,
          hookTimeout: 60_000,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          name: 'journeys',
          include: ['test/journeys/**/*.test.ts'],
          fileParallelism: false,
          testTimeout: 90_000,
          hookTimeout: 90_000,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
})
