import { celsius, seconds } from '../../kernel/index.js'
import type { Origin } from '../../science/index.js'
import { FULL_TO_EMPTY, length, SMALL_TANK, turns } from './defaults.js'
import type { Act, ActKind, Bath, TimeLaw, Window } from './definition.js'

type BathParts = Pick<Bath, 'id' | 'name' | 'kind' | 'time' | 'reason'> & Partial<Bath>

/** A bath with what is usual filled in: small tank, full to empty, 30 s and then 5 s each minute, kept in its bottle. */
export const bath = (parts: BathParts): Bath => ({
  step: 'bath',
  agitation: turns(30, 5, 60),
  window: null,
  convention: FULL_TO_EMPTY,
  handling: SMALL_TANK,
  goesTo: 'bottle',
  neverPartFromNext: false,
  mayStay: seconds(0),
  cautions: [],
  ...parts,
})

type ActParts = { id: string; name: string; reason: string; takes: number; within?: number } & Partial<
  Pick<Act, 'cautions'>
>

export const act = (kind: ActKind, { takes, within, ...parts }: ActParts): Act => ({
  step: 'act',
  kind,
  length: length(takes, 'assumption'),
  within: within === undefined ? null : seconds(within),
  cautions: [],
  ...parts,
})

export const fixedFor = (value: number, origin: Origin = 'practice'): TimeLaw => ({
  law: 'fixed',
  seconds: seconds(value),
  origin,
})

export const window = (from: number, to: number, origin: Origin = 'practice'): Window => ({
  from: celsius(from),
  to: celsius(to),
  origin,
})

export const CONTINUOUS = { kind: 'continuous' } as const
