import { parentPort, workerData } from 'node:worker_threads'
import highs from 'highs'

/** One program, one thread: it answers once and ends. */
const { text, within_s } = workerData as { text: string; within_s: number }
// The package's types put the loader on `default`; what Node imports is the loader itself.
const solver = await (highs as unknown as typeof highs.default)()
parentPort?.postMessage(solver.solve(text, { time_limit: within_s }))
