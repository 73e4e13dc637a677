import { describe, expect, it } from 'vitest'
import { laterTurns } from './agitation.js'
import { turns } from './defaults.js'

describe('the last turn before the draining', () => {
  const begun = (until: number) => laterTurns(turns(30, 5, 60), until).map(({ at }) => at)

  it('is kept where it ends in the very millisecond that the draining begins, however that was summed', () => {
    // A pour at 724.102 s and a draining at 1029.102 s: a rounding less than 305 s apart.
    const until = 1029.1019999999999 - 724.102
    expect(until).toBeLessThan(305)
    expect(begun(until)).toEqual([60, 120, 180, 240, 300])
    expect(begun(305)).toEqual(begun(until))
  })

  it('is left out where it would run a millisecond into it', () => {
    expect(begun(304.999)).toEqual([60, 120, 180, 240])
  })
})
