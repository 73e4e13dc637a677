import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { celsius, seconds } from '../../kernel/index.js'
import { basis } from '../events/bench.test-support.js'
import type { RunEvent } from '../events/definition.js'
import { fold } from '../events/fold.js'
import type { TankFollowing } from '../follow/definition.js'
import { follow } from '../follow/follow.js'
import type { Score } from '../plan/definition.js'
import { plan } from '../plan/plan.js'
import type { Recipe } from '../recipe/definition.js'
import { SHIPPED_RECIPES } from '../recipe/shipped.js'
import { paperEvents } from './events-of.js'
import { dice, type Pencil, pencilled, Sink } from './hand.test-support.js'
import { impossibleOnPaper } from './possible.js'
import { readSheet } from './read.js'
import { typedIn } from './typing.test-support.js'

/** A bench two hours ahead of UTC all year; the signs of these names are turned round. */
const [ZONE, AHEAD] = ['Etc/GMT-2', 2]
const DAY = Date.parse('2026-11-25T00:00:00Z') - AHEAD * 3_600_000

/** Followed by its temperature where the list takes the basis of the tests, else by a time of one's own, else fixed. */
function scoreOf(recipe: Recipe, temperature: number): Score {
  const wishes = [
    { from: 'basis', basis, temperature: celsius(temperature) },
    { from: 'own', time: seconds(420), temperature: celsius(temperature) },
    null,
  ] as const
  for (const development of wishes) {
    const made = plan([{ recipe, conditions: { tank: 'A', development } }])
    if (made.ok) return made.value
  }
  throw new Error(`${recipe.name} cannot be planned.`)
}

/** A run as it was pressed, and as it was typed in from the sheet of the same hands. */
function both(seed: number, pencil: Pencil, { forgets = true, tickMs = 1000 } = {}) {
  const roll = dice(seed)
  const recipe = SHIPPED_RECIPES[roll(SHIPPED_RECIPES.length)] as Recipe
  const temperature = 18 + roll(60) / 10
  const score = scoreOf(recipe, temperature)
  const developing = score.tanks[0]?.laid.find(({ development }) => development !== null)
  const develop = developing === undefined ? 0 : developing.clockEnd - developing.in
  // Any second of the day; of every other one midnight is near.
  const zeroMs = DAY + (roll(2) === 0 ? roll(86_400) : 84_000 + roll(2400)) * 1000
  const sink = new Sink({ recipe, tank: 'A', zeroMs, develop, temperature, tickMs, forgets }, roll)
  const last = Math.max(...sink.events.map(({ wallMs }) => wallMs))
  const now = last + 86_400_000
  const sheet = typedIn(pencilled(sink, AHEAD, pencil), '2026-11-25')
  const read = readSheet(score, sheet, { zone: ZONE, now, known: [] })
  let number = 0
  const nextId = () => `typed-${String(number++).padStart(3, '0')}`
  const typed = paperEvents(read.happened, { entry: 'sheet', now, actor: 'me', nextId })
  const impossible = impossibleOnPaper(score, [], typed, { zone: ZONE, now: last })
  return { read, last, impossible, pressed: told(score, sink.events, last), typed: told(score, typed, last) }
}

function told(score: Score, events: readonly RunEvent[], at: number): TankFollowing {
  const [tank] = follow(score, fold(score, events), at).tanks
  if (tank === undefined) throw new Error('No tank is followed.')
  return tank
}

/** Everything a record is made of, without the names of events and how well their moments are known. */
const record = ({ readings, toTheMinute: _, ...tank }: TankFollowing) => ({
  ...tank,
  readings: readings.map(({ id: __, statedTo: ___, ...reading }) => reading),
})

/** Every run is laid out five times, its readings screened each time. */
const SLOW = { timeout: 120_000 }

const seeds = fc.integer({ min: 0, max: 2 ** 31 })

