import { describe, expect, it } from 'vitest'
import { seconds, type UnitSystem } from '../../../../kernel/index.js'
import { type Bath, SHIPPED_RECIPES } from '../../../../score/index.js'
import { type BathDraft, draftOfStep } from './draft.js'
import { readStep } from './readStep.js'

const steps = SHIPPED_RECIPES.flatMap((recipe) => recipe.steps)
const developer = steps.find(({ id }) => id === 'developer') as Bath
const typed = (part: Partial<BathDraft>) =>
  readStep({ ...(draftOfStep(developer, 'metric') as BathDraft), ...part }, 'metric')

describe('a step as it is typed', () => {
  it('of every shipped list comes back as it was', () => {
    for (const step of steps) expect(readStep(draftOfStep(step, 'metric'), 'metric').step).toEqual(step)
  })

  it.each(['metric', 'us'] as UnitSystem[])('keeps its window in %s units to a thousandth of a degree', (units) => {
    for (const step of steps) {
      if (step.step !== 'bath' || step.window === null) continue
      const back = readStep(draftOfStep(step, units), units).step as Bath
      // Written to a thousandth of the bench's degree, so half of one may be lost.
      expect(Math.abs((back.window?.from ?? 0) - step.window.from)).toBeLessThanOrEqual(0.00051)
      expect(Math.abs((back.window?.to ?? 0) - step.window.to)).toBeLessThanOrEqual(0.00051)
    }
  })

  it('takes turns up to a moment, and then without a stop', () => {
    const then = typed({ from: '6:00' }).step as Bath
    expect(then.agitation).toEqual({ kind: 'then-continuous', before: developer.agitation, from: seconds(360) })
    expect(readStep(draftOfStep(then, 'metric'), 'metric').step).toEqual(then)
  })

  it.each<Partial<BathDraft>>([
    { turn: 'now and then' },
    { every: '' },
    { low: '18' },
    { law: 'fixed', seconds: '' },
    { law: 'by-clearing', multiple: 'many' },
    { pour: 'slowly' },
  ])('is not a step yet with %o', (part) => expect(typed(part).step).toBeNull())
})
