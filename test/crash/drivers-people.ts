import { createHash } from 'node:crypto'
import { ask, sendOk } from './asking.js'
import { rows } from './data.js'
import type { Driver } from './drivers.js'

const LANES = 3
const PER_LANE = 6
let markers = 0
const newName = (): string => `device ${++markers}`
const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex')

async function many<T>(lanes: number, make: () => Promise<T>): Promise<T[][]> {
  const lane = async () => {
    const made: T[] = []
    for (let i = 0; i < PER_LANE; i++) made.push(await make())
    return made
  }
  return Promise.all(Array.from({ length: lanes }, lane))
}

const newCode = async (url: string): Promise<string> =>
  (await sendOk<{ code: string }>(url, ask('POST', '/api/pairing-codes', {}))).code

const newDevice = async (url: string): Promise<string> =>
  (await sendOk<{ id: string }>(url, ask('POST', '/api/pair', { code: await newCode(url), name: newName() }))).id

export const peopleDrivers = {
  newPairingCode: {
    lanes: LANES,
    // Each answer shows a fresh code that is kept nowhere in the clear, so it cannot be answered twice.
    keyed: false,
    prepare: async () => () => ask('POST', '/api/pairing-codes', {}),
    // A code whose answer never arrived can be recognised by nobody, and is worth nothing.
    effects: (data, { answer }) =>
      answer
        ? rows(data, 'pairing_codes', { code_hash: sha256(JSON.parse(answer.text).code), used_at: null }).length
        : 0,
  },
  pair: {
    lanes: LANES,
    // The answer carries a device's token, which is kept nowhere in the clear; the code works once by itself.
    keyed: false,
    async prepare(url, lanes) {
      const codes = await many(lanes, () => newCode(url))
      return (lane, n) => {
        const code = codes[lane]?.[n]
        return code === undefined ? null : ask('POST', '/api/pair', { code, name: newName() }, `device ${markers}`)
      }
    },
    effects: (data, { marker, body }) => {
      const devices = rows(data, 'devices', { name: marker }).length
      const [code] = rows(data, 'pairing_codes', { code_hash: sha256((body as { code: string }).code) })
      // The code is used up exactly when there is a device; anything else is half a write.
      return (code?.['used_at'] !== null) === (devices === 1) ? devices : 0.5
    },
  },
  removeDevice: {
    lanes: LANES,
    keyed: true,
    async prepare(url, lanes) {
      const ids = await many(lanes, () => newDevice(url))
      return (lane, n) => {
        const id = ids[lane]?.[n]
        return id === undefined ? null : ask('DELETE', `/api/devices/${id}`, {}, id)
      }
    },
    effects: (data, { marker }) =>
      rows(data, 'devices', { id: marker }).filter((row) => row['removed_at'] !== null).length,
  },
} satisfies Record<string, Driver>
