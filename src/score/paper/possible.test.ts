import { describe, expect, it } from 'vitest'
import { score } from '../events/bench.test-support.js'
import type { Happening, RunEvent, StatedTo } from '../events/definition.js'
import { PAPER } from '../events/paper.js'
import { impossibleOnPaper } from './possible.js'

/** Four baths: developer 8:00 with a pour of 15 s, then stop, fix and wash. Typed in an hour after the first drop. */
const ZERO = Date.parse('2026-11-25T14:00:00Z')
const NOW = ZERO + 3_600_000

let ids = 0
/** Something at a second after zero, from the sheet unless a screen wrote it down. */
function happened(second: number, bath: number | null, happening: Happening, more: Partial<RunEvent> = {}): RunEvent {
  const clocks = { device: PAPER, life: 'sheet', monotonicMs: 0, wallMs: NOW, serverOffsetMs: NOW }
  const stamp = { id: `e${String(ids++).padStart(3, '0')}`, ...clocks, tank: 'A', bath, actor: 'me' }
  return { ...stamp, statedMs: ZERO + second * 1000, statedTo: 'second', ...happening, ...more } as RunEvent
}
const poured = (bath: number, filled: number, emptied: number, statedTo: StatedTo = 'second') => [
  happened(filled, bath, { kind: 'poured-in' }, { statedTo }),
  happened(emptied, bath, { kind: 'poured-out' }, { statedTo }),
]
const onScreen = (second: number, bath: number, happening: Happening) => {
  const clocks = { monotonicMs: second * 1000, wallMs: ZERO + second * 1000, serverOffsetMs: ZERO }
  return happened(second, bath, happening, { device: 'phone', life: 'one', statedMs: null, ...clocks })
}

const found = (fresh: readonly RunEvent[], known: readonly RunEvent[] = [], now = NOW) => {
  const one = impossibleOnPaper(score, known, fresh, { zone: 'UTC', now })
  return one === null ? null : [fresh.findIndex(({ id }) => id === one.id), one.problem.code]
}

describe('what was typed in from paper', () => {
  const developed = poured(0, 15, 495)

  it('is taken where each step follows the one before', () => {
    expect(found([...developed, ...poured(1, 510, 540), ...poured(2, 555, 900)])).toBeNull()
    expect(found([])).toBeNull()
  })

  it('cannot be out before it was in', () => {
    expect(found([...poured(0, 495, 15)])).toEqual([1, 'paper.out-before-in'])
    const [one] = [impossibleOnPaper(score, [], poured(0, 495, 15), { zone: 'Etc/GMT-2', now: NOW })]
    expect(one?.problem.sentence).toBe(
      'Developer cannot have been poured out at 16:00:15: it went in at 16:08:00. Look at the sheet again.',
    )
  })

  it('cannot have two baths in the tank at once', () => {
    expect(found([...developed, ...poured(1, 300, 540)])).toEqual([2, 'paper.out-of-order'])
    expect(found([...developed, ...poured(2, 400, 450)])).toEqual([2, 'paper.out-of-order'])
  })

  it('cannot come before zero by the clock', () => {
    expect(found([happened(60, null, { kind: 'started' }), ...developed])).toEqual([1, 'paper.out-of-order'])
  })

  it('cannot be still to come, whatever it is; a clock may be fast by a minute', () => {
    const note = happened(7200, null, { kind: 'noted', text: 'later' })
    expect(found([...developed, note])).toEqual([2, 'paper.ahead'])
    expect(found([...developed], [], ZERO + 440_000)).toBeNull()
    expect(found([...developed], [], ZERO + 430_000)).toEqual([1, 'paper.ahead'])
  })

  it('is given half a minute where it is written to the minute', () => {
    expect(found(poured(0, 90, 40, 'minute'))).toBeNull()
    expect(found(poured(0, 120, 40, 'minute'))).toEqual([1, 'paper.out-before-in'])
  })

  it('says nothing by what stands without a time', () => {
    expect(
      found([...developed, happened(9000, 1, { kind: 'skipped', reason: 'none' }, { statedTo: 'placed' })]),
    ).toBeNull()
  })
})

describe('beside what is known', () => {
  it('it is judged with what a screen wrote down, which is not judged itself', () => {
    const known = [onScreen(15, 0, { kind: 'poured-in' }), onScreen(495, 0, { kind: 'poured-out' })]
    expect(found(poured(1, 510, 540), known)).toBeNull()
    expect(found(poured(1, 400, 540), known)).toEqual([0, 'paper.out-of-order'])
    const backwards = [onScreen(495, 0, { kind: 'poured-in' }), onScreen(15, 0, { kind: 'poured-out' })]
    expect(found(backwards)).toBeNull()
    expect(found([happened(600, null, { kind: 'noted', text: 'fine' })], backwards)).toBeNull()
  })

  it('is judged where it ends up before something that stands', () => {
    const fix = poured(2, 555, 900)
    expect(impossibleOnPaper(score, fix, poured(1, 600, 640), { zone: 'UTC', now: NOW })?.problem.code).toBe(
      'paper.out-of-order',
    )
  })

  it('takes a correction by what stands after it', () => {
    const wrong = poured(1, 700, 900)
    const retracted = wrong.map(({ id }) => happened(3600, null, { kind: 'retracted', of: id }, { statedTo: 'placed' }))
    expect(found([...poured(1, 510, 540), ...poured(2, 555, 800), ...retracted], wrong)).toBeNull()
  })
})
