import { inject, it, expect } from 'vitest'
import { freshDatabase } from './suite/postgres-server.js'
import { openStore } from './index.js'
import { SetClock, SeededRandom, idsFrom, expectOk, ok } from '../kernel/index.js'
it('opens', async () => {
  const url = await freshDatabase(inject('postgres'))
  const clock = new SetClock(1e12), ids = idsFrom(clock, new SeededRandom(1))
  const store = expectOk(await openStore({ kind: 'postgres', url }, { clock, ids }))
  const bench = ids.next()
  const context = { actor: { role: 'owner' as const, id: 'owner' }, bench, clock, ids }
  await store.write(context, { key: 'k', fingerprint: 'f' }, async (rooms) => { await rooms.house.addBench({ id: bench, kind: 'own', name: 'x', units: 'metric', paper: 'A4', zone: 'UTC', createdAt: 5 }); await rooms.feed.tell({ kind: 'bench', subject: bench }, 6); return ok({ a: 1 }) })
  expect(await store.write(context, { key: 'k', fingerprint: 'f' }, async () => { throw new Error() })).toEqual(ok({ a: 1 }))
  const lines: string[] = []
  for await (const l of store.backup()) lines.push(l)
  console.log(lines)
  console.log(await store.restore((async function* () { yield* lines })()))
  await store.close()
})
