import { all, type Millilitres, millilitres, ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'
import { DILUTION_LIMITS } from './definition.js'
import { mix, sum } from './parts.js'

/** A developer's floor: so much of its first part for each roll, by its label or one's own word. */
export interface FloorAsked {
  readonly parts: readonly number[]
  readonly volume: Millilitres
  readonly floor: Millilitres
  readonly rolls: number
}

/** Whether a tank's volume holds enough for its rolls, and what would. */
export interface FloorAnswer {
  readonly enough: boolean
  /** Of the first part: what is in the volume, and what the rolls need. */
  readonly held: Millilitres
  readonly needed: Millilitres
  /** Whole rolls that this volume carries at this dilution. */
  readonly rolls: number
  /** The volume that would carry them at this dilution: a larger tank, or more solution in the same. */
  readonly volumeNeeded: Millilitres
  /** The thinnest dilution that carries them in this volume, its first part 1; null when not even stock does. */
  readonly dilutionNeeded: readonly number[] | null
}

/** Floors are met to what hands can measure, not to the last digit of a division. */
const SLACK = 1e-9

/**
 * Rolls set a floor on concentrate, the tank on volume: 1 + 25 in 250 mL holds 9.6 mL, at 6 mL a roll enough for one
 * roll and not for two; those need 312 mL, or 1 + 19.8. Rolls 0.01–200 (sheets are parts of one), floor 0.1–2000 mL;
 * else refused, as is a volume needed past 100 L.
 */
export function floorFor({ parts, volume, floor, rolls }: FloorAsked): Result<FloorAnswer> {
  const refused =
    refusedOutside('dilution.bad-value', 'Rolls', rolls, DILUTION_LIMITS.rolls, 'rolls') ??
    refusedOutside('dilution.bad-value', 'A floor in mL', floor, DILUTION_LIMITS.floor, 'floor')
  if (refused) return refused
  const mixed = mix(parts, volume)
  if (!mixed.ok) return mixed
  const held = mixed.value.parts[0] as Millilitres
  const needed = floor * rolls
  const volumeNeeded = (volume * needed) / held
  const tooMuch = refusedOutside('dilution.bad-value', 'A volume in mL', volumeNeeded, DILUTION_LIMITS.total, 'rolls')
  if (tooMuch) return tooMuch
  return ok({
    enough: needed <= held + SLACK,
    held,
    needed: millilitres(needed),
    rolls: Math.floor((held + SLACK) / floor),
    volumeNeeded: millilitres(volumeNeeded),
    dilutionNeeded: strengthened(parts, volume, needed),
  })
}

/** Concentrates in their proportion, and as much of the last part, the water, as then has room. */
function strengthened(parts: readonly number[], volume: number, needed: number): readonly number[] | null {
  const first = parts[0] as number
  const concentrates = parts.length === 1 ? parts : parts.slice(0, -1)
  const relative = concentrates.map((part) => part / first)
  const water = volume / needed - sum(relative)
  if (water < -SLACK) return null
  return water <= SLACK ? relative : [...relative, water]
}

/** A tank at hand. */
export interface TankForRolls {
  readonly name: string
  readonly holds: Millilitres
  /** Rolls that it takes. */
  readonly rolls: number
}

/** Which of what is at hand would carry the rolls. */
export interface WaysOut {
  /** The smallest tank that takes the rolls and holds what they need at this dilution. */
  readonly tank: TankForRolls | null
  /** The thinnest of the dilutions offered that carries them in this volume. */
  readonly dilution: readonly number[] | null
  /** How often this volume has to be mixed afresh to carry them; null when it does not carry one roll. */
  readonly fills: number | null
}

/** The ways out when a volume does not carry its rolls, from one's own tanks and the label's other dilutions. */
export function waysOut(
  asked: FloorAsked,
  tanks: readonly TankForRolls[],
  dilutions: readonly (readonly number[])[],
): Result<WaysOut> {
  const here = floorFor(asked)
  if (!here.ok) return here
  const { volumeNeeded, rolls } = here.value
  const judged = all(
    dilutions.map((parts): Result<{ parts: readonly number[]; enough: boolean; held: number }> => {
      const there = floorFor({ ...asked, parts })
      return there.ok ? ok({ parts, enough: there.value.enough, held: there.value.held }) : there
    }),
  )
  if (!judged.ok) return judged
  const fitting = tanks.filter((tank) => tank.rolls >= asked.rolls && tank.holds >= volumeNeeded - SLACK)
  const strong = judged.value.filter(({ enough }) => enough)
  return ok({
    tank: [...fitting].sort((one, other) => one.holds - other.holds)[0] ?? null,
    dilution: [...strong].sort((one, other) => one.held - other.held)[0]?.parts ?? null,
    fills: rolls === 0 ? null : Math.ceil(asked.rolls / rolls - SLACK),
  })
}
