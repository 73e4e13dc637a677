import { expect, it } from 'vitest'
import { ScreenOffTrial } from './screenOffTrial.js'

function tried(darkFor: number, played: number | null) {
  let [wall, position] = [1_772_366_400_000, 3 as number | null]
  const trial = new ScreenOffTrial({ wall: () => wall }, () => position)
  trial.hidden()
  wall += darkFor * 1000
  position = played === null ? null : 3 + played
  return trial.shown()
}

it('tells that the tones went on, when as much was played as time went by', () => {
  expect(tried(11, 10.9)).toEqual({ code: 'went-on', dark: 11 })
})

it('tells after how long they stopped', () => {
  expect(tried(12, 2)).toEqual({ code: 'stopped', dark: 12, played: 2 })
  expect(tried(12, null)).toEqual({ code: 'stopped', dark: 12, played: 0 })
})

it('says nothing of a screen that was hardly off, or not at all', () => {
  expect(tried(3, 0)).toEqual({ code: 'not-dark' })
  expect(new ScreenOffTrial({ wall: () => 0 }, () => 0).shown()).toEqual({ code: 'not-dark' })
})
