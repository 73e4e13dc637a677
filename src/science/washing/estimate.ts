import {
  type Celsius,
  failed,
  type Millilitres,
  millilitres,
  ok,
  problem,
  type Result,
  type Seconds,
  seconds,
} from '../../kernel/index.js'
import { ROLL_AREA_CM2 } from '../fixing/index.js'
import { refusedOutside } from '../range.js'
import { coldWashing } from '../thermal/index.js'
import {
  FACTORS,
  type FixerFinding,
  HALF_LIFE,
  RESIDUE_LIMIT,
  WASH_FLOORS,
  WASHING_LIMITS,
  type WashFloor,
  type WashScheme,
  type WashStep,
} from './definition.js'

/** A wash and what it begins from. */
export interface WashAsked {
  readonly steps: readonly WashStep[]
  /** mL that film, reels and walls carry from one water to the next. */
  readonly carried: Millilitres
  /** Thiosulfate in the fixer, g/L. */
  readonly fixer: number
  readonly rolls: number
  readonly temperature: Celsius
  readonly hardened?: boolean
  readonly washAid?: boolean
  /** s; the slower published one when not given. */
  readonly halfLife?: Seconds
  /** What the fixer was found to be: without it there is no verdict. */
  readonly finding: FixerFinding
  /** A residual test on one's own film that was passed by this scheme may go below the published least. */
  readonly ownTest?: { readonly seconds: Seconds; readonly passed: boolean } | null
}

/** What a wash comes to: an estimate, never a measurement. */
export interface WashEstimate {
  /** Thiosulfate left in the film, g/m². */
  readonly residue: number
  /** The same in milligrams a roll of 80 square inches. */
  readonly perRoll: number
  /** The published limit over the residue: 10 is ten times below it. */
  readonly margin: number
  /** What each would leave alone, as parts; the film cannot be cleaner than the worse of them. */
  readonly left: { readonly byWater: number; readonly byDiffusion: number }
  readonly slower: 'water' | 'diffusion'
  readonly water: Millilitres
  readonly time: Seconds
  readonly factors: readonly { readonly name: 'cold' | 'hardener' | 'wash-aid'; readonly factor: number }[]
  readonly floor: WashFloor & { readonly met: boolean; readonly byOwnTest: boolean }
  readonly verdict: WashVerdict
}

/** `enough` and `longer` are of a film from a usable fixer only. */
export type WashVerdict =
  | { readonly says: 'enough' | 'longer' }
  | { readonly says: 'no-verdict'; readonly because: 'fixer-finished' | 'fixer-unknown' }

const {
  carried: CARRIED,
  fixer: FIXER,
  temperature: TEMPERATURE,
  steps: STEPS,
  volume: VOLUME,
  time: TIME,
  flow: FLOW,
} = WASHING_LIMITS
const ROLL_M2 = ROLL_AREA_CM2 / 10_000

function wrong(asked: WashAsked) {
  const { steps, carried, fixer, rolls, temperature, halfLife } = asked
  if (steps.length === 0 || steps.length > STEPS) return failed(problem('washing.no-steps', {}))
  for (const step of steps) {
    const refused =
      refusedOutside('washing.bad-value', 'A volume in millilitres', step.volume, VOLUME, 'volume') ??
      refusedOutside('washing.bad-value', 'A time in seconds', step.time, TIME, 'time') ??
      (step.kind === 'running'
        ? refusedOutside('washing.bad-value', 'A flow in millilitres a minute', step.perMinute, FLOW)
        : null)
    if (refused) return refused
  }
  return (
    refusedOutside('washing.bad-value', 'What is carried over, in millilitres,', carried, CARRIED, 'carried') ??
    refusedOutside('washing.bad-value', 'Thiosulfate in the fixer, in g/L,', fixer, FIXER, 'fixer') ??
    refusedOutside('washing.bad-value', 'Rolls', rolls, { low: 0.1, high: 100 }, 'rolls') ??
    refusedOutside('washing.bad-value', 'The water in °C', temperature, TEMPERATURE, 'temperature') ??
    (halfLife === undefined
      ? null
      : refusedOutside('washing.bad-value', 'A half-life in seconds', halfLife, { low: 1, high: 3600 }))
  )
}

