import { beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { type Route, routes } from '../../src/wire/index.js'
import { expectRefusal, houses, PHONE, type Served } from '../support/server.js'

const serve = houses()
let served: Served
beforeAll(async () => {
  served = await serve()
})

/** Words that stand in every field of an order and of its rolls; none of them may come out by the link. */
const SECRETS = {
  person: 'Secretperson',
  contact: 'secret@contact.example',
  deposit: 'Secretdeposit',
  agreed_on_loss: 'Secretagreement',
  note: 'Secretordernote',
}
const ROLL_SECRETS = { film: 'Secretfilm', whose: 'Secretowner', note: 'Secretrollnote' }
const HOOK = 'Secrethook'
const REASON = 'Secretreason'

const post = async (url: string, body: object) => {
  const answer = await served.ask({ method: 'POST', url, body })
  expect([url, answer.status]).toEqual([url, 200])
  return answer.json
}

let made: { order: string; rolls: { id: string; number: string }[]; link: { id: string; token: string } }
beforeEach(async () => {
  const order = (await post('/api/orders', { ...SECRETS, counted_in: 3, due: '2026-12-24' })).id
  const statement = {
    ...ROLL_SECRETS,
    process: 'black-and-white',
    format: '135',
    due: '2026-12-23',
    remarks: ['found'],
  }
  const { rolls } = await post('/api/rolls', { order_id: order, rolls: [{ statement }, { statement }, { statement }] })
  const move = (index: number, step: object) => post('/api/rolls/move', { roll_ids: [rolls[index].id], ...step })
  await move(0, { state: 'hung', hook: HOOK })
  await move(1, { state: 'ruined', reason: REASON })
  made = { order, rolls, link: await post(`/api/orders/${order}/links`, { days: 10 }) }
})

/** Asked as its holder does: from elsewhere, known to nobody. */
const shown = (token = made.link.token) => served.ask({ url: `/api/order-links/${token}`, from: PHONE })

describe('a private link', () => {
  it('shows number, state and a sentence for each roll, and whether all are ready', async () => {
    const { status, json } = await shown()
    expect(status).toBe(200)
    expect(json).toEqual({
      rolls: [
        { number: made.rolls[0]?.number, state: 'hung', sentence: 'It is hanging up to dry.' },
        { number: made.rolls[1]?.number, state: 'ruined', sentence: 'Something went wrong with it. Please ask.' },
        { number: made.rolls[2]?.number, state: 'taken-in', sentence: expect.stringMatching(/taken in/) },
      ],
      ready: false,
    })
  })

  it('lets nothing else out: no name, film, day, note, hook, reason or id, in body or headers', async () => {
    const { text, headers } = await shown()
    const everything = text + JSON.stringify(headers)
    const ids = [made.order, made.link.id, ...made.rolls.map(({ id }) => id)]
    const secrets = [...Object.values(SECRETS), ...Object.values(ROLL_SECRETS), HOOK, REASON, '2026-12-2', ...ids]
    for (const secret of secrets) expect(everything.toLowerCase()).not.toContain(secret.toLowerCase())
    expect(headers['set-cookie']).toBeUndefined()
  })

  it('opens nothing else, wherever its token is put', async () => {
    const { token } = made.link
    const bearing: Partial<Parameters<Served['ask']>[0]>[] = [
      { headers: { authorization: `Bearer ${token}` } },
      { cookies: { wetside_device: token } },
      { cookies: { wetside_order: token } },
    ]
    const closed = (Object.values(routes) as Route[]).filter(
      ({ roles, method, path }) => !roles.includes('nobody') && method === 'GET' && !path.includes('feed'),
    )
    expect(closed.length).toBeGreaterThan(15)
    for (const { path } of closed)
      for (const with_ of bearing) {
        const url = path.replace(':id', made.order)
        expectRefusal(await served.ask({ url, from: PHONE, ...with_ }), 'request.who')
      }
  })

  it('cannot be guessed, and is not kept itself', async () => {
    const tokens = [made.link.token]
    for (let i = 0; i < 20; i++) tokens.push((await post(`/api/orders/${made.order}/links`, {})).token)
    // 32 bytes of chance: 43 letters of base64.
    for (const token of tokens) expect(token).toMatch(/^[A-Za-z0-9_-]{43}$/)
    expect(new Set(tokens).size).toBe(tokens.length)
    const kept = (await served.everything()).join('\n')
    for (const token of tokens) expect(kept).not.toContain(token)
  })

  it('is over on its day, not before', async () => {
    const DAY_MS = 86_400_000
    served.clock.advance(10 * DAY_MS - 1)
    expect((await shown()).status).toBe(200)
    served.clock.advance(1)
    expectRefusal(await shown(), 'order.link-dead')
  })

  it('is withdrawn alone, and says then what an unknown one says', async () => {
    const other = await post(`/api/orders/${made.order}/links`, {})
    await post(`/api/order-links/${made.link.id}/revoke`, {})
    const [dead, unknown] = [await shown(), await shown('x'.repeat(43))]
    expectRefusal(dead, 'order.link-dead')
    expect([dead.status, dead.json]).toEqual([unknown.status, unknown.json])
    expect((await shown(other.token)).status).toBe(200)
  })

  it('says when all that is here is ready', async () => {
    await post('/api/rolls/move', { roll_ids: [made.rolls[0]?.id, made.rolls[2]?.id], state: 'sleeved' })
    expect((await shown()).json.ready).toBe(true)
  })
})
