import { defineConfig } from 'vitest/config'

/** What the long run multiplies its histories by; 1 in the everyday gate. */
const fuzz = Number(process.env['WETSIDE_FUZZ'] ?? 1)

/** Servers, databases and browsers live outside this process: one file at a time would waste the second core. */
const outside = { pool: 'forks', isolate: true, maxWorkers: 2 } as const

export default defineConfig({
  test: {
    allowOnly: false,
    passWithNoTests: false,
    retry: 0,
    projects: [
      {
        test: {
          name: 'unit',
          include: ['src/**/*.test.{ts,tsx}', 'test/reference/**/*.test.ts', 'test/guards/**/*.test.{ts,mjs}'],
          exclude: ['src/store/**'],
          pool: 'threads',
          isolate: false,
          maxWorkers: 2,
          testTimeout: 20_000 * fuzz,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'store',
          include: ['src/store/**/*.test.ts'],
          globalSetup: ['src/store/suite/postgres-server.ts'],
          ...outside,
          testTimeout: 30_000 * fuzz,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'browser',
          include: ['test/e2e/**/*.test.ts'],
          ...outside,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'crash',
          include: ['test/crash/**/*.test.ts'],
          globalSetup: ['src/store/suite/postgres-server.ts'],
          ...outside,
          testTimeout: 90_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'long',
          include: ['test/long/**/*.test.ts'],
          ...outside,
          testTimeout: 1_800_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
})
