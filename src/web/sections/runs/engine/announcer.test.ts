import { describe, expect, it } from 'vitest'
import { fold, follow, type RunEvent, type Score, SHIPPED_RECIPES } from '../../../../score/index.js'
import type { Voice } from '../../../shared/platform/index.js'
import { Announcer } from './announcer.js'
import { cuesOf } from './cues.js'
import { cuesOfAnHour, happenedAt, NOON, scoreFor } from './hour.test-support.js'

class Told implements Voice {
  readonly said: string[] = []
  readonly here = () => true
  readonly say = (words: string) => void this.said.push(words)
}

/** Everything that is announced from the first pour to the line, each confirmation given when it is due. */
function announcementsOf(score: Score): string[] {
  const events: RunEvent[] = []
  const told = new Set<string>()
  let now = NOON
  for (;;) {
    const { tanks } = follow(score, fold(score, events), now)
    for (const [place, tank] of tanks.entries())
      for (const { words } of cuesOf(tank, place, tanks.length)) if (words !== null) told.add(words)
    const waiting = tanks.flatMap(({ tank, awaited }) => (awaited === null ? [] : [{ tank, ...awaited }]))
    const [next] = waiting.sort((a, b) => a.due - b.due)
    if (next === undefined) return [...told]
    now = Math.max(now, next.due)
    const event = happenedAt((now - NOON) / 1000, next.index, { kind: next.kind })
    events.push({ ...event, id: `${event.id}/${next.tank}`, tank: next.tank })
  }
}

describe('announcements', () => {
  it.each(SHIPPED_RECIPES.map((recipe) => [recipe.name, recipe] as const))(
    'are four words at most: %s, one tank and two',
    (_, recipe) => {
      const said = [...announcementsOf(scoreFor(recipe, 480)), ...announcementsOf(scoreFor(recipe, 480, ['A', 'B']))]
      expect(said).toContain('Pour out')
      expect(said).toContain('Tank B, pour out')
      expect(said.filter((words) => words.split(' ').length > 4 || words.includes('undefined'))).toEqual([])
    },
  )

  it('are given to the voice once each, at their seconds', () => {
    const voice = new Told()
    const announcer = new Announcer(voice)
    const cues = cuesOfAnHour()
    const heard: [second: number, words: string][] = []
    for (let second = 0; second < 52 * 60; second += 0.1) {
      announcer.hear(cues, NOON + second * 1000)
      heard.push(...voice.said.splice(0).map((words): [number, string] => [second, words]))
    }
    const expected = cues.filter(({ words, at }) => words !== null && at < NOON + 52 * 60_000)
    expect(heard.map(([, words]) => words)).toEqual(expected.sort((a, b) => a.at - b.at).map(({ words }) => words))
    expect(heard.length).toBeGreaterThan(50)
    for (const [i, [second]] of heard.entries())
      expect(Math.abs(NOON + second * 1000 - (expected[i]?.at ?? 0))).toBeLessThanOrEqual(101)
  })

  it('are left out when the page comes back long after them, and said when it comes back in time', () => {
    const voice = new Told()
    const announcer = new Announcer(voice)
    const cue = { id: 'a', at: NOON + 10_000, tone: null, words: 'Pour out' }
    announcer.hear([cue], NOON)
    announcer.hear([cue], NOON + 70_000)
    expect(voice.said).toEqual([])
    announcer.hear([{ ...cue, id: 'b', at: NOON + 80_000 }], NOON + 70_000)
    announcer.hear([], NOON + 81_000)
    expect(voice.said).toEqual(['Pour out'])
  })
})
