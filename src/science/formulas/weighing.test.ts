import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { expectOk, type Grams, grams, type Millilitres, millilitres, type Result } from '../../kernel/index.js'
import { SALTS, type Salt, type Weighing, weighingOf } from './index.js'

const code = (result: Result<unknown>) => (result.ok ? 'answered' : result.problem.code)
const salt = (id: string) => SALTS.find((one) => one.id === id) as Salt
const litre = millilitres(1000)
const bromide = (amount: number, step = 0.1, bath = litre) =>
  weighingOf(salt('bromide-potassium'), amount as Grams, step as Grams, bath)
const solution = (found: Result<Weighing>) => {
  const weighing = expectOk(found)
  if (weighing.by !== 'solution') throw new Error('it was weighed')
  return weighing
}

describe('weighing', () => {
  it('goes by the scale from twenty of its steps up', () => {
    expect(expectOk(bromide(2))).toEqual({ by: 'scale' })
    expect(expectOk(bromide(1.99)).by).toBe('solution')
    expect(expectOk(bromide(0.2, 0.01))).toEqual({ by: 'scale' })
  })

  it('else goes by way of the strongest solution that can be measured and weighed for', () => {
    expect(solution(bromide(0.5))).toEqual({
      ...{ by: 'solution', percent: 10, measured: 5, keeps: true },
      stock: { grams: 10, volume: 100 },
    })
    // 0.05 g would be half a millilitre of ten per cent, and is a whole one of five.
    expect(solution(bromide(0.05))).toMatchObject({ percent: 5, measured: 1 })
    // A coarse scale needs more of the solution to weigh for it.
    expect(solution(bromide(1.5, 1))).toMatchObject({ percent: 10, stock: { grams: 20, volume: 200 } })
  })

  it('makes none stronger than dissolves, and says of an agent that its solution does not keep', () => {
    expect(solution(weighingOf(salt('borax'), grams(1), grams(0.1), litre))).toMatchObject({ percent: 2, keeps: true })
    expect(solution(weighingOf(salt('metol'), grams(1), grams(0.1), litre))).toMatchObject({ percent: 2, keeps: false })
    expect(code(weighingOf(salt('phenyl-pyrazolidinone'), grams(0.2), grams(0.1), litre))).toBe(
      'formula.too-little-for-a-solution',
    )
  })

  it('refuses with the batch that would do, and that batch does', () => {
    for (const [amount, step, bath] of [
      [0.004, 0.1, 1000],
      [1.5, 0.1, 40],
      [0.2, 0.1, 1000],
    ] as const) {
      const id = amount === 0.2 ? 'phenyl-pyrazolidinone' : 'bromide-potassium'
      const found = weighingOf(salt(id), grams(amount), grams(step), millilitres(bath))
      expect(code(found)).toBe('formula.too-little-for-a-solution')
      const times = Number(found.ok ? 0 : found.problem.details['times'])
      expect(times).toBeGreaterThan(1)
      expect(code(weighingOf(salt(id), grams(amount * times), grams(step), millilitres(bath * times)))).toBe('answered')
    }
    expect(code(bromide(-1))).toBe('formula.bad-value')
    expect(code(bromide(1, 0))).toBe('formula.bad-value')
  })

  it('holds what is called for, in what is there, whatever amount, step and batch', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SALTS),
        fc.double({ min: 0.001, max: 50, noNaN: true }),
        fc.constantFrom(0.001, 0.01, 0.1, 1, 5),
        fc.double({ min: 50, max: 5000, noNaN: true }),
        (one, amount, step, bath) => {
          const found = weighingOf(one, amount as Grams, grams(step), millilitres(bath))
          if (!found.ok) {
            const times = Number(found.problem.details['times'])
            const more = weighingOf(one, (amount * times) as Grams, grams(step), (bath * times) as Millilitres)
            expect([found.problem.code, code(more)]).toEqual(['formula.too-little-for-a-solution', 'answered'])
            return
          }
          if (found.value.by === 'scale') {
            expect(amount).toBeGreaterThanOrEqual(20 * step)
            return
          }
          const { percent, measured, stock } = found.value
          expect((measured * percent) / 100).toBeCloseTo(amount, 9)
          expect(measured).toBeGreaterThanOrEqual(1)
          expect(measured).toBeLessThanOrEqual(bath / 5)
          expect(stock.volume).toBeGreaterThanOrEqual(measured)
          expect(stock.volume).toBeLessThanOrEqual(500)
          expect(stock.grams).toBeGreaterThanOrEqual(20 * step - 1e-9)
          expect((100 * stock.grams) / stock.volume).toBeCloseTo(percent, 9)
        },
      ),
      { seed: 20_261, numRuns: 500 },
    )
  })
})
