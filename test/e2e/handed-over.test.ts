import { randomUUID } from 'node:crypto'
import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { bench, type Size } from './support/browser.js'
import { send, timeOf } from './support/send.js'
import { headed, sees } from './support/steps.js'

const { open } = bench()

/** Nine rolls of Ida and five of Jon. */
const LIST = `Ida:
5 × Corvane 400, 135-36, EI 400
Corvane 400, 135-24, EI 400, push 1
Weir colour 200, 135, colour negative
2 × Tarn 100, 135, EI 100
Jon:
Fell 25, 135, EI 100
4 × Fell 25, 120, EI 100`

interface Waiting {
  readonly id: string
  readonly number: string
  readonly film: string
  readonly whose: string
  readonly state: string
  readonly treatment: { readonly as: string }
}
const rollsOf = async (page: Page): Promise<readonly Waiting[]> =>
  (await send<{ rolls: Waiting[] }>(page, '/api/rolls/find', {})).rolls.toReversed()

async function pasteAll(page: Page) {
  await page.goto('/rolls/several')
  await page.getByLabel('The rolls, a line each').fill(LIST)
  await page.getByRole('textbox', { name: 'Rolls of Ida counted' }).fill('9')
  await page.getByRole('textbox', { name: 'Rolls of Jon counted' }).fill('4')
  await page.getByRole('button', { name: 'Take in 14 rolls' }).click()
  await sees(page, /^4 rolls of Jon were counted and 5 are listed/)
  await page.getByRole('textbox', { name: 'Rolls of Jon counted' }).fill('5')
  await page.getByRole('button', { name: 'Take in 14 rolls' }).click()
  await sees(page, /^14 rolls taken in/)
}

/** Enter after the code on the sticker, as a scanner does it. */
async function scan(page: Page, { number }: Waiting) {
  await page.getByRole('textbox', { name: 'Rolls of the register' }).fill(number)
  await sees(page, 'One roll waits. Enter takes it.')
  await page.getByRole('textbox', { name: 'Rolls of the register' }).press('Enter')
  await page.getByRole('button', { name: `Leave ${number} out` }).waitFor()
}

/** Keeps the plan, and another device says that its run began and ended. */
async function runIt(page: Page) {
  await page.getByRole('button', { name: 'Keep this plan' }).click()
  await page.waitForURL(/\/runs\/[0-9a-f-]{36}$/)
  const id = new URL(page.url()).pathname.split('/').at(-1)
  const now = Date.now()
  const happened = (kind: string, after: number) => ({
    id: randomUUID(),
    kind,
    device: 'phone-2',
    life: 'one',
    monotonicMs: after,
    wallMs: now + after,
    serverOffsetMs: null,
    tank: 'A',
    bath: null,
    actor: 'owner',
  })
  await send(page, `/api/runs/${id}/events`, { events: [happened('started', 0), happened('finished', 1)] })
}

it.each<Size>(['phone', 'laptop'])('what two people handed over is developed and counted out on a %s', async (size) => {
  const page = await open('/runs', size)
  const times = [timeOf('Tarn 100', 100, 480), timeOf('Fell 25', 100, 570), timeOf('Corvane 400', 800, 720)]
  await send(page, '/api/times', { times })
  const before = (await rollsOf(page)).length
  await pasteAll(page)
  const rolls = (await rollsOf(page)).slice(before)
  expect(rolls.length).toBe(14)
  const [colour, pushed, tarn, fell] = [
    rolls.find(({ film }) => film === 'Weir colour 200'),
    rolls.find(({ treatment }) => treatment.as === 'index'),
    rolls.find(({ film }) => film === 'Tarn 100'),
    rolls.find(({ film }) => film === 'Fell 25'),
  ] as [Waiting, Waiting, Waiting, Waiting]

  await page.goto('/runs/new')
  await scan(page, colour)
  await sees(page, /of Ida is colour negative film .* Film of somebody else never goes through the wrong process/)
  await page.getByRole('button', { name: 'Keep this plan' }).click()
  await page.getByRole('alert').filter({ hasText: /\S/ }).waitFor()
  await page.getByRole('button', { name: `Leave ${colour.number} out` }).click()

  await scan(page, pushed)
  await sees(page, /^Develop 12:00 at 20\.0/)
  await runIt(page)

  await page.goto('/runs/new')
  await scan(page, tarn)
  await scan(page, fell)
  await page.getByRole('checkbox', { name: 'One time for all of them' }).check()
  await sees(page, /^Develop 8:45 at 20\.0/)
  await runIt(page)
  const developed = (await rollsOf(page)).slice(before).filter(({ state }) => state === 'developed')
  expect(developed.map(({ number }) => number)).toEqual([pushed, tarn, fell].map(({ number }) => number))

  const rest = rolls.filter(
    ({ whose, number }) => whose === 'Ida' && number !== pushed.number && number !== tarn.number,
  )
  await send(page, '/api/rolls/move', { roll_ids: rest.map(({ id }) => id), state: 'sleeved' })
  await page.goto('/rolls/orders')
  await page.getByRole('link', { name: /^Ida/ }).first().click()
  await headed(page, 'Order of Ida')
  await page.getByRole('textbox', { name: 'Rolls counted out' }).fill('8')
  await page.getByRole('button', { name: 'Hand back' }).click()
  await sees(page, /^8 rolls were counted and 9 should be here\. Nothing is handed back/)
  await page.getByRole('textbox', { name: 'Rolls counted out' }).fill('9')
  await page.getByRole('button', { name: 'Hand back' }).click()
  await sees(page, 'Nine rolls counted out and handed back.')
  const back = (await rollsOf(page)).slice(before).filter(({ state }) => state === 'handed-back')
  expect(back.map(({ whose }) => whose)).toEqual(Array(9).fill('Ida'))
})
