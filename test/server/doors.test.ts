import { beforeAll, describe, expect, it } from 'vitest'
import { time } from '../support/bench.js'
import { expectRefusal, houses, NAME, type Served } from '../support/server.js'

const serve = houses()
let served: Served
beforeAll(async () => {
  served = await serve()
})

const write = (headers: Record<string, string>) =>
  served.ask({ method: 'POST', url: '/api/times', body: { times: [time()] }, headers })

describe('the name in the Host header', () => {
  it.each(['localhost', 'localhost:4717', '127.0.0.1:80', '[::1]:4717', '[::1]', 'LOCALHOST', NAME, `${NAME}:4717`])(
    '%s is answered to',
    async (host) => expect((await served.ask({ url: '/api/health', headers: { host } })).status).toBe(200),
  )

  it.each(['rebound.example', 'localhost.rebound.example', '127.0.0.1.rebound.example:4717', 'localhost@x.example'])(
    '“%s” is refused, whatever is asked',
    async (host) => {
      for (const url of ['/api/health', '/api/times', '/', '/assets/x.js']) {
        const answer = await served.ask({ url, headers: { host } })
        expectRefusal(answer, 'request.host')
      }
      expectRefusal(await write({ host }), 'request.host')
    },
  )
})

describe('the origin of a write', () => {
  it.each([
    ['another site', 'https://elsewhere.example'],
    ['another port of this machine', 'http://localhost:8080'],
    ['a page from a file', 'null'],
    ['nothing that is an address', 'localhost'],
  ])('%s is refused and nothing is changed', async (_, origin) => {
    const before = await served.everything()
    const answer = await write({ host: 'localhost:4717', origin })
    expectRefusal(answer, 'request.origin')
    expect(answer.json.sentence).toContain(origin)
    expect(await served.everything()).toEqual(before)
  })

  it('its own pages may write', async () => {
    expect((await write({ host: 'localhost:4717', origin: 'http://localhost:4717' })).status).toBe(200)
  })

  it('a program that sends no origin may write', async () => {
    expect((await write({ host: 'localhost:4717' })).status).toBe(200)
  })

  it('a restore from another site is refused', async () => {
    const headers = { 'content-type': 'application/x-ndjson', origin: 'https://elsewhere.example' }
    expectRefusal(await served.ask({ method: 'POST', url: '/api/restore', body: 'x\n', headers }), 'request.origin')
  })

  it('reading is left to the browser, which keeps the answer from the other page', async () => {
    const answer = await served.ask({ url: '/api/times', headers: { origin: 'https://elsewhere.example' } })
    expect(answer.status).toBe(200)
    expect(answer.headers['access-control-allow-origin']).toBeUndefined()
  })
})

it('every answer carries the rules for the page', async () => {
  for (const url of ['/api/health', '/api/nowhere', '/api/docs']) {
    const { headers } = await served.ask({ url })
    expect(headers['content-security-policy']).toContain("default-src 'self'")
    expect(headers['x-content-type-options']).toBe('nosniff')
  }
})
