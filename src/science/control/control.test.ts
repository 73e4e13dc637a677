import { describe, expect, it } from 'vitest'
import { expectOk, type Problem, type Result } from '../../kernel/index.js'
import {
  controlSteps,
  ewmaChart,
  individualsChart,
  judge,
  LIMIT_SETS,
  lastMoves,
  operatingLevel,
  readControlStrip,
  runRules,
} from './index.js'

const small = LIMIT_SETS['small-lab'].limits
const refusal = (result: Result<unknown>): Problem => {
  if (result.ok) throw new Error('expected a refusal')
  return result.problem
}

describe('act or wait', () => {
  const fog = (...values: number[]) => expectOk(judge(values, 0.25, small['base-fog']))
  it('less fog is no fault, more is', () => {
    expect(fog(0.05).code).toBe('leave-alone')
    expect(fog(0.28).code).toBe('leave-alone')
    expect(fog(0.29)).toMatchObject({ code: 'second-strip', limit: 0.03 })
    expect(fog(0.25, 0.24, 0.23, 0.22, 0.21, 0.2).code).toBe('leave-alone')
    expect(fog(0.2, 0.21, 0.22, 0.23, 0.24, 0.25)).toMatchObject({ code: 'trend', rising: true, moves: 5 })
  })
  it('past the warning is a watch, on it is not', () => {
    expect(expectOk(judge([0.68], 0.6, small['speed-step'])).code).toBe('leave-alone')
    expect(expectOk(judge([0.69], 0.6, small['speed-step']))).toMatchObject({ code: 'watch', warning: 0.08 })
    expect(expectOk(judge([0.51], 0.6, small['speed-step'])).code).toBe('watch')
  })
  it('a standstill ends a run of moves', () => {
    expect(lastMoves([0.6, 0.59, 0.58, 0.58, 0.57])).toEqual({ moves: 1, rising: false })
    expect(lastMoves([0.6])).toEqual({ moves: 0, rising: false })
  })
  it('needs a value', () => {
    expect(refusal(judge([], 0.6, small.contrast)).code).toBe('control.too-few')
    expect(refusal(judge([Number.NaN], 0.6, small.contrast)).code).toBe('control.bad-value')
  })
})

describe('charts', () => {
  it('find a jump by its moving range', () => {
    const chart = expectOk(individualsChart([1, 1.1, 1, 1.1, 1, 1.1, 1, 1.1, 1, 1.1, 1.9]))
    expect(chart.jumps).toEqual([10])
    expect(chart.outside).toEqual([10])
  })
  it('have no lower limit when falling is no fault', () => {
    const chart = expectOk(individualsChart([1, 1.1, 1, 1.1, 0.2], { aim: 1.05, oneSided: true }))
    expect(chart.lower).toBeNull()
    expect(chart.outside).toEqual([])
    expect(expectOk(ewmaChart([0, 0, 0], { start: 1, deviation: 0.1, oneSided: true })).outside).toEqual([])
    expect(expectOk(ewmaChart([0, 0, 0], { start: 1, deviation: 0.1 })).outside).toEqual([0, 1, 2])
  })
  it('rules name pattern, place and side', () => {
    expect(expectOk(runRules([0, 1.2, 1.3, 0.2, 1.1, 1.4], 0, 1))).toEqual([
      { rule: 'four-of-five-beyond-1', at: 5, rising: true },
    ])
    expect(expectOk(runRules([0, -3.5], 0, 1))).toContainEqual({ rule: 'beyond-3', at: 1, rising: false })
    expect(expectOk(runRules([0, -3.5], 0, 1, true))).toEqual([])
    expect(refusal(runRules([1], 0, 0)).code).toBe('control.bad-value')
  })
})

describe('control strip', () => {
  const densities = [0.2, 0.28, 0.4, 0.62, 0.9, 1.21, 1.5]
  it('chooses its steps once and reads them', () => {
    const steps = expectOk(controlSteps(densities, 0.18, 'film'))
    expect(steps).toEqual({ speed: 2, upper: 6, lower: 4 })
    const reading = expectOk(readControlStrip(densities, 0.18, steps))
    expect(reading.contrast).toBeCloseTo(0.59, 9)
    expect(reading.speedStep).toBe(0.28)
    expect(refusal(readControlStrip(densities.slice(0, 4), 0.18, steps)).code).toBe('control.too-few')
  })
  it('says when a step is missing', () => {
    expect(refusal(controlSteps([0.1, 0.2, 0.3], 0.1, 'radiograph')).code).toBe('control.no-step')
  })
  it('needs two strips for an operating level', () => {
    expect(refusal(operatingLevel([1.2])).code).toBe('control.too-few')
  })
})
