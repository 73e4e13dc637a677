import { beforeAll, describe, expect, it } from 'vitest'
import { type Route, routes } from '../../src/wire/index.js'
import { time } from '../support/bench.js'
import { expectRefusal, houses, type Served } from '../support/server.js'

const serve = houses()
let served: Served
let card: string
beforeAll(async () => {
  served = await serve()
  const body = { times: [time({ film: 'Corvane “400”; ümläut/…' })] }
  const kept = await served.ask({ method: 'POST', url: '/api/times', body })
  card = `/api/times/${kept.json.times[0].id}/card.pdf`
})

describe('the time card', () => {
  // Page sizes in points, 1/72 inch: ISO 216 A4 and ANSI A (Letter).
  it.each([
    ['A4', 595.28, 841.89],
    ['Letter', 612, 792],
  ])('comes on %s', async (paper, width, height) => {
    const { status, headers, raw } = await served.ask({ url: `${card}?at_c=21.6&paper=${paper}` })
    expect([status, headers['content-type']]).toEqual([200, 'application/pdf'])
    expect(raw.subarray(0, 5).toString('latin1')).toBe('%PDF-')
    const box = raw.toString('latin1').match(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/)
    expect(Number(box?.[1])).toBeCloseTo(width, 1)
    expect(Number(box?.[2])).toBeCloseTo(height, 1)
  })

  it('without a temperature and a paper comes on the paper of the bench, under a name that any film may have', async () => {
    const { status, headers, raw } = await served.ask({ url: card })
    expect(status).toBe(200)
    expect(raw.toString('latin1')).toContain('/MediaBox [0 0 595.28')
    const name = String(headers['content-disposition']).split("''")[1] as string
    expect(decodeURIComponent(name)).toBe('Corvane “400”; ümläut/… in ascorbate.pdf')
  })

  it.each([
    ['paper=A3', 'request.invalid'],
    ['at_c=warm', 'request.invalid'],
    ['at_c=99', 'times.outside-usable-range'],
    ['at_c=20&factor=-1', 'times.bad-factor'],
  ])('for %s is refused with a sentence', async (query, code) =>
    expectRefusal(await served.ask({ url: `${card}?${query}` }), code as never),
  )
})

describe('the description of the interface', () => {
  it('is OpenAPI 3.1 with every route under its name', async () => {
    const document = (await served.ask({ url: '/api/openapi.json' })).json
    expect(document.openapi).toMatch(/^3\.1\./)
    expect(document.info).toMatchObject({ title: 'Wetside', version: expect.any(String) })
    for (const [name, route] of Object.entries(routes) as [string, Route][]) {
      const operation = document.paths[route.path.replace(/:(\w+)/, '{$1}')]?.[route.method.toLowerCase()]
      expect(operation, name).toMatchObject({ operationId: name, summary: route.summary })
      expect(operation.responses['200'], name).toBeDefined()
      expect(operation.responses['4XX'] ?? operation.responses['4xx'], name).toBeDefined()
      expect(operation.requestBody !== undefined, name).toBe(route.body !== undefined || route.bodyFile !== undefined)
      if (route.path.includes(':id'))
        expect(operation.parameters, name).toContainEqual(expect.objectContaining({ name: 'id', in: 'path' }))
    }
  })

  it('points only at parts that it has', async () => {
    const { text, json } = await served.ask({ url: '/api/openapi.json' })
    const references = [...text.matchAll(/"\$ref":"#\/([^"]+)"/g)].map((match) => match[1] as string)
    expect(references.length).toBeGreaterThan(10)
    for (const reference of references) {
      const part = reference.split('/').reduce((at, name) => at?.[name], json)
      expect(part, reference).toBeDefined()
    }
  })

  it('is there for people too', async () => {
    const { headers, text } = await served.ask({ url: '/api/docs' })
    expect(headers['content-type']).toContain('text/html')
    for (const route of Object.values(routes) as Route[]) expect(text).toContain(route.path.replace(/:(\w+)/, '{$1}'))
  })
})
