import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { bench } from './support/browser.js'
import { headed, openDemo, removeDemo, sees } from './support/steps.js'

const { open } = bench()
const temperatureOf = (page: Page) => page.getByRole('textbox', { name: 'Temperature of the developer' })

it('a temperature that cannot be read or used gets a sentence and no time', async () => {
  const page = await open('/')
  await openDemo(page)
  await page.getByRole('link', { name: 'Tarn 100 in MQ–borax' }).click()
  await headed(page, 'Develop 8:30 as the sheet says')
  for (const [typed, sentence] of [
    ['', 'Nothing is typed'],
    ['21.', '“21.” is not'],
    ['warm', '“warm” is not'],
    ['NaN', '“NaN” is not'],
    ['1::4', '“1::4” is not'],
    ['٢١', 'digits of another script'],
    ['9'.repeat(1000), 'That is 1000 characters'],
    ['-300 C', 'is outside'],
    ['40 C', 'Bring the developer to a temperature inside it'],
  ] as const) {
    await temperatureOf(page).fill(typed)
    await headed(page, 'No time for this yet')
    await sees(page, sentence)
    expect(await page.getByText(/^Give or take/).count(), `after ${typed.slice(0, 9)}`).toBe(0)
  }
  await temperatureOf(page).fill('20')
  await headed(page, 'Develop 8:30 as the sheet says')
  await removeDemo(page)
})

it('a bare 100 is asked about, and the choice is kept with its unit', async () => {
  const page = await open('/')
  await openDemo(page)
  await page.goto('/times')
  await page.getByRole('link', { name: /Weir colour 200/ }).click()
  await temperatureOf(page).fill('100')
  await headed(page, 'No time for this yet')
  await page.getByRole('button', { name: /^100 °C$/ }).waitFor()
  await page.getByRole('button', { name: /100 °F = 37\.8 °C/ }).click()
  await headed(page, /^Develop 3:15 at 37\.8\s°C, and only there/)
  await removeDemo(page)
})

it('a form that cannot be right keeps nothing and says why beside the field', async () => {
  const page = await open('/times/new')
  await page.getByRole('button', { name: 'Keep this time' }).click()
  await sees(page, 'The film is missing.')
  await sees(page, 'The developer is missing.')
  await page.getByLabel('Film', { exact: true }).fill('Wrong 50')
  await page.getByLabel('Developer', { exact: true }).fill('metol')
  await page.getByRole('textbox', { name: 'Dilution' }).fill('1:4')
  await sees(page, '“1:4” is read in two ways')
  await page.getByRole('button', { name: /^1 \+ 4/ }).click()
  await page.getByRole('textbox', { name: 'Exposure index' }).fill('fast')
  await sees(page, '“fast” is not an exposure index.')
  await page.getByRole('textbox', { name: 'Exposure index' }).fill('')
  await page.getByRole('textbox', { name: 'Temperature 1' }).fill('20')
  await page.getByRole('textbox', { name: 'Time 1' }).fill('9:00')
  await page.getByRole('button', { name: 'Add another temperature' }).click()
  await page.getByRole('textbox', { name: 'Temperature 2' }).fill('24')
  await page.getByRole('textbox', { name: 'Time 2' }).fill('11:00')
  await sees(page, 'An ordinary developer is faster when warmer')
  await page.getByRole('textbox', { name: 'Temperature 2' }).fill('20')
  await sees(page, 'there are two times')
  await page.getByRole('button', { name: 'Keep this time' }).click()
  await sees(page, 'One field above is not right yet')
  await page.goto('/times')
  await headed(page, 'Times')
  expect(await page.getByRole('link', { name: /Wrong 50/ }).count()).toBe(0)
})

it('addresses that lead nowhere say so', async () => {
  const page = await open('/times/not-an-id')
  await page.getByRole('alert').waitFor()
  await page.goto('/shelf/thermometers/00000000-0000-7000-8000-000000000000')
  await headed(page, 'No such thermometer')
  await page.goto('/no/such/place')
  await headed(page, 'Nothing is here')
})

it('a thermometer that is far off is refused with both readings', async () => {
  const page = await open('/shelf/thermometers/new')
  await page.getByRole('textbox', { name: 'Name' }).fill('Far off')
  await page.getByRole('textbox', { name: 'Its scale begins at' }).fill('50')
  await page.getByRole('textbox', { name: 'Its scale ends at' }).fill('0')
  await sees(page, 'is not possible; the low end comes first')
  await page.getByRole('textbox', { name: 'Its scale begins at' }).fill('-10')
  await page.getByRole('textbox', { name: 'Its scale ends at' }).fill('50')
  await page.getByRole('button', { name: 'Keep this thermometer' }).click()
  await headed(page, 'Far off')
  await page.getByRole('textbox', { name: 'It reads' }).fill('29')
  await page.getByRole('textbox', { name: 'The trusted one reads' }).fill('20')
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await sees(page, 'the thermometer is broken or one of the two was read wrongly')
  expect(await page.getByText('Never checked.').count()).toBe(1)
})
