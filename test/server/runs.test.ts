import { beforeAll, describe, expect, it } from 'vitest'
import { SHIPPED_RECIPES } from '../../src/score/index.js'
import { eventId, happened, listOfBaths, runPlan, tank, wholeRun } from '../support/runs.js'
import { expectRefusal, houses, type Served } from '../support/server.js'

const serve = houses()
let served: Served
beforeAll(async () => {
  served = await serve()
})

const get = (url: string, more: object = {}) => served.ask({ url, ...more })
const post = (url: string, body: unknown, more: object = {}) => served.ask({ method: 'POST', url, body, ...more })
const newRun = async (body: unknown = runPlan()): Promise<string> => (await post('/api/runs', body)).json.id
let first = 1
/** Events whose ids no other test has used. */
const fresh = () => (first += 100)

describe('lists of baths', () => {
  it('crosses the boundary whole: every shipped list comes out as it is and is taken in again', async () => {
    const { json } = await get('/api/recipes')
    expect(json.recipes.map(({ recipe }: { recipe: unknown }) => recipe)).toEqual(SHIPPED_RECIPES)
    for (const { id, ...statement } of SHIPPED_RECIPES) {
      const kept = await post('/api/recipes', { copied_from: id, statement: { ...statement, name: `my ${id}` } })
      expect([kept.status, kept.json.copied_from]).toEqual([200, id])
      expect(kept.json.recipe.steps).toEqual(statement.steps)
    }
  })

  it('prints: one of the program’s, one’s own, and none that is not there', async () => {
    const own = await post('/api/recipes', { statement: listOfBaths({ name: 'For the wall' }) })
    for (const id of [SHIPPED_RECIPES[0]?.id, own.json.id]) {
      const { status, headers, raw } = await get(`/api/recipes/${id}/list.pdf?paper=Letter`)
      expect([status, headers['content-type']]).toEqual([200, 'application/pdf'])
      expect(raw.toString('latin1')).toContain('/MediaBox [0 0 612 792]')
    }
    expectRefusal(await get('/api/recipes/nothing/list.pdf'), 'record.not-found')
  })

  it('says what is wrong with a list, where, and what would be right', async () => {
    const { steps } = listOfBaths()
    const odd = [{ ...steps[0], kind: 'soup' }]
    const shape = await post('/api/recipes', { statement: listOfBaths({ steps: odd as never }) })
    expectRefusal(shape, 'request.invalid')
    expect(shape.json).toMatchObject({ field: 'statement.steps[0].kind' })
    expect(shape.json.sentence).toContain('“soup”')
    const short = { ...steps[0], time: { law: 'fixed', seconds: 2, origin: 'practice' } }
    expectRefusal(
      await post('/api/recipes', { statement: listOfBaths({ steps: [short] as never }) }),
      'recipe.bad-time',
    )
    const deep = {
      kind: 'then-continuous',
      from: 1,
      before: { kind: 'then-continuous', from: 1, before: { kind: 'none' } },
    }
    const nested = await post('/api/recipes', {
      statement: listOfBaths({ steps: [{ ...steps[0], agitation: deep }] as never }),
    })
    expectRefusal(nested, 'request.invalid')
    const shipped = SHIPPED_RECIPES[0]?.id
    const change = { seen_revision: 1, statement: listOfBaths({ name: 'other' }) }
    expectRefusal(
      await served.ask({ method: 'PUT', url: `/api/recipes/${shipped}`, body: change }),
      'recipe.comes-with-program',
    )
  })
})

