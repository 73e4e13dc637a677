import type { Clock, Result } from '../kernel/index.js'
import type { Context, Rooms, Store, WriteKey } from '../lab/index.js'
import { restoreLines } from './backup/restore.js'
import { backupLines } from './backup/write.js'
import type { Engine } from './engines/engine.js'
import { Listeners } from './listeners.js'
import { roomsOf } from './rooms/index.js'
import { once } from './write-keys.js'

/** The store on an engine whose data is at the newest version. */
export function storeOn(engine: Engine, clock: Clock): Store {
  const listeners = new Listeners()
  engine.onAnnounced((bench) => listeners.tell(bench))
  return {
    engine: engine.kind,
    read: (bench, work) => engine.reading((db) => work(roomsOf(db, bench))),
    write: (context, key, work) => write(engine, listeners, context, key, work),
    listen: (bench, heard) => listeners.add(bench, heard),
    backup: () => engine.snapshot((db) => backupLines(db, clock.now())),
    async restore(lines) {
      const restored = await restoreLines(engine, lines, clock.now())
      if (restored.ok) listeners.tell(null)
      return restored
    },
    close: () => engine.close(),
  }
}

async function write<T>(
  engine: Engine,
  listeners: Listeners,
  context: Context,
  key: WriteKey | null,
  work: (rooms: Rooms) => Promise<Result<T>>,
): Promise<Result<T>> {
  const { bench } = context
  let worked = false
  const result = await engine.writing(bench, async (db) => {
    const run = (): Promise<Result<T>> => {
      worked = true
      return work(roomsOf(db, bench))
    }
    const result = key ? await once(db, bench, key, context.clock.now(), run) : await run()
    if (result.ok && worked) await engine.announce(db, bench)
    return result
  })
  if (result.ok && worked) listeners.tell(bench)
  return result
}
