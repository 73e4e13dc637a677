import { describe, expect, it } from 'vitest'
import { celsius } from '../../kernel/index.js'
import { score } from '../events/bench.test-support.js'
import type { RunEvent } from '../events/definition.js'
import { fold } from '../events/fold.js'
import { follow } from '../follow/follow.js'
import type { WrittenSheet } from './definition.js'
import { paperEvents } from './events-of.js'
import { readSheet } from './read.js'
import { clock, sheet, step } from './typing.test-support.js'

/** Four baths: developer 8:00 with a pour of 15 s, then stop, fix and wash. Read in UTC, a day later. */
const NOW = Date.parse('2026-11-26T12:00:00Z')
const read = (written: WrittenSheet, known: readonly RunEvent[] = []) =>
  readSheet(score, written, { zone: 'UTC', now: NOW, known })
const found = (written: WrittenSheet) =>
  read(written).findings.map(({ field, problem, stands }) => [field, problem.code, stands])
const zero = clock('14:00:00')
const developer = (out: string, more = {}) => step(0, { outAt: clock(out), ...more })

function followed(written: WrittenSheet) {
  let number = 0
  const nextId = () => `typed-${String(number++).padStart(3, '0')}`
  const events = paperEvents(read(written).happened, { entry: 'sheet', now: NOW, actor: 'me', nextId })
  const [tank] = follow(score, fold(score, events), NOW).tanks
  if (tank === undefined) throw new Error('No tank is followed.')
  return tank
}

describe('a time on a sheet', () => {
  it('that is about where the plan has it is taken without a word', () => {
    expect(found(sheet([developer('14:08:20')], { zero }))).toEqual([])
  })

  it('before its own pour, or before the step that it follows, cannot be', () => {
    expect(found(sheet([developer('13:59:00')], { zero }))).toEqual([
      ['tanks[0].steps[0].out_at', 'paper.out-of-order', 'never'],
    ])
    const before = step(0, { inAt: clock('14:00:00'), outAt: clock('13:59:00') })
    expect(found(sheet([before]))).toEqual([['tanks[0].steps[0].out_at', 'paper.out-before-in', 'never']])
    const swapped = [developer('14:08:00'), step(1, { outAt: clock('14:07:00') })]
    expect(found(sheet(swapped, { zero }))).toEqual([['tanks[0].steps[1].out_at', 'paper.out-of-order', 'never']])
  })

  it('that has not come yet cannot be', () => {
    const ahead = sheet([developer('14:08:00')], { zero, day: '2026-11-26' })
    expect(found(ahead)).toContainEqual(['zero', 'paper.ahead', 'never'])
  })

  it('hours late is asked about, and stands once it was said to stand', () => {
    const late = (sure: boolean) => found(sheet([developer('16:08:00', { sure })], { zero }))
    expect(late(false)).toEqual([['tanks[0].steps[0].out_at', 'paper.late', 'by-saying-so']])
    expect(late(true)).toEqual([['tanks[0].steps[0].out_at', 'paper.late', 'told']])
  })

  it('of a step that was left out cannot be', () => {
    const both = step(1, { outAt: clock('14:09:00'), leftOut: 'forgot' })
    expect(found(sheet([both], { zero }))).toEqual([['tanks[0].steps[0].out_at', 'paper.left-out', 'never']])
  })

  it('is needed once; an empty sheet says nothing', () => {
    expect(found(sheet([]))).toEqual([['zero', 'paper.nothing', 'never']])
    expect(read(sheet([])).happened).toEqual([])
  })
})

describe('what is not written', () => {
  it('is the plan’s and an assumption: nothing is poured at an instant that nobody wrote', () => {
    const tank = followed(sheet([], { zero }))
    expect(tank.phase).toBe('done')
    expect(tank.developed?.fraction).toBeCloseTo(1, 6)
    expect(tank.plan.laid.map(({ outBy }) => outBy)).not.toContain('pressed')
    expect(tank.deviations).toEqual([
      { code: 'development-assumed', name: 'Developer', side: 'out' },
      { code: 'not-written', names: ['Stop', 'Fix', 'Wash'] },
    ])
  })

  it('reaches, for the developer, to the next pour that was written', () => {
    const later = (stop: string) => followed(sheet([step(1, { inAt: clock(stop) })], { zero })).developed
    const [straight, late] = [later('14:08:10'), later('14:10:10')]
    expect((late?.high ?? 0) - (straight?.high ?? 0)).toBeGreaterThan(0.2)
    expect(late?.fraction).toBeCloseTo(1, 6)
  })

  it('leaves a reading at the pour, and counts a far one only once it was said to be so', () => {
    const reading = (sure: boolean) => ({ step: 0, at: null, temperature: celsius(22.5), sure })
    const doubted = sheet([developer('14:08:05')], { zero, readings: [reading(false)] })
    expect(found(doubted)).toEqual([['tanks[0].readings[0]', 'paper.reading-far', 'told']])
    expect(followed(doubted).readings).toMatchObject([{ counts: false, statedTo: 'placed' }])
    const sure = followed(sheet([developer('14:08:05')], { zero, readings: [reading(true)] }))
    expect(sure.readings).toMatchObject([{ counts: true, at: Date.parse('2026-11-25T14:00:15Z') }])
  })
})
