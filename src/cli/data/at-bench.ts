import { ok, type Result } from '../../kernel/index.js'
import { type Context, type Rooms, settleBench } from '../../lab/index.js'
import { clock, ids, openData, ownBench, zoneHere } from './open.js'
import { askServer } from './server.js'

/** Something to be done at the bench: as the running program is asked, and as it is done on the data itself. */
export interface Errand<T> {
  readonly path: string
  /** What is sent along; without it the program is only asked to look. */
  readonly body?: object
  /** Whether it changes what is kept. */
  readonly writes: boolean
  readonly here: (context: Context, rooms: Rooms) => Promise<Result<T>>
}

/** Does it through the program that holds the data, or on the data where nobody does. */
export async function atBench<T>({ path, body, writes, here }: Errand<T>): Promise<Result<T>> {
  const data = await openData()
  if (!data.ok) return data
  if (data.value.kind === 'server') {
    const request =
      body === undefined
        ? {}
        : { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }
    const answer = await askServer(data.value.base, path, request)
    return answer.ok ? ok((await answer.value.json()) as T) : answer
  }
  const { store } = data.value
  const context: Context = {
    actor: { role: 'owner', id: 'owner' },
    bench: (await ownBench(store)) ?? ids.next(),
    clock,
    ids,
  }
  try {
    return writes
      ? await store.write(context, null, async (rooms) => {
          await settleBench(context, rooms, zoneHere())
          return here(context, rooms)
        })
      : await store.read(context.bench, (rooms) => here(context, rooms))
  } finally {
    await store.close()
  }
}
