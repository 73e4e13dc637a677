import { Worker } from 'node:worker_threads'
import { failed, ok, problem, type Result } from '../kernel/index.js'
import type { Cancellation, IntegerProgram, IntegerSolver, Solution } from '../planning/index.js'
import { lpText, numbered } from './lp-text.js'

interface Answer {
  readonly Status: string
  readonly ObjectiveValue: number
  readonly Columns: Readonly<Record<string, { readonly Primal?: number }>>
}

/** The solver's thread, beside this file once built. */
const WORKER = new URL('./worker.js', import.meta.url)

/** Integer programming on HiGHS in a worker thread, so that nothing else waits for it. */
export const integerSolver = (worker: URL = WORKER): IntegerSolver => ({
  async solve(program, within_ms, cancel) {
    const limit = problem('loads.out-of-time', { limit: Math.round(within_ms / 100) / 10 })
    if (cancel?.aborted) return failed(problem('loads.cancelled'))
    const thread = new Worker(worker, { workerData: { text: lpText(program), within_s: within_ms / 1000 } })
    try {
      const answer = await answerOf(thread, cancel)
      return answer === null ? failed(problem('loads.cancelled')) : read(program, answer, limit)
    } finally {
      await thread.terminate()
    }
  },
})

const answerOf = (thread: Worker, cancel?: Cancellation): Promise<Answer | null> =>
  new Promise((resolve, reject) => {
    thread.once('message', resolve)
    thread.once('error', reject)
    cancel?.addEventListener('abort', () => resolve(null), { once: true })
  })

function read(program: IntegerProgram, answer: Answer, limit: ReturnType<typeof problem>): Result<Solution> {
  if (answer.Status === 'Infeasible') return failed(problem('loads.impossible'))
  const values = numbered(program).map(
    (name, i) => [name, Math.round(answer.Columns[`x${i}`]?.Primal ?? Number.NaN)] as const,
  )
  if (values.some(([, value]) => Number.isNaN(value))) return failed(limit)
  const stop = answer.Status === 'Optimal' ? 'optimal' : 'time limit'
  return ok({ stop, objective: answer.ObjectiveValue, values: Object.fromEntries(values) })
}
