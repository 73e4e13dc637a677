import { describe, expect, it } from 'vitest'
import { problem, sentenceIn } from '../index.js'
import { registry } from './registry.js'

const THIN = '\u202f'

describe('the sentence of a problem', () => {
  const refused = problem('times.outside-usable-range', {
    temperature: { celsius: 32.01 },
    from: { celsius: 10 },
    to: { celsius: 32 },
  })

  it('writes temperatures with the digit they are refused for, in metric', () => {
    expect(refused.sentence).toContain(`32.01${THIN}°C is outside 10${THIN}°C to 32${THIN}°C`)
    expect(sentenceIn(refused, 'metric')).toBe(refused.sentence)
  })

  it('writes the same in °F for a bench that reads °F', () => {
    expect(sentenceIn(refused, 'us')).toContain(`89.62${THIN}°F is outside 50${THIN}°F to 89.6${THIN}°F`)
  })

  it('converts a difference without the 32 of the scale, and writes a real minus', () => {
    const off = { read: { celsius: -5 }, true: { celsius: 0 }, error: { degrees: 5 }, most: { degrees: 5 } }
    const sentence = sentenceIn(problem('thermometer.error-too-large', off), 'us')
    expect(sentence).toContain(`A reading of 23${THIN}°F for a true 32${THIN}°F is 9${THIN}°F off`)
    expect(problem('thermometer.error-too-large', off).sentence).toContain(`−5${THIN}°C`)
  })

  it('lists, and shows a detail that is missing instead of hiding it', () => {
    expect(problem('request.host', { host: 'x', allowed: ['a', 'b'] }).sentence).toContain('Use one of: a, b.')
    expect(problem('request.host', { host: 'x' }).sentence).toContain('(allowed missing)')
  })

  it('carries the field only when there is one', () => {
    expect(problem('times.no-points', {}, 'points').field).toBe('points')
    expect('field' in problem('times.no-points')).toBe(false)
  })
})

describe('the registry', () => {
  it.each(Object.entries(registry))(
    '%s says a whole sentence and knows its place in the guide',
    (_, { sentence, help }) => {
      expect(sentence === '{question}' || sentence === '{reason}' || /^[\p{Lu}“{].*[.]$/u.test(sentence)).toBe(true)
      expect(help).toMatch(/^[a-z-]+#[a-z-]+$/)
    },
  )
})
