import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { bench } from './support/browser.js'
import { developing, keepTime, planRun } from './support/plan-run.js'
import { count, hold, pourOut, readable, SinkClock } from './support/sink.js'
import { headed, sees } from './support/steps.js'

const { open } = bench()
const MINUTE_S = 60
const HOUR_MS = 3_600_000
/** A count is in whole seconds, and the browser's own clock goes on between two looks. */
const LOOKS_S = 3

interface Kept {
  readonly events: { readonly seq: number; readonly event: object }[]
}

/** Everything that is sent comes twice and backwards, each time as if it were a sending of its own. */
const sendsTwiceAndBackwards = (page: Page) =>
  page.route('**/api/runs/*/events', async (route) => {
    if (route.request().method() !== 'POST') return route.fallback()
    const { events } = route.request().postDataJSON() as { events: object[] }
    const body = JSON.stringify({ events: [...events].reverse() })
    const headers = { ...route.request().headers(), 'idempotency-key': `again-${Math.random()}` }
    const first = await route.fetch({ postData: body, headers })
    expect(first.status()).toBe(200)
    await route.fulfill({ response: await route.fetch({ postData: body }) })
  })

/** What other screens are told comes twice and backwards. */
const hearsTwiceAndBackwards = (page: Page, kept: () => Promise<Kept>) =>
  page.route('**/api/runs/*/live*', async (route) => {
    const { events } = await kept()
    const told = [...events, ...events].reverse()
    const body = told.map((one) => `id: ${one.seq}\nevent: happened\ndata: ${JSON.stringify(one)}\n\n`).join('')
    await route.fulfill({ contentType: 'text/event-stream', body: `event: here\ndata: {}\n\n${body}` })
  })

const timeLeft = (page: Page) => count(page, 'Developer, time left')
const near = (seconds: number, expected: number, what: string) =>
  expect(Math.abs(seconds - expected), `${what}: ${seconds} for ${expected}`).toBeLessThanOrEqual(LOOKS_S)

it('keeps the second through a frozen page, a moved clock, reloads and five minutes without a network', {
  timeout: 90_000,
}, async () => {
  const clock = new SinkClock()
  const page = await open('/times', 'phone')
  await developing(page, clock, 'Weir 50')
  const due = await pourOut(page)

  const before = await timeLeft(page)
  await clock.pass(MINUTE_S)
  near(await timeLeft(page), before - MINUTE_S, 'after a minute in which the page stood still')

  for (const moved of [HOUR_MS, -2 * HOUR_MS]) {
    const at = await timeLeft(page)
    await page.clock.setSystemTime(await page.evaluate((by) => Date.now() + by, moved))
    await clock.pass(5)
    near(await timeLeft(page), at - 5, 'after the clock of the device was moved')
    expect(await pourOut(page)).toBe(due)
  }
  const reloadedAt = await timeLeft(page)
  await page.reload()
  await headed(page, 'Tank A')
  near(await timeLeft(page), reloadedAt, 'after a reload with the clock an hour slow')
  expect(await pourOut(page)).toBe(due)

  await page.route('**/api/**', (route) => route.abort())
  await hold(page, /20\.0\s°C hold to take/)
  await sees(page, /one entry kept here\. Do not reload\./)
  await readable(page, 'with the bench away')
  await sees(page, /the bench sheet would have to finish the run/)
  expect(await warnsBeforeReload(page)).toBe('beforeunload')
  const atLoss = await timeLeft(page)
  await clock.pass(4 * MINUTE_S)
  near(await timeLeft(page), atLoss - 4 * MINUTE_S, 'without a network')
  await clock.pass(await timeLeft(page))
  await hold(page, /^Hold: pouring out/)
  await page.getByRole('button', { name: 'Undo: developer out' }).waitFor()
  await clock.pass(MINUTE_S)
  await hold(page, /^Hold: pouring out/)
  await sees(page, /(3|three) entries kept here/)

  await page.unroute('**/api/**')
  await sendsTwiceAndBackwards(page)
  await clock.pass(3)
  await page.getByText(/kept here/).waitFor({ state: 'detached' })
  await othersSeeTheSame(page, clock)
})