describe('a run done on paper and typed in', () => {
  it('gives the record of the same run followed on a screen, where seconds were written', SLOW, () => {
    const met = { runs: 0, done: 0, forgotten: 0, readings: 0, deviations: 0, midnight: 0, developed: 0 }
    fc.assert(
      fc.property(seeds, (seed) => {
        const { read, impossible, pressed, typed } = both(seed, 'seconds')
        expect(read.findings.filter(({ stands }) => stands !== 'told')).toEqual([])
        expect(impossible).toBeNull()
        expect(record(typed)).toEqual(record(pressed))
        met.runs += 1
        met.done += Number(pressed.phase === 'done')
        met.forgotten += Number(pressed.deviations.some(({ code }) => code === 'not-written'))
        met.readings += pressed.readings.length
        met.deviations += pressed.deviations.length
        met.developed += Number(pressed.developed !== null)
        met.midnight += Number(pressed.zero + pressed.plan.length * 1000 > DAY + 86_400_000)
      }),
      { seed: 20261, numRuns: 60 },
    )
    // Runs that are over, forgotten boxes, readings, deviations and nights were all met, or nothing was shown.
    expect(met.runs).toBeGreaterThanOrEqual(60)
    expect(met.done).toBe(met.runs)
    expect(Math.min(met.forgotten, met.readings, met.deviations, met.midnight, met.developed)).toBeGreaterThan(5)
  })

  it('gives it to within a second where hands pressed between two seconds', SLOW, () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { pressed, typed } = both(seed, 'seconds', { tickMs: 7 })
        for (const [i, bath] of pressed.plan.baths.entries()) {
          const other = typed.plan.baths[i]
          const [one, two] = [bath, other ?? bath].map((span) => span.drainStart - span.clockStart) as [number, number]
          expect(Math.abs(one - two)).toBeLessThan(1.001)
        }
      }),
      { seed: 20261, numRuns: 20 },
    )
  })

  it('gives it within the stated band where only minutes were written', SLOW, () => {
    const met = { bands: 0, wider: 0 }
    fc.assert(
      fc.property(seeds, (seed) => {
        const { read, impossible, pressed, typed } = both(seed, 'minutes', { forgets: false })
        expect(impossible).toBeNull()
        expect(read.findings.filter(({ stands }) => stands === 'never')).toEqual([])
        expect(typed.phase).toBe('done')
        claimsNoMore(pressed, typed)
        expect(furthestOff(pressed, typed)).toBeLessThanOrEqual(HALF_A_MINUTE)
        const [truth, band] = [pressed.developed, typed.developed]
        const counted = (tank: TankFollowing) => tank.readings.map(({ counts }) => counts)
        // Whether a far reading counts can hang on half a minute; then there are two honest records.
        if (truth === null || band === null || counted(pressed).join() !== counted(typed).join()) return
        met.bands += 1
        met.wider += Number(band.byTheClock && band.high - band.low > truth.high - truth.low)
        expect(truth.fraction).toBeGreaterThanOrEqual(band.low)
        expect(truth.fraction).toBeLessThanOrEqual(band.high)
      }),
      { seed: 20261, numRuns: 80 },
    )
    expect(met.bands).toBeGreaterThan(12)
    expect(met.wider).toBe(met.bands)
  })
})

const HALF_A_MINUTE = 30

/** By how much a confirmed pour-out of the typed run is off, seconds. */
const furthestOff = (pressed: TankFollowing, typed: TankFollowing): number =>
  Math.max(
    ...pressed.plan.laid.flatMap(({ out, outBy }, i) => {
      const other = typed.plan.laid[i]
      if (outBy !== 'pressed' || other?.outBy !== 'pressed' || other.out === other.in) return []
      return [Math.abs((typed.zero - pressed.zero) / 1000 + other.out - out)]
    }),
  )

/** A minute is not called late: what a sheet of minutes says of lateness, the run followed to the second says too. */
function claimsNoMore(pressed: TankFollowing, typed: TankFollowing): void {
  const late = (tank: TankFollowing) =>
    tank.deviations.flatMap((one) => ('by' in one && 'name' in one ? [`${one.code} ${one.name}`] : []))
  for (const claim of late(typed)) expect(late(pressed)).toContain(claim)
}
