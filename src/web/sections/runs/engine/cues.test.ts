import { describe, expect, it } from 'vitest'
import { celsius, expectOk, seconds } from '../../../../kernel/index.js'
import { fold, follow, plan, type RunEvent, SHIPPED_RECIPES, type TankFollowing } from '../../../../score/index.js'
import { cuesOf } from './cues.js'

const NOON = Date.UTC(2026, 2, 1, 12)
const score = expectOk(
  plan([
    {
      recipe: SHIPPED_RECIPES[0] as (typeof SHIPPED_RECIPES)[number],
      conditions: { tank: 'A', development: { from: 'own', time: seconds(480), temperature: celsius(20) } },
    },
  ]),
)

/** The developer was full at noon; its draining is due 7:50 later. */
const pouredIn: RunEvent = {
  id: 'a',
  kind: 'poured-in',
  device: 'd',
  life: 'l',
  monotonicMs: 0,
  wallMs: NOON,
  serverOffsetMs: NOON,
  tank: 'A',
  bath: 0,
  actor: 'x',
}
const tankAfter = (second: number): TankFollowing =>
  follow(score, fold(score, [pouredIn]), NOON + second * 1000).tanks[0] as TankFollowing
const at = (cues: ReturnType<typeof cuesOf>, job: string) =>
  cues.filter(({ id }) => id.includes(`/${job}/`)).map((cue) => [(cue.at - NOON) / 1000, cue.tone !== null, cue.words])

describe('what is to be heard of a tank', () => {
  it('signals a bath change 30 s and 10 s ahead, with three pips on the last three seconds', () => {
    const change = tankAfter(300).jobs.find(({ job }) => job.kind === 'change' && job.index === 1)
    const cues = cuesOf(tankAfter(300), 0, 1)
    expect(at(cues, change?.job.id ?? '')).toEqual([
      [440, true, 'Fetch stop'],
      [460, true, null],
      [467, true, null],
      [468, true, null],
      [469, true, null],
      [470, false, 'Pour out'],
    ])
  })

  it('gives a turn three pips', () => {
    const turn = tankAfter(100).jobs.find(({ job, state }) => job.kind === 'turn' && state === 'to-come')
    const seconds = at(cuesOf(tankAfter(100), 0, 1), turn?.job.id ?? '').filter(([, tone]) => tone)
    expect(seconds.map(([second]) => second)).toEqual([117, 118, 119])
  })

  it('keeps to 500 to 1500 Hz, a pitch for each tank, and says four words at most', () => {
    const cues = Array.from({ length: 8 }, (_, place) => cuesOf(tankAfter(100), place, 8))
    const pitches = cues.map((all) => all.find(({ tone }) => tone !== null)?.tone?.hertz ?? 0)
    expect(new Set(pitches).size).toBe(8)
    expect(pitches.every((hertz) => hertz >= 500 && hertz <= 1500)).toBe(true)
    const said = cues.flat().flatMap(({ words }) => words ?? [])
    expect(said.length).toBeGreaterThan(50)
    expect(said.filter((words) => words.split(' ').length > 4)).toEqual([])
    expect(said).toContain('Tank A, pour out')
  })

  it('says of a tank that begins beside another only that it is to be poured in', () => {
    const waits = follow(score, fold(score, []), NOON).tanks[0] as TankFollowing
    expect(cuesOf(waits, 0, 1)).toEqual([])
    const expected = { ...waits, jobs: waits.jobs.map((job) => ({ ...job, state: 'to-come' as const })) }
    const heard = cuesOf({ ...expected, next: expected.jobs[0] ?? null }, 1, 2)
    expect(new Set(heard.map(({ id }) => id.split('/').slice(0, 3).join('/')))).toEqual(new Set(['A/developer/change']))
    expect(heard.flatMap(({ words }) => words ?? [])).toEqual(['Tank A, fetch developer', 'Tank A, pour in'])
  })

  it('promises nothing while the tank waits for a confirmation', () => {
    expect(tankAfter(500).next?.state).toBe('waiting')
    expect(cuesOf(tankAfter(500), 0, 1)).toEqual([])
  })
})