/** Another screen, to which everything comes twice and backwards, and the one that was without a network. */
async function othersSeeTheSame(page: Page, clock: SinkClock) {
  const path = new URL(page.url()).pathname
  const kept = async () => (await (await page.request.get(`/api${path}`)).json()) as Kept
  const ids = (await kept()).events.map(({ event }) => (event as { id: string }).id)
  expect(new Set(ids).size).toBe(ids.length)
  expect(ids.length).toBeGreaterThanOrEqual(6)
  const other = await open('/runs', 'phone')
  await clock.wind(other)
  await hearsTwiceAndBackwards(other, kept)
  await other.goto(path)
  await headed(other, 'Tank A')
  await sees(other, 'Undo: stop out')
  near(await count(other, 'Fix, time left'), await count(page, 'Fix, time left'), 'on the other screen')
  expect(await nextJob(other)).toBe(await nextJob(page))
  expect(await dueTime(other)).toBe(await dueTime(page))
}

const nextJob = (page: Page) => page.getByRole('region', { name: 'Next job' }).getByRole('heading').textContent()
const dueTime = (page: Page) => page.getByText(/, due \d\d:\d\d:\d\d$/).textContent()

/** Presses reload as a person would; the browser asks, and stays. */
async function warnsBeforeReload(page: Page): Promise<string> {
  const asked = page.waitForEvent('dialog')
  const reload = page.evaluate(() => location.reload()).catch(() => undefined)
  const dialog = await asked
  const kind = dialog.type()
  await dialog.dismiss()
  await reload
  return kind
}

/** A voice for a browser that has none; what it was given to say is kept. */
const withVoice = (page: Page) =>
  page.addInitScript(() => {
    const said: string[] = []
    const voice = {
      getVoices: () => [{ name: 'a voice' }],
      cancel: () => undefined,
      speak: ({ text }: { text: string }) => void said.push(text),
    }
    Object.assign(window, { said })
    Object.defineProperty(window, 'speechSynthesis', { value: voice })
  })
const said = (page: Page) => page.evaluate(() => (window as unknown as { said: string[] }).said)

const turnScreen = (page: Page, state: 'hidden' | 'visible') =>
  page.evaluate((shown) => {
    Object.defineProperty(document, 'visibilityState', { value: shown, configurable: true })
    document.dispatchEvent(new Event('visibilitychange'))
  }, state)

it('tells what the device can do, tries it with the screen off, and says each job at its second', {
  timeout: 90_000,
}, async () => {
  const clock = new SinkClock()
  const page = await open('/times', 'phone')
  await keepTime(page, 'Moor 320')
  await clock.wind(page)
  await planRun(page, 'Moor 320')
  await sees(page, /This device has no voice; the tones carry it alone\./)
  await withVoice(page)
  await page.reload()
  await sees(page, /A voice names each job\./)
  await sees(page, /^Sound is off until you try it/)
  await sees(page, 'The screen stays on while this page is open.')
  await sees(page, 'The bench answers; other screens can follow this run.')
  await page.getByRole('button', { name: 'Try the sound' }).click()
  await sees(page, /^Sound is on: three pips/)
  await page.getByRole('button', { name: 'Try it with the screen off' }).click()
  await sees(page, /^Now turn the screen off/)
  await turnScreen(page, 'hidden')
  await clock.pass(12)
  await turnScreen(page, 'visible')
  // The clock of the page was sped and its sound was not, so it has to find that the tones did not keep up.
  await sees(page, /^The screen was off for 12\ss, and the tones stopped after \d\ss\./)

  await hold(page, /^Hold: begin at 20\.0/)
  await headed(page, 'Tank A')
  await clock.pass(15)
  await hold(page, 'Hold: developer is in')
  await page.getByRole('button', { name: 'Undo: developer in' }).waitFor()
  await readable(page, 'developing')
  const left = await timeLeft(page)
  await clock.pass(left - 32)
  await clock.run(page, 4)
  expect((await said(page)).at(-1)).toBe('Fetch stop')
  await clock.pass((await timeLeft(page)) - 2)
  await clock.run(page, 1)
  expect((await said(page)).filter((words) => words === 'Fetch stop')).toHaveLength(1)
  expect(await said(page)).not.toContain('Pour out')
  await clock.run(page, 2)
  expect((await said(page)).at(-1)).toBe('Pour out')
})
