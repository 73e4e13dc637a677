import type { WashStep } from './definition.js'

/** Part left by each step of water that mixes fully, given what is carried over in mL. */
function partLeft(step: WashStep, before: WashStep | undefined, carried: number): number {
  const equilibrium = carried / (step.volume + carried)
  if (step.kind === 'change') return equilibrium
  const flowing = Math.exp((-step.perMinute * step.time) / 60 / step.volume)
  return goesOn(step, before) ? flowing : equilibrium * flowing
}

/** Running water that follows running water in the same tank is not poured out between. */
export const goesOn = (step: WashStep, before: WashStep | undefined): boolean =>
  step.kind === 'running' && before?.kind === 'running' && before.volume === step.volume

/** What the water alone would leave of what went in, as a part: each step thins what the one before it left. */
export const leftByWater = (steps: readonly WashStep[], carried: number): number =>
  steps.reduce((left, step, i) => left * partLeft(step, steps[i - 1], carried), 1)

/** mL that are used, fillings counted once for running water that goes on. */
export const waterUsed = (steps: readonly WashStep[]): number =>
  steps.reduce((sum, step, i) => {
    const filled = goesOn(step, steps[i - 1]) ? 0 : step.volume
    return sum + filled + (step.kind === 'running' ? (step.perMinute * step.time) / 60 : 0)
  }, 0)

/** Seconds of all of it. */
export const timeOf = (steps: readonly WashStep[]): number => steps.reduce((sum, { time }) => sum + time, 0)

/** Seconds in water that is moved or runs. */
export const movedTime = (steps: readonly WashStep[]): number =>
  steps.reduce((sum, step) => sum + (step.kind === 'running' || step.moved !== false ? step.time : 0), 0)
