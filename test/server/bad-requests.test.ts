import { beforeAll, describe, expect, it } from 'vitest'
import { comparison, thermometer, time } from '../support/bench.js'
import { type Asked, expectRefusal, houses, type Served } from '../support/server.js'

const serve = houses()
let served: Served
let timeId: string
let thermometerId: string
beforeAll(async () => {
  served = await serve()
  const kept = await served.ask({ method: 'POST', url: '/api/times', body: { times: [time()] } })
  timeId = kept.json.times[0].id
  const added = await served.ask({ method: 'POST', url: '/api/thermometers', body: thermometer() })
  thermometerId = added.json.id
})

/** Asks, and makes sure that nothing was changed by it. */
async function harmless(asked: Asked) {
  const before = await served.everything()
  const answer = await served.ask(asked)
  expect(await served.everything()).toEqual(before)
  return answer
}

const keeping = (changes: object): Asked => ({
  method: 'POST',
  url: '/api/times',
  body: { times: [{ ...time(), ...changes }] },
})
const points = (...pairs: [number, unknown][]) => ({
  points: pairs.map(([temperature_c, time_s]) => ({ temperature_c, time_s })),
})

describe('a developing time that cannot be', () => {
  const cases: [what: string, changes: object, code: string, field: string, words: (string | RegExp)[]][] = [
    ['no points', { points: [] }, 'times.no-points', 'times[0].points', ['at least one']],
    [
      'two times at one temperature',
      points([20, 570], [20, 600]),
      'times.two-times-at-one-temperature',
      'times[0].points[1]',
      ['20', '9:30', '10:00'],
    ],
    [
      'slower when warmer',
      points([20, 570], [24, 700]),
      'times.slower-when-warmer',
      'times[0].points[1]',
      ['11:40', '24', '9:30', '20', 'single bath'],
    ],
    [
      'a temperature no developer has',
      points([120, 570]),
      'times.impossible-temperature',
      'times[0].points[0]',
      ['120', /between/],
    ],
    ['a time of nothing', points([20, 0]), 'times.impossible-time', 'times[0].points[0]', [/between/]],
    ['a coefficient of 40', { coefficient: 40 }, 'times.bad-coefficient', 'times[0].coefficient', ['40', /to/]],
    ['a name with a NUL', { film: 'Tarn\u0000100' }, 'request.invalid', 'times[0].film', ['control characters']],
    ['a time below nothing', points([20, -5]), 'request.invalid', 'times[0].points[0].time_s', ['−5', 'at least 0']],
    [
      'a temperature of steam',
      points([900, 60]),
      'request.invalid',
      'times[0].points[0].temperature_c',
      ['900', '200'],
    ],
    ['a time in words', points([20, '9:30']), 'request.invalid', 'times[0].points[0].time_s', ['“9:30”', 'a number']],
    ['a film without a name', { film: '  ' }, 'request.invalid', 'times[0].film', ['“  ”', 'at least 1 character']],
    ['a name too long', { film: 'x'.repeat(121) }, 'request.invalid', 'times[0].film', ['121', 'at most 120']],
    ['an unknown law', { law: 'linear' }, 'request.invalid', 'times[0].law', ['“linear”', 'exponential, arrhenius']],
    ['a misspelt field', { coeficient: 2.5 }, 'request.invalid', 'times[0].coeficient', ['coeficient', 'not a field']],
    ['an index of a half', { exposure_index: 0.5 }, 'request.invalid', 'times[0].exposure_index', ['0.5', 'whole']],
    ['no film', { film: undefined }, 'request.invalid', 'times[0].film', ['is missing', 'a text']],
    ['a dilution of nothing', { dilution_parts: [1, 0] }, 'request.invalid', 'times[0].dilution_parts[1]', ['above 0']],
    [
      'a name that no screen shows',
      { film: 'a\u0000b' },
      'request.invalid',
      'times[0].film',
      ['“a\ufffdb”', 'control'],
    ],
    [
      'more points than a sheet has',
      points(...Array.from({ length: 101 }, (_, i): [number, number] => [20 + i / 100, 570 - i])),
      'request.invalid',
      'times[0].points',
      ['a list of 101', 'at most 100'],
    ],
  ]
  it.each(cases)('%s', async (_, changes, code, field, words) => {
    const answer = await harmless(keeping(changes))
    expectRefusal(answer, code as never)
    expect(answer.json.field).toBe(field)
    for (const word of words) expect(answer.json.sentence).toMatch(word)
  })

  it('in a list keeps none of the list, and is named by its place', async () => {
    const body = { times: [time({ film: 'Good' }), time({ points: [] })] }
    const answer = await harmless({ method: 'POST', url: '/api/times', body })
    expectRefusal(answer, 'times.no-points')
    expect(answer.json.field).toBe('times[1].points')
  })

  it('as a correction leaves the record as it was', async () => {
    const body = { seen_revision: 1, statement: time({ points: [] }) }
    const answer = await harmless({ method: 'PUT', url: `/api/times/${timeId}`, body })
    expectRefusal(answer, 'times.no-points')
    expect(answer.json.field).toBe('statement.points')
  })

  it('says its temperatures in the units of the bench', async () => {
    const own = await serve()
    const body = { name: 'Cellar', units: 'us', paper: 'Letter', zone: 'America/Denver' }
    expect((await own.ask({ method: 'PUT', url: '/api/bench', body })).status).toBe(200)
    const answer = await own.ask(keeping(points([20, 570], [24, 700])))
    expect(answer.json.sentence).toContain('68\u202f°F')
    expect(answer.json.sentence).not.toContain('°C')
  })
})

