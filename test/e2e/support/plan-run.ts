import type { Page } from 'playwright-core'
import { hold, type SinkClock } from './sink.js'
import { headed, sees } from './steps.js'

/** 8:00 at 20 °C, ten degrees 2.5 times as fast: the example of docs/science/score.md. */
const TIME = { time: '8:00', temperature: '20' }

export async function keepTime(page: Page, film: string) {
  await page.goto('/times/new')
  await page.getByLabel('Film', { exact: true }).fill(film)
  await page.getByLabel('Developer', { exact: true }).fill('ascorbate')
  await page.getByRole('textbox', { name: 'Temperature 1' }).fill(TIME.temperature)
  await page.getByRole('textbox', { name: 'Time 1' }).fill(TIME.time)
  await page.getByText('More: the law').click()
  await page.getByRole('textbox', { name: 'Its own ten-degree coefficient' }).fill('2.5')
  await page.getByRole('button', { name: 'Keep this time' }).click()
  await headed(page, /^Develop/)
}

export async function planRun(page: Page, film: string) {
  await page.goto('/runs')
  await page.getByRole('link', { name: 'Plan a run' }).click()
  await page.getByRole('combobox', { name: 'Developing time' }).selectOption({ label: `${film} in ascorbate` })
  await sees(page, /^Develop 8:00 at 20\.0/)
  await page.getByRole('textbox', { name: 'Label' }).fill('roll 12')
  await page.getByRole('button', { name: 'Keep this plan' }).click()
  await headed(page, /^Developer is at 20\.0/)
}

/** A run of that film with the developer in the tank, on a window whose clock the test holds. */
export async function developing(page: Page, clock: SinkClock, film: string) {
  await keepTime(page, film)
  await clock.wind(page)
  await planRun(page, film)
  await hold(page, /^Hold: begin at 20\.0/)
  await headed(page, 'Tank A')
  await clock.pass(15)
  await hold(page, 'Hold: developer is in')
  await page.getByRole('button', { name: 'Undo: developer in' }).waitFor()
}
