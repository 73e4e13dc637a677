import { z } from 'zod'
import { Id, InstantText, Name } from './common.js'

/** A one-time code, valid for ten minutes; the address goes into the QR code. */
export const PairingCode = z
  .object({ code: z.string(), address: z.string(), expires_at: InstantText, qr_svg: z.string() })
  .meta({ id: 'PairingCode' })
export const Pair = z.strictObject({ code: z.string().min(1).max(40), name: Name }).meta({ id: 'Pair' })
export const DeviceView = z
  .object({ id: Id, name: z.string(), paired_at: InstantText, last_seen_at: InstantText.nullable() })
  .meta({ id: 'DeviceView' })
export const Devices = z.object({ devices: z.array(DeviceView) }).meta({ id: 'Devices' })
