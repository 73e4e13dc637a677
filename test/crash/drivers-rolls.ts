import { randomUUID } from 'node:crypto'
import { ask, sendOk } from './asking.js'
import { type Data, rows } from './data.js'
import type { Driver } from './drivers.js'
import { LANES, type Made, made, markers, PER_LANE, statedDrivers } from './drivers-stated.js'

const AT_ONCE = 3
const newMarker = markers('roll')
const { correcting, ending, freshAt, keeping } = statedDrivers(newMarker)

type Rolls = { readonly rolls: readonly Made[] }

const statement = (film: string) => ({ film, process: 'black-and-white', format: '135' })
const takeIn = (film: string) => ({ rolls: Array.from({ length: AT_ONCE }, () => ({ statement: statement(film) })) })
const order = (person: string) => ({ person, counted_in: 2 })
const film = (name: string) => ({ name, process: 'black-and-white' })
const vessel = (name: string) => ({ kind: 'graduate', name, holds_ml: 100, marked_every_ml: 1 })

let imported = 0
/** A register of rolls that nobody else has, each with a step. */
function registerOf(film: string) {
  const at = '2026-02-01T08:00:00.000Z'
  const rolls = Array.from({ length: AT_ONCE }, () => {
    const n = ++imported
    const step = { id: randomUUID(), at, by: 'owner', state: 'hung', hook: '4', reason: '' }
    return {
      id: randomUUID(),
      number: `old-${n}`,
      year: 1999,
      n,
      twin: null,
      order_id: null,
      taken_in_at: at,
      taken_in_by: 'owner',
      statement: statement(film),
      steps: [{ ...step, run_id: null, batch_id: null, retracts: null }],
    }
  })
  return { register: 'rolls', version: 1, pattern: null, counters: [], films: [], orders: [], rolls }
}

const freshRolls = (url: string) => async () =>
  (await sendOk<Rolls>(url, ask('POST', '/api/rolls', takeIn(newMarker())))).rolls.map(({ id }) => id)

/** Requests that each work on rolls, or on an order, of their own. */
const onFresh = (
  make: (url: string) => Promise<(lanes: number) => Promise<string[][]>>,
  request: (id: string) => ReturnType<typeof ask>,
  effects: Driver['effects'],
): Driver => ({
  lanes: LANES,
  keyed: true,
  async prepare(url, lanes) {
    const ids = await (await make(url))(lanes)
    return (lane, n) => {
      const id = ids[lane]?.[n]
      return id === undefined ? null : request(id)
    }
  },
  effects,
})

const someRolls = async (url: string) => async (lanes: number) =>
  (await made(lanes, PER_LANE / AT_ONCE, freshRolls(url))).map((groups) => groups.flat())

const someOrders = async (url: string) => async (lanes: number) =>
  (await made(lanes, PER_LANE, () => freshAt('/api/orders', order)(url))).map((group) => group.map(({ id }) => id))

/** Orders with one sleeved roll each. */
const readyOrders = async (url: string) => async (lanes: number) =>
  made(lanes, PER_LANE, async () => {
    const { id } = await freshAt('/api/orders', order)(url)
    const asked = { order_id: id, rolls: [{ statement: statement(newMarker()) }] }
    const { rolls } = await sendOk<Rolls>(url, ask('POST', '/api/rolls', asked))
    await sendOk(url, ask('POST', '/api/rolls/move', { roll_ids: rolls.map((roll) => roll.id), state: 'sleeved' }))
    return id
  })

const someLinks = async (url: string) => async (lanes: number) =>
  made(lanes, PER_LANE, async () => {
    const { id } = await freshAt('/api/orders', order)(url)
    return (await sendOk<Made>(url, ask('POST', `/api/orders/${id}/links`, {}))).id
  })

const someBatches = async (url: string) => async (lanes: number) =>
  made(lanes, PER_LANE, async () => {
    const ids = await freshRolls(url)()
    const moved = { roll_ids: ids, state: 'developed' }
    return (await sendOk<{ batch_id: string }>(url, ask('POST', '/api/rolls/move', moved))).batch_id
  })

/** The roll stands where its steps lead, or the write is half there. */
function moved(data: Data, id: string | number, state: string): number {
  const [roll] = rows(data, 'rolls', { id })
  const steps = rows(data, 'roll_events', { roll_id: id, state }).length
  return (roll?.['state'] === state) === (steps === 1) ? steps : 0.5
}

