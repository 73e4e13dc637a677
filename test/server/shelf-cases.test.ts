import { beforeAll, describe, expect, it } from 'vitest'
import { expectRefusal, houses, type Served } from '../support/server.js'

const serve = houses()
let served: Served
beforeAll(async () => {
  served = await serve()
})

const send = (url: string, body: object) => served.ask({ method: 'POST', url, body })
const sent = async (url: string, body: object) => {
  const answer = await send(url, body)
  expect([url, answer.status, answer.json?.sentence]).toEqual([url, 200, undefined])
  return answer.json
}
let bottles = 0
/** So much of a fixer of this kind in a bottle of its own. */
async function filled(product: object, ml: number): Promise<string> {
  const name = `Bottle ${++bottles}`
  const { id: product_id } = await sent('/api/products', { name: `Product ${bottles}`, use: 'reusable', ...product })
  const { id } = await sent('/api/containers', { statement: { kind: 'bottle', name, holds_ml: 5000 } })
  await sent('/api/lots', { product_id, into: [{ container_id: id, ml }] })
  return id
}
const fixer = (salt: string, more: object = {}) => ({
  role: 'fixer',
  fixer: { salt, alkaline: false },
  rolls_per_litre: 20,
  ...more,
})
const AMMONIUM = fixer('ammonium-thiosulfate')
const use = (id: string, film: object[], more: object = {}) =>
  send('/api/shelf/use', { container_id: id, film, poured: 100, lost: 0.001, back_into: id, ...more })
const left = async (id: string, film: object[]) => {
  const answer = await use(id, film)
  expect([answer.status, answer.json.sentence]).toEqual([200, undefined])
  return answer.json.containers[0].left
}
const rollsBy = (view: { limits: { by: string; rolls: number }[] }, by: string) =>
  view.limits.find((limit) => limit.by === by)?.rolls

describe('what a bath can still do, asked over the network', () => {
  it('5 ordinary rolls and 3 of a family at 0.6 in a bath of 12 leave 2 or 1', async () => {
    const id = await filled(fixer('ammonium-thiosulfate', { family_capacity: 0.6 }), 600)
    const view = await left(id, [
      { format: '135', count: 5 },
      { format: '135', count: 3, family: 'tabular' },
    ])
    expect(view.whole).toEqual({ ordinary: 2, tabular: 1, 'high-iodide': 1 })
    expect(rollsBy(view, 'count')).toBeCloseTo(2, 9)
  })

  it('20 units of mixed formats are 19.625: no roll more, one 4×5 still', async () => {
    const id = await filled(AMMONIUM, 1000)
    const view = await left(id, [
      { format: '135' },
      { format: '120', count: 2 },
      { format: '4x5', count: 12 },
      { format: '8x10', count: 4 },
      { format: '11x14', count: 5 },
    ])
    expect([view.met, rollsBy(view, 'count'), view.whole.ordinary]).toEqual([19.625, 0.375, 0])
    expectRefusal(await use(id, [{ format: '120' }]), 'shelf.carries-no-more')
    expect((await left(id, [{ format: '4x5' }])).met).toBe(19.875)
    expectRefusal(await use(id, [{ format: '4x5' }]), 'shelf.carries-no-more')
  })

  it('a clip of 35 s fresh and 55 s now fixes 1:50, or 2:45 for a slow family, and ends at 1:10', async () => {
    const id = await filled(AMMONIUM, 1000)
    const test = async (clears_s: number, more: object = {}) =>
      (await sent('/api/shelf/test', { container_id: id, test: { of: 'clearing', clears_s, ...more } })).containers[0]
        .left.clearing
    await test(35, { fresh: true })
    expect(await test(55)).toEqual({ fresh_s: 35, now_s: 55, fix_for_s: 110, finished: false })
    expect((await test(69)).finished).toBe(false)
    expect((await test(70)).finished).toBe(true)
    await test(35, { fresh: true, family: 'tabular' })
    expect(await test(55, { family: 'tabular' })).toMatchObject({ fix_for_s: 165, finished: false })
  })

  it('20 rolls in a litre are 3.10 g/L of silver; count decides in an ammonium fixer, silver in a sodium one', async () => {
    const ammonium = await filled(AMMONIUM, 1000)
    const loaded = await left(ammonium, [{ format: '120', count: 20 }])
    expect(loaded.silver_g_per_l.usual).toBeCloseTo(3.1, 2)
    const [one, other] = [await filled(AMMONIUM, 1000), await filled(fixer('sodium-thiosulfate'), 1000)]
    const half = await left(one, [{ format: '120', count: 10 }])
    expect([half.decides, half.whole.ordinary]).toEqual(['count', 10])
    const sodium = await left(other, [{ format: '120', count: 10 }])
    expect(sodium.decides).toBe('silver')
    expect(10 + sodium.rolls).toBeCloseTo(12.9, 1)
  })

  it('two want the last 300 mL at once: one has it, the other is told', async () => {
    const id = await filled({ role: 'developer', use: 'single-use' }, 300)
    const want = () => use(id, [{ format: '120' }], { poured: 300, lost: null, back_into: null })
    const answers = await Promise.all([want(), want()])
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 409])
    const told = answers.find(({ status }) => status === 409)
    expect(['shelf.not-enough', 'shelf.empty']).toContain(told?.json.code)
  })

  it('the same wash after a fresh and a loaded fixer: no verdict after the loaded one, and why', async () => {
    const [fresh, spent] = [await filled(AMMONIUM, 1000), await filled(AMMONIUM, 1000)]
    await sent('/api/shelf/use', {
      ...{ container_id: spent, film: [{ format: '120', count: 26 }], poured: 100, back_into: spent },
      over_count: true,
    })
    const steps = Array.from({ length: 7 }, () => ({ kind: 'change', volume_ml: 500, time_s: 300 }))
    const wash = (fixer_id: string) => sent('/api/shelf/wash', { fixer_id, wash: { steps } })
    expect((await wash(fresh)).verdict).toBe('enough')
    const none = await wash(spent)
    expect([none.verdict, none.because]).toEqual(['cannot-be-judged', 'silver-loaded'])
    expect(none.sentences[0]).toMatch(/silver .* cannot be washed safe/)
  })
})
