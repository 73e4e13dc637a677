import { expect, it } from 'vitest'
import { bench } from './support/browser.js'
import { goTo, headed, openDemo, removeDemo, sees } from './support/steps.js'

const { open } = bench()

it('the demo bench opens and goes in one click each, and the own bench is as it was', async () => {
  const page = await open('/', 'phone')
  await sees(page, 'The bench is bare.')
  await openDemo(page)
  await goTo(page, 'Times')
  await sees(page, 'Corvane 400')
  await removeDemo(page)
  await sees(page, 'The bench is bare.')
})

it('what one window keeps, another shows without being asked', async () => {
  const [sink, desk] = [await open('/times', 'phone'), await open('/times/new')]
  await sees(sink, 'No time is kept yet.')
  await desk.getByLabel('Film', { exact: true }).fill('Beck 400')
  await desk.getByLabel('Developer', { exact: true }).fill('metol')
  await desk.getByRole('textbox', { name: 'Temperature 1' }).fill('20')
  await desk.getByRole('textbox', { name: 'Time 1' }).fill('7:30')
  await desk.getByRole('button', { name: 'Keep this time' }).click()
  await sink.getByRole('link', { name: /Beck 400 in metol 7:30 at 20\.0/ }).click()
  await headed(sink, 'Develop 7:30 as the sheet says')

  await goTo(desk, 'House')
  await desk.getByRole('radio', { name: /^US: °F/ }).check()
  await desk.getByRole('button', { name: 'Keep the settings' }).click()
  await sees(sink, /0\.9\s°F of thermometer error/)
})

it('a class set gives every thermometer its check', async () => {
  const page = await open('/shelf')
  for (const name of ['First', 'Second', 'Third']) {
    await page.goto('/shelf/thermometers/new')
    await page.getByRole('textbox', { name: 'Name' }).fill(name)
    await page.getByRole('textbox', { name: 'Its scale begins at' }).fill('-10 C')
    await page.getByRole('textbox', { name: 'Its scale ends at' }).fill('110 C')
    await page.getByRole('button', { name: 'Keep this thermometer' }).click()
    await headed(page, name)
  }
  await page.goto('/shelf')
  await sees(page, 'First, Second and Third have never been checked.')
  await page.getByRole('link', { name: 'Compare several' }).click()
  await page.getByRole('textbox', { name: 'First' }).fill('20.0C')
  await page.getByRole('button', { name: 'Keep a check for each' }).click()
  await sees(page, 'A class set compares at least two thermometers')
  await page.getByRole('textbox', { name: 'Second' }).fill('20.4C')
  await page.getByRole('textbox', { name: 'Third' }).fill('19.5C')
  await page.getByRole('button', { name: 'Keep a check for each' }).click()
  await sees(page, 'No trusted thermometer among them')
  expect(await page.getByRole('link', { name: /^(First|Second|Third)/ }).count()).toBe(3)
  await goTo(page, 'Shelf')
  await sees(page, 'Every thermometer here has been checked.')
})

it('a server that does not answer is said, and asked again', async () => {
  const page = await open('/times')
  await headed(page, 'Times')
  await page.route('**/api/**', (route) => route.abort())
  await page.reload()
  await sees(page, 'The computer that runs the bench does not answer.')
  await page.unroute('**/api/**')
  await page.getByRole('button', { name: 'Ask again' }).click()
  await sees(page, 'Beck 400')
})
