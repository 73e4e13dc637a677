import { beforeEach, describe, expect, it } from 'vitest'
import { CODE_LIFE_MS } from '../../src/lab/index.js'
import { expectRefusal, houses, PHONE, type Served } from '../support/server.js'

const MOST_WRONG = 10
const MINUTE = 60_000
const serve = houses()
let served: Served
beforeEach(async () => {
  served = await serve()
})

const newCode = async () => (await served.ask({ method: 'POST', url: '/api/pairing-codes', body: {} })).json
const use = (code: string, name = 'Phone') =>
  served.ask({ method: 'POST', url: '/api/pair', body: { code, name }, from: PHONE })

describe('a pairing code', () => {
  it('comes with an address that carries it, a picture of it, and when it ends', async () => {
    const made = await newCode()
    expect(made.code).toMatch(/^[2-9A-HJKMNP-Z]{5}-[2-9A-HJKMNP-Z]{5}$/)
    expect(new URL(made.address).searchParams.get('code')).toBe(made.code)
    expect(Date.parse(made.expires_at)).toBe(served.clock.now() + CODE_LIFE_MS)
    expect(made.qr_svg).toMatch(/^<svg/)
  })

  it('works once, and the cookie it leaves is out of reach of pages and other sites', async () => {
    const { code } = await newCode()
    const paired = await use(code)
    expect(paired.status).toBe(200)
    expect(paired.cookies[0]).toMatchObject({ httpOnly: true, sameSite: 'Strict', path: '/' })
    expectRefusal(await use(code), 'house.pairing-code-wrong')
  })

  it('is read as people type it', async () => {
    const { code } = await newCode()
    expect((await use(` ${code.toLowerCase().replace('-', ' ')} `)).status).toBe(200)
  })

  it('works just before its ten minutes are over and not after', async () => {
    const [first, second] = [await newCode(), await newCode()]
    served.clock.advance(CODE_LIFE_MS - 1)
    expect((await use(first.code)).status).toBe(200)
    served.clock.advance(2)
    expectRefusal(await use(second.code), 'house.pairing-code-wrong')
  })

  it('is not used up by a request that is not right', async () => {
    const { code } = await newCode()
    expectRefusal(await use(code, ''), 'request.invalid')
    expect((await use(code)).status).toBe(200)
  })

  it('of two phones that use it at once pairs one', async () => {
    const { code } = await newCode()
    const both = await Promise.all([use(code), use(code)])
    expect(both.map((answer) => answer.status).sort()).toEqual([200, 403])
  })

  it('is kept as a hash only, and so is the token of a phone', async () => {
    const { code } = await newCode()
    const { as } = await served.pair()
    const kept = (await served.everything()).join('\n')
    expect(kept).not.toContain(code)
    for (const token of Object.values(as.cookies ?? {})) expect(kept).not.toContain(token)
  })
})

describe('guessing', () => {
  it('ends after ten wrong codes, for everybody and for the right code too, and goes on a minute later', async () => {
    const { code } = await newCode()
    for (let i = 0; i < MOST_WRONG; i++) expectRefusal(await use('AAAAA-AAAAA'), 'house.pairing-code-wrong')
    expectRefusal(await use(code), 'request.too-many')
    expectRefusal(
      await served.ask({ method: 'POST', url: '/api/pair', body: { code, name: 'B' }, from: '10.1.1.1' }),
      'request.too-many',
    )
    served.clock.advance(MINUTE - 1)
    expectRefusal(await use(code), 'request.too-many')
    served.clock.advance(1)
    expect((await use(code)).status).toBe(200)
  })

  it('in one house does not close another', async () => {
    for (let i = 0; i <= MOST_WRONG; i++) await use('AAAAA-AAAAA')
    served = await serve()
    expect((await use((await newCode()).code)).status).toBe(200)
  })

  it.each(['', 'x'.repeat(41), 12345])('with %j is refused by its shape', async (code) => {
    const answer = await served.ask({ method: 'POST', url: '/api/pair', body: { code, name: 'P' }, from: PHONE })
    expectRefusal(answer, 'request.invalid')
    expect(answer.json.field).toBe('code')
  })
})

describe('a paired device', () => {
  it('works at the bench until it is removed, and is nobody from then on', async () => {
    const { id, as } = await served.pair('Kitchen tablet')
    expect((await served.ask({ url: '/api/bench', ...as })).json.role).toBe('device')
    const { devices } = (await served.ask({ url: '/api/devices' })).json
    expect(devices).toMatchObject([{ id, name: 'Kitchen tablet' }])
    const removed = await served.ask({ method: 'DELETE', url: `/api/devices/${id}`, body: {} })
    expect(removed.json.devices).toEqual([])
    expectRefusal(await served.ask({ url: '/api/bench', ...as }), 'request.who')
    expectRefusal(await served.ask({ method: 'DELETE', url: `/api/devices/${id}`, body: {} }), 'record.not-found')
  })

  it.each(['', 'x', 'x'.repeat(101), '%', 'a; b'])('is not made by a cookie that says %j', async (token) => {
    const answer = await served.ask({ url: '/api/bench', from: PHONE, headers: { cookie: `wetside_device=${token}` } })
    expectRefusal(answer, 'request.who')
  })

  it('signs what it writes', async () => {
    const { id, as } = await served.pair()
    const body = { name: 'Dial', kind: 'dial', scale_low_c: 0, scale_high_c: 60 }
    expect((await served.ask({ method: 'POST', url: '/api/thermometers', body, ...as })).status).toBe(200)
    expect((await served.everything()).filter((row) => row.includes('Dial')).join()).toContain(id)
  })
})
