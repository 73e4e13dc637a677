import { QueryClient, QueryObserver } from '@tanstack/react-query'
import { expect, it } from 'vitest'
import { refresh } from './queries.js'

/** A page that looks at the times; its answers come when the test gives them. */
function page() {
  const queries = new QueryClient({ defaultOptions: { queries: { retry: false } } })
  const answers: ((text: string) => void)[] = []
  const queryFn = () => new Promise<string>((answer) => answers.push(answer))
  const observer = new QueryObserver(queries, { queryKey: ['times'], queryFn })
  const stop = observer.subscribe(() => undefined)
  return { queries, answers, shown: () => observer.getCurrentResult().data, stop }
}

const turn = () => new Promise((done) => setImmediate(done))

it('asks afresh when something changes while the first look is under way', async () => {
  const { queries, answers, shown, stop } = page()
  const refreshed = refresh(queries, ['times'])
  await turn()
  answers[0]?.('before the change')
  await turn()
  expect(shown()).toBeUndefined()
  answers[1]?.('after the change')
  await refreshed
  expect(shown()).toBe('after the change')
  stop()
  queries.clear()
})

it('goes on showing what it has while it looks again', async () => {
  const { queries, answers, shown, stop } = page()
  answers[0]?.('old')
  await turn()
  const refreshed = refresh(queries, ['times'])
  await turn()
  expect(shown()).toBe('old')
  answers[1]?.('new')
  await refreshed
  expect(shown()).toBe('new')
  stop()
  queries.clear()
})
