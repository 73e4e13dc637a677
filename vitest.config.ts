import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

/** What the long run multiplies its histories by; 1 in the everyday gate. */
const fuzz = Number(process.env['WETSIDE_FUZZ'] ?? 1)

/** A test of many histories may take this much longer than its runs alone say: the long run shares its machine. */
const patience = fuzz > 1 ? 6 : 1

/** Servers, databases and browsers live outside this process: one file at a time would waste the second core. */
const outside = { pool: 'forks', isolate: true, maxWorkers: 2 } as const

/** In the long run properties get its random seed and more histories, without their tests knowing. */
const alias: Record<string, string> =
  process.env['WETSIDE_SEED'] === undefined
    ? {}
    : { 'fast-check': fileURLToPath(new URL('scripts/gate/fast-check-long.mjs', import.meta.url)) }

export default defineConfig({
  resolve: { alias },
  test: {
    allowOnly: false,
    passWithNoTests: false,
    retry: 0,
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: [
            'src/**/*.test.{ts,tsx}',
            'test/{reference,rooms,server,cli,two-year,two-months}/**/*.test.ts',
            'test/guards/**/*.test.{ts,mjs}',
          ],
          exclude: ['src/store/**'],
          pool: 'threads',
          isolate: false,
          maxWorkers: 2,
          testTimeout: 20_000 * fuzz * patience,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'store',
          include: ['src/store/**/*.test.ts'],
          globalSetup: ['src/store/suite/postgres-server.ts'],
          ...outside,
          testTimeout: 30_000 * fuzz * patience,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['test/e2e/**/*.test.ts'],
          ...outside,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
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
        extends: true,
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
