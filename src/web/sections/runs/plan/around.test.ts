import { describe, expect, it } from 'vitest'
import { celsius, grams, millilitres, type Reading } from '../../../../kernel/index.js'
import { aroundOf } from './around.js'

const read = <T>(value: T): Reading<T> => ({ kind: 'read', value, echo: '' })
const whole = { room: read(celsius(26)), volume: read(millilitres(500)), weight: read(grams(200)) }

describe('what is around a developer', () => {
  it('pulls it to the room over hours, the longer the more there is of it', () => {
    const half = aroundOf(whole, 'plastic', celsius(20)).room
    const litre = aroundOf({ ...whole, volume: read(millilitres(1000)) }, 'plastic', celsius(20)).room
    expect(half?.temperature).toBe(26)
    expect(half?.timeConstant).toBeGreaterThan(3600)
    expect(litre?.timeConstant).toBeGreaterThan(half?.timeConstant ?? Number.POSITIVE_INFINITY)
  })

  it('warms it in a tank that stood in the room: 200 g of plastic are worth 80 g of water', () => {
    const { pour } = aroundOf(whole, 'plastic', celsius(20))
    // 500 g at x and 80 g at 26 °C stand at 20 °C: x = 20 − 80 × 6 / 500.
    expect(pour?.ok && pour.value.pour).toBeCloseTo(20 - (80 * 6) / 500, 9)
  })

  it('says nothing of what is not known', () => {
    expect(aroundOf({ ...whole, room: null }, 'steel', celsius(20))).toEqual({ room: null, pour: null })
    expect(aroundOf({ ...whole, volume: null }, 'steel', celsius(20))).toEqual({ room: null, pour: null })
    expect(aroundOf({ ...whole, weight: null }, 'steel', celsius(20)).pour).toBeNull()
    expect(aroundOf(whole, 'steel', null).pour).toBeNull()
  })

  it('hands on a refusal: no pour makes up for a tank that heavy and hot', () => {
    const { pour } = aroundOf({ ...whole, weight: read(grams(20_000)) }, 'plastic', celsius(20))
    expect(pour?.ok).toBe(false)
  })
})
