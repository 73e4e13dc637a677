import { describe, expect, it } from 'vitest'
import { expectOk, seconds } from '../../kernel/index.js'
import { threeBathAcid } from '../recipe/lists/black-and-white.js'
import { bathBefore, changeOf } from './change.js'
import type { Job, TankPlan } from './definition.js'
import { plan } from './plan.js'

const development = { from: 'own', time: seconds(480), temperature: null } as const
const planned = expectOk(plan([{ recipe: threeBathAcid, conditions: { tank: 'A', development } }]))
const { jobs, laid } = planned.tanks[0] as TankPlan

describe('a bath change', () => {
  it('pours in, changes, or changes the water of the same wash', () => {
    const changes = jobs.filter(({ kind }) => kind === 'change').map((job: Job) => changeOf(laid, job))
    expect(changes.map(({ how, before, name }) => `${how}: ${before} > ${name}`)).toEqual([
      'in:  > Developer',
      'change: Developer > Stop',
      'change: Stop > Fix',
      'change: Fix > Wash 1',
      'refill: Wash 1 > Wash 2',
      'refill: Wash 2 > Wash 3',
      'refill: Wash 3 > Wash 4',
      'refill: Wash 4 > Wash 5',
      'change: Wash 5 > Wetting agent',
    ])
  })

  it('looks past acts and what was left out for the bath before', () => {
    const wash = laid.findIndex(({ step }) => step.name === 'Wash 1')
    expect(bathBefore(laid, wash)?.step.name).toBe('Fix')
    const without = laid.map((one) => (one.step.name === 'Fix' ? { ...one, skipped: true } : one))
    expect(bathBefore(without, wash)?.step.name).toBe('Stop')
    expect(bathBefore(laid, 0)).toBeNull()
  })
})
