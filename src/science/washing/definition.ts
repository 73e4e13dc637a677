import type { Millilitres, Seconds } from '../../kernel/index.js'
import type { Origin } from '../development/index.js'

/** Ranges as data. */
export const WASHING_LIMITS = {
  volume: { low: 50, high: 100_000 },
  carried: { low: 0.1, high: 500 },
  time: { low: 0, high: 86_400 },
  flow: { low: 0, high: 60_000 },
  fixer: { low: 1, high: 400 },
  temperature: { low: 1, high: 40 },
  steps: 60,
} as const

/** One step of a wash: the tank filled and left, or water running through it. */
export type WashStep =
  | { readonly kind: 'change'; readonly volume: Millilitres; readonly time: Seconds }
  | { readonly kind: 'running'; readonly volume: Millilitres; readonly time: Seconds; readonly perMinute: Millilitres }

/** Half-lives of thiosulfate in film under running water; the two published ones disagree by four. */
export const HALF_LIVES: readonly { readonly seconds: number; readonly source: string }[] = [
  { seconds: 60, source: 'NAVEDTRA 14209, p. 250' },
  { seconds: 15, source: 'US Army SS0509' },
]
/** The slower one is the default. */
export const HALF_LIFE = HALF_LIVES[0] as { readonly seconds: number; readonly source: string }

/** A factor on the half-life, or on the time, with what it rests on. */
export const FACTORS = {
  /** Hardened film holds on to thiosulfate: twice is an assumption; a thesis (Haring, RIT 1970) has only the direction. */
  hardener: { factor: 2, origin: 'assumption' as Origin },
  /** With a wash aid 5 min stand for 30 (US Army SS0509-8, p. 18). */
  washAid: { factor: 5 / 30, origin: 'practice' as Origin },
} as const

/** Least a scheme is advised at, whatever the sum says. */
export interface WashFloor {
  readonly seconds: number
  readonly changes: number
  readonly source: string
}
export type WashScheme = 'changes' | 'running' | 'after-aid'
export const WASH_FLOORS: Readonly<Record<WashScheme, WashFloor>> = {
  changes: { seconds: 1200, changes: 7, source: 'NAVEDTRA 14209, p. 250: 20 min, a full change each 3 min' },
  running: { seconds: 1800, changes: 0, source: 'US Army SS0509-8, pp. 20, 24: 30 min' },
  'after-aid': { seconds: 300, changes: 0, source: 'US Army SS0509-8, p. 18: aid 2 min, wash 5 min' },
}

/** Residual thiosulfate at which film lasts: 36 CFR 1238.14(c), citing ISO 18901, for LE-500 polyester silver film. */
export const RESIDUE_LIMIT = { gramsPerM2: 0.014, source: '36 CFR 1238.14(c), citing ISO 18901' } as const

/** What a fixer has been found to be; a wash is judged after one that is usable alone. */
export type FixerFinding = 'usable' | 'finished' | 'unknown'
