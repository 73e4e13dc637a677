import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { fold, follow, plan, type RunEvent, type TankWish } from '../../src/score/index.js'
import { cuesOf } from '../../src/web/sections/runs/engine/cues.js'
import { bench } from '../e2e/support/browser.js'
import { keepTime, planRun } from '../e2e/support/plan-run.js'
import { hold } from '../e2e/support/sink.js'
import { headed, sees } from '../e2e/support/steps.js'

const { open } = bench()
const LISTENED_MS = 5 * 60_000
const WITHIN_MS = 50

interface Heard {
  /** Begin of each tone on the audio clock, s. */
  readonly starts: number[]
  /** The audio clock beside the wall clock, every second. */
  readonly clocks: { audio: number; wall: number }[]
}

/** Notes where on the audio clock each tone sets in that was not silenced before, and how that clock runs. */
const listens = (page: Page) =>
  page.addInitScript(() => {
    const heard = { starts: [] as number[], clocks: [] as { audio: number; wall: number }[] }
    Object.assign(window, { heard })
    const { start, disconnect } = OscillatorNode.prototype as unknown as Record<string, (...all: unknown[]) => void>
    const begun = new Map<OscillatorNode, number>()
    OscillatorNode.prototype.start = function (this: OscillatorNode, at = 0) {
      begun.set(this, at)
      return start?.call(this, at)
    }
    OscillatorNode.prototype.disconnect = function (this: OscillatorNode, ...all: unknown[]) {
      if ((begun.get(this) ?? 0) > this.context.currentTime) begun.delete(this)
      return disconnect?.apply(this, all)
    } as OscillatorNode['disconnect']
    const Context = window.AudioContext
    window.AudioContext = class extends Context {
      constructor() {
        super()
        setInterval(() => {
          const { contextTime = 0, performanceTime = 0 } = this.getOutputTimestamp()
          heard.clocks.push({ audio: contextTime, wall: performance.timeOrigin + performanceTime })
          heard.starts = [...begun.values()]
        }, 1000)
      }
    }
  })

/** When a moment of the audio clock was heard, by the wall clock: by the nearest look at both. */
function wallOf(at: number, clocks: Heard['clocks']): number {
  const nearest = clocks.reduce((best, one) => (Math.abs(one.audio - at) < Math.abs(best.audio - at) ? one : best))
  return nearest.wall + (at - nearest.audio) * 1000
}

it('five minutes of a run sound within 50 ms of their instants, anchored again and again', async () => {
  const page = await open('/times', 'phone')
  await keepTime(page, 'Beck 400')
  await listens(page)
  await planRun(page, 'Beck 400')
  await hold(page, /^Hold: begin at 20\.0/)
  await headed(page, 'Tank A')
  await hold(page, 'Hold: developer is in')
  await page.getByRole('button', { name: 'Undo: developer in' }).waitFor()
  await sees(page, /^Sound is on: three pips/)
  const from = Date.now() + 1000
  await page.waitForTimeout(LISTENED_MS)
  const to = Date.now() - 2000
  const { starts, clocks } = await page.evaluate(() => (window as unknown as { heard: Heard }).heard)
  const due = await instantsOf(page)
  const expected = due.filter((at) => at > from && at < to)
  const sounded = starts.map((at) => wallOf(at, clocks)).filter((at) => at > from - 200 && at < to + 200)
  expect(expected.length).toBeGreaterThan(10)
  const missed = expected.filter((at) => !sounded.some((one) => Math.abs(one - at) < WITHIN_MS))
  const stray = sounded.filter((at) => at > from && at < to && !due.some((one) => Math.abs(one - at) < WITHIN_MS))
  expect({ missed, stray }).toEqual({ missed: [], stray: [] })
})

/** Instants of all tones by what the server keeps of the run. */
async function instantsOf(page: Page): Promise<number[]> {
  const answer = await page.request.get(`/api${new URL(page.url()).pathname}`)
  const run = (await answer.json()) as { plan: { tanks: readonly TankWish[] }; events: { event: RunEvent }[] }
  const score = plan(run.plan.tanks)
  if (!score.ok) throw new Error(score.problem.sentence)
  const events = run.events.map(({ event }) => event)
  const poured = Math.max(...events.map(({ wallMs }) => wallMs))
  const { tanks } = follow(score.value, fold(score.value, events), poured + 1)
  return tanks.flatMap((tank) => cuesOf(tank, 0, 1)).flatMap(({ tone, at }) => (tone === null ? [] : [at]))
}