describe('a body that cannot be read', () => {
  const json = { 'content-type': 'application/json' }
  const post = (body: unknown, headers: Record<string, string> = json): Asked => ({
    method: 'POST',
    url: '/api/times',
    body,
    headers,
  })

  it('is too large', async () => {
    const answer = await harmless(post(JSON.stringify({ times: [], note: 'x'.repeat(1024 * 1024) })))
    expectRefusal(answer, 'request.too-large')
    expect(answer.json.sentence).toContain('1024 KiB')
  })

  it.each(['{"times":', 'times', '{"times": [NaN]}', ''])('is not JSON: %j', async (text) =>
    expectRefusal(await harmless(post(text)), 'request.not-json'),
  )

  it.each(['text/plain', 'application/xml', 'application/x-www-form-urlencoded'])('is of type %s', async (type) => {
    const answer = await harmless(post('times=1', { 'content-type': type }))
    expectRefusal(answer, 'request.media-type')
    expect(answer.json.sentence).toContain(type)
  })

  it('is of a type for files where none is taken', async () =>
    expectRefusal(await harmless(post('x\n', { 'content-type': 'application/x-ndjson' })), 'request.media-type'))

  it.each([null, [], 'times', 7, true])('is %j, not an object', async (body) => {
    const answer = await harmless(post(JSON.stringify(body)))
    expectRefusal(answer, 'request.invalid')
    expect(answer.json.sentence).toMatch(/^The request is .*; it should be an object\.$/)
  })

  it('is not there', async () => {
    const answer = await harmless({ method: 'POST', url: '/api/times' })
    expectRefusal(answer, 'request.invalid')
    expect(answer.json.sentence).toContain('an object')
  })

  it('tries to change what objects are', async () => {
    for (const text of ['{"__proto__": {"x": 1}}', '{"constructor": {"prototype": {"x": 1}}}'])
      expect((await harmless(post(text))).status).toBeGreaterThanOrEqual(400)
  })

  it('is not there where a file is restored', async () =>
    expectRefusal(await harmless({ method: 'POST', url: '/api/restore' }), 'request.media-type'))

  it('is restored as JSON', async () =>
    expectRefusal(await harmless({ method: 'POST', url: '/api/restore', body: { x: 1 } }), 'request.media-type'))
})

