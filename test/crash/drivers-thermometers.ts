import { ask, sendOk } from './asking.js'
import { rows, THERMOMETERS_IN_A_SET } from './data.js'
import type { Driver } from './drivers.js'

const LANES = 3
const THERMOMETERS_PER_LANE = 10
const CHECKS_PER_LANE = 12
let markers = 0
const newMarker = (): string => `thermometer ${++markers}`
/** A reading that no other request has, in thousandths of a degree. */
const newReading = (): number => 10_000 + ++markers

const statement = (name: string, note = '') => ({ name, kind: 'spirit', scale_low_c: -10, scale_high_c: 100, note })

async function freshThermometers(url: string, lanes: number, perLane: number): Promise<string[][]> {
  const lane = async () => {
    const ids: string[] = []
    for (let i = 0; i < perLane; i++)
      ids.push((await sendOk<{ id: string }>(url, ask('POST', '/api/thermometers', statement(newMarker())))).id)
    return ids
  }
  return Promise.all(Array.from({ length: lanes }, lane))
}

const oneChangeEach = (method: string, suffix: string): Driver => ({
  lanes: LANES,
  keyed: true,
  async prepare(url, lanes) {
    const ids = await freshThermometers(url, lanes, THERMOMETERS_PER_LANE)
    return (lane, n) => {
      const id = ids[lane]?.[n]
      return id === undefined ? null : ask(method, `/api/thermometers/${id}${suffix}`, { seen_revision: 1 }, id)
    }
  },
  effects: (data, { marker }) =>
    rows(data, 'thermometer_revisions', { thermometer_id: marker, revision: 2, removed: 1 }).length,
})

const comparison = (reading_mc: number) => ({
  method: 'comparison',
  read_c: reading_mc / 1000,
  true_c: reading_mc / 1000,
})

interface WithChecks {
  readonly checks: { readonly id: string }[]
}

export const thermometerDrivers = {
  addThermometer: {
    lanes: LANES,
    keyed: true,
    prepare: async () => () => {
      const name = newMarker()
      return ask('POST', '/api/thermometers', statement(name), name)
    },
    effects: (data, { marker }) => rows(data, 'thermometer_revisions', { name: marker }).length,
  },
  correctThermometer: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await freshThermometers(url, lanes, 1)
      return (lane, n) => {
        const note = newMarker()
        const body = { seen_revision: n + 1, statement: statement(`corrected ${ids[lane]?.[0]}`, note) }
        return ask('PUT', `/api/thermometers/${ids[lane]?.[0]}`, body, note)
      }
    },
    effects: (data, { marker }) => rows(data, 'thermometer_revisions', { note: marker }).length,
  },
  removeThermometer: oneChangeEach('DELETE', ''),
  undoThermometer: oneChangeEach('POST', '/undo'),
  checkThermometer: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await freshThermometers(url, lanes, 1)
      return (lane) => {
        const reading = newReading()
        return ask('POST', `/api/thermometers/${ids[lane]?.[0]}/checks`, comparison(reading), reading)
      }
    },
    effects: (data, { marker }) => rows(data, 'thermometer_checks', { read_mc: marker, true_mc: marker }).length,
  },
  withdrawCheck: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await freshThermometers(url, lanes, 1)
      const withChecks = async ([id]: string[]) => {
        let last: WithChecks = { checks: [] }
        for (let i = 0; i < CHECKS_PER_LANE; i++)
          last = await sendOk<WithChecks>(url, ask('POST', `/api/thermometers/${id}/checks`, comparison(newReading())))
        return last.checks.map((check) => check.id)
      }
      const checks = await Promise.all(ids.map(withChecks))
      return (lane, n) => {
        const id = checks[lane]?.[n]
        return id === undefined ? null : ask('POST', `/api/checks/${id}/withdraw`, {}, id)
      }
    },
    effects: (data, { marker }) => rows(data, 'thermometer_check_withdrawals', { check_id: marker }).length,
  },
  addClassSet: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await freshThermometers(url, lanes, THERMOMETERS_IN_A_SET)
      return (lane) => {
        const reading = newReading()
        const readings = (ids[lane] ?? []).map((thermometer_id) => ({ thermometer_id, read_c: reading / 1000 }))
        return ask('POST', '/api/class-sets', { trusted_id: null, readings }, reading)
      }
    },
    effects: (data, { marker }) =>
      rows(data, 'thermometer_checks', { read_mc: marker, method: 'class-set' }).length / THERMOMETERS_IN_A_SET,
  },
} satisfies Record<string, Driver>
