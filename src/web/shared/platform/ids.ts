import type { Random } from '../../../kernel/index.js'
import { keptOnDevice } from './keep.js'

/** Chance of this device. `randomUUID` is missing on plain HTTP; `getRandomValues` never is. */
export const deviceRandom: Random = { bytes: (count) => crypto.getRandomValues(new Uint8Array(count)) }

/** A fresh key, from chance only. */
export const freshKey = (): string =>
  Array.from(deviceRandom.bytes(16), (byte) => byte.toString(16).padStart(2, '0')).join('')

const DEVICE = 'wetside.device'

/** The name of this device in what it writes down: made once, the same after every loading. */
export function deviceName(): string {
  const kept = keptOnDevice.read(DEVICE)
  if (kept !== null) return kept
  const fresh = freshKey()
  keptOnDevice.write(DEVICE, fresh)
  return fresh
}

/** This one loading of the page. */
export const pageLife = freshKey()
