import { ask, type Sent, send, sendOk } from './asking.js'
import { type Data, rows } from './data.js'
import type { Driver } from './drivers.js'

// These routes set one thing for the whole house. One connection sends, so that what should stand is known.
const LANES = 1
let markers = 0

/** The requests after which the data may stand: the last acknowledged one, and one that was cut off. */
const lastOnes = (sent: readonly Sent[]): Sent[] => {
  const acknowledged = sent.findLastIndex((one) => one.answer !== undefined)
  return sent.slice(Math.max(0, acknowledged))
}

const demoIsOpen = (data: Data): boolean => rows(data, 'benches', { kind: 'demo' }).length === 1

/** Opens and removes the demo bench in turn. */
const demoInTurn = (first: 'POST' | 'DELETE', keyed: boolean): Driver => ({
  lanes: LANES,
  keyed,
  async prepare(url) {
    await send(url, ask('DELETE', '/api/demo', {}))
    if (first === 'DELETE') await sendOk(url, ask('POST', '/api/demo', {}))
    return (_lane, n) => ask((first === 'POST') === (n % 2 === 0) ? 'POST' : 'DELETE', '/api/demo', {})
  },
  effects: () => 1,
  state(data, sent) {
    const may = lastOnes(sent).map((one) => one.method === 'POST')
    if (lastOnes(sent).every((one) => one.answer === undefined)) may.push(first === 'DELETE')
    const complaints = may.includes(demoIsOpen(data))
      ? []
      : [`the demo bench is ${demoIsOpen(data) ? 'there' : 'away'}`]
    return [...complaints, ...partOfADemo(data)]
  },
})

/** The demo bench is furnished in the same write: it has its times, thermometers and runs, or it is not there. */
function partOfADemo(data: Data): string[] {
  const benches = new Set(rows(data, 'benches').map((row) => row['id']))
  const strays = ['reference_times', 'thermometers', 'runs', 'run_events', 'feed'].flatMap((table) =>
    rows(data, table).filter((row) => !benches.has(row['bench_id'] ?? null)),
  )
  const complaints = strays.length > 0 ? [`${strays.length} rows of a bench that is not there`] : []
  for (const { id } of rows(data, 'benches', { kind: 'demo' })) {
    const parts = ['reference_times', 'thermometers', 'thermometer_checks', 'runs', 'run_events', 'feed'].map(
      (table) => rows(data, table, { bench_id: id ?? null }).length,
    )
    wholeDemo ??= parts
    if (parts.includes(0) || parts.join() !== wholeDemo.join())
      complaints.push(`the demo bench has ${parts}, not ${wholeDemo}`)
  }
  return complaints
}
/** How many rows a demo bench has, as first seen. */
let wholeDemo: number[] | undefined

const restoredName = (sent: Sent): string => String(sent.marker)
const homeName = (data: Data): string => String(rows(data, 'benches', { kind: 'own' })[0]?.['name'])

async function rename(url: string, name: string): Promise<void> {
  await sendOk(url, ask('PUT', '/api/bench', { name, units: 'metric', paper: 'A4', zone: 'UTC' }))
}

async function backupOf(url: string): Promise<string> {
  const response = await fetch(`${url}/api/backup`)
  return response.text()
}

export const benchDrivers = {
  changeSettings: {
    lanes: LANES,
    keyed: true,
    prepare: async () => () => {
      const name = `bench ${++markers}`
      return ask('PUT', '/api/bench', { name, units: 'us', paper: 'Letter', zone: 'UTC' }, name)
    },
    effects: () => 1,
    state: (data, sent) => {
      const may = lastOnes(sent).map((one) => String(one.marker))
      const nothingAcknowledged = lastOnes(sent).every((one) => one.answer === undefined)
      return nothingAcknowledged || may.includes(homeName(data)) ? [] : [`the bench is ${homeName(data)}, not ${may}`]
    },
  },
  openDemo: demoInTurn('POST', true),
  removeDemo: demoInTurn('DELETE', true),
  restore: {
    lanes: LANES,
    keyed: false,
    async prepare(url) {
      const backups: { name: string; lines: string }[] = []
      for (const _ of [1, 2]) {
        const name = `restored ${++markers}`
        await rename(url, name)
        backups.push({ name, lines: await backupOf(url) })
      }
      return (_lane, n) => {
        const backup = backups[n % 2]
        return backup ? ask('POST', '/api/restore', backup.lines, backup.name) : null
      }
    },
    effects: () => 1,
    state(data, sent) {
      const may = lastOnes(sent)
      // Before anything was acknowledged the data may still stand as it was prepared: as the second backup.
      const names = may.every((one) => one.answer === undefined) ? [] : may.map(restoredName)
      if (names.length > 0 && !names.includes(homeName(data))) return [`the bench is ${homeName(data)}, not ${names}`]
      const lines = String(may.find((one) => one.marker === homeName(data))?.body ?? '').split('\n')
      const expected = lines.filter((line) => line.startsWith('{"t":')).length
      const kept = Object.entries(data).filter(([table]) => table !== 'pairing_codes' && table !== 'write_keys')
      const found = kept.reduce((sum, [, list]) => sum + list.length, 0)
      return expected > 0 && found !== expected ? [`${found} rows, and the backup has ${expected}`] : []
    },
  },
} satisfies Record<string, Driver>
