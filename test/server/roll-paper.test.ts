import { beforeAll, describe, expect, it } from 'vitest'
import { codesOn, readerOfCodes, wordsOn } from '../support/paper.js'
import { expectRefusal, houses, type Served } from '../support/server.js'

const serve = houses()
let served: Served
beforeAll(async () => {
  await readerOfCodes()
  served = await serve()
})

const post = async (url: string, body: object) => {
  const answer = await served.ask({ method: 'POST', url, body })
  expect([url, answer.status]).toEqual([url, 200])
  return answer.json
}
const roll = (changes: object = {}) => ({
  statement: { film: 'Corvane 400', process: 'black-and-white', format: '135', whose: 'Ida', ...changes },
})

/** An order whose rolls are all taken in. */
async function order(rolls: object[], changes: object = {}): Promise<{ id: string; numbers: string[] }> {
  const asked = { person: 'Ida', counted_in: rolls.length, deposit: '20', agreed_on_loss: 'a fresh roll', ...changes }
  const { id } = await post('/api/orders', asked)
  const taken = await post('/api/rolls', { order_id: id, rolls })
  return { id, numbers: taken.rolls.map((one: { number: string }) => one.number) }
}

const pdfAt = async (url: string) => {
  const { status, headers, raw } = await served.ask({ url })
  expect([url, status, headers['content-type']]).toEqual([url, 200, 'application/pdf'])
  return raw
}

/** Two places of a code's height apart at most: what stands on the same sticker. */
const STICKER = { width: 137, height: 72 }

describe.each(['A4', 'Letter'])('paired stickers on %s', (paper) => {
  it('hold the number in print and in the code, two a roll, side by side', async () => {
    const { id, numbers } = await order([roll(), roll({ film: 'Tarn 100', format: '120' }), roll()])
    const pdf = await pdfAt(`/api/rolls/stickers.pdf?order_id=${id}&paper=${paper}`)
    const [codes, words] = [await codesOn(pdf), await wordsOn(pdf)]
    const base = served.house.address()
    expect(codes.map(({ text }) => text).sort()).toEqual(
      numbers.flatMap((number) => [`${base}/r/${number}`, `${base}/r/${number}`]).sort(),
    )
    for (const code of codes) {
      const printed = words.filter(
        ({ text, x, y }) =>
          numbers.includes(text) &&
          x > code.x &&
          x < code.x + STICKER.width &&
          Math.abs(y - code.y) < STICKER.height / 2,
      )
      expect(printed.map(({ text }) => `${base}/r/${text}`)).toEqual([code.text])
    }
    for (const number of numbers) {
      const [one, other] = codes.filter(({ text }) => text.endsWith(number)).sort((a, b) => a.x - b.x)
      expect(Math.abs((one?.y ?? 0) - (other?.y ?? 99))).toBeLessThan(3)
      expect((other?.x ?? 0) - (one?.x ?? 0)).toBeGreaterThan(100)
    }
  })

  it('begin behind the places that are used up, and go on over sheets', async () => {
    const { id, numbers } = await order(Array.from({ length: 20 }, () => roll()))
    const pdf = await pdfAt(`/api/rolls/stickers.pdf?order_id=${id}&paper=${paper}&used=5`)
    const sheets = [await codesOn(pdf, 1), await codesOn(pdf, 2)]
    // The sixth place is passed over too: pairs begin at an even one.
    expect(sheets.map((codes) => codes.length)).toEqual([34, 6])
    expect(new Set(sheets.flat().map(({ text }) => text)).size).toBe(numbers.length)
  })
})

describe('stickers', () => {
  it('of numbers with strokes and spaces lead to the very number', async () => {
    await served.ask({ method: 'PUT', url: '/api/roll-numbers', body: { pattern: 'K {yy}/{n3}' } })
    const taken = await post('/api/rolls', { rolls: [roll({ whose: null })] })
    await served.ask({ method: 'PUT', url: '/api/roll-numbers', body: { pattern: '{year}-{n4}' } })
    const [{ id, number }] = taken.rolls
    expect(number).toMatch(/^K 26\/\d{3}$/)
    const [code] = await codesOn(await pdfAt(`/api/rolls/stickers.pdf?roll_ids=${id}`))
    expect(decodeURIComponent(new URL(code?.text ?? '').pathname)).toBe(`/r/${number}`)
    // What a reader hands over, and what a person types off the sticker, find the same roll.
    for (const typed of [code?.text ?? '', number, number.toLowerCase(), ` ${number} `]) {
      const found = await served.ask({ url: `/api/rolls/by-number?number=${encodeURIComponent(typed)}` })
      expect([typed, found.json.id]).toEqual([typed, id])
    }
  })

  it('are refused without a roll, and for one that is not', async () => {
    expectRefusal(await served.ask({ url: '/api/rolls/stickers.pdf' }), 'order.no-stickers')
    const unknown = '0190d1c2-0000-7000-8000-000000000000'
    expectRefusal(await served.ask({ url: `/api/rolls/stickers.pdf?roll_ids=${unknown}` }), 'record.not-found')
  })
})

describe.each(['A4', 'Letter'])('the slip of an order on %s', (paper) => {
  it('says what was handed over and agreed, and holds the private link and its code', async () => {
    const { id, numbers } = await order([roll(), roll({ treatment: { as: 'index', index: 800 }, exposure_index: 400 })])
    const { token } = await post(`/api/orders/${id}/links`, {})
    const pdf = await pdfAt(`/api/orders/${id}/slip.pdf?paper=${paper}&token=${token}`)
    const address = `${served.house.address()}/o/${token}`
    expect((await codesOn(pdf)).map(({ text }) => text)).toEqual([address])
    const words = (await wordsOn(pdf)).map(({ text }) => text)
    const text = words.join(' ')
    for (const said of [...numbers, 'Two rolls counted', 'Deposit 20', 'a fresh roll', 'as if it were 800', '135, 36'])
      expect(text).toContain(said)
    // In print the address may be broken over lines; put together again it is the one in the code.
    expect(words.join('')).toContain(address)
  })

  it('without a token has no code', async () => {
    const { id } = await order([roll()])
    expect(await codesOn(await pdfAt(`/api/orders/${id}/slip.pdf?paper=${paper}`))).toEqual([])
  })
})

describe('a slip is refused', () => {
  it('while fewer rolls are taken in than were counted', async () => {
    const { id } = await order([roll()], { counted_in: 2 })
    expectRefusal(await served.ask({ url: `/api/orders/${id}/slip.pdf` }), 'order.not-all-taken-in')
  })

  it('with the link of another order, and with one that was withdrawn', async () => {
    const [one, other] = [await order([roll()]), await order([roll()])]
    const link = await post(`/api/orders/${one.id}/links`, {})
    const slip = (id: string) => served.ask({ url: `/api/orders/${id}/slip.pdf?token=${link.token}` })
    expectRefusal(await slip(other.id), 'order.link-dead')
    expect((await slip(one.id)).status).toBe(200)
    await post(`/api/order-links/${link.id}/revoke`, {})
    expectRefusal(await slip(one.id), 'order.link-dead')
  })
})
