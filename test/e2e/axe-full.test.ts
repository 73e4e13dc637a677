import type { Page } from 'playwright-core'
import { beforeAll, describe, expect, it } from 'vitest'
import { routeTable } from '../../src/web/app/route-table.js'
import { accessible } from './support/axe.js'
import { bench, SIZES, type Size } from './support/browser.js'
import { headed, openDemo, sees } from './support/steps.js'

const { open } = bench()

let page: Page
beforeAll(async () => {
  page = await open('/', 'laptop', { kept: true })
  await openDemo(page)
})

type Kept = { readonly id: string }
const firstOf = async (kind: 'times' | 'thermometers'): Promise<string> => {
  const answer = (await (await page.request.get(`/api/${kind}`)).json()) as Record<typeof kind, Kept[]>
  return answer[kind][0]?.id ?? expect.fail(`The demo bench has no ${kind}.`)
}
const aTime = () => firstOf('times')
const aThermometer = () => firstOf('thermometers')

describe('every page of a full bench', () => {
  it.each(routeTable.map((route) => [route.page, route.path] as const))('%s', async (name, path) => {
    const id = path.startsWith('/times') ? await aTime() : await aThermometer()
    for (const size of ['phone', 'laptop'] as Size[]) {
      await page.setViewportSize(SIZES[size])
      await page.goto(path.replace(':id', id))
      await page.getByRole('heading', { level: 1 }).waitFor()
      await accessible(page, `${name}, full, ${size}`)
    }
  })
})

describe('what opens over and within the pages', () => {
  it('the answer with its working open, a corrected reading and a warning', async () => {
    await page.goto(`/times/${await aTime()}?at=25.5&thermometer=${await aThermometer()}&factor=1.1`)
    await headed(page, /^Develop/)
    for (const figure of await page.getByRole('group').all()) await figure.click({ position: { x: 8, y: 12 } })
    await accessible(page, 'time, all open')
    await page.getByRole('combobox', { name: 'Film' }).click()
    await page.getByRole('option', { name: 'Tarn 100' }).waitFor()
    await accessible(page, 'time, choosing a film')
  })
  it('a refused and an asked temperature', async () => {
    await page.goto(`/times/${await aTime()}`)
    const temperature = page.getByRole('textbox', { name: 'Temperature of the developer' })
    await temperature.fill('60')
    await headed(page, 'No time for this yet')
    await accessible(page, 'time, refused')
    await temperature.fill('100')
    await page.getByRole('button', { name: /100 °F/ }).waitFor()
    await accessible(page, 'time, asked')
  })
  it('a form with every kind of trouble', async () => {
    await page.goto('/times/new')
    await page.getByRole('textbox', { name: 'Dilution' }).fill('1:4')
    await page.getByRole('textbox', { name: 'Temperature 1' }).fill('x')
    await page.getByRole('button', { name: 'Keep this time' }).click()
    await sees(page, /fields above are not right yet/)
    await page.getByText('More: the law').click()
    await accessible(page, 'new time, trouble')
  })
  it('a pasted table with a wrong cell', async () => {
    await page.goto('/times/paste')
    await page.getByLabel('The table as text').fill('Fen 100\n        20C  22C  24C\nEI 100  9:30  8:00  1o')
    await sees(page, /“1o” at/)
    await accessible(page, 'paste, wrong cell')
  })
  it('what was just done, with its way back', async () => {
    await page.goto(`/times/${await aTime()}`)
    await page.getByRole('button', { name: 'Remove', exact: true }).click()
    await page.getByRole('button', { name: 'Undo' }).waitFor()
    await accessible(page, 'times, undo')
  })
  it('the dialogs that ask', async () => {
    await page.goto('/house')
    await page
      .getByLabel('Put a backup back')
      .setInputFiles({ name: 'x.ndjson', mimeType: 'text/plain', buffer: Buffer.from('{}') })
    await page.getByRole('dialog').waitFor()
    await accessible(page, 'house, restore asks')
    await page.getByRole('button', { name: 'Put it in place' }).click()
    await sees(page, /This file is not a backup/)
    await accessible(page, 'house, restore refused')
  })
})
