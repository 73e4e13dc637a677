import {
  type Celsius,
  type Millilitres,
  millilitres,
  ok,
  type Result,
  type Seconds,
  seconds,
} from '../../kernel/index.js'
import { coldWashing } from '../thermal/index.js'
import { wrong } from './checked.js'
import { FACTORS, HALF_LIFE, RESIDUE_LIMIT, type WashFactor, type WashScheme, type WashStep } from './definition.js'
import type { FixerFault, FixerVerdict } from './fixer-verdict.js'
import { changesIn, type FloorHeld, floorOf, schemeOf } from './floor.js'
import { leftByWater, movedTime, timeOf, waterUsed } from './left.js'
import type { SpotReading } from './tests.js'
import { leftTogether } from './together.js'
import { carriedOver, leftByRinse, type Rinse, ROLL_M2, WET_FILM, type WetFilm } from './wet-film.js'

/** A wash and what it begins from. */
export interface WashAsked {
  /** What the fixer was found to be: without it there is nothing to ask. */
  readonly after: FixerVerdict
  readonly steps: readonly WashStep[]
  /** Thiosulfate in the fixer, g/L as the ion; plain hypo of 240 g/L of crystals holds 108. */
  readonly fixer: number
  readonly rolls: number
  readonly temperature: Celsius
  readonly rinse?: Rinse
  readonly hardened?: boolean
  readonly washAid?: boolean
  /** One's own; {@link WET_FILM} when not given. */
  readonly wet?: WetFilm
  /** s; the slower published one when not given. */
  readonly halfLife?: Seconds
  /** Spot tests on one's own film. */
  readonly readings?: readonly SpotReading[]
}

/** What one way of leaving would leave alone. */
export interface LeftBy {
  readonly milligramsPerRoll: number
  /** Part of what the film brought along. */
  readonly part: number
}

/** What a wash comes to: an estimate, never a measurement. */
export interface WashEstimate {
  /** Thiosulfate left in the film by water and diffusion together, g/m². */
  readonly residue: number
  /** The same in milligrams a roll of 80 square inches. */
  readonly perRoll: number
  /** The published limit over the residue, at most 10⁹: 10 is ten times below it. */
  readonly margin: number
  /** What each would leave alone; both together leave more than either. */
  readonly left: { readonly water: LeftBy; readonly diffusion: LeftBy }
  /** Which of them alone would leave more. */
  readonly slower: 'water' | 'diffusion'
  readonly scheme: WashScheme
  readonly water: Millilitres
  readonly time: Seconds
  /** The half-life that was taken, its factors in it. */
  readonly halfLife: Seconds
  /** s of moved water after which diffusion alone is at the limit. */
  readonly diffusionNeeds: number
  readonly factors: readonly (WashFactor & { readonly name: 'cold' | 'hardener' | 'wash-aid' })[]
  readonly floor: FloorHeld
  readonly verdict: WashVerdict
}

/** `enough` and `longer` are of film from a usable fixer only. */
export type WashVerdict =
  | { readonly says: 'enough' | 'longer' }
  | { readonly says: 'cannot-be-judged'; readonly because: FixerFault | 'fixer-unknown' | 'silver-left-in-film' }

const MOST_MARGIN = 1e9
const LIMIT_MG = RESIDUE_LIMIT.gramsPerM2 * ROLL_M2 * 1000

/**
 * What is left in film after a wash: by the water (changes at equilibrium, flow through a mixed tank), by diffusion out
 * of the gelatin, and by both together, which is the estimate. Cold, hardener and wash aid change the half-life. An estimate against the
 * published limit, with the published least as its floor; no verdict without a usable fixer. Cost grows with the steps.
 */
