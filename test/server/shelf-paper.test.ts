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
  expect([url, answer.status, answer.json?.sentence]).toEqual([url, 200, undefined])
  return answer.json
}
let names = 0
const put = async (statement: object, more: object = {}) =>
  (await post('/api/containers', { statement: { name: `One ${++names}`, ...statement }, ...more })).id as string

/** A litre of fixer in a bottle of its own, and the code of its lot. */
async function mixed(): Promise<{ id: string; code: string }> {
  const hazards = ['acid', 'fumes']
  const fixer = { salt: 'ammonium-thiosulfate', alkaline: false }
  const product = { name: `Fixer ${++names}`, role: 'fixer', use: 'reusable', hazards, fixer }
  const { id: product_id } = await post('/api/products', product)
  const id = await put({ kind: 'bottle', holds_ml: 1000 })
  const { lot } = await post('/api/lots', { product_id, parts: [1, 4], into: [{ container_id: id, ml: 1000 }] })
  return { id, code: lot.code }
}

describe.each(['A4', 'Letter', 'roll'])('labels on %s', (layout) => {
  it('lead by their code to the lot, whose code stands beside it, and which opens', async () => {
    const { code } = await mixed()
    const answer = await served.ask({ url: `/api/lots/labels.pdf?codes=${code}&layout=${layout}` })
    expect([answer.status, answer.headers['content-type']]).toEqual([200, 'application/pdf'])
    const [codes, words] = [await codesOn(answer.raw), await wordsOn(answer.raw)]
    expect(codes.map(({ text }) => text)).toEqual([`${served.house.address()}/l/${code}`])
    expect(words.map(({ text }) => text.replace(',', ''))).toContain(code)
    const typed = encodeURIComponent(codes[0]?.text ?? '')
    expect((await served.ask({ url: `/api/lots/by-code?code=${typed}` })).json.lot.code).toBe(code)
  })
})

it('labels of a lot that is not there are refused with its code', async () => {
  const { code } = await mixed()
  expectRefusal(await served.ask({ url: `/api/lots/labels.pdf?codes=${code},99-999` }), 'shelf.lot-unknown')
})

describe('waste', () => {
  it('has a record of its hand-over, and a log as a table that says what went in and out', async () => {
    const { id, code } = await mixed()
    await post('/api/shelf/use', {
      ...{ container_id: id, poured: 500, lost: 20, back_into: id, film: [{ format: '120', count: 10 }] },
    })
    const jug_id = await put({ kind: 'jug', name: 'Silver, “blue” can', holds_ml: 5000 })
    await post('/api/shelf/discard', { container_id: id, where: 'jug', jug_id, note: '=1+1' })
    const wrong = await post('/api/shelf/hand-over', { jug_id, ml: 10, to: 'Nobody' })
    await post(`/api/shelf-entries/${wrong.entry.id}/take-back`, {})
    const { entry } = await post('/api/shelf/hand-over', { jug_id, to: 'The town' })
    const record = await served.ask({ url: `/api/shelf-entries/${entry.id}/hand-over.pdf?paper=A4` })
    const said = (await wordsOn(record.raw)).map(({ text }) => text).join(' ')
    for (const part of ['The town', '10 rolls', 'about 1.5 g']) expect(said).toContain(part)
    expectRefusal(await served.ask({ url: `/api/shelf-entries/${wrong.entry.id}x/hand-over.pdf` }), 'request.invalid')

    const log = await served.ask({ url: '/api/shelf/waste-log.csv' })
    expect(log.headers['content-type']).toMatch(/^text\/csv/)
    const rows = log.text.trimEnd().split('\r\n')
    expect(rows[0]?.split(',').slice(0, 6)).toEqual(['at', 'what', 'jug', 'of', 'lot', 'ml'])
    const own = rows.filter((row) => row.includes('“blue”'))
    expect(own).toHaveLength(2)
    expect(own[0]).toMatch(new RegExp(`discarded,"Silver, “blue” can",One \\d+,${code},980,10,`))
    // What a table program would take for a formula is none.
    expect(own[0]).toMatch(/,'=1\+1$/)
    expect(own[1]).toMatch(/handed-over,"Silver, “blue” can",,,980,10,[\d.]+,1\.55,[\d.]+,The town/)
  })
})
