import type { Page } from 'playwright-core'
import { headed, sees } from './steps.js'

/** A thermometer that shows half a degree too much. */
async function keepThermometer(page: Page, name: string) {
  await page.getByRole('textbox', { name: 'Name' }).fill(name)
  await page.getByRole('textbox', { name: 'Its scale begins at' }).fill('-10')
  await page.getByRole('textbox', { name: 'Its scale ends at' }).fill('50')
  await page.getByRole('button', { name: 'Keep this thermometer' }).click()
  await headed(page, name)
  await page.getByRole('radio', { name: /trusted/ }).check()
  await page.getByRole('textbox', { name: 'It reads' }).fill('20.5')
  await page.getByRole('textbox', { name: 'The trusted one reads' }).fill('20')
  await page.getByRole('button', { name: 'Keep this check' }).click()
  await sees(page, /^The check of/)
}

/** From the form of a new thermometer to the screen before the pour, everything that pulls the developer counted. */
export async function plannedWithWarmth(page: Page, thermometer: string, film: string): Promise<void> {
  await keepThermometer(page, thermometer)
  await page.goto('/times/new')
  await page.getByLabel('Film', { exact: true }).fill(film)
  await page.getByLabel('Developer', { exact: true }).fill('ascorbate')
  await page.getByRole('textbox', { name: 'Temperature 1' }).fill('20')
  await page.getByRole('textbox', { name: 'Time 1' }).fill('8:00')
  await page.getByRole('button', { name: 'Keep this time' }).click()
  await headed(page, /^Develop/)
  await page.goto('/runs/new')
  await page.getByRole('combobox', { name: 'Developing time' }).selectOption({ label: `${film} in ascorbate` })
  await page.getByRole('combobox', { name: 'Thermometer' }).selectOption({ label: thermometer })
  await page.getByRole('textbox', { name: 'Developer at' }).fill('20.5')
  await sees(page, /^Where .* shows 20\.5\s°C, the bath is at 20\.0\s°C/)
  await page.getByRole('textbox', { name: 'Volume of each bath' }).fill('500 ml')
  await page.getByText('Temperatures of the other baths').click()
  await page.getByRole('textbox', { name: 'Wash', exact: true }).fill('15')
  await page.getByRole('checkbox', { name: 'I take the risk' }).check()
  await page.getByText('The room and the tank itself').click()
  await page.getByRole('textbox', { name: 'The room is at' }).fill('26')
  await page.getByRole('textbox', { name: 'Tank and reels weigh' }).fill('200 g')
  await sees(page, /The tank itself takes|The tank itself gives/)
  await page.getByRole('button', { name: 'Keep this plan' }).click()
  await headed(page, /^Developer is at 20\.0/)
}
