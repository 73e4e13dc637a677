import { describe, expect, it } from 'vitest'
import { type Data, halfWrites } from './data.js'

const bench = 'b'
/** A small house with nothing half about it. */
const whole = (): Data => ({
  benches: [{ id: bench, name: 'Cellar', feed_seq: 3 }],
  reference_times: [{ id: 't' }],
  reference_time_revisions: [{ time_id: 't', revision: 1 }],
  reference_time_points: [0, 1].map((position) => ({ time_id: 't', revision: 1, position })),
  thermometers: [{ id: 'th' }],
  thermometer_revisions: [{ thermometer_id: 'th', revision: 1 }],
  thermometer_checks: [],
  thermometer_check_withdrawals: [],
  devices: [{ id: 'd', removed_at: null }],
  feed: ['t', 'th', 'd'].map((subject, i) => ({ bench_id: bench, seq: i + 1, subject })),
  write_keys: [{ key: 'k', response: '{}' }],
})

describe('the check for half writes', () => {
  it('says nothing of whole data', () => expect(halfWrites(whole())).toEqual([]))

  const damages: [string, (data: Data) => unknown, string][] = [
    ['a record without revision', (d) => d['reference_time_revisions']?.pop(), 'reference_times t'],
    ['a missing point', (d) => d['reference_time_points']?.shift(), 'points'],
    ['a thermometer without revision', (d) => d['thermometer_revisions']?.pop(), 'thermometers th'],
    ['a change that was not told', (d) => d['feed']?.pop(), 'told 0 times'],
    [
      'a gap in the feed',
      (d) =>
        d['feed']?.forEach((row) => {
          row['seq'] = Number(row['seq']) * 2
        }),
      'feed rows',
    ],
    [
      'a feed number ahead of its rows',
      (d) =>
        d['benches']?.forEach((row) => {
          row['feed_seq'] = 4
        }),
      'number 4',
    ],
    [
      'a removal that was not told',
      (d) =>
        d['devices']?.forEach((row) => {
          row['removed_at'] = 5
        }),
      'd: 2 changes',
    ],
    [
      'a class set with one check',
      (d) => d['thermometer_checks']?.push({ id: 'c', set_id: 's', thermometer_id: 'th' }),
      'class set s',
    ],
    ['a key without an answer', (d) => d['write_keys']?.push({ key: 'k2', response: null }), 'key k2'],
  ]
  it.each(damages)('notices %s', (_, damage, words) => {
    const data = whole()
    damage(data)
    expect(halfWrites(data).join('\n')).toContain(words)
  })
})
