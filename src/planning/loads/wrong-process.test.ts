import { describe, expect, it } from 'vitest'
import { type RollToLoad, stopOf, throughList } from './wrong-process.js'

const roll = (changes: Partial<RollToLoad> = {}): RollToLoad => ({
  number: '2026-0007',
  process: 'black-and-white',
  whose: null,
  remarks: [],
  ...changes,
})

describe('wrong process', () => {
  it.each([
    ['black-and-white', 'black-and-white'],
    ['black-and-white', 'black-and-white-reversal'],
    ['colour-negative', 'colour-negative'],
    ['colour-reversal', 'colour-reversal'],
  ] as const)('%s film fits a list for %s', (process, list) => {
    expect(throughList(roll({ process, whose: 'Ida' }), list, '')).toEqual({ ok: true, value: 'fits' })
  })

  it.each([
    ['black-and-white', 'colour-negative'],
    ['black-and-white', 'colour-reversal'],
    ['colour-negative', 'black-and-white'],
    ['colour-negative', 'black-and-white-reversal'],
    ['colour-negative', 'colour-reversal'],
    ['colour-reversal', 'black-and-white'],
    ['colour-reversal', 'colour-negative'],
  ] as const)('%s film is stopped before a list for %s', (process, list) => {
    expect(throughList(roll({ process }), list, '  ')).toMatchObject({ problem: { code: 'loads.wrong-process' } })
    expect(throughList(roll({ process }), list, 'found, 30 years old')).toEqual({ ok: true, value: 'crosses' })
    const theirs = throughList(roll({ process, whose: 'Ida', remarks: ['found'] }), list, 'a reason')
    expect(theirs).toMatchObject({ problem: { code: 'loads.wrong-process-of-others', details: { person: 'Ida' } } })
  })
})

describe('stops of their own', () => {
  it('are the backing and infrared, one after the other, until confirmed', () => {
    const both = roll({ remarks: ['found', 'infrared', 'carbon-backing'] })
    expect(stopOf(both, [])).toMatchObject({ problem: { code: 'loads.carbon-backing' } })
    expect(stopOf(both, ['carbon-backing'])).toMatchObject({ problem: { code: 'loads.infrared' } })
    expect(stopOf(both, ['infrared', 'carbon-backing'])).toEqual({ ok: true, value: null })
    expect(stopOf(roll({ remarks: ['found', 'expired'] }), [])).toEqual({ ok: true, value: null })
  })
})
