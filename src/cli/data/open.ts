import { webcrypto } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { homedir } from 'node:os'
import { dirname } from 'node:path'
import { type Clock, idsFrom, type Result } from '../../kernel/index.js'
import type { Store } from '../../lab/index.js'
import { listeningFile, openStore, readDatabase } from '../../store/index.js'

export const clock: Clock = { now: () => Date.now() }
/** The zone this device keeps. */
export const zoneHere = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC'
export const ids = idsFrom(clock, { bytes: (count) => webcrypto.getRandomValues(new Uint8Array(count)) })

/** The data itself, or the running program that holds it. */
export type Data =
  | { readonly kind: 'store'; readonly store: Store }
  | { readonly kind: 'server'; readonly base: string }

/** Opens the data; while the program runs and holds it, says where the program listens instead. */
export async function openData(): Promise<Result<Data>> {
  const database = readDatabase(process.env, homedir())
  if (!database.ok) return database
  const opened = await openStore(database.value, { clock, ids })
  if (opened.ok) return { ok: true, value: { kind: 'store', store: opened.value } }
  if (opened.problem.code !== 'house.data-in-use' || database.value.kind !== 'sqlite') return opened
  const base = listeningAt(dirname(database.value.file))
  return base === null ? opened : { ok: true, value: { kind: 'server', base } }
}

/** Where the program that holds this folder said it listens. */
function listeningAt(folder: string): string | null {
  try {
    return readFileSync(listeningFile(folder), 'utf8').trim()
  } catch {
    return null
  }
}

/** The house's own bench, if there is one yet. */
export async function ownBench(store: Store): Promise<string | null> {
  const benches = await store.read('', (rooms) => rooms.house.benches())
  return benches.find((bench) => bench.kind === 'own')?.id ?? null
}
