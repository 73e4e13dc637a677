import { ok, type Result } from '../../kernel/index.js'
import { listTimes } from '../../lab/index.js'
import type { TimeRecord } from '../../wire/index.js'
import { openData, ownBench } from './open.js'
import { askServer } from './server.js'

/** The developing times of the house's own bench, from the data or from the program that holds it. */
export async function benchTimes(): Promise<Result<TimeRecord[]>> {
  const data = await openData()
  if (!data.ok) return data
  if (data.value.kind === 'server') return timesFrom(data.value.base)
  const { store } = data.value
  try {
    const bench = await ownBench(store)
    return ok(bench === null ? [] : (await store.read(bench, listTimes)).times)
  } finally {
    await store.close()
  }
}

async function timesFrom(base: string): Promise<Result<TimeRecord[]>> {
  const answer = await askServer(base, '/api/times')
  return answer.ok ? ok(((await answer.value.json()) as { times: TimeRecord[] }).times) : answer
}
