import { describe, expect, it } from 'vitest'
import { seconds } from '../../kernel/index.js'
import { laterTurns, openingLength } from './agitation.js'
import { recipeProblems } from './check.js'
import { inversions, turns } from './defaults.js'
import type { Agitation, Bath, Recipe, Step } from './definition.js'
import { develops, isBath } from './kinds.js'
import { threeBathAcid } from './lists/black-and-white.js'
import { SHIPPED_RECIPES } from './shipped.js'

describe('turns of the tank', () => {
  const marks = (agitation: Agitation, until: number) => laterTurns(agitation, until).map(({ at }) => at)

  it('8:00 with 30 s and then 5 s each minute has seven later turns, the last at 7:00', () => {
    expect(marks(turns(30, 5, 60), 470)).toEqual([60, 120, 180, 240, 300, 360, 420])
    expect(openingLength(turns(30, 5, 60), 470)).toBe(30)
  })

  it('8:00 with turns each half minute has fourteen, from 1:00 to 7:30', () => {
    expect(marks(turns(30, 5, 30), 470)).toHaveLength(14)
    expect(marks(turns(30, 5, 30), 470)[0]).toBe(60)
    expect(marks(turns(30, 5, 30), 470).at(-1)).toBe(450)
  })

  it.each([60, 30])('their number is that of the published count wherever the last one fits, each %d s', (every) => {
    for (let until = 60; until < 1500; until++) {
      // A turn that would run into the draining is left out; the published count has no length of a turn.
      if ((until - 60) % every < 5) continue
      expect(marks(turns(30, 5, every), until)).toHaveLength(Math.floor((until - 60) / every) + 1)
    }
  })

  it('never run into the draining, nor begin before the opening is over', () => {
    const all: Agitation[] = [turns(60, 10, 60), turns(15, 5, 30), { kind: 'continuous' }, thenContinuous]
    for (const agitation of all)
      for (const until of [5, 20, 61, 65, 70, 200])
        for (const { at, length } of laterTurns(agitation, until)) {
          expect(at + length).toBeLessThanOrEqual(until)
          expect(at).toBeGreaterThanOrEqual(openingLength(agitation, until))
        }
  })

  const thenContinuous: Agitation = { kind: 'then-continuous', before: turns(30, 5, 60), from: seconds(100) }
  it('go on without a stop from a moment on', () => {
    expect(laterTurns(thenContinuous, 300)).toEqual([
      { at: 60, length: 5 },
      { at: 100, length: 200 },
    ])
  })

  it('counted inversions last as long as they take', () => {
    const four: Agitation = { kind: 'turns', opening: inversions(10, 2), turn: inversions(4, 2), every: seconds(60) }
    expect(openingLength(four, 300)).toBe(20)
    expect(laterTurns(four, 300)[0]).toEqual({ at: 60, length: 8 })
    expect(marks({ kind: 'rotary' }, 300)).toEqual([])
  })

  it('turns a bath that nobody poured out for a day, not for years', () => {
    const turned = laterTurns(turns(30, 5, 60), 3 * 365 * 86_400)
    expect(turned).toHaveLength(86_400 / 60 - 1)
    expect(turned.at(-1)?.at).toBeLessThan(86_400)
  })
})

describe.each(SHIPPED_RECIPES.map((recipe) => [recipe.name, recipe] as const))('%s', (_, recipe) => {
  it('can be run', () => {
    expect(recipeProblems(recipe)).toEqual([])
  })
  it('gives each step its reason, each time its origin, and its developers a caution', () => {
    for (const step of recipe.steps) {
      expect(step.reason).toMatch(/^\p{Lu}.{20,}\.$/u)
      if (!isBath(step)) continue
      if (step.time.law !== 'by-developing-time') expect(step.time.origin).toBeTruthy()
      if (develops(step)) expect(step.cautions).toContain('dark-until-fixed')
    }
  })
  it('marks every figure with what it rests on', () => {
    const known = ['measured', 'sheet', 'law', 'practice', 'assumption']
    for (const step of recipe.steps) {
      if (!isBath(step)) {
        expect(known).toContain(step.length.origin)
        continue
      }
      const { pour, drain, cap, tap } = step.handling
      const lengths = [pour, drain, cap, ...(tap === null ? [] : [tap])]
      const marks = [...lengths, ...(step.window === null ? [] : [step.window])].map(({ origin }) => origin)
      for (const mark of marks) expect(known).toContain(mark)
    }
  })
  it('has a caution at every step that can hurt the film or the hands', () => {
    for (const step of recipe.steps) {
      const cautions: readonly string[] = step.cautions
      const wants = (kinds: readonly string[], caution: string) => {
        if (kinds.includes(step.kind)) expect(cautions, step.id).toContain(caution)
      }
      wants(['bleach'], 'bleach-oxidiser')
      wants(['bleach', 'colour-developer'], 'gloves')
      wants(['fix'], 'never-into-developer')
      wants(['look', 'squeeze', 'hang-up'], 'do-not-touch-emulsion')
      wants(['re-expose'], 'even-light')
    }
  })
  it('parts no developer from what ends it', () => {
    for (const step of recipe.steps) {
      if (isBath(step) && develops(step) && step.kind !== 'single-bath') expect(step.neverPartFromNext).toBe(true)
    }
  })
})

describe('a list with a slip in it', () => {
  const withStep = (change: (step: Step, i: number) => Step | null): Recipe => ({
    ...threeBathAcid,
    steps: threeBathAcid.steps.flatMap((step, i) => change(step, i) ?? []),
  })
  const bathAt = (i: number, more: Partial<Bath>) =>
    withStep((step, k) => (k === i ? ({ ...step, ...more } as Bath) : step))
  const codes = (recipe: Recipe) => recipeProblems(recipe).map(({ code }) => code)

  it.each([
    ['no bath', { ...threeBathAcid, steps: [] }, 'recipe.no-bath'],
    ['no name', bathAt(0, { name: ' ' }), 'recipe.bad-name'],
    ['one id twice', bathAt(1, { id: 'developer' }), 'recipe.same-id'],
    [
      'a stop of two seconds',
      bathAt(1, { time: { law: 'fixed', seconds: seconds(2), origin: 'practice' } }),
      'recipe.bad-time',
    ],
    [
      'a stop shorter than its draining',
      bathAt(1, { time: { law: 'fixed', seconds: seconds(8), origin: 'practice' } }),
      'recipe.shorter-than-drain',
    ],
    [
      'a turn longer than its interval',
      bathAt(0, { agitation: turns(30, 90, 60) }),
      'recipe.turn-longer-than-interval',
    ],
    ['a turn of no length', bathAt(0, { agitation: turns(30, 0, 60) }), 'recipe.bad-turn'],
    ['a colour developer with a moving time', bathAt(0, { kind: 'colour-developer' }), 'recipe.fixed-needs-seconds'],
    ['two developing times', bathAt(1, { time: { law: 'by-developing-time' } }), 'recipe.several-developing-times'],
    [
      'a window upside down',
      bathAt(0, { window: { from: 24 as never, to: 18 as never, origin: 'practice' } }),
      'recipe.bad-window',
    ],
    ['the lid off before the fixer', withStep((step) => (step.id === 'fix' ? null : step)), 'recipe.light-too-soon'],
    [
      'a developer that nothing follows',
      withStep((step) => (isBath(step) && step.id !== 'developer' ? null : step)),
      'recipe.parted',
    ],
  ] as const)('%s', (_, recipe, code) => {
    expect(codes(recipe)).toContain(code)
  })
})
