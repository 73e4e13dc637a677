import { failed, instantText, ok, problem } from '../../kernel/index.js'
import { listDevices, noteCode, pairDevice, removeDevice } from '../../lab/index.js'
import type { Caller, Handlers } from '../call.js'
import { pairingQr } from '../qr.js'
import { newPairingCode, newToken, sha256, tidyCode } from '../secrets.js'
import { DEVICE_COOKIE } from '../who.js'

const A_YEAR_S = 365 * 24 * 3600
const ATTEMPTS = { most: 10, within_ms: 60_000 }

/** Devices belong to the house, whichever bench is open. */
const atHome = (caller: Caller) => ({ ...caller.context, bench: caller.house.homeBench })

/** Whether too many wrong codes came within the last minute; older ones are forgotten. */
function tooMany(failures: number[], now: number): boolean {
  while (failures[0] !== undefined && failures[0] <= now - ATTEMPTS.within_ms) failures.shift()
  return failures.length >= ATTEMPTS.most
}

export const pairingAddress = (base: string, code: string): string => `${base}/pair?code=${code}`

export const peopleHandlers: Handlers<'newPairingCode' | 'pair' | 'listDevices' | 'removeDevice'> = {
  newPairingCode: async (call) => {
    const code = newPairingCode()
    const context = atHome(call)
    const noted = await call.house.store.write(context, null, (rooms) => noteCode(context, rooms, sha256(code)))
    if (!noted.ok) return noted
    const address = pairingAddress(call.house.address(), code)
    return ok({ code, address, expires_at: instantText(noted.value.expiresAt), qr_svg: pairingQr(address) })
  },
  pair: async (call) => {
    const now = call.house.clock.now()
    if (tooMany(call.house.wrongCodes, now)) return failed(problem('request.too-many', { wait: 'a minute' }))
    const context = atHome(call)
    const token = newToken()
    const asked = { codeHash: sha256(tidyCode(call.body.code)), tokenHash: sha256(token), name: call.body.name }
    const device = await call.house.store.write(context, null, (rooms) => pairDevice(context, rooms, asked))
    if (!device.ok) {
      call.house.wrongCodes.push(now)
      return device
    }
    call.reply.setCookie(DEVICE_COOKIE, token, { httpOnly: true, sameSite: 'strict', path: '/', maxAge: A_YEAR_S })
    return device
  },
  listDevices: async ({ house }) => ok(await house.store.read(house.homeBench, listDevices)),
  removeDevice: async (call) => {
    const context = atHome(call)
    return call.house.store.write(context, call.key, (rooms) => removeDevice(context, rooms, call.params.id))
  },
}
