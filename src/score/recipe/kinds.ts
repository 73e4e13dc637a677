import type { Bath, BathKind, Step } from './definition.js'

const FIXED: readonly BathKind[] = ['colour-developer', 'first-developer']
const DEVELOPING: readonly BathKind[] = ['developer', 'single-bath', 'bath-a', ...FIXED]
const FIXING: readonly BathKind[] = ['fix', 'single-bath']

/** Its seconds decide the picture, so its pour is always confirmed by hand. */
export const develops = (bath: Bath): boolean => DEVELOPING.includes(bath.kind)

/** One time at one temperature: a colour developer or a reversal first developer. */
export const hasFixedTime = (bath: Bath): boolean => FIXED.includes(bath.kind)

export const fixes = (bath: Bath): boolean => FIXING.includes(bath.kind)

export const isBath = (step: Step): step is Bath => step.step === 'bath'

/** What fills have in common whose names differ by a number alone: Wash for Wash 1 and Wash 2. */
export const seriesOf = (name: string): string => name.replace(/\s\d+$/, '')

/** Whether a bath is the one before it in fresh water or solution: the next fill of a wash. */
export const isRefillOf = (before: Bath, bath: Bath): boolean =>
  before.kind === bath.kind && seriesOf(before.name) === seriesOf(bath.name)
