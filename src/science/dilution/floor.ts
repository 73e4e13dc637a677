import { type Millilitres, millilitres, ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { DILUTION_LIMITS } from './definition.js'
import { mix } from './parts.js'

/** A developer's floor: so much of its first part for each roll, by its label or one's own word. */
export interface FloorAsked {
  readonly parts: readonly number[]
  readonly volume: Millilitres
  readonly floor: Millilitres
  readonly rolls: number
}

/** Whether a tank's volume holds enough for its rolls, and the ways out when it does not. */
export interface FloorAnswer {
  readonly enough: boolean
  /** What is in the volume, and what the rolls need. */
  readonly held: Millilitres
  readonly needed: Millilitres
  /** Rolls that this volume carries at this dilution. */
  readonly rolls: number
  /** The volume that would carry them at this dilution: a bigger tank, or the same one with fewer reels on top. */
  readonly volumeNeeded: Millilitres
  /** The strongest dilution that is weak enough to fill this volume: `1 + n`; null when not even stock would do. */
  readonly dilutionNeeded: readonly [1, number] | null
}

/** Rolls set a floor on concentrate, the tank on volume. Rolls 1 to 200 and may be parts of one (sheets). */
export function floorFor({ parts, volume, floor, rolls }: FloorAsked): Result<FloorAnswer> {
  const refused =
    refusedOutside('dilution.bad-value', 'Rolls', rolls, { low: 0.01, high: 200 }, 'rolls') ??
    refusedOutside('dilution.bad-value', 'A floor in millilitres', floor, { low: 0.1, high: 2000 }, 'floor')
  if (refused) return refused
  const mixed = mix(parts, volume)
  if (!mixed.ok) return mixed
  const held = mixed.value.parts[0] as Millilitres
  const needed = floor * rolls
  // A label's floor is met to the millilitre that hands can measure, not to the last digit of a division.
  const least = (held + 1e-9) / floor
  const volumeNeeded = (volume * needed) / held
  const tooMuch = refusedOutside('dilution.bad-value', 'A volume in millilitres', volumeNeeded, DILUTION_LIMITS.total)
  if (tooMuch) return tooMuch
  return ok({
    enough: needed <= held + 1e-9,
    held,
    needed: millilitres(needed),
    rolls: Math.floor(least),
    volumeNeeded: millilitres(volumeNeeded),
    dilutionNeeded: needed <= volume ? [1, volume / needed - 1] : null,
  })
}
