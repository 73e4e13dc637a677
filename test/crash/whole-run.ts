import { randomUUID } from 'node:crypto'
import { expect } from 'vitest'
import { expectOk, type SeededRandom } from '../../src/kernel/index.js'
import { fold, follow, plan, type RunEvent, type TankWish } from '../../src/score/index.js'
import { ask, send, sendOk } from './asking.js'
import { planned } from './drivers-runs.js'
import type { House } from './house.js'

/** A phone writes something down so often, ms, whether the server answers or not. */
const WRITES_EVERY_MS = 15
/** The kill comes up to so long after the server is back, ms. */
const LATEST_KILL_MS = 120
const BATCH = 100
const NOON = 1_772_366_400_000

interface KeptRun {
  readonly id: string
  readonly plan: { readonly tanks: readonly TankWish[] }
  readonly events: readonly { readonly seq: number; readonly event: RunEvent }[]
}

/** A phone at the sink, as the page does it: written down first, sent when it can be, and again until it is answered. */
class Phone {
  readonly written: RunEvent[] = []
  #unsent: RunEvent[] = []
  #second = 0
  acknowledged = 0

  constructor(
    readonly house: House,
    readonly id: string,
    readonly random: SeededRandom,
  ) {}

  write(): void {
    const event = this.#happens()
    this.written.push(event)
    this.#unsent.push(event)
  }

  /** One sending, which may fail. Each has a key of its own, so ids alone keep it from doubling. */
  async send(): Promise<void> {
    const events = this.#unsent.slice(0, BATCH)
    if (events.length === 0) return
    const answer = await send(this.house.url, ask('POST', `/api/runs/${this.id}/events`, { events }))
    if (answer === undefined) return
    expect(answer.status, answer.text).toBe(200)
    this.acknowledged++
    this.#unsent = this.#unsent.filter((event) => !events.includes(event))
  }

  async sendAll(): Promise<void> {
    while (this.#unsent.length > 0) await this.send()
  }

  #happens(): RunEvent {
    this.#second += 1 + Math.floor(this.random.unit() * 20)
    const stamp = { id: randomUUID(), device: 'phone', life: 'one', serverOffsetMs: NOON, tank: 'A', actor: 'owner' }
    const at = { ...stamp, monotonicMs: this.#second * 1000, wallMs: NOON + this.#second * 1000 }
    const pours = this.written.filter(({ kind }) => kind === 'poured-in' || kind === 'poured-out').length
    const last = this.written.at(-1)
    if (pours < 6 && this.random.unit() < 0.2)
      return { ...at, bath: Math.floor(pours / 2), kind: pours % 2 === 0 ? 'poured-in' : 'poured-out' }
    if (last !== undefined && this.random.unit() < 0.2) return { ...at, bath: null, kind: 'retracted', of: last.id }
    return { ...at, bath: null, kind: 'noted', text: `second ${this.#second}` }
  }
}

/**
 * A run goes on through so many kills of the server. Afterwards the server has what the phone has, once each and in
 * one order, and both say the same about what is next.
 */
export async function runThroughKills(house: House, kills: number, random: SeededRandom) {
  const bottle = await filledBottle(house.url)
  const [tank] = planned('Beck 400').tanks
  const conditions = { ...tank?.conditions, volume: 500 }
  const tanks = [{ ...tank, conditions, from_shelf: [{ step: 0, container_id: bottle }] }]
  const run = await sendOk<KeptRun>(house.url, ask('POST', '/api/runs', { tanks }))
  const phone = new Phone(house, run.id, random)
  let over = false
  const atTheSink = async () => {
    while (!over) {
      phone.write()
      await Promise.race([phone.send(), pause(WRITES_EVERY_MS)])
      await pause(WRITES_EVERY_MS)
    }
  }
  const going = atTheSink()
  for (let kill = 0; kill < kills; kill++) {
    await pause(random.unit() * LATEST_KILL_MS)
    await house.kill()
    await house.start()
  }
  over = true
  await going
  await phone.sendAll()
  const kept = await sendOk<KeptRun>(house.url, ask('GET', `/api/runs/${run.id}`, undefined))
  sameOnBoth(kept, phone.written)
  await bookedOnce(house.url, kept, bottle)
  return { acknowledged: phone.acknowledged, written: phone.written.length }
}

/** A litre of a developer that is used again, in a bottle of its own. */
async function filledBottle(url: string): Promise<string> {
  const make = (path: string, body: object) => sendOk<{ id: string }>(url, ask('POST', path, body))
  const product = { name: randomUUID(), role: 'developer', use: 'reusable' }
  const { id: product_id } = await make('/api/products', product)
  const statement = { kind: 'bottle', name: product.name, holds_ml: 1000 }
  const { id } = await make('/api/containers', { statement })
  await make('/api/lots', { product_id, into: [{ container_id: id, ml: 1000 }] })
  return id
}

/** mL that two rolls of 135 carry out of a bath. */
const CARRIED = 40

/** However often its pour was written, taken back and sent again, a bath that stands is booked once, and else not at all. */
async function bookedOnce(url: string, kept: KeptRun, bottle: string): Promise<void> {
  const events = kept.events.map(({ event }) => event)
  const { tanks } = fold(expectOk(plan(kept.plan.tanks)), events)
  const stands = tanks[0]?.steps.get(0)?.pouredOut ? 1 : 0
  type Stand = { readonly id: string; readonly held: number; readonly left: { readonly met: number } }
  const { bottles } = await sendOk<{ bottles: Stand[] }>(url, ask('GET', '/api/shelf', undefined))
  const found = bottles.find(({ id }) => id === bottle)
  expect([found?.held, found?.left.met]).toEqual([1000 - stands * CARRIED, stands * 2])
}

function sameOnBoth(kept: KeptRun, written: readonly RunEvent[]): void {
  const events = kept.events.map(({ event }) => event)
  expect(events.map(({ id }) => id).sort()).toEqual(written.map(({ id }) => id).sort())
  expect(kept.events.map(({ seq }) => seq)).toEqual(kept.events.map((_, i) => i + 1))
  const score = expectOk(plan(kept.plan.tanks))
  const now = Math.max(...written.map(({ wallMs }) => wallMs)) + 1
  const [server, phone] = [events, written].map((all) => follow(score, fold(score, all), now))
  expect(server).toEqual(phone)
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms))
