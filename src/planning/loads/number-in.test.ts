import { expect, it } from 'vitest'
import { rollNumberIn } from './number-in.js'

it.each([
  ['http://192.168.7.20:4807/r/2026-0017', '2026-0017'],
  [' http://bench.example/r/Ida%20No.%203/ ', 'Ida No. 3'],
  ['https://bench.example/r/half%2', 'half%2'],
  [' 2026-0017 ', '2026-0017'],
  ['http://bench.example/rolls/2026-0017', 'http://bench.example/rolls/2026-0017'],
  ['', ''],
])('“%s” names %s', (typed, number) => {
  expect(rollNumberIn(typed)).toBe(number)
})
