import { beforeEach, describe, expect, it } from 'vitest'
import { thermometer, time } from '../support/bench.js'
import { type Asked, expectRefusal, houses, type Served } from '../support/server.js'

const serve = houses()
let served: Served
beforeEach(async () => {
  served = await serve()
})

const KEY = { 'idempotency-key': 'key-of-this-write' }
const keeping = (film: string, headers: Record<string, string> = KEY): Asked => ({
  method: 'POST',
  url: '/api/times',
  body: { times: [time({ film })] },
  headers,
})
const kept = async () => (await served.ask({ url: '/api/times' })).json.times

describe('a write sent twice with one key', () => {
  it('is done once and answered the same', async () => {
    const [first, second] = [await served.ask(keeping('Tarn')), await served.ask(keeping('Tarn'))]
    expect([first.status, second.status]).toEqual([200, 200])
    expect(second.text).toBe(first.text)
    expect(await kept()).toHaveLength(1)
  })

  it('at the same moment too', async () => {
    const answers = await Promise.all(Array.from({ length: 5 }, () => served.ask(keeping('Tarn'))))
    expect(new Set(answers.map((answer) => answer.text)).size).toBe(1)
    expect(await kept()).toHaveLength(1)
  })

  it('says nothing twice in the feed', async () => {
    await served.ask(keeping('Tarn'))
    const before = await served.everything()
    await served.ask(keeping('Tarn'))
    expect(await served.everything()).toEqual(before)
  })

  it('without a key is done twice', async () => {
    await served.ask(keeping('Tarn', {}))
    await served.ask(keeping('Tarn', {}))
    expect(await kept()).toHaveLength(2)
  })

  it('is answered anew when the first was refused', async () => {
    const wrong: Asked = { ...keeping('Tarn'), body: { times: [time({ points: [] })] } }
    expectRefusal(await served.ask(wrong), 'times.no-points')
    expect((await served.ask(keeping('Tarn'))).status).toBe(200)
  })

  it('opens one demo bench, and gives the same one again', async () => {
    const open: Asked = { method: 'POST', url: '/api/demo', body: {}, headers: KEY }
    const [first, second] = [await served.ask(open), await served.ask(open)]
    expect(first.status).toBe(200)
    expect(second.text).toBe(first.text)
    expect(second.cookies.map(({ value }) => value)).toEqual([first.json.bench_id])
  })

  it('removes one demo bench', async () => {
    await served.ask({ method: 'POST', url: '/api/demo', body: {} })
    const remove: Asked = { method: 'DELETE', url: '/api/demo', body: {}, headers: KEY }
    const [first, second] = [await served.ask(remove), await served.ask(remove)]
    expect([first.status, second.status, second.text]).toEqual([200, 200, first.text])
  })
})

describe('a key', () => {
  it('used for something else is refused, and nothing is changed', async () => {
    await served.ask(keeping('Tarn'))
    const before = await served.everything()
    const others: Asked[] = [
      keeping('Fell'),
      { method: 'POST', url: '/api/thermometers', body: thermometer(), headers: KEY },
    ]
    for (const other of others) {
      const answer = await served.ask(other)
      expectRefusal(answer, 'request.key-reused')
      expect(answer.json.sentence).toContain(KEY['idempotency-key'])
    }
    expect(await served.everything()).toEqual(before)
  })

  it.each(['short', 'x'.repeat(101), 'with a space', 'ünïcode-key'])('“%s” is not one', async (key) => {
    expectRefusal(await served.ask(keeping('Tarn', { 'idempotency-key': key })), 'request.invalid')
    expect(await kept()).toEqual([])
  })

  it('beside a file that is restored does no harm', async () => {
    const file = (await served.ask({ url: '/api/backup' })).text
    const headers = { ...KEY, 'content-type': 'application/x-ndjson' }
    const answer = await served.ask({ method: 'POST', url: '/api/restore', body: file, headers })
    expect(answer.status).toBe(200)
  })
})