export const rollDrivers = {
  takeInRolls: {
    lanes: LANES,
    keyed: true,
    prepare: async () => () => {
      const name = newMarker()
      return ask('POST', '/api/rolls', takeIn(name), name)
    },
    effects: (data, { marker }) => rows(data, 'rolls', { film_key: marker }).length / AT_ONCE,
  },
  correctRoll: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await made(lanes, 1, freshRolls(url))
      return (lane, n) => {
        const name = newMarker()
        const asked = { seen_revision: n + 1, statement: statement(name) }
        return ask('PUT', `/api/rolls/${ids[lane]?.[0]?.[0]}`, asked, name)
      }
    },
    effects: (data, { marker }) =>
      rows(data, 'roll_revisions', {}).filter((row) => String(row['statement']).includes(`"${marker}"`)).length,
  },
  undoRoll: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await made(lanes, 1, async () => {
        const [id] = await freshRolls(url)()
        await sendOk(url, ask('PUT', `/api/rolls/${id}`, { seen_revision: 1, statement: statement(newMarker()) }))
        return id as string
      })
      return (lane, n) =>
        ask('POST', `/api/rolls/${ids[lane]?.[0]}/undo`, { seen_revision: n + 2 }, `${ids[lane]?.[0]} ${n + 3}`)
    },
    effects: (data, { marker }) => {
      const [id, revision] = String(marker).split(' ')
      return rows(data, 'roll_revisions', { roll_id: id as string, revision: Number(revision) }).length
    },
  },
  moveRolls: onFresh(
    someRolls,
    (id) => ask('POST', '/api/rolls/move', { roll_ids: [id], state: 'hung', hook: '4' }, id),
    (data, { marker }) => moved(data, marker, 'hung'),
  ),
  changeRolls: onFresh(
    someRolls,
    (id) => ask('POST', '/api/rolls/change', { roll_ids: [id], change: { whose: 'Ida' } }, id),
    (data, { marker }) => rows(data, 'roll_revisions', { roll_id: marker, revision: 2 }).length,
  ),
  undoRollBatch: onFresh(
    someBatches,
    (id) => ask('POST', `/api/roll-batches/${id}/undo`, {}, id),
    (data, { marker }) => {
      const events = rows(data, 'roll_events', { batch_id: marker }).map((row) => row['id'])
      return rows(data, 'roll_events', {}).filter((row) => events.includes(row['retracts'])).length / AT_ONCE
    },
  ),
  reserveNumbers: {
    lanes: LANES,
    keyed: true,
    // The answer names no marker, so each asks for a count that nobody else asks for.
    prepare: async () => {
      let count = 20
      return () => (count >= 200 ? null : ask('POST', '/api/roll-numbers/reserve', { count: ++count }, count))
    },
    effects: (data, { marker }) =>
      rows(data, 'number_blocks', {}).filter((row) => Number(row['last']) - Number(row['first']) + 1 === marker).length,
  },
  changeNumbering: {
    lanes: 1,
    keyed: true,
    prepare: async () => (_, n) => ask('PUT', '/api/roll-numbers', { pattern: `{year}-{n${(n % 3) + 4}}` }),
    effects: () => 1,
    state: (data) => {
      const patterns = rows(data, 'number_patterns', {}).map((row) => String(row['pattern']))
      return patterns.every((pattern) => /^\{year\}-\{n[456]\}$/.test(pattern)) ? [] : [`pattern ${patterns.join()}`]
    },
  },
  importRegister: {
    lanes: LANES,
    keyed: true,
    prepare: async () => () => {
      const name = newMarker()
      return ask('POST', '/api/rolls/register', { text: JSON.stringify(registerOf(name)) }, name)
    },
    // The rolls, each with its step, or nothing.
    effects: (data, { marker }) => {
      const found = rows(data, 'rolls', { film_key: marker, state: 'hung' })
      const steps = found.flatMap((row) => rows(data, 'roll_events', { roll_id: row['id'] as string }))
      return found.length === steps.length ? found.length / AT_ONCE : 0.5
    },
  },
  keepView: keeping('/api/roll-views', (name) => ({ name, look: { words: 'x' } })),
  removeView: ending('DELETE', '/api/roll-views', '', (name) => ({ name, look: { words: 'x' } })),
} satisfies Record<string, Driver>

export const orderDrivers = {
  addOrder: keeping('/api/orders', order),
  correctOrder: correcting('/api/orders', order, order),
  removeOrder: ending('DELETE', '/api/orders', '', order),
  undoOrder: ending('POST', '/api/orders', '/undo', order),
  handBack: onFresh(
    readyOrders,
    (id) => ask('POST', `/api/orders/${id}/hand-back`, { counted_out: 1 }, id),
    (data, { marker }) => {
      const [roll] = rows(data, 'rolls', { order_id: marker })
      const counted = rows(data, 'order_counts', { order_id: marker }).length
      return (roll?.['state'] === 'handed-back') === (counted === 1) ? counted : 0.5
    },
  ),
  makeOrderLink: onFresh(
    someOrders,
    (id) => ask('POST', `/api/orders/${id}/links`, {}, id),
    (data, { marker }) => rows(data, 'order_links', { order_id: marker }).length,
  ),
  revokeOrderLink: onFresh(
    someLinks,
    (id) => ask('POST', `/api/order-links/${id}/revoke`, {}, id),
    (data, { marker }) => rows(data, 'order_links', { id: marker }).filter((row) => row['revoked_at'] !== null).length,
  ),
  keepFilm: keeping('/api/films', film),
  correctFilm: correcting('/api/films', film, film),
  removeFilm: ending('DELETE', '/api/films', '', film),
  undoFilm: ending('POST', '/api/films', '/undo', film),
  keepVessel: keeping('/api/vessels', (name) => ({ statement: vessel(name) })),
  correctVessel: correcting('/api/vessels', (name) => ({ statement: vessel(name) }), vessel),
  removeVessel: ending('DELETE', '/api/vessels', '', (name) => ({ statement: vessel(name) })),
  undoVessel: ending('POST', '/api/vessels', '/undo', (name) => ({ statement: vessel(name) })),
} satisfies Record<string, Driver>
