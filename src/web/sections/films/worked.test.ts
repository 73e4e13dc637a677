import { describe, expect, it } from 'vitest'
import type { RunSummary } from '../../shared/api/index.js'
import { bestOf, tanksOf } from './worked.js'

type Verdict = RunSummary['verdicts'][number]
const verdict = (changes: Partial<Verdict>): Verdict => ({
  id: 'v',
  at: '',
  by: '',
  tank: 'A',
  density: 'right',
  marks: [],
  note: '',
  stands: true,
  ...changes,
})
const run = (id: string, verdicts: Verdict[], fraction: number | null = 1, film = 'Tarn 100') =>
  ({
    id,
    verdicts,
    tanks: [{ tank: 'A', on_reels: [{ film, exposure_index: 100, label: '' }] }],
    outcome: [
      {
        tank: 'A',
        phase: 'done',
        equivalent: fraction === null ? null : { fraction, done_s: 0, target_s: 0, low: 0, high: 0 },
      },
    ],
  }) as unknown as RunSummary

const best = (...runs: RunSummary[]) => bestOf(tanksOf(runs, ' tarn 100'))?.run.id

describe('what worked last time', () => {
  it('is the newest that was called right', () => {
    expect(best(run('a', [verdict({ density: 'thin' })]), run('b', [verdict({})]), run('c', [verdict({})]))).toBe('b')
  })

  it('goes by marks first, then by how near the development was', () => {
    const marked = verdict({ marks: ['streaks'] })
    expect(best(run('a', [marked]), run('b', [verdict({})], 1.3), run('c', [verdict({})], 0.98))).toBe('c')
    expect(best(run('a', [verdict({})], null), run('b', [verdict({})], 2))).toBe('b')
  })

  it('is nothing where no verdict that stands calls it right, and other films do not count', () => {
    const corrected = [verdict({ stands: false }), verdict({ density: 'dense' })]
    expect(best(run('a', corrected), run('b', []), run('c', [verdict({})], 1, 'Fell 25'))).toBeUndefined()
    expect(best(run('a', [verdict({ tank: 'B' })]))).toBeUndefined()
  })
})