describe('a run', () => {
  it('is planned, followed, judged and listed', async () => {
    const id = await newRun()
    const events = wholeRun(fresh())
    const half = await post(`/api/runs/${id}/events`, { events: events.slice(0, 4) })
    expect([half.status, half.json.last_seq]).toEqual([200, 4])
    const rest = await post(`/api/runs/${id}/events`, { events })
    expect(rest.json.events.map(({ seq }: { seq: number }) => seq)).toEqual(events.map((_, i) => i + 1))
    const later = await get(`/api/runs/${id}/events?after=4`)
    expect(later.json.events).toEqual(rest.json.events.slice(4))
    expect(later.json.events[0].event).toEqual(events[4])
    const judged = await post(`/api/runs/${id}/verdicts`, { tank: 'A', density: 'right', marks: ['bubbles'] })
    expect(judged.json).toMatchObject({ state: 'finished', verdicts: [{ density: 'right', note: '', stands: true }] })
    expect((await get(`/api/runs/${id}`)).json).toEqual(judged.json)
    const list = await get('/api/runs?film=corvane%20400&ended=true&practice=false&limit=3')
    expect(list.json).toMatchObject({ more: false, runs: [{ id, outcome: [{ phase: 'done' }] }] })
  })

  it('is told to other screens, with its id', async () => {
    const id = await newRun()
    await post(`/api/runs/${id}/events`, { events: [happened('started', fresh())] })
    const told = await served.house.store.read(served.house.homeBench, ({ feed }) => feed.after(0, 1000))
    expect(told.filter(({ subject }) => subject === id).map(({ kind }) => kind)).toEqual(['runs', 'runs'])
  })

  it('answers a phone that sends again, with or without a key, as the first time', async () => {
    const id = await newRun()
    const phone = (await served.pair()).as
    const events = [happened('started', fresh())]
    const headers = { 'idempotency-key': 'a phone’s first'.replace(/[^!-~]/g, '-') }
    const one = await post(`/api/runs/${id}/events`, { events }, { ...phone, headers })
    expect(one.status).toBe(200)
    expect((await post(`/api/runs/${id}/events`, { events }, { ...phone, headers })).json).toEqual(one.json)
    expect((await post(`/api/runs/${id}/events`, { events }, phone)).json).toEqual(one.json)
  })

  it.each<[string, Record<string, unknown>, string]>([
    ['a kind there is not', { kind: 'paused' }, 'events[0].kind'],
    ['no id', { id: 'first' }, 'events[0].id'],
    ['part of a millisecond', { monotonicMs: 1.5 }, 'events[0].monotonicMs'],
    ['a clock beyond all years', { wallMs: 1e15 }, 'events[0].wallMs'],
    ['a field of another kind', { temperature: 20 }, 'events[0].temperature'],
    ['a step that is no number', { bath: 'developer' }, 'events[0].bath'],
  ])('refuses an event with %s and keeps nothing', async (_, change, field) => {
    const id = await newRun()
    const answer = await post(`/api/runs/${id}/events`, { events: [{ ...happened('started', fresh()), ...change }] })
    expectRefusal(answer, 'request.invalid')
    expect(answer.json.field).toBe(field)
    expect((await get(`/api/runs/${id}`)).json.last_seq).toBe(0)
  })

  it('refuses plans with a sentence', async () => {
    expectRefusal(await post('/api/runs', { tanks: [] }), 'request.invalid')
    expectRefusal(await post('/api/runs', runPlan({ practice: 3 })), 'request.invalid')
    const cold = { tank: 'A', development: { from: 'own', time: 480, temperature: 20 }, temperatures: { fix: 5 } }
    const [, fixer] = [0, tank().recipe.steps.find(({ kind }: { kind: string }) => kind === 'fix')]
    const far = { ...cold, temperatures: { [fixer.id]: 5 } }
    expectRefusal(
      await post('/api/runs', runPlan({ tanks: [tank('A', 'x', { conditions: far })] })),
      'score.bath-too-far',
    )
    expectRefusal(await get(`/api/runs/${eventId(1)}`), 'record.not-found')
    expectRefusal(await get(`/api/runs/${eventId(1)}/live`), 'record.not-found')
    expectRefusal(await get('/api/runs?limit=many'), 'request.invalid')
    expectRefusal(await get('/api/runs?ended=perhaps'), 'request.invalid')
  })

  it('refuses what was typed in from paper and cannot have been so, naming the event', async () => {
    const id = await newRun()
    const number = fresh()
    const stated = (kind: 'poured-in' | 'poured-out' | 'noted', n: number, bath: number | null, second: number) =>
      happened(kind, number + n, bath, {
        device: 'paper',
        life: 'sheet',
        ...{ statedMs: served.clock.now() - 7_200_000 + second * 1000, statedTo: 'second' },
        ...(kind === 'noted' ? { text: 'as written' } : {}),
      })
    const sheet = [stated('poured-in', 1, 0, 15), stated('poured-out', 2, 0, 495)]
    const refusals = [
      [[stated('poured-in', 3, 0, 495), stated('poured-out', 4, 0, 15)], 'paper.out-before-in', 'events[1]'],
      [[...sheet, stated('poured-in', 5, 2, 300)], 'paper.out-of-order', 'events[2]'],
      [[...sheet, stated('noted', 6, null, 9000)], 'paper.ahead', 'events[2]'],
    ] as const
    for (const [events, code, field] of refusals) {
      const answer = await post(`/api/runs/${id}/events`, { events })
      expectRefusal(answer, code)
      expect(answer.json.field).toBe(field)
    }
    expect((await get(`/api/runs/${id}`)).json.last_seq).toBe(0)
    expect((await post(`/api/runs/${id}/events`, { events: sheet })).status).toBe(200)
    const late = await post(`/api/runs/${id}/events`, { events: [stated('poured-in', 7, 2, 300)] })
    expectRefusal(late, 'paper.out-of-order')
  })

  it('survives events that make no sense: it can still be read, listed and printed', async () => {
    const id = await newRun()
    const number = fresh()
    const events = [
      happened('poured-out', number, 0, { seconds: 500 }),
      happened('poured-in', number + 1, 0, { statedMs: 0 }),
      happened('poured-in', number + 2, 2, { statedMs: 99_999_999_999_999 }),
      happened('mishap', number + 3, 0, { mishap: 'wrong-dilution', referenceTime: 0 }),
      happened('reading', number + 4, 0, { temperature: 199, confirmed: true }),
      happened('retracted', number + 5, null, { of: eventId(number + 5) }),
      happened('clock-settled', number + 6, null, { life: 'nobody', choice: 'by-wall' }),
      happened('step-done', number + 7, 3, { clearing: 604_800 }),
    ]
    for (const event of events)
      expect((await post(`/api/runs/${id}/events`, { events: [event] })).status, event.kind).toBe(200)
    expect((await get(`/api/runs/${id}`)).status).toBe(200)
    expect((await get('/api/runs')).status).toBe(200)
  })
})