export function estimateWash(asked: WashAsked): Result<WashEstimate> {
  const refused = wrong(asked)
  if (refused) return refused
  const cold = coldWashing(asked.temperature)
  if (!cold.ok) return cold
  const factors = factorsOf(asked, cold.value)
  const halfLife = factors.reduce((time, { factor }) => time * factor, asked.halfLife ?? HALF_LIFE.seconds)
  const left = leftOf(asked, halfLife)
  const slower = left.water.milligramsPerRoll > left.diffusion.milligramsPerRoll ? 'water' : 'diffusion'
  const perRoll = togetherOf(asked, halfLife)
  const floor = floorFor(asked, cold.value.factor)
  return ok({
    residue: perRoll / 1000 / ROLL_M2,
    perRoll,
    margin: Math.min(MOST_MARGIN, LIMIT_MG / perRoll),
    left,
    slower,
    scheme: schemeOf(asked.steps, asked.washAid ?? false),
    water: millilitres(waterUsed(asked.steps)),
    time: seconds(timeOf(asked.steps)),
    halfLife: seconds(halfLife),
    diffusionNeeds: halvings(filmHolds(asked) / LIMIT_MG) * halfLife,
    factors,
    floor,
    verdict: verdictOf(asked, perRoll <= LIMIT_MG && floor.met),
  })
}

/** How often so much over the limit has to be halved. */
const halvings = (timesOver: number): number => Math.max(0, Math.log2(timesOver))

/** mg of thiosulfate that a roll brings into the first water. */
const filmHolds = ({ fixer, rinse = 'nothing', wet = WET_FILM }: WashAsked): number =>
  fixer * (wet.emulsion + (rinse === 'film-and-walls' ? 0 : wet.surface))

function leftOf(asked: WashAsked, halfLife: number): WashEstimate['left'] {
  const { steps, fixer, rolls, rinse = 'nothing', wet = WET_FILM } = asked
  const carried = carriedOver(wet, rolls)
  // What a rinse left is spread over all that is carried, as if it had been so from the first.
  const strength = (fixer * leftByRinse(wet, rolls, rinse)) / carried
  const byWater = leftByWater(steps, carried)
  const byDiffusion = 0.5 ** (movedTime(steps) / halfLife)
  return {
    water: { milligramsPerRoll: strength * byWater * (wet.emulsion + wet.surface), part: byWater },
    diffusion: { milligramsPerRoll: filmHolds(asked) * byDiffusion, part: byDiffusion },
  }
}

/** mg a roll that both leave together; film counts with all that it holds, its surface too. */
function togetherOf(asked: WashAsked, halfLife: number): number {
  const { steps, fixer, rolls, rinse = 'nothing', wet = WET_FILM } = asked
  const each = wet.emulsion + wet.surface
  if (each === 0) return 0
  const before = {
    ...{ film: each * rolls, walls: wet.walls },
    ...{ filmAt: filmHolds(asked) / (fixer * each), wallsAt: rinse === 'nothing' ? 1 : 0 },
  }
  return fixer * each * leftTogether(steps, before, halfLife)
}

function factorsOf({ hardened, washAid }: WashAsked, cold: WashFactor): WashEstimate['factors'] {
  return [
    ...(cold.factor > 1 ? [{ name: 'cold' as const, ...cold }] : []),
    ...(hardened ? [{ name: 'hardener' as const, ...FACTORS.hardener }] : []),
    ...(washAid ? [{ name: 'wash-aid' as const, ...FACTORS.washAid }] : []),
  ]
}

function floorFor(asked: WashAsked, cold: number): FloorHeld {
  const { steps, washAid = false, temperature, rolls, hardened = false, readings = [] } = asked
  const done = {
    scheme: schemeOf(steps, washAid),
    time: seconds(movedTime(steps)),
    changes: changesIn(steps),
    temperature,
    waterPerRoll: millilitres(waterUsed(steps) / rolls),
    hardened,
  }
  return floorOf(done, cold, readings)
}

function verdictOf({ after, readings = [] }: WashAsked, enough: boolean): WashVerdict {
  // Silver salts of a loaded fixer stay in the film whatever the water does, so no residue makes it safe.
  if (after.state === 'finished') return { says: 'cannot-be-judged', because: after.because }
  if (after.state === 'unknown') return { says: 'cannot-be-judged', because: 'fixer-unknown' }
  if (readings.some(({ test, passed }) => test === 'residual-silver' && !passed))
    return { says: 'cannot-be-judged', because: 'silver-left-in-film' }
  return { says: enough ? 'enough' : 'longer' }
}
