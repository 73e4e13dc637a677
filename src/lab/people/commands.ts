import { failed, instantText, ok, problem, type Result } from '../../kernel/index.js'
import type { DeviceView } from '../../wire/index.js'
import type { Context } from '../context.js'
import type { Rooms } from '../store.js'
import type { Device } from './port.js'

/** How long a pairing code may be used. */
export const CODE_LIFE_MS = 10 * 60_000

const viewOf = (device: Device): DeviceView => ({
  id: device.id,
  name: device.name,
  paired_at: instantText(device.pairedAt),
  last_seen_at: device.lastSeenAt === null ? null : instantText(device.lastSeenAt),
})

/** Notes a fresh code; only its hash is kept. Returns when it ends. */
export async function noteCode(
  context: Context,
  rooms: Rooms,
  codeHash: string,
): Promise<Result<{ expiresAt: number }>> {
  const now = context.clock.now()
  const expiresAt = now + CODE_LIFE_MS
  await rooms.people.addPairingCode({ codeHash, expiresAt }, now)
  return ok({ expiresAt })
}

/** Uses a code once and makes the device known by the hash of its token. */
export async function pairDevice(
  context: Context,
  rooms: Rooms,
  asked: { codeHash: string; tokenHash: string; name: string },
): Promise<Result<DeviceView>> {
  const now = context.clock.now()
  if (!(await rooms.people.useCode(asked.codeHash, now))) return failed(problem('house.pairing-code-wrong'))
  const device: Device = {
    id: context.ids.next(),
    name: asked.name,
    tokenHash: asked.tokenHash,
    pairedAt: now,
    lastSeenAt: null,
    removedAt: null,
  }
  await rooms.people.addDevice(device)
  await rooms.feed.tell({ kind: 'devices', subject: device.id }, now)
  return ok(viewOf(device))
}

export async function listDevices(rooms: Rooms): Promise<{ devices: DeviceView[] }> {
  const devices = await rooms.people.devices()
  return { devices: devices.filter((device) => device.removedAt === null).map(viewOf) }
}

export async function removeDevice(
  context: Context,
  rooms: Rooms,
  id: string,
): Promise<Result<{ devices: DeviceView[] }>> {
  const now = context.clock.now()
  const missing = problem('record.not-found', { what: 'paired device', id })
  if (!(await rooms.people.removeDevice(id, now))) return failed(missing)
  await rooms.feed.tell({ kind: 'devices', subject: id }, now)
  return ok(await listDevices(rooms))
}