describe('the papers of a run', () => {
  it.each(['sheet', 'record'])('prints the %s as PDF, on both papers', async (paper) => {
    const id = await newRun()
    await post(`/api/runs/${id}/events`, { events: wholeRun(fresh()) })
    for (const size of ['A4', 'Letter']) {
      const answer = await get(`/api/runs/${id}/${paper}.pdf?paper=${size}`)
      expect([answer.status, answer.headers['content-type']]).toEqual([200, 'application/pdf'])
      expect(answer.raw.subarray(0, 5).toString()).toBe('%PDF-')
    }
  })

  it('prints no record while the time of a device is in doubt', async () => {
    const id = await newRun()
    const number = fresh()
    const before = { life: 'life-0', monotonicMs: 1000, wallMs: 1_772_366_400_000, serverOffsetMs: null }
    const moved = { ...happened('resumed', number, null, { previous: before }), serverOffsetMs: null, life: 'life-1' }
    const event = { ...moved, wallMs: before.wallMs + 3_600_000 }
    expect((await post(`/api/runs/${id}/events`, { events: [event] })).status).toBe(200)
    expectRefusal(await get(`/api/runs/${id}/record.pdf`), 'run.clock-in-doubt')
    expect((await get(`/api/runs/${id}`)).json.outcome).toEqual([])
    const settled = {
      ...happened('clock-settled', number + 1, null, { life: 'life-1', choice: 'by-wall' }),
      serverOffsetMs: null,
    }
    await post(`/api/runs/${id}/events`, { events: [settled] })
    expect((await get(`/api/runs/${id}/record.pdf`)).status).toBe(200)
  })
})
