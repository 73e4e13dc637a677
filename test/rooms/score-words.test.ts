import { describe, expect, it } from 'vitest'
import { type MishapKind, mishapCard, SHIPPED_RECIPES, type Stage } from '../../src/score/index.js'
import { type Code, catalogue, say } from '../../src/words/index.js'

const kinds: readonly MishapKind[] = [
  'fixer-first',
  'developer-short',
  'wrong-dilution',
  'lid-came-off',
  'tank-leaks',
  'stop-skipped',
  'power-or-phone-dead',
]
const stages: readonly Stage[] = ['before-developer', 'developing', 'between', 'fixing', 'fixed']

describe('the words of the score', () => {
  it.each(kinds)('the card for %s has all its sentences, whatever the stage', (kind) => {
    for (const stage of stages) {
      const { todo, means, becomes } = mishapCard(kind, stage)
      expect(todo.length).toBeGreaterThanOrEqual(2)
      for (const code of [`mishap.${kind}`, ...todo, means, ...(becomes === null ? [] : [becomes])]) {
        expect(catalogue, code).toHaveProperty([code])
        expect(say(code as Code, {} as never, 'metric')).toMatch(/^\p{Lu}.+/u)
      }
    }
  })

  it('every caution that a shipped list carries has its sentence', () => {
    const cautions = SHIPPED_RECIPES.flatMap(({ steps }) => steps.flatMap((step) => step.cautions))
    expect(cautions.length).toBeGreaterThan(20)
    for (const caution of cautions) expect(catalogue).toHaveProperty([`caution.${caution}`])
  })
})
