import { ask, sendOk } from './asking.js'
import { type Data, rows } from './data.js'
import type { Driver } from './drivers.js'

export const LANES = 3
export const PER_LANE = 12
export type Made = { readonly id: string }

/** Marks that no two requests share, told by the kind of thing that they are given to. */
export function markers(kind: string): () => string {
  let count = 0
  return () => `${kind} ${++count}`
}

/** What each lane needs, made before the kills begin. */
export async function made<T>(lanes: number, perLane: number, make: () => Promise<T>): Promise<T[][]> {
  const lane = async () => {
    const all: T[] = []
    for (let i = 0; i < perLane; i++) all.push(await make())
    return all
  }
  return Promise.all(Array.from({ length: lanes }, lane))
}

type Stating = (name: string) => object

/** How often a mark stands in what was stated. */
const stating = (data: Data, marker: string | number) =>
  rows(data, 'statement_revisions', {}).filter((row) => String(row['statement']).includes(`"${marker}"`)).length

/** Drivers of routes that keep, correct and remove what is stated of something. */
export function statedDrivers(newMarker: () => string) {
  const freshAt =
    (path: string, body: Stating) =>
    (url: string): Promise<Made> =>
      sendOk<Made>(url, ask('POST', path, body(newMarker())))
  return {
    freshAt,
    /** Each request keeps one record of its own, told by its name in what was stated. */
    keeping: (path: string, body: Stating): Driver => ({
      lanes: LANES,
      keyed: true,
      prepare: async () => () => {
        const name = newMarker()
        return ask('POST', path, body(name), name)
      },
      effects: (data, { marker }) => stating(data, marker),
    }),
    /** Each lane corrects one record over and over. */
    correcting: (path: string, body: Stating, statementOf: Stating): Driver => ({
      lanes: LANES,
      keyed: true,
      async prepare(url, lanes) {
        const ids = await made(lanes, 1, () => freshAt(path, body)(url))
        return (lane, n) => {
          const name = newMarker()
          const asked = { seen_revision: n + 1, statement: statementOf(name) }
          return ask('PUT', `${path}/${ids[lane]?.[0]?.id}`, asked, name)
        }
      },
      effects: (data, { marker }) => stating(data, marker),
    }),
    /** Each request removes, or undoes the making of, a record of its own. */
    ending: (method: string, path: string, suffix: string, body: Stating): Driver => ({
      lanes: LANES,
      keyed: true,
      async prepare(url, lanes) {
        const ids = await made(lanes, PER_LANE, () => freshAt(path, body)(url))
        return (lane, n) => {
          const id = ids[lane]?.[n]?.id
          return id === undefined ? null : ask(method, `${path}/${id}${suffix}`, { seen_revision: 1 }, id)
        }
      },
      effects: (data, { marker }) =>
        rows(data, 'statement_revisions', { statement_id: marker, revision: 2, removed: 1 }).length,
    }),
  }
}
