import { describe, expect, it } from 'vitest'
import { expectOk, seconds } from '../../kernel/index.js'
import type { Happening, RunEvent } from '../events/definition.js'
import { fold } from '../events/fold.js'
import { plan } from '../plan/plan.js'
import { threeBathAcid } from '../recipe/lists/black-and-white.js'
import { follow } from './follow.js'

const ZERO = 1_800_000_000_000
const wish = (tank: string, offset: number) => ({
  recipe: threeBathAcid,
  conditions: {
    tank,
    offset: seconds(offset),
    development: { from: 'own', time: seconds(480), temperature: null } as const,
  },
})
const score = expectOk(plan([wish('A', 0), wish('B', 200)]))

let ids = 0
const happens = (tank: string, second: number, bath: number | null, happening: Happening): RunEvent => ({
  ...happening,
  id: `e${String(ids++).padStart(3, '0')}`,
  device: 'phone',
  life: 'one',
  monotonicMs: second * 1000,
  wallMs: ZERO + second * 1000,
  serverOffsetMs: ZERO,
  tank,
  bath,
  actor: 'someone',
})
const at = (events: readonly RunEvent[], second: number) => follow(score, fold(score, events), ZERO + second * 1000)
const second = (instant: number | undefined) => ((instant ?? Number.NaN) - ZERO) / 1000

describe('a tank that has not begun', () => {
  const begun = [happens('A', 0, null, { kind: 'started' }), happens('A', 20, 0, { kind: 'poured-in' })]

  it('is expected as far after the first as the plan has it, from where the first really began', () => {
    const [, b] = at(begun, 100).tanks
    expect(b?.phase).toBe('not-started')
    // A was full at 0:20 in place of 0:15, so that its zero is 0:05.
    expect(second(b?.next?.at)).toBe(205)
    expect(b?.next?.state).toBe('to-come')
    expect(at(begun, 100).next?.tank).toBe('A')
  })

  it('is the next to be poured when its second comes, and waits from then on', () => {
    expect(at(begun, 204).next).toMatchObject({ tank: 'B', job: { job: { id: 'developer/change' } } })
    const late = at(begun, 260)
    expect(late.next).toMatchObject({ tank: 'B', job: { state: 'waiting' } })
    expect(late.tanks[1]?.phase).toBe('not-started')
  })

  it('has its own zero once it is poured, whatever the other did', () => {
    const poured = [...begun, happens('B', 240, 0, { kind: 'poured-in' })]
    expect(second(at(poured, 250).tanks[1]?.zero)).toBe(225)
    expect(second(at(poured, 250).tanks[0]?.zero)).toBe(5)
  })

  it('leaves the first to begin now while none has begun, the others after it', () => {
    const { tanks, next } = at([], 50)
    expect(tanks.map(({ zero }) => second(zero))).toEqual([50, 250])
    expect(next?.tank).toBe('A')
  })

  it('goes by the second when that one was begun first', () => {
    expect(second(at([happens('B', 300, null, { kind: 'started' })], 310).tanks[0]?.zero)).toBe(100)
  })
})
