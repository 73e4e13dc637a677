import { describe, expect, it } from 'vitest'
import { EMPTY_VESSEL, readVessel, type VesselDraft } from './readVessel.js'

const read = (changes: Partial<VesselDraft>) => readVessel({ ...EMPTY_VESSEL, name: 'Two-reel', ...changes }, 'metric')

describe('a thing of the kit as it is typed', () => {
  it('is a tank by its lines of format, number and volume', () => {
    expect(read({ holds: '135, 2, 580 mL\n\n4×5; 6; 1 L', warmth: '60 g', constant: '70:00' })).toEqual({
      statement: {
        kind: 'tank',
        name: 'Two-reel',
        material: 'plastic',
        moved: 'inversion',
        holds: [
          { format: '135', reels: 2, covers_ml: 580 },
          { format: '4x5', reels: 6, covers_ml: 1000 },
        ],
        warmth_g: 60,
        time_constant_s: 4200,
        note: '',
      },
    })
  })

  it.each(['135, 2', '35 mm, 2, 580 mL', '135, 0, 580 mL', '135, two, 580 mL', '120, 1, much'])(
    'says which line is wrong: %s',
    (line) => {
      const reading = read({ holds: `135, 1, 290 mL\n${line}` })
      expect(reading).toMatchObject({ statement: null, troubles: { holds: expect.stringContaining('Line 2') } })
    },
  )

  it('is a reel by its formats, wet or dry', () => {
    expect(read({ kind: 'reel', formats: '120 220', wetAt: '2026-03-01T12:00:00.000Z' })).toMatchObject({
      statement: { formats: ['120', '220'], wet_at: '2026-03-01T12:00:00.000Z' },
    })
    expect(read({ kind: 'reel', formats: '135, half' })).toMatchObject({ troubles: { formats: expect.anything() } })
    expect(read({ kind: 'reel', formats: ' ' })).toMatchObject({ statement: null })
  })

  it('is a graduate by what it holds and how it is marked', () => {
    const graduate = { kind: 'graduate', volume: '600 mL', marks: '10 mL' } as const
    expect(read(graduate)).toMatchObject({ statement: { kind: 'graduate', holds_ml: 600, marked_every_ml: 10 } })
    expect(read({ ...graduate, marks: '' })).toMatchObject({ troubles: { marks: 'Such as 10 mL.' } })
    expect(read({ ...graduate, name: '  ' })).toMatchObject({ troubles: { name: 'This is still empty.' } })
  })
})
