import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addressOf, askedOf, EVERYTHING_HERE, type Look, lookOf, STATE_CHOICES, typedLook } from './look.js'

const TODAY = '2026-11-25'
const look = fc.record({
  words: fc.string({ maxLength: 20 }),
  state: fc.constantFrom(...STATE_CHOICES.map(([state]) => state)),
  film: fc.string({ maxLength: 20 }),
  whose: fc.string({ maxLength: 20 }),
  process: fc.constantFrom('', 'black-and-white', 'colour-negative', 'colour-reversal'),
  from: fc.constantFrom('', '3 May 2025'),
  to: fc.constantFrom('', '31 December 2026'),
  due: fc.constantFrom('', '1 March 2027'),
})
const searchOf = (address: string) => new URL(address, 'http://here').searchParams

describe('a look', () => {
  it('stands in its address, whatever is typed', () => {
    fc.assert(
      fc.property(look, (typed) => {
        expect(lookOf(searchOf(addressOf(typed)))).toEqual(typed)
      }),
      { seed: 20261, numRuns: 200 },
    )
  })

  it('comes back from a saved view as the same search', () => {
    fc.assert(
      fc.property(look, (typed) => {
        const { asked, unread } = askedOf(typed, TODAY)
        expect(unread).toEqual([])
        const saved = { ...asked, order_id: null } as Parameters<typeof typedLook>[0]
        expect(askedOf(typedLook(saved), TODAY)).toEqual({ asked, unread: [] })
      }),
      { seed: 20262, numRuns: 200 },
    )
  })

  it('is everything on the bench in an address that asks for nothing', () => {
    expect(addressOf(EVERYTHING_HERE)).toBe('/rolls')
    expect(askedOf(EVERYTHING_HERE, TODAY).asked.state).toEqual([
      'taken-in',
      'loaded',
      'developed',
      'hung',
      'sleeved',
      'scanned',
    ])
  })

  it('leaves a date out that cannot be read, and says which', () => {
    const typed: Look = { ...EVERYTHING_HERE, from: 'lately' }
    expect(askedOf(typed, TODAY)).toMatchObject({ asked: { taken_in_from: null }, unread: ['lately'] })
  })
})
