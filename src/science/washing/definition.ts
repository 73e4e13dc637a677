import type { Millilitres, Seconds } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'

/** Ranges as data: volumes in mL, times in s, flow in mL a minute, fixer in g/L of thiosulfate, °C. */
export const WASHING_LIMITS = {
  volume: { low: 50, high: 100_000 },
  carried: { low: 0.1, high: 500 },
  time: { low: 0, high: 86_400 },
  flow: { low: 0, high: 60_000 },
  fixer: { low: 1, high: 400 },
  rolls: { low: 0.1, high: 100 },
  temperature: { low: 1, high: 40 },
  halfLife: { low: 1, high: 3600 },
  steps: 60,
} as const

/**
 * One step of a wash. A change is filled, kept and dumped; only while it is `moved` (the default) does its time count
 * for diffusion, as the published half-lives are for moving water. Running water runs through a tank that was filled
 * first; after another running step of the same volume it goes on in that water.
 */
export type WashStep =
  | {
      readonly kind: 'change'
      readonly volume: Millilitres
      readonly time: Seconds
      readonly moved?: boolean
    }
  | {
      readonly kind: 'running'
      readonly volume: Millilitres
      readonly time: Seconds
      /** mL a minute. */
      readonly perMinute: Millilitres
    }

/** Half-lives of thiosulfate in film under running water; the two published ones disagree by four. */
export const HALF_LIVES: readonly { readonly seconds: number; readonly source: string }[] = [
  { seconds: 60, source: 'NAVEDTRA 14209, p. 250' },
  { seconds: 15, source: 'US Army SS0509' },
]
/** The slower one is the default. */
export const HALF_LIFE = HALF_LIVES.reduce((slower, one) => (one.seconds > slower.seconds ? one : slower))

/** A factor on the half-life, with what it rests on. */
export interface WashFactor {
  readonly factor: number
  readonly origin: Origin
  readonly source: string
}
/** Factors besides cold, which the thermal folder knows. */
export const FACTORS = {
  hardener: {
    factor: 2,
    origin: 'assumption',
    source: 'assumption; a thesis (Haring, RIT 1970) has only the direction',
  },
  /** After an aid 5 minutes stand for 30. */
  washAid: { factor: 5 / 30, origin: 'practice', source: 'US Army SS0509-8, p. 18' },
} as const satisfies Readonly<Record<string, WashFactor>>

/** Least a scheme is advised at, whatever the sum says. */
export interface WashFloor {
  readonly seconds: number
  readonly changes: number
  readonly source: string
}
/** Kinds of wash for which a least is published. */
export type WashScheme = 'changes' | 'running' | 'after-aid'
/** Published leasts, in water of 18 °C or more; times in s. */
export const WASH_FLOORS: Readonly<Record<WashScheme, WashFloor>> = {
  changes: { seconds: 1200, changes: 7, source: 'NAVEDTRA 14209, p. 250: 20 min, a full change each 3 min' },
  running: { seconds: 1800, changes: 0, source: 'US Army SS0509-8, pp. 20, 24: 30 min' },
  'after-aid': { seconds: 300, changes: 0, source: 'US Army SS0509-8, p. 18: aid 2 min, wash 5 min' },
}

/** Residual thiosulfate at which film lasts: 36 CFR 1238.14(c), citing ISO 18901, for LE-500 polyester silver film. */
export const RESIDUE_LIMIT = { gramsPerM2: 0.014, source: '36 CFR 1238.14(c), citing ISO 18901' } as const
