import { randomUUID } from 'node:crypto'
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { bench, type Size } from './support/browser.js'
import { send, takeIn, timeOf } from './support/send.js'
import { hold, SinkClock } from './support/sink.js'
import { goTo, headed, sees } from './support/steps.js'

const { open } = bench()

async function furnish(page: Page): Promise<string[]> {
  await send(page, '/api/times', { times: [timeOf('Tarn 100', 100, 480), timeOf('Fell 25', 100, 570)] })
  const rolls = await takeIn(
    page,
    {},
    { film: 'Fell 25', whose: 'Ida' },
    { film: 'Ember 200', process: 'colour-negative', whose: 'Ida' },
    { treatment: { as: 'index', index: 400 } },
  )
  return rolls.map(({ number }) => number)
}

/** As a scanner does it: the address on the sticker, then Enter. */
async function scan(page: Page, number: string) {
  await page.getByRole('textbox', { name: 'Rolls of the register' }).fill(`http://bench.local/r/${number}`)
  await sees(page, 'One roll waits. Enter takes it.')
  await page.getByRole('textbox', { name: 'Rolls of the register' }).press('Enter')
  await page.getByRole('button', { name: `Leave ${number} out` }).waitFor()
}

async function wayOfRolls(size: Size) {
  const clock = new SinkClock()
  const page = await open('/runs', size)
  const [tarn = '', fell = '', colour = '', pushed = ''] = await furnish(page)
  await clock.wind(page)
  await page.goto('/runs/new')
  await scan(page, colour)
  await sees(page, /Film of somebody else never goes through the wrong process/)
  await page.getByRole('button', { name: 'Keep this plan' }).click()
  await page.getByRole('alert').filter({ hasText: /\S/ }).waitFor()
  await page.getByRole('button', { name: `Leave ${colour} out` }).click()

  await page.getByRole('textbox', { name: 'Rolls of the register' }).fill(`${tarn} tarn`)
  await page.getByRole('button', { name: `Take ${tarn}` }).click()
  await scan(page, pushed)
  await sees(page, 'These rolls want different times, and not all of them are known.')
  await page.getByRole('textbox', { name: `${pushed} alone wants` }).fill('14:00')
  await sees(page, new RegExp(`^${tarn} Tarn 100 at 100 wants .*8:00 and would get .*Put it in a tank of its own`))
  await page.getByRole('button', { name: `Leave ${pushed} out` }).click()

  await scan(page, fell)
  await page.getByRole('checkbox', { name: 'One time for all of them' }).check()
  await sees(page, /^Develop 8:45 at 20\.0/)
  await sees(page, /wants 8:00 and gets 9\.4.% more/)
  await sees(page, /wants 9:30 and gets 7\.9.% less/)
  await page.getByRole('button', { name: 'Keep this plan' }).click()
  await headed(page, /^Developer is at 20\.0/)
  const run = new URL(page.url()).pathname
  await hold(page, /^Hold: begin at 20\.0/)
  await headed(page, 'Tank A')
  return { page, run, tarn, fell }
}

it.each(['phone', 'laptop'] as const)(
  'rolls go into a tank together and are followed until they hang (%s)',
  async (size) => {
    const { page, run, tarn, fell } = await wayOfRolls(size)
    const id = run.split('/').at(-1)
    const state = async (number: string) =>
      ((await (await page.request.get(`/api/rolls/by-number?number=${number}`)).json()) as { state: string }).state
    await expect.poll(() => state(tarn)).toBe('loaded')
    const now = Date.now()
    const finished = {
      id: randomUUID(),
      kind: 'finished',
      device: 'phone-2',
      life: 'one',
      monotonicMs: 1000,
      wallMs: now,
      serverOffsetMs: null,
      tank: 'A',
      bath: null,
      actor: 'owner',
    }
    await send(page, `/api/runs/${id}/events`, { events: [finished] })
    await expect.poll(() => state(fell)).toBe('developed')
    await page.goto(`${run}/record`)
    await sees(page, new RegExp(`Reel 1: ${tarn} Tarn 100 at 100. Reel 2: ${fell} Fell 25 at 100`))
    await sees(page, new RegExp(`^${fell} wants 9:30 and gets 7.9.% less`))
    await goTo(page, 'Today')
    await page.getByRole('textbox', { name: `Hook or clip of ${tarn}` }).fill('3')
    await page.getByRole('button', { name: `Hang up ${tarn}` }).click()
    await sees(page, new RegExp(`^${tarn} Tarn 100 hangs on 3 and should be dry at`))
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.getByRole('button', { name: `Hang up ${tarn}` }).waitFor()
  },
)
