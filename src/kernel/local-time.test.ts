import { describe, expect, it } from 'vitest'
import { dayAt, readTimeOfDay, wallClocks } from './index.js'

const at = (text: string): number => Date.parse(text)
const clock = (hours: number, minutes = 0, seconds = 0): number => hours * 3600 + minutes * 60 + seconds

describe('a time of day', () => {
  it.each([
    ['14:05', clock(14, 5), 'minute', '14:05'],
    ['14:05:30', clock(14, 5, 30), 'second', '14:05:30'],
    [' 9.07 ', clock(9, 7), 'minute', '09:07'],
    ['9h07', clock(9, 7), 'minute', '09:07'],
    ['2:05 pm', clock(14, 5), 'minute', '14:05'],
    ['12:00:01 a.m.', clock(0, 0, 1), 'second', '00:00:01'],
    ['12:30pm', clock(12, 30), 'minute', '12:30'],
    ['0:00', 0, 'minute', '00:00'],
    ['23:59:59', 86_399, 'second', '23:59:59'],
  ] as const)('%s is read', (text, second, to, echo) => {
    expect(readTimeOfDay(text)).toEqual({ kind: 'read', value: { second, to }, echo })
  })

  it.each([
    ['24:00', 'quantity.impossible'],
    ['14:60', 'quantity.impossible'],
    ['14:05:75', 'quantity.impossible'],
    ['13:05 pm', 'quantity.impossible'],
    ['0:05 am', 'quantity.impossible'],
    ['14', 'quantity.unreadable'],
    ['1405', 'quantity.unreadable'],
    ['14:5', 'quantity.unreadable'],
    ['noon', 'quantity.unreadable'],
    ['', 'quantity.empty'],
  ])('%s is refused', (text, code) => {
    const reading = readTimeOfDay(text)
    expect(reading.kind === 'refused' && reading.problem.code).toBe(code)
  })
})

describe('an instant from what a clock showed', () => {
  it('is found where the bench is', () => {
    expect(wallClocks('Europe/Vienna').onDay('2026-11-25', clock(14, 5, 30))).toBe(at('2026-11-25T13:05:30Z'))
    expect(wallClocks('Europe/Vienna').onDay('2026-07-25', clock(14, 5))).toBe(at('2026-07-25T12:05:00Z'))
    expect(wallClocks('No/Such').onDay('2026-07-25', clock(14, 5))).toBe(at('2026-07-25T14:05:00Z'))
    expect(wallClocks('America/St_Johns').shownAt(at('2026-11-25T13:05:30Z'))).toBe(at('2026-11-25T09:35:30Z'))
  })

  it('is the nearest one: past midnight it is the day after', () => {
    const begun = at('2026-11-25T22:50:00Z')
    expect(wallClocks('Europe/Vienna').nearest(clock(0, 5), begun)).toBe(at('2026-11-25T23:05:00Z'))
    expect(wallClocks('Europe/Vienna').nearest(clock(23, 40), begun)).toBe(at('2026-11-25T22:40:00Z'))
    expect(wallClocks('UTC').nearest(clock(23, 40), at('2026-11-26T00:10:00Z'))).toBe(at('2026-11-25T23:40:00Z'))
  })

  it('knows the nights on which clocks are put back and forward', () => {
    // In Vienna 2:30 came twice on 25 Oct 2026, and never on 29 March.
    const half = clock(2, 30)
    expect(wallClocks('Europe/Vienna').nearest(half, at('2026-10-25T00:20:00Z'))).toBe(at('2026-10-25T00:30:00Z'))
    expect(wallClocks('Europe/Vienna').nearest(half, at('2026-10-25T01:20:00Z'))).toBe(at('2026-10-25T01:30:00Z'))
    expect(wallClocks('Europe/Vienna').onDay('2026-03-29', half)).toBe(at('2026-03-29T01:30:00Z'))
    expect(wallClocks('Europe/Vienna').nearest(clock(3, 10), at('2026-03-29T00:55:00Z'))).toBe(
      at('2026-03-29T01:10:00Z'),
    )
  })

  it('knows where a day begins, also where clocks are moved at midnight', () => {
    // In Havana midnight of 8 March 2026 was left out: the day began at one o'clock.
    expect(wallClocks('America/Havana').onDay('2026-03-08', 0)).toBe(at('2026-03-08T05:00:00Z'))
    expect(dayAt(at('2026-03-08T04:59:59Z'), 'America/Havana')).toBe('2026-03-07')
    expect(dayAt(at('2026-03-08T05:00:00Z'), 'America/Havana')).toBe('2026-03-08')
    expect(dayAt(at('2026-03-08T05:00:00Z'), 'No/Such')).toBe('2026-03-08')
  })
})
