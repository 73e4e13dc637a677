import type { AddressInfo } from 'node:net'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { time } from '../support/bench.js'
import { happened, runPlan } from '../support/runs.js'
import { houses, type Served } from '../support/server.js'

const PATIENCE_MS = 5000
const serve = houses()
let served: Served
let base: string
const open: AbortController[] = []

beforeEach(async () => {
  served = await serve()
  await served.app.listen({ host: '127.0.0.1', port: 0 })
  base = `http://127.0.0.1:${(served.app.server.address() as AddressInfo).port}`
})
afterEach(() => {
  for (const one of open.splice(0)) one.abort()
})

interface Event {
  readonly id: number
  readonly event: string
  readonly data: { kind?: string; subject?: string }
}

/** Follows the feed, or a run, and gives its events one by one; fails when none comes in time. */
async function follow(lastId?: string, path = '/api/feed') {
  const control = new AbortController()
  open.push(control)
  const answer = await fetch(base + path, {
    signal: control.signal,
    headers: lastId === undefined ? {} : { 'last-event-id': lastId },
  })
  expect(answer.headers.get('content-type')).toBe('text/event-stream')
  const events = eventsOf(answer.body as ReadableStream<Uint8Array>)
  const next = async (): Promise<Event | 'ended'> => {
    const late = new Promise<never>((_, reject) => {
      setTimeout(() => reject(new Error('no event came')), PATIENCE_MS).unref()
    })
    const { value, done } = await Promise.race([events.next(), late])
    return done ? 'ended' : value
  }
  return { next, here: (await next()) as Event }
}

async function* eventsOf(body: ReadableStream<Uint8Array>): AsyncGenerator<Event> {
  let text = ''
  for await (const chunk of body.pipeThrough(new TextDecoderStream() as never) as unknown as AsyncIterable<string>) {
    text += chunk
    const blocks = text.split('\n\n')
    text = blocks.pop() as string
    for (const block of blocks) {
      const field = (name: string) => block.match(new RegExp(`^${name}: (.*)$`, 'm'))?.[1]
      if (field('event'))
        yield { id: Number(field('id')), event: field('event') as string, data: JSON.parse(field('data') ?? '{}') }
    }
  }
}

const keep = async (film: string): Promise<string> =>
  (await served.ask({ method: 'POST', url: '/api/times', body: { times: [time({ film })] } })).json.times[0].id

describe('the live feed', () => {
  it('begins now, and then brings each change with its number', async () => {
    await keep('before')
    const { here, next } = await follow()
    expect(here).toMatchObject({ event: 'here', id: 1 })
    const [one, two] = [await keep('one'), await keep('two')]
    expect(await next()).toMatchObject({ id: 2, event: 'change', data: { kind: 'times', subject: one } })
    expect(await next()).toMatchObject({ id: 3, event: 'change', data: { kind: 'times', subject: two } })
  })

  it('brings what was missed, after the number that the client has', async () => {
    const ids = [await keep('one'), await keep('two'), await keep('three')]
    const { here, next } = await follow('1')
    expect(here.id).toBe(1)
    expect(await next()).toMatchObject({ id: 2, data: { subject: ids[1] } })
    expect(await next()).toMatchObject({ id: 3, data: { subject: ids[2] } })
  })

  it('brings long absences whole, in order', async () => {
    const times = Array.from({ length: 200 }, (_, i) => time({ film: `film ${i}` }))
    for (let i = 0; i < 2; i++) await served.ask({ method: 'POST', url: '/api/times', body: { times } })
    const { next } = await follow('0')
    for (let id = 1; id <= 400; id++) expect(await next()).toMatchObject({ id })
  })

  it.each(['x', '-1', '1.5', '9'.repeat(30), ''])('begins now for a number that is none: “%s”', async (lastId) => {
    await keep('before')
    expect((await follow(lastId)).here.id).toBe(1)
  })

  it('tells everything to a client that comes from newer data than is here now', async () => {
    const subject = await keep('one')
    const { next } = await follow('500')
    expect(await next()).toMatchObject({ id: 1, data: { subject } })
  })

  it('says nothing of what was refused', async () => {
    const { next } = await follow()
    await served.ask({ method: 'POST', url: '/api/times', body: { times: [time({ points: [] })] } })
    const subject = await keep('after')
    expect(await next()).toMatchObject({ id: 1, data: { subject } })
  })

  it('ends when a restore puts other data in place, so that the client comes back to that', async () => {
    const file = (await served.ask({ url: '/api/backup' })).text
    const { next } = await follow()
    const headers = { 'content-type': 'application/x-ndjson' }
    expect((await served.ask({ method: 'POST', url: '/api/restore', body: file, headers })).status).toBe(200)
    expect(await next()).toBe('ended')
  })
})

describe('a run under way', () => {
  const start = async () => (await served.ask({ method: 'POST', url: '/api/runs', body: runPlan() })).json.id as string
  const add = (id: string, numbers: readonly number[]) =>
    served.ask({
      method: 'POST',
      url: `/api/runs/${id}/events`,
      body: { events: numbers.map((number) => happened('noted', number, null, { text: `note ${number}` })) },
    })

  it('brings every event with its number in the run, from where the screen has got to', async () => {
    const [id, other] = [await start(), await start()]
    await add(id, [1, 2])
    const screen = await follow(undefined, `/api/runs/${id}/live?after=1`)
    expect(screen.here).toMatchObject({ event: 'here', id: 1 })
    const second = await screen.next()
    expect(second).toMatchObject({
      id: 2,
      event: 'happened',
      data: { seq: 2, event: happened('noted', 2, null, { text: 'note 2' }) },
    })
    await add(other, [3])
    await add(id, [2, 4])
    expect(await screen.next()).toMatchObject({ id: 3, data: { event: { text: 'note 4' } } })
  })

  it('replays what a screen missed after Last-Event-ID, whatever its address says', async () => {
    const id = await start()
    await add(id, [5, 6, 7])
    const { next } = await follow('2', `/api/runs/${id}/live?after=0`)
    expect(await next()).toMatchObject({ id: 3, data: { event: { text: 'note 7' } } })
  })

  it('begins anew for a screen that has seen a number not given yet, as after a restore', async () => {
    const id = await start()
    await add(id, [8])
    const { here, next } = await follow('99', `/api/runs/${id}/live`)
    expect(here.id).toBe(0)
    expect(await next()).toMatchObject({ id: 1 })
  })
})