describe('an id', () => {
  it.each(['1', 'x', '0190d1c2-0000-7000-8000-00000000000', "';--", '../../etc', '%00', 'ünï'])(
    '%j is not one',
    async (id) => {
      const answer = await served.ask({ url: `/api/times/${encodeURIComponent(id)}` })
      expectRefusal(answer, 'request.invalid')
      expect(answer.json.field).toBe('id')
      expect(answer.json.sentence).toContain(`“${id}”`)
    },
  )

  it('that nothing has is not found, and named', async () => {
    const nobody = '0190d1c2-0000-7000-8000-000000000000'
    const asked: Asked[] = [
      { url: `/api/times/${nobody}` },
      { url: `/api/times/${nobody}/answer?at_c=20` },
      { url: `/api/times/${nobody}/card.pdf` },
      { method: 'PUT', url: `/api/times/${nobody}`, body: { seen_revision: 1, statement: time() } },
      { method: 'DELETE', url: `/api/times/${nobody}`, body: { seen_revision: 1 } },
      { method: 'POST', url: `/api/times/${nobody}/undo`, body: { seen_revision: 1 } },
      {
        method: 'PUT',
        url: `/api/thermometers/${nobody}`,
        body: { seen_revision: 1, statement: thermometer({ name: 'Other' }) },
      },
      { method: 'DELETE', url: `/api/thermometers/${nobody}`, body: { seen_revision: 1 } },
      { method: 'POST', url: `/api/thermometers/${nobody}/undo`, body: { seen_revision: 1 } },
      { method: 'POST', url: `/api/thermometers/${nobody}/checks`, body: comparison(20.2, 20) },
      { method: 'POST', url: `/api/checks/${nobody}/withdraw`, body: {} },
      { method: 'DELETE', url: `/api/devices/${nobody}`, body: {} },
      {
        method: 'POST',
        url: '/api/class-sets',
        body: { trusted_id: null, readings: [{ thermometer_id: nobody, read_c: 20 }] },
      },
      {
        method: 'POST',
        url: '/api/class-sets',
        body: { trusted_id: nobody, readings: [{ thermometer_id: thermometerId, read_c: 20 }] },
      },
    ]
    const before = await served.everything()
    for (const one of asked) {
      const answer = await served.ask(one)
      expectRefusal(answer, 'record.not-found')
      expect(answer.json.sentence).toContain(nobody)
    }
    expect(await served.everything()).toEqual(before)
  })
})

describe('a question', () => {
  const ask = (query: string) => served.ask({ url: `/api/times/${timeId}/answer${query}` })

  it.each(['', '?at_c=', '?at_c=warm', '?at_c=NaN', '?at_c=Infinity', '?at_c=0x14', '?at_c=1e1', '?at_c=20&at_c=21'])(
    'at “%s” has no temperature',
    async (query) => {
      const answer = await ask(query)
      expectRefusal(answer, 'request.invalid')
      expect(answer.json.field).toBe('at_c')
    },
  )

  it.each([
    ['?at_c=20&factor=-1', 'times.bad-factor'],
    ['?at_c=20&factor=', 'request.invalid'],
    ['?at_c=20&thermometer_error_c=9', 'request.invalid'],
    ['?at_c=20&thermometer_id=7', 'request.invalid'],
    ['?at_c=20&temperature=7', 'request.invalid'],
    ['?at_c=-300', 'request.invalid'],
    ['?at_c=99', 'times.outside-usable-range'],
  ])('“%s” is refused with a sentence', async (query, code) => expectRefusal(await ask(query), code as never))

  it('in digits is answered', async () => {
    expect((await ask('?at_c=20')).json).toMatchObject({ time_s: 570, position: 'sheet-point' })
    expect((await ask('?at_c=21.6&thermometer_error_c=0.2&factor=1.1')).status).toBe(200)
  })
})

describe('settings', () => {
  const right = { name: 'Cellar', units: 'metric', paper: 'A4', zone: 'Europe/Lisbon' }
  const set = (changes: object): Asked => ({ method: 'PUT', url: '/api/bench', body: { ...right, ...changes } })

  it.each(['Europe/Nowhere', 'Mars', '+25:00', 'Europe/Lisbon; drop'])('in the zone %s are refused', async (zone) => {
    const answer = await harmless(set({ zone }))
    expectRefusal(answer, 'house.zone-unknown')
    expect(answer.json.field).toBe('zone')
    expect(answer.json.sentence).toContain(`“${zone}”`)
  })

  it.each([
    ['units', 'imperial'],
    ['paper', 'A3'],
    ['name', ''],
    ['zone', ''],
  ])('with %s “%s” are refused by their shape', async (field, value) => {
    const answer = await harmless(set({ [field]: value }))
    expectRefusal(answer, 'request.invalid')
    expect(answer.json.field).toBe(field)
  })

  it('that are right are kept', async () => {
    expect((await served.ask(set({}))).json).toMatchObject(right)
    expect((await served.ask({ url: '/api/bench' })).json).toMatchObject(right)
  })
})

describe('what is not there', () => {
  it.each(['/api', '/api/', '/api/nowhere', '/api/times/x/y', '/assets/x.js', '/favicon.ico'])('%s', async (url) =>
    expectRefusal(await served.ask({ url }), 'request.no-such-route'),
  )
  it.each(['/api/times/%zz', '/%c0%ae', `/api/times/${'a'.repeat(201)}`])(
    'an address that cannot be read: %s',
    async (url) => expectRefusal(await served.ask({ url }), 'request.bad-address'),
  )
  it('a method that a route does not have', async () =>
    expectRefusal(await served.ask({ method: 'POST', url: '/api/today', body: {} }), 'request.no-such-route'))
})
