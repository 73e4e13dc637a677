import { beforeEach, describe, expect, it } from 'vitest'
import { time } from '../support/bench.js'
import { expectRefusal, houses, type Served } from '../support/server.js'

const serve = houses()
let served: Served
beforeEach(async () => {
  served = await serve()
  await served.ask({ method: 'POST', url: '/api/times', body: { times: [time({ film: 'Kept' })] } })
})

const restoreTo = (house: Served, file: string) =>
  house.ask({
    method: 'POST',
    url: '/api/restore',
    body: file,
    headers: { 'content-type': 'application/x-ndjson' },
  })
const backupOf = async (house: Served) => await house.ask({ url: '/api/backup' })
const films = async (house: Served, as = {}) =>
  (await house.ask({ url: '/api/times', ...as })).json.times.map(({ film }: { film: string }) => film)

describe('a backup over HTTP', () => {
  it('is one file of lines, named by its day', async () => {
    const { headers, text } = await backupOf(served)
    expect(headers['content-type']).toBe('application/x-ndjson')
    expect(headers['content-disposition']).toContain('wetside-2026-03-01.backup.ndjson')
    for (const line of text.trimEnd().split('\n')) expect(JSON.parse(line)).toBeTypeOf('object')
  })

  it('goes back into the same house, and what came since is gone', async () => {
    const before = await served.everything()
    const { text } = await backupOf(served)
    await served.ask({ method: 'POST', url: '/api/times', body: { times: [time({ film: 'Later' })] } })
    const restored = await restoreTo(served, text)
    expect(restored.status).toBe(200)
    expect(restored.json.rows).toBe(before.length)
    expect(await served.everything()).toEqual(before)
  })

  it('goes into another house, whose bench and phones are then those of the backup', async () => {
    const settings = { name: 'The old cellar', units: 'us', paper: 'Letter', zone: 'America/Denver' }
    await served.ask({ method: 'PUT', url: '/api/bench', body: settings })
    const { as } = await served.pair()
    const { text } = await backupOf(served)

    const other = await serve()
    const stranger = await other.pair('Phone of the other house')
    const before = other.house.homeBench
    expect((await restoreTo(other, text)).status).toBe(200)
    expect(other.house.homeBench).toBe(served.house.homeBench)
    expect(other.house.homeBench).not.toBe(before)
    expect((await other.ask({ url: '/api/bench' })).json).toMatchObject(settings)
    expect(await films(other)).toEqual(['Kept'])
    expect(await films(other, as)).toEqual(['Kept'])
    expectRefusal(await other.ask({ url: '/api/times', ...stranger.as }), 'request.who')
    await other.ask({ method: 'POST', url: '/api/times', body: { times: [time({ film: 'Written here' })] } })
    expect((await films(other)).sort()).toEqual(['Kept', 'Written here'])
  })

  it.each<[string, (file: string) => string]>([
    ['nothing', () => ''],
    ['some other text', () => 'film,developer\nTarn,stock\n'],
    ['JSON of another kind', () => '{"a":1}\n{"b":2}\n'],
    ['cut short', (file) => file.slice(0, -40)],
    ['without its last line', (file) => file.trimEnd().split('\n').slice(0, -1).join('\n')],
    ['with a row twice', (file) => file.replace(/(\n.*\n)/, '$1$1')],
    ['with one letter changed', (file) => file.replace('Kept', 'Kepf')],
  ])('that is %s is refused and changes nothing', async (_, damage) => {
    const { text } = await backupOf(served)
    const before = await served.everything()
    const home = served.house.homeBench
    expectRefusal(await restoreTo(served, damage(text)), 'house.backup-unreadable')
    expect(await served.everything()).toEqual(before)
    expect(served.house.homeBench).toBe(home)
  })

  it('of a newer version is refused with both versions', async () => {
    const { text } = await backupOf(served)
    const [head, ...rest] = text.split('\n')
    const newer = { ...JSON.parse(head as string), dataVersion: 999 }
    const answer = await restoreTo(served, [JSON.stringify(newer), ...rest].join('\n'))
    expectRefusal(answer, 'house.backup-newer')
    expect(answer.json.sentence).toContain('999')
  })
})

describe('the demo bench over HTTP', () => {
  it('is open for the browser that opened it, and gone for it once removed', async () => {
    const opened = await served.ask({ method: 'POST', url: '/api/demo', body: {} })
    const cookies = Object.fromEntries(opened.cookies.map(({ name, value }) => [name, value]))
    expect((await served.ask({ url: '/api/bench', cookies })).json).toMatchObject({ kind: 'demo', demo_exists: true })
    expect(await films(served)).toEqual(['Kept'])
    expect(await films(served, { cookies })).not.toContain('Kept')
    const joined = await served.ask({ method: 'POST', url: '/api/demo', body: {} })
    expect(joined.json).toEqual(opened.json)

    expect((await served.ask({ method: 'DELETE', url: '/api/demo', body: {}, cookies })).status).toBe(200)
    expect((await served.ask({ url: '/api/bench', cookies })).json).toMatchObject({ kind: 'own', demo_exists: false })
    expectRefusal(await served.ask({ method: 'DELETE', url: '/api/demo', body: {} }), 'house.demo-not-open')
  })

  it.each(['x', '0190d1c2-0000-7000-8000-000000000000', '../..'])(
    'is not opened by a cookie that says %s',
    async (bench) => {
      const answer = await served.ask({ url: '/api/bench', cookies: { wetside_bench: bench } })
      expect(answer.json).toMatchObject({ kind: 'own', bench_id: served.house.homeBench })
    },
  )
})
