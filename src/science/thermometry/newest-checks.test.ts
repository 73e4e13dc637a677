import { expect, it } from 'vitest'
import { celsius, expectOk } from '../../kernel/index.js'
import type { ThermometerCheck } from './definition.js'
import { correctionByRecord, correctionOf, newestChecks } from './index.js'

const check = (read: number, truth: number): ThermometerCheck => ({
  read: celsius(read),
  true: celsius(truth),
  method: 'comparison',
})

it('lets a newer check take the place of an older one near it, and leaves the rest of the scale alone', () => {
  const [first, far, second] = [check(20.4, 20), check(38.2, 38), check(21.5, 20)]
  expect(newestChecks([first, far, second])).toEqual([far, second])
  expect(newestChecks([second, far, first])).toEqual([far, first])
})

it('draws the line at three degrees between the readings', () => {
  expect(newestChecks([check(20, 20), check(23, 23)])).toHaveLength(1)
  expect(newestChecks([check(20, 20), check(23.01, 23)])).toHaveLength(2)
})

it('follows a thermometer that drifts past what old and new checks could mean together', () => {
  const years = [check(20, 20), check(20.9, 20), check(21.9, 20)]
  expect(correctionOf([check(20.5, 20.5), check(21, 19)]).ok).toBe(false)
  const correction = expectOk(correctionOf(newestChecks(years)))
  expect(correction.at(celsius(21.9)).true).toBeCloseTo(20, 10)
})

it('leaves out withdrawn checks, and takes one read in a set as a comparison', () => {
  const kept = { ...check(20.4, 20), method: 'class-set', withdrawn: false } as const
  const wrong = { ...check(20.4, 21), withdrawn: true }
  const byRecord = expectOk(correctionByRecord([kept, wrong]))
  const plainly = expectOk(correctionOf([check(20.4, 20)]))
  expect(byRecord.at(celsius(21))).toEqual(plainly.at(celsius(21)))
})

it('keeps nothing out of nothing', () => {
  expect(newestChecks([])).toEqual([])
})
