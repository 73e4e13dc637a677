import { ask, sendOk } from './asking.js'
import { rows } from './data.js'
import type { Driver } from './drivers.js'

const LANES = 4
const RECORDS_PER_LANE = 40
let markers = 0
const newMarker = (): string => `film ${++markers}`

const statement = (film: string, note = '') => ({
  film,
  developer: 'Metol, stock',
  points: [
    { temperature_c: 18, time_s: 700 },
    { temperature_c: 20, time_s: 600 },
    { temperature_c: 22, time_s: 500 },
  ],
  note,
})

interface Kept {
  readonly times: { readonly id: string }[]
}

/** Ids of fresh records, so many for each lane. */
async function freshTimes(url: string, lanes: number, perLane: number): Promise<string[][]> {
  const ids: string[][] = []
  for (let lane = 0; lane < lanes; lane++) {
    const times = Array.from({ length: perLane }, () => statement(newMarker()))
    const kept = await sendOk<Kept>(url, ask('POST', '/api/times', { times }))
    ids.push(kept.times.map((time) => time.id))
  }
  return ids
}

/** The first change of a record: each request has a record of its own. */
const oneChangeEach = (method: string, suffix: string): Driver => ({
  lanes: LANES,
  keyed: true,
  async prepare(url, lanes) {
    const ids = await freshTimes(url, lanes, RECORDS_PER_LANE)
    return (lane, n) => {
      const id = ids[lane]?.[n]
      return id === undefined ? null : ask(method, `/api/times/${id}${suffix}`, { seen_revision: 1 }, id)
    }
  },
  effects: (data, { marker }) =>
    rows(data, 'reference_time_revisions', { time_id: marker, revision: 2, removed: 1 }).length,
})

const TIMES_AT_ONCE = 3

export const timeDrivers = {
  keepTimes: {
    lanes: LANES,
    keyed: true,
    prepare: async () => () => {
      const film = newMarker()
      return ask('POST', '/api/times', { times: Array(TIMES_AT_ONCE).fill(statement(film)) }, film)
    },
    effects: (data, { marker }) => rows(data, 'reference_time_revisions', { film: marker }).length / TIMES_AT_ONCE,
  },
  correctTime: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await freshTimes(url, lanes, 1)
      return (lane, n) => {
        const note = newMarker()
        const body = { seen_revision: n + 1, statement: statement('corrected', note) }
        return ask('PUT', `/api/times/${ids[lane]?.[0]}`, body, note)
      }
    },
    effects: (data, { marker }) => rows(data, 'reference_time_revisions', { note: marker }).length,
  },
  removeTime: oneChangeEach('DELETE', ''),
  undoTime: oneChangeEach('POST', '/undo'),
} satisfies Record<string, Driver>
