import { describe, expect, it } from 'vitest'
import { all, andThen, expectOk, failed, ok, type Result } from './result.js'

const half = (n: number): Result<number, string> => (n % 2 === 0 ? ok(n / 2) : failed(`${n} is odd`))

describe('a result', () => {
  it('is carried on when there is a value', () => {
    expect(andThen(half(12), half)).toEqual(ok(3))
  })

  it('stops at the first problem', () => {
    expect(andThen(half(7), half)).toEqual(failed('7 is odd'))
    expect(andThen(half(6), half)).toEqual(failed('3 is odd'))
  })
})

describe('several results', () => {
  it('become all their values, in order', () => {
    expect(all([half(2), half(4)])).toEqual(ok([1, 2]))
    expect(all([])).toEqual(ok([]))
  })

  it('become the first problem among them', () => {
    expect(all([half(2), half(3), half(5)])).toEqual(failed('3 is odd'))
  })
})

describe('an expected value', () => {
  it('is given', () => {
    expect(expectOk(ok('here'))).toBe('here')
  })

  it('is missed loudly, with the sentence of the problem', () => {
    const problem = { code: 'request.malformed', sentence: 'That is not a number.' }
    expect(() => expectOk(failed(problem as never))).toThrow('request.malformed: That is not a number.')
  })
})
