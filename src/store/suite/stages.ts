import { expect } from 'vitest'
import { ok } from '../../kernel/index.js'
import type { Context, Rooms, Store } from '../../lab/index.js'
import { NOON, thermometerOf, timeOf, world } from './house.js'
import { ORDER, rollEventOf, rollOf } from './roll-samples.js'
import { recipeOf, runOf } from './run-samples.js'
import { bottleNamed, containerOf, entryAt, legTo, lotOf, PRODUCT } from './shelf-samples.js'

// What each finished stage kept, in the words of today's ports. A stage kept all that the one before it kept.

/** The house as the first stage could keep it: times, thermometers, a device, the feed. */
export async function stageOne(store: Store): Promise<void> {
  const benches = await store.read('', (rooms) => rooms.house.benches())
  expect(benches).toMatchObject([{ kind: 'own', name: 'Cellar', units: 'metric', paper: 'A4', zone: 'Europe/Zurich' }])
  await store.read(benches[0]?.id ?? '', async (rooms) => {
    const [time] = await rooms.times.all()
    const id = time?.id ?? ''
    expect(time).toEqual(timeOf(id, 2, { note: 'corrected', coefficient: null }))
    expect(await rooms.times.revision(id, 1)).toEqual(timeOf(id))
    const [dial, spirit] = await rooms.kit.all()
    expect(dial).toEqual(thermometerOf(dial?.id ?? '', 1, { name: 'Dial', kind: 'dial' }))
    expect(spirit).toEqual(thermometerOf(spirit?.id ?? ''))
    const checks = await rooms.kit.checks()
    expect(checks).toMatchObject([
      { thermometerId: spirit?.id, at: NOON, method: 'ice', read: 0.3, true: 0, setId: null, withdrawn: true },
      { thermometerId: dial?.id, at: NOON + 5, method: 'ice', read: 0.3, true: 0, withdrawn: false },
    ])
    expect(checks[1]?.setId).toMatch(/^[0-9a-f-]{36}$/)
    const [device] = await rooms.people.devices()
    expect(device).toMatchObject({ name: 'Phone', pairedAt: NOON, lastSeenAt: null, removedAt: null })
    expect(await rooms.people.deviceByToken(`hash of ${device?.id}`)).toEqual(device)
    expect(await rooms.feed.after(0, 10)).toEqual([
      { seq: 1, kind: 'times', subject: id, at: NOON },
      { seq: 2, kind: 'thermometers', subject: spirit?.id, at: NOON + 1 },
    ])
  })
}

/** Since then: an own list of baths, a run with what happened in it, and a word on its negatives. */
export async function stageTwo(store: Store): Promise<void> {
  await stageOne(store)
  await inTheBench(store, async (rooms) => {
    const [list] = await rooms.recipes.all()
    expect(list).toEqual(recipeOf(list?.id ?? ''))
    const [run] = await rooms.runs.newest({ film: null, ended: null, practice: null, before: null, most: 10 })
    const { plan, plannedAt } = runOf(run?.id ?? '')
    expect(run).toMatchObject({ plannedAt, state: 'running', startedAt: NOON, endedAt: null, lastSeq: 1 })
    expect(run?.plan.tanks[0]?.on_reels).toEqual(plan.tanks[0]?.on_reels)
    const [first, ...more] = await rooms.runs.events(run?.id ?? '', 0)
    expect(more).toEqual([])
    expect(first).toMatchObject({ seq: 1, receivedAt: NOON + 3, event: { kind: 'skipped', reason: 'it’s gone; --' } })
    expect(await rooms.runs.verdicts([run?.id ?? ''])).toMatchObject([
      { density: 'thin', marks: ['streaks'], at: NOON },
    ])
  })
}

/** Since then: a roll of an order with its way, the numbers given out, an order counted out and its link. */
export async function stageThree(store: Store): Promise<void> {
  await stageTwo(store)
  await inTheBench(store, async (rooms) => {
    const [order] = await rooms.orders.all()
    const orderId = order?.id ?? ''
    expect(order?.statement).toEqual(ORDER)
    expect(await rooms.orders.countsOut([orderId])).toEqual([{ orderId, count: 1, at: NOON, by: 'owner' }])
    expect(await rooms.orders.links([orderId])).toMatchObject([{ tokenHash: `hash of ${orderId}`, revokedAt: null }])
    const [roll] = await rooms.rolls.ofOrders([orderId])
    const hung = { state: 'hung', stateAt: NOON + 5000, runId: null, hook: '3' } as const
    expect(roll).toEqual(rollOf(roll?.id ?? '', 1, NOON, { orderId, twin: 1, ...hung }))
    const [event] = await rooms.rolls.events([roll?.id ?? ''])
    expect(event).toEqual(rollEventOf(event?.id ?? '', roll?.id ?? '', NOON))
    expect(await rooms.rolls.pattern()).toBe('{year}-{n4}')
  })
  await store.write(await contextOf(store), null, async (rooms) => {
    expect(await rooms.rolls.nextNumbers('roll', 2026, 1)).toBe(11)
    return ok(null)
  })
}

/** Since then: a lot of a kept product in its bottle, and the entry of the ledger that put it there. */
export async function stageFour(store: Store): Promise<void> {
  await stageThree(store)
  await inTheBench(store, async (rooms) => {
    const { lots, found } = await rooms.shelf.findLots({ words: '', after: null, most: 10 })
    const [lot] = lots
    expect([found, lot]).toEqual([1, lotOf(lot?.id ?? '', lot?.productId ?? '', NOON)])
    expect((await rooms.products.newest(lot?.productId ?? ''))?.statement).toEqual(PRODUCT)
    const [bottle] = await rooms.shelf.all()
    const holds = { lotId: lot?.id ?? null, held: 900_000, basis: 900_000, seq: 1 }
    expect(bottle).toEqual(containerOf(bottle?.id ?? '', NOON, holds))
    expect((await rooms.shelf.containers.newest(bottle?.id ?? ''))?.statement).toEqual(bottleNamed('Brown 1'))
    const [entry, ...more] = await rooms.shelf.entriesOfLots([lot?.id ?? ''])
    const legs = [legTo(bottle?.id ?? '', lot?.id ?? '', 900_000)]
    expect(more).toEqual([])
    expect(entry).toEqual(entryAt(entry?.id ?? '', NOON, legs, { told: { kind: 'mixed', parts: [1, 4] } }))
  })
}

async function contextOf(store: Store): Promise<Context> {
  const [bench] = await store.read('', (rooms) => rooms.house.benches())
  return { actor: { role: 'owner', id: 'owner' }, bench: bench?.id ?? '', ...world(9) }
}

async function inTheBench(store: Store, look: (rooms: Rooms) => Promise<void>): Promise<void> {
  await store.read((await contextOf(store)).bench, look)
}
