import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Store, TimeRecord } from '../../src/lab/index.js'
import { type Furnished, openTwoYears } from './bench.js'

/** Fifteen hundred writes, each on the disk before the next: seconds alone, a minute beside other suites. */
export const FURNISHING_MS = 180_000

/** Lends a furnished SQLite store and clears up after it. */
export async function withTwoYears<T>(
  seed: number,
  work: (furnished: Furnished) => Promise<T>,
  through: (store: Store, file: string) => Store = (store) => store,
): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'wetside-two-year-'))
  try {
    const file = join(folder, 'wetside.db')
    const furnished = await openTwoYears({ kind: 'sqlite', file }, seed, (store) => through(store, file))
    try {
      return await work(furnished)
    } finally {
      await furnished.store.close()
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

export async function backupOf(store: Store): Promise<string[]> {
  const lines: string[] = []
  for await (const line of store.backup()) lines.push(line)
  return lines
}

/** The id of the only bench there is. */
export async function onlyBench(store: Store): Promise<string> {
  const benches = await store.read('', (rooms) => rooms.house.benches())
  const [bench] = benches
  if (bench === undefined || benches.length > 1) throw new Error(`There are ${benches.length} benches, not one.`)
  return bench.id
}

export const standingTimes = async (store: Store): Promise<TimeRecord[]> =>
  store.read(await onlyBench(store), (rooms) => rooms.times.all())
