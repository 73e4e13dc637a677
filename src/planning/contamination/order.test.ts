import { describe, expect, it } from 'vitest'
import { BENCH_ROLES, between, makesTogether } from './order.js'

describe('what may follow what in a shared graduate', () => {
  it.each([
    ['fixer', 'developer', 'rinse-well'],
    ['stop', 'developer', 'rinse-well'],
    ['developer', 'stop', 'goes-on'],
    ['stop', 'fixer', 'goes-on'],
    ['developer', 'fixer', 'rinse'],
    ['fixer', 'wetting-agent', 'rinse-well'],
    ['developer', 'developer', 'rinse'],
    ['wetting-agent', 'developer', 'rinse-well'],
    ['cleaner', 'fixer', 'own-vessel'],
    ['stop', 'cleaner', 'own-vessel'],
    ['toner', 'stop', 'own-vessel'],
    ['bleach', 'developer', 'own-vessel'],
    ['other', 'stop', 'rinse-well'],
  ] as const)('%s, then %s: %s', (before, next, wanted) => expect(between(before, next).do).toBe(wanted))

  it('nothing comes into a developer or onto drying film unrinsed, but from itself', () => {
    for (const before of BENCH_ROLES)
      for (const next of ['developer', 'wetting-agent'] as const) expect(between(before, next).do).not.toBe('goes-on')
    for (const role of BENCH_ROLES) expect(between(role, role, true).do).toBe('goes-on')
  })

  it('what must never meet has a vessel of its own, whichever comes first', () => {
    for (const one of BENCH_ROLES)
      for (const other of BENCH_ROLES) {
        expect(makesTogether(one, other)).toBe(makesTogether(other, one))
        if (makesTogether(one, other) !== null) expect(between(one, other).do).toBe('own-vessel')
      }
    expect(makesTogether('cleaner', 'fixer')).toMatch(/chlorine/)
    expect(makesTogether('developer', 'fixer')).toBeNull()
  })
})
