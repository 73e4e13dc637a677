// A small bench lives two months over HTTP; after each act all its bottles are held against the second book.
import { beforeAll, describe, expect, it } from 'vitest'
import { expectRefusal, houses } from '../support/server.js'
import type { Film } from './book.js'
import {
  asUse,
  bath,
  baths,
  beginAt,
  clearing,
  compare,
  done,
  find,
  furnish,
  get,
  id,
  jug,
  mix,
  on,
  post,
  shelf,
  station,
  tank,
  today,
} from './hands.js'

const serve = houses()

const small = (count: number, more: Partial<Film> = {}): Film => ({ format: '135', frames: 36, count, ...more })
/** Fourteen tanks: the day, the film, how much of each bath it takes. */
const TANKS: readonly (readonly [number, readonly Film[], number])[] = [
  [1, [small(2)], 600],
  [2, [{ format: '120', count: 1 }], 500],
  [5, [small(1, { frames: 24 }), small(1)], 600],
  [8, [{ format: '4x5', count: 6 }], 650],
  [9, [small(1, { family: 'tabular' }), small(1)], 600],
  [14, [{ format: '120', count: 2 }], 650],
  [16, [small(2)], 600],
  [21, [{ format: '5x7', count: 4 }], 650],
  [23, [small(1, { frames: 12 })], 300],
  [28, [{ format: '8x10', count: 2 }], 650],
  [30, [small(2)], 600],
  [37, [{ format: '120', count: 1, family: 'high-iodide' }], 500],
  [44, [small(2), { format: '120', count: 1 }], 600],
  [51, [small(1)], 300],
]

beforeAll(async () => {
  beginAt(await serve())
})

describe('two months at a small bench', () => {
  it('begins with four lots, two of their bottles first and second fixing bath', async () => {
    await furnish()
    on(0)
    await mix('developer', [['developer', 2000]])
    await mix('replenisher', [['replenisher', 2000]])
    await mix('stop', [['stop', 1000]], [['acid', 50]])
    const fixer: [string, number][] = [
      ['fixer one', 1000],
      ['fixer two', 1000],
    ]
    await mix('fixer', fixer, [['concentrate', 400]])
    await station('fixer one', 'first')
    await station('fixer two', 'second')
    await clearing('fixer one', 35, true)
    await compare()
  })

  it('keeps count through seven tanks, a mistake that is taken back, and what is refused', async () => {
    for (const [day, film, poured] of TANKS.slice(0, 7)) {
      on(day)
      await tank(film, poured)
      await compare()
    }
    const before = JSON.stringify(await shelf())
    expectRefusal(
      await post('/api/shelf/use', { ...asUse('stop', [small(1)], 300), for_role: 'fixer' }),
      'shelf.wrong-role',
    )
    expectRefusal(
      await post('/api/shelf/use', { ...asUse('stop', [small(1)], 300), back_into: id('fixer one') }),
      'shelf.back-into-other',
    )
    expectRefusal(await post('/api/shelf/use', asUse('stop', [small(1)], 5000)), 'shelf.not-enough')
    expectRefusal(
      await post('/api/shelf/discard', { container_id: id('fixer one'), where: 'as-allowed' }),
      'shelf.into-a-jug-only',
    )
    expect(JSON.stringify(await shelf())).toBe(before)
    const wrong = await done(post('/api/shelf/use', asUse('stop', [small(3)], 300)))
    expect(JSON.stringify(await shelf())).not.toBe(before)
    await done(post(`/api/shelf-entries/${wrong.entry.id}/take-back`, { note: 'was another bottle' }))
    await compare()
  })

  it('makes room for the replenisher by pouring some of the bath away', async () => {
    on(18)
    await clearing('fixer one', 46)
    const asked = { container_id: id('developer'), amount: 300, where: 'as-allowed' }
    await done(post('/api/shelf/discard', asked))
    bath('developer').takeOut(today, 300)
    await compare()
  })

  it('finds the first fixing bath finished and rotates: the second becomes the first', async () => {
    for (const [day, film, poured] of TANKS.slice(7, 11)) {
      on(day)
      await tank(film, poured)
      await compare()
    }
    await clearing('fixer one', 55)
    const { clearing: read } = find((await shelf()).bottles, 'fixer one').left
    // 55 s now: at least 1:50, by the longer practice 2:45; the bin at 1:10.
    expect(read).toMatchObject({ fresh_s: 35, now_s: 55, finished: false })
    expect([110, 165]).toContain(read.fix_for_s)
    await compare()
    on(31)
    await clearing('fixer one', 70)
    expect(find((await shelf()).bottles, 'fixer one').left).toMatchObject({ rolls: 0, state: 'finished' })
    await done(post('/api/shelf/discard', { container_id: id('fixer one'), where: 'jug', jug_id: id('jug') }))
    const spent = bath('fixer one')
    jug.ml += spent.ml
    jug.rolls += spent.rolls
    baths.delete('fixer one')
    await station('fixer two', 'first')
    await compare()
    await mix('fixer', [['fixer one', 1000]], [['concentrate', 200]])
    await station('fixer one', 'second')
    await compare()
  })

  it('goes on to the fourteenth tank and hands the waste over', async () => {
    for (const [day, film, poured] of TANKS.slice(11)) {
      on(day)
      await tank(film, poured)
      await compare()
    }
    on(59)
    const fixer = find((await shelf()).bottles, 'fixer two')
    await done(post('/api/shelf/discard', { container_id: fixer.id, where: 'jug', jug_id: id('jug') }))
    jug.ml += bath('fixer two').ml
    jug.rolls += bath('fixer two').rolls
    baths.delete('fixer two')
    await compare()
    const [filled] = (await shelf()).jugs
    expect([filled.opened_at.slice(0, 10), filled.full]).toEqual(['2026-04-01', false])
    await done(post('/api/shelf/hand-over', { jug_id: id('jug'), to: 'Council collection point' }))
    jug.ml = 0
    jug.rolls = 0
    await compare()
  })

  it('has a history of every lot that adds up to what stands in its bottles', async () => {
    const { lots } = await done(post('/api/lots/find', {}))
    expect(lots).toHaveLength(5)
    for (const { id: lotId } of lots) {
      const { history, containers } = (await get(`/api/lots/${lotId}`)).json
      const sum = history
        // biome-ignore lint/suspicious/noExplicitAny: as above.
        .flatMap(({ legs }: any) => legs.filter((leg: any) => leg.lot_id === lotId))
        .reduce((total: number, { change }: { change: number }) => total + Math.round(change * 1000), 0)
      const stands = containers.reduce(
        (total: number, { held }: { held: number }) => total + Math.round(held * 1000),
        0,
      )
      expect(sum).toBe(stands)
    }
  })
})
