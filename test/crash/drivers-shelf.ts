import { ask, sendOk } from './asking.js'
import { type Data, rows } from './data.js'
import type { Driver } from './drivers.js'
import { LANES, type Made, made, markers, PER_LANE, statedDrivers } from './drivers-stated.js'

const newMarker = markers('shelf')
const stated = statedDrivers(newMarker)
type Booked = { readonly entry: { readonly id: string }; readonly lot: Made | null }

const product = (name: string) => ({ name, role: 'fixer', use: 'reusable' })
const bottle = (name: string) => ({ kind: 'bottle', name, holds_ml: 1000 })
const jug = (name: string) => ({ kind: 'jug', name, holds_ml: 1000 })
const make = (url: string, path: string, body: object) => sendOk<Made>(url, ask('POST', path, body))
const someBottle = (name: string) => ({ statement: bottle(name) })
const keepProduct = stated.freshAt('/api/products', product)
const addBottle = stated.freshAt('/api/containers', someBottle)

/** A bottle with a litre of a fixer in it. */
async function filled(url: string): Promise<{ bottle: string; entry: string }> {
  const [{ id: product_id }, { id }] = [await keepProduct(url), await addBottle(url)]
  const asked = { product_id, parts: [1, 4], into: [{ container_id: id, ml: 1000 }] }
  const { entry } = await sendOk<Booked>(url, ask('POST', '/api/lots', asked))
  return { bottle: id, entry: entry.id }
}

/** What stands in a container is what its entries come to: to the microlitre, whenever the plug was pulled. */
function balances(data: Data): string[] {
  const legs = rows(data, 'shelf_legs', {})
  return rows(data, 'containers', {}).flatMap((container) => {
    const own = legs.filter((leg) => leg['container_id'] === container['id'])
    return ['held', 'basis', 'worked', 'met'].flatMap((column) => {
      const booked = own.reduce((sum, leg) => sum + Number(leg[column]), 0)
      return booked === Number(container[column])
        ? []
        : [`${column} of ${container['id']}: ${container[column]}, ${booked} booked`]
    })
  })
}

const noted = (data: Data, marker: string | number) => rows(data, 'shelf_entries', { note: marker }).length

const keeping = (path: string, body: (name: string) => object): Driver => ({
  ...stated.keeping(path, body),
  state: balances,
})

/** Each request works on something of its own, made before the kills begin. */
const onFresh = (
  fresh: (url: string) => Promise<string>,
  request: (id: string) => ReturnType<typeof ask>,
  effects: Driver['effects'],
): Driver => ({
  lanes: LANES,
  keyed: true,
  async prepare(url, lanes) {
    const ids = await made(lanes, PER_LANE, () => fresh(url))
    return (lane, n) => {
      const id = ids[lane]?.[n]
      return id === undefined ? null : request(id)
    }
  },
  effects,
  state: balances,
})

/** A removal touches no amount either. */
const ending = (...asked: Parameters<typeof stated.ending>): Driver => ({ ...stated.ending(...asked), state: balances })

/** Each lane books on one bottle of its own, told by its note. */
const booking = (path: string, body: (bottleId: string) => object): Driver => ({
  lanes: LANES,
  keyed: true,
  async prepare(url, lanes) {
    const bottles: string[] = []
    for (let i = 0; i < lanes; i++) bottles.push((await filled(url)).bottle)
    return (lane) => {
      const note = newMarker()
      return ask('POST', path, { ...body(bottles[lane] as string), note }, note)
    }
  },
  effects: (data, { marker }) => noted(data, marker),
  state: balances,
})

const use = (id: string) => ({
  container_id: id,
  poured: 300,
  lost: 0.001,
  back_into: id,
  film: [{ format: '120' }],
  over_count: true,
})
const fullJug = async (url: string) =>
  (await make(url, '/api/containers', { statement: jug(newMarker()), holds: 500 })).id

export const shelfDrivers = {
  keepProduct: keeping('/api/products', product),
  correctProduct: stated.correcting('/api/products', product, product),
  removeProduct: ending('DELETE', '/api/products', '', product),
  undoProduct: ending('POST', '/api/products', '/undo', product),
  addContainer: keeping('/api/containers', (name) => ({ statement: jug(name), holds: 250 })),
  correctContainer: stated.correcting('/api/containers', someBottle, bottle),
  removeContainer: ending('DELETE', '/api/containers', '', someBottle),
  undoContainer: ending('POST', '/api/containers', '/undo', someBottle),
  finishMix: onFresh(
    async (url) => `${(await keepProduct(url)).id} ${(await addBottle(url)).id}`,
    (ids) => {
      const [product_id, container_id] = ids.split(' ')
      return ask('POST', '/api/lots', { product_id, into: [{ container_id, ml: 750 }] }, ids)
    },
    (data, { marker }) => {
      const [product_id, id] = String(marker).split(' ') as [string, string]
      const lots = rows(data, 'lots', { product_id }).length
      const held = rows(data, 'containers', { id })[0]?.['held'] === 750_000
      return held === (lots === 1) ? lots : 0.5
    },
  ),
  useBath: booking('/api/shelf/use', use),
  testBath: booking('/api/shelf/test', (container_id) => ({ container_id, test: { of: 'ph', ph: 5 } })),
  stationBath: booking('/api/shelf/station', (container_id) => ({ container_id, station: 'first' })),
  movePortion: onFresh(
    async (url) => `${(await filled(url)).bottle} ${(await addBottle(url)).id}`,
    (ids) => {
      const [from_id, into_id] = ids.split(' ')
      return ask('POST', '/api/shelf/move', { from_id, into_id, amount: 250, note: ids }, ids)
    },
    (data, { marker }) => noted(data, marker),
  ),
  measureContents: onFresh(
    async (url) => (await filled(url)).bottle,
    (container_id) =>
      ask('POST', '/api/shelf/measure', { container_id, found: 900, seen: 1000, note: container_id }, container_id),
    (data, { marker }) => noted(data, marker),
  ),
  discard: onFresh(
    async (url) =>
      `${(await filled(url)).bottle} ${(await make(url, '/api/containers', { statement: jug(newMarker()) })).id}`,
    (ids) => {
      const [container_id, jug_id] = ids.split(' ')
      return ask('POST', '/api/shelf/discard', { container_id, jug_id, where: 'jug', note: ids }, ids)
    },
    (data, { marker }) => noted(data, marker),
  ),
  rotateBaths: onFresh(
    async (url) =>
      [
        (await filled(url)).bottle,
        (await filled(url)).bottle,
        (await make(url, '/api/containers', { statement: jug(newMarker()) })).id,
      ].join(' '),
    (ids) => {
      const [first_id, second_id, jug_id] = ids.split(' ')
      return ask('POST', '/api/shelf/rotate', { first_id, second_id, jug_id, note: ids }, ids)
    },
    // Both entries or neither.
    (data, { marker }) => noted(data, marker) / 2,
  ),
  handOver: onFresh(
    fullJug,
    (jug_id) => ask('POST', '/api/shelf/hand-over', { jug_id, to: 'The town', note: jug_id }, jug_id),
    (data, { marker }) => noted(data, marker),
  ),
  takeBack: onFresh(
    async (url) => {
      const { bottle: id } = await filled(url)
      return (await sendOk<Booked>(url, ask('POST', '/api/shelf/use', use(id)))).entry.id
    },
    (id) => ask('POST', `/api/shelf-entries/${id}/take-back`, {}, id),
    (data, { marker }) => rows(data, 'shelf_entries', { retracts: marker }).length,
  ),
} satisfies Record<string, Driver>
