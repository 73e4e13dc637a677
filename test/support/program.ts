import { join } from 'node:path'
import { afterEach, beforeEach, vi } from 'vitest'
import { expectOk, SetClock } from '../../src/kernel/index.js'
import { open } from '../../src/server/index.js'
import { NOON } from './bench.js'
import { tempFolders } from './folders.js'
import { type Served, servedBy } from './server.js'

/** A data folder of its own for each test, which commands find too, and the program running on it when it is wanted. */
export function dataFolders(): {
  folder: () => string
  start: () => Promise<Served & { stop(): Promise<void> }>
} {
  const newFolder = tempFolders()
  let folder: string
  beforeEach(() => {
    folder = newFolder()
    vi.stubEnv('DATA_DIR', folder)
    vi.stubEnv('DATABASE_URL', undefined)
  })
  const running: (() => Promise<void>)[] = []
  afterEach(async () => {
    for (const stop of running.splice(0)) await stop()
    vi.unstubAllEnvs()
  })
  const start = async () => {
    const clock = new SetClock(NOON)
    const config = {
      host: '127.0.0.1',
      port: 0,
      database: { kind: 'sqlite', file: join(folder, 'wetside.db') },
      loopbackIsOwner: true,
      extraHosts: [],
    } as const
    const { app, house } = expectOk(await open(config, clock))
    let stopped = false
    const stop = async () => {
      if (stopped) return
      stopped = true
      await app.close()
      await house.store.close()
    }
    running.push(stop)
    return { ...servedBy(app, house, clock), stop }
  }
  return { folder: () => folder, start }
}
