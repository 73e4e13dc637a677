import { ok } from '../../../src/kernel/index.js'
import { CODE_LIFE_MS, changeSettings, newBench, noteCode, pairDevice } from '../../../src/lab/index.js'
import type { Settings } from '../../../src/wire/index.js'
import { evening } from '../calendar.js'
import type { Darkroom, Episode } from '../darkroom.js'

const SETTINGS: Settings = { name: 'Sluice Street darkroom', units: 'metric', paper: 'A4', zone: 'Europe/Stockholm' }

async function opening(darkroom: Darkroom): Promise<void> {
  await darkroom.does('makes the bench', async (context, rooms) => {
    await rooms.house.addBench(newBench(context.bench, 'own', context.clock.now(), 'My bench'))
    return ok(null)
  })
  await settles(darkroom, {})
  await pairs(darkroom, 'Ebba’s phone')
  await pairs(darkroom, 'Tablet by the sink 📱')
}

const settles = async (darkroom: Darkroom, changes: Partial<Settings>): Promise<void> => {
  await darkroom.does('changes the settings', (context, rooms) =>
    changeSettings(context, rooms, { ...SETTINGS, ...changes }),
  )
}

/** Hashes are words here: nobody will log in to this bench with them. */
async function pairs(darkroom: Darkroom, name: string): Promise<void> {
  const codeHash = `code for ${name}`
  await darkroom.does(`asks for a code for ${name}`, (context, rooms) => noteCode(context, rooms, codeHash))
  const device = await darkroom.does(`pairs ${name}`, (context, rooms) =>
    pairDevice(context, rooms, { codeHash, tokenHash: `token of ${name}`, name }),
  )
  darkroom.joins({ role: 'device', id: device.id })
}

/** A code that lay about for too long. */
async function comesTooLate(darkroom: Darkroom): Promise<void> {
  const codeHash = 'code left on the counter'
  await darkroom.does('asks for a code', (context, rooms) => noteCode(context, rooms, codeHash))
  darkroom.waitUntil(darkroom.clock.now() + CODE_LIFE_MS + 1)
  await darkroom.isRefused('pairs a phone with a code that ran out', 'house.pairing-code-wrong', (context, rooms) =>
    pairDevice(context, rooms, { codeHash, tokenHash: 'token of a guest', name: 'A guest' }),
  )
}

/** The first evening, a week with guests who think in °F and print on Letter, a new name. */
export const houseKeeping = (): readonly Episode[] => [
  { at: evening(0), happens: opening },
  { at: evening(200), happens: comesTooLate },
  { at: evening(280), happens: (darkroom) => settles(darkroom, { units: 'us', paper: 'Letter' }) },
  { at: evening(287), happens: (darkroom) => settles(darkroom, {}) },
  { at: evening(512), happens: (darkroom) => settles(darkroom, { name: 'Sluice Street darkroom (“The Lock”)' }) },
]
