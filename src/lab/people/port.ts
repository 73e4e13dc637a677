import type { Instant } from '../../kernel/index.js'

export interface Device {
  readonly id: string
  readonly name: string
  /** SHA-256 of the token in the device's cookie, hex; the token itself is never kept. */
  readonly tokenHash: string
  readonly pairedAt: Instant
  readonly lastSeenAt: Instant | null
  readonly removedAt: Instant | null
}

/** A one-time code that pairs a device. Kept as its SHA-256. */
export interface PairingCode {
  readonly codeHash: string
  readonly expiresAt: Instant
}

export interface PeoplePort {
  addPairingCode(code: PairingCode, at: Instant): Promise<void>
  /** Uses a code: true once, before it expires; false ever after. Two at once: one true. */
  useCode(codeHash: string, at: Instant): Promise<boolean>
  addDevice(device: Device): Promise<void>
  deviceByToken(tokenHash: string): Promise<Device | null>
  devices(): Promise<Device[]>
  removeDevice(id: string, at: Instant): Promise<boolean>
  seen(id: string, at: Instant): Promise<void>
}
