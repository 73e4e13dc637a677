import { expect, it } from 'vitest'
import { sayTime, short } from './saying.js'

it.each([
  [0, '0:00'],
  [5, '0:05'],
  [59.96, '1:00'],
  [570, '9:30'],
  [570.5, '9:30.5'],
  [3599, '59:59'],
  [3600, '1:00:00'],
  [21_600, '6:00:00'],
  [3665.2, '1:01:05.2'],
  [Number.NaN, 'NaN s'],
  [-1, '-1 s'],
])('says %d s as %s', (time, said) => {
  expect(sayTime(time)).toBe(said)
})

it('says numbers without trailing zeros', () => {
  expect(short(2.5, 3)).toBe('2.5')
  expect(short(Number.NaN, 3)).toBe('NaN')
})
