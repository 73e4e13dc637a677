import { describe, expect, it } from 'vitest'
import { SHIPPED_RECIPES, type Turn } from '../../../../score/index.js'
import { readMoments, readTurn, writeMoments, writeTurn } from './turns.js'

const read = (text: string): Turn | string => {
  const reading = readTurn(text)
  return reading.kind === 'read' ? reading.value : reading.kind
}

describe('turns as they are typed', () => {
  it.each([
    ['30 s', { by: 'seconds', seconds: 30 }],
    ['0:05', { by: 'seconds', seconds: 5 }],
    ['4 times', { by: 'inversions', count: 4, secondsEach: 2.5 }],
    ['10×', { by: 'inversions', count: 10, secondsEach: 2.5 }],
    ['5 times at 1,5 s each', { by: 'inversions', count: 5, secondsEach: 1.5 }],
    ['often', 'refused'],
    ['', 'refused'],
  ])('%s', (text, turn) => expect(read(text)).toEqual(turn))

  it('every turn of the shipped lists comes back as it was', () => {
    const agitations = SHIPPED_RECIPES.flatMap(({ steps }) =>
      steps.flatMap((step) => (step.step === 'bath' ? [step.agitation] : [])),
    )
    const turns = agitations.flatMap((one) =>
      one.kind === 'turns' || one.kind === 'moments'
        ? [...(one.opening === null ? [] : [one.opening]), ...(one.kind === 'turns' ? [one.turn] : [])]
        : [],
    )
    expect(turns.length).toBeGreaterThan(20)
    for (const turn of turns) expect(read(writeTurn(turn))).toEqual(turn)
  })

  it('a list of one’s own is a moment and a turn on each line', () => {
    const reading = readMoments('10:00 5 s\n\n30:00 – 2 times at 3 s each')
    expect(reading).toMatchObject({
      kind: 'read',
      value: [
        { at: 600, turn: { by: 'seconds', seconds: 5 } },
        { at: 1800, turn: { by: 'inversions', count: 2, secondsEach: 3 } },
      ],
    })
    if (reading.kind === 'read')
      expect(readMoments(writeMoments(reading.value))).toMatchObject({ value: reading.value })
    expect(readMoments('5 s').kind).toBe('refused')
    expect(readMoments('')).toMatchObject({ kind: 'read', value: [] })
  })
})
