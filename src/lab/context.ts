import type { Clock, Ids } from '../kernel/index.js'
import type { Role } from '../wire/index.js'

/** Who acts: the owner at the computer itself, or a paired device. */
export interface Actor {
  readonly role: Role
  /** `owner`, or the id of the device. */
  readonly id: string
}

/** What every use case is handed: who, at which bench, what time it is, and where ids come from. */
export interface Context {
  readonly actor: Actor
  readonly bench: string
  readonly clock: Clock
  readonly ids: Ids
}
