import { describe, expect, it } from 'vitest'
import { say } from '../index.js'

const quantity = 'Contrast'

describe('act or wait as a sentence', () => {
  it.each([
    [
      say('control.leave-alone', { quantity, deviation: -0.02 }, 'metric'),
      'Contrast is −0.02 from its aim. That is chance',
    ],
    [say('control.leave-alone', { quantity, deviation: -0.001 }, 'metric'), 'Contrast is 0.00 from its aim.'],
    [say('control.watch', { quantity, deviation: 0.09, warning: 0.08 }, 'metric'), 'past the warning of 0.08'],
    [say('control.second-strip', { quantity, deviation: 0.12, limit: 0.1 }, 'metric'), 'past the limit of +0.10. Read'],
    [say('control.stop', { quantity, deviation: -0.12, limit: -0.1, second: -0.11 }, 'metric'), '−0.12 and −0.11 from'],
    [say('control.first-strip-wrong', { quantity, second: 0.01 }, 'metric'), 'The second strip is +0.01 from its aim'],
    [
      say('control.trend', { quantity, deviation: 0.05, moves: 5, rising: true }, 'metric'),
      'has risen 5 times running',
    ],
  ])('%s', (sentence, part) => {
    expect(sentence).toContain(part)
  })
  it('names every quantity', () => {
    const codes = ['control.base-fog', 'control.speed-step', 'control.contrast', 'control.densest'] as const
    const names = codes.map((code) => say(code, {}, 'metric'))
    expect(new Set(names).size).toBe(codes.length)
  })
})