/**
 * What is left in film after a wash: by the water (changes at equilibrium, flow through a mixed tank) and by diffusion
 * out of the gelatin, whichever is slower. Cold, hardener and wash aid change the half-life. An estimate against the
 * published limit, with the published least as its floor; no verdict without a usable fixer.
 */
export function estimateWash(asked: WashAsked): Result<WashEstimate> {
  const refused = wrong(asked)
  if (refused) return refused
  const factors = factorsOf(asked)
  if (!factors.ok) return factors
  const halfLife =
    (asked.halfLife ?? HALF_LIFE.seconds) * factors.value.reduce((product, { factor }) => product * factor, 1)
  const time = asked.steps.reduce((sum, step) => sum + step.time, 0)
  const byWater = waterLeft(asked)
  const byDiffusion = 0.5 ** (time / halfLife)
  const area = asked.rolls * ROLL_M2
  const residue = (asked.fixer * (asked.carried / 1000) * Math.max(byWater, byDiffusion)) / area
  const floor = floorOf(asked, time)
  const margin = RESIDUE_LIMIT.gramsPerM2 / Math.max(residue, 1e-30)
  return ok({
    residue,
    perRoll: residue * ROLL_M2 * 1000,
    margin,
    left: { byWater, byDiffusion },
    slower: byWater > byDiffusion ? 'water' : 'diffusion',
    water: millilitres(Math.min(1_000_000, waterUsed(asked.steps))),
    time: seconds(Math.min(time, 604_800)),
    factors: factors.value,
    floor,
    verdict: verdictOf(asked.finding, margin >= 1 && floor.met),
  })
}

function verdictOf(finding: FixerFinding, enough: boolean): WashVerdict {
  // Film from a loaded or unknown fixer holds silver that no washing takes out, so no residue makes it safe.
  if (finding === 'finished') return { says: 'no-verdict', because: 'fixer-finished' }
  if (finding === 'unknown') return { says: 'no-verdict', because: 'fixer-unknown' }
  return { says: enough ? 'enough' : 'longer' }
}

function factorsOf({ temperature, hardened, washAid }: WashAsked): Result<WashEstimate['factors']> {
  const cold = coldWashing(temperature)
  if (!cold.ok) return cold
  return ok([
    ...(cold.value.factor > 1 ? [{ name: 'cold' as const, factor: cold.value.factor }] : []),
    ...(hardened ? [{ name: 'hardener' as const, factor: FACTORS.hardener.factor }] : []),
    ...(washAid ? [{ name: 'wash-aid' as const, factor: FACTORS.washAid.factor }] : []),
  ])
}

/** What the water alone would leave: each step thins what the one before it left. */
function waterLeft({ steps, carried }: WashAsked): number {
  return steps.reduce((left, step) => {
    const equilibrium = carried / (step.volume + carried)
    if (step.kind === 'change') return left * equilibrium
    return left * equilibrium * Math.exp((-step.perMinute * step.time) / 60 / step.volume)
  }, 1)
}

const waterUsed = (steps: readonly WashStep[]): number =>
  steps.reduce((sum, step) => sum + step.volume + (step.kind === 'running' ? (step.perMinute * step.time) / 60 : 0), 0)

const schemeOf = ({ steps, washAid }: WashAsked): WashScheme =>
  washAid ? 'after-aid' : steps.some(({ kind }) => kind === 'running') ? 'running' : 'changes'

function floorOf(asked: WashAsked, time: number): WashEstimate['floor'] {
  const floor = WASH_FLOORS[schemeOf(asked)]
  const own = asked.ownTest
  if (own?.passed && time >= own.seconds)
    return { seconds: own.seconds, changes: 0, source: 'a residual test on your own film', met: true, byOwnTest: true }
  const changes = asked.steps.filter(({ kind }) => kind === 'change').length
  return { ...floor, met: time >= floor.seconds && changes >= floor.changes, byOwnTest: false }
}
