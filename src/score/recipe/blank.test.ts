import { describe, expect, it } from 'vitest'
import { ACT_KINDS, BATH_KINDS, CAUTIONS, newStep } from './blank.js'
import { recipeProblems } from './check.js'
import type { Recipe, Step } from './definition.js'
import { threeBathAcid } from './lists/black-and-white.js'
import { SHIPPED_RECIPES } from './shipped.js'

const steps: readonly Step[] = SHIPPED_RECIPES.flatMap((recipe) => recipe.steps)

describe('a fresh step', () => {
  it('can be of every kind that the shipped lists have', () => {
    for (const { kind } of steps) expect([...BATH_KINDS, ...ACT_KINDS]).toContain(kind)
    for (const caution of steps.flatMap(({ cautions }) => cautions)) expect(CAUTIONS).toContain(caution)
  })

  it.each([...BATH_KINDS, ...ACT_KINDS])('a %s can be run behind the fixer, with its developer away', (kind) => {
    const rest = threeBathAcid.steps.filter(({ id }) => id !== 'developer' && id !== 'hang-up')
    const list: Recipe = { ...threeBathAcid, steps: [...rest, newStep(kind, 'fresh', 'Fresh')] }
    expect(recipeProblems(list)).toEqual([])
  })

  it('owns up that its seconds are assumed, and that a developer keeps the lid on', () => {
    const wash = newStep('wash', 'w', 'Wash')
    expect(wash.step === 'bath' && wash.time.law === 'fixed' && wash.time.origin).toBe('assumption')
    expect(newStep('first-developer', 'd', 'First developer').cautions).toContain('dark-until-fixed')
    expect(newStep('developer', 'd', 'Developer')).toMatchObject({ time: { law: 'by-developing-time' } })
  })
})
