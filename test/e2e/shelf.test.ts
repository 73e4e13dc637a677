import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { accessible } from './support/axe.js'
import { bench, type Size } from './support/browser.js'
import { goTo, headed, heading, sees, tabTo } from './support/steps.js'

const { open } = bench()

const type = (page: Page, name: string, text: string) =>
  page.getByRole('textbox', { name, exact: true }).first().fill(text)
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click()
const unfold = (page: Page, line: string) => page.getByText(line, { exact: true }).first().click()

/** Mixes by the sheet, tick by tick, and tells the code of the lot. */
async function mixed(page: Page, product: string, bottle: string): Promise<string> {
  await page.goto('/shelf')
  await page.getByRole('link', { name: 'Mix', exact: true }).click()
  await page.getByRole('combobox', { name: 'What', exact: true }).selectOption({ label: product })
  await type(page, 'Dilution', '1:4')
  await sees(page, '“1:4” is read in two ways')
  await press(page, /^1 \+ 4: /)
  await type(page, 'How much', '6 L')
  await sees(page, 'That makes 5000')
  await type(page, 'How much', '1 L')
  for (const box of await page.getByRole('group', { name: 'Into' }).getByRole('checkbox').all()) await box.uncheck()
  await page.getByRole('checkbox', { name: bottle }).check()
  await type(page, 'Hot tap', '50 C')
  await type(page, 'Cold tap', '12 C')
  await sees(page, 'Nothing stands against it.')
  await press(page, 'Begin the sheet')
  await sees(page, /^From the taps: /)
  expect(await page.getByRole('checkbox', { name: /step 2$/ }).isDisabled(), 'the second waits for the first').toBe(
    true,
  )
  await page.getByRole('checkbox', { name: /step 1$/ }).check()
  await page.reload()
  for (const place of [2, 3, 4]) await page.getByRole('checkbox', { name: new RegExp(`step ${place}$`) }).check()
  await press(page, 'It is mixed: make the lot')
  await page.getByText(/^Lot \d\d-\d{3} of /).waitFor()
  return /lot (\d\d-\d{3})/.exec(await heading(page))?.[1] ?? expect.fail('The lot has no code.')
}

it.each<Size>(['phone', 'laptop'])('a fixer from its label to the jug on a %s', async (size) => {
  const page = await open('/', size)
  const [fixer, brown, flask, jug] = [`Fixer ${size}`, `Brown ${size}`, `Flask ${size}`, `Jug ${size}`]
  await goTo(page, 'Shelf')
  await page.getByRole('link', { name: 'Products' }).click()
  await page.getByRole('link', { name: /^Ammonium fixer, concentrate/ }).click()
  await type(page, 'Name', fixer)
  await unfold(page, 'What a litre carries, and how long it keeps')
  await type(page, 'Rolls a litre', '20')
  await press(page, 'Keep this product')
  await sees(page, `${fixer} is kept.`)
  await headed(page, fixer)
  await page.getByRole('link', { name: 'Correct' }).click()
  await type(page, 'Dilutions', '1 + 4')
  await press(page, 'Keep the correction')
  await press(page, 'Undo')
  await sees(page, `${fixer} is as it was before.`)
  await sees(page, /1 \+ 4 or 1 \+ 9/)

  await page.getByRole('link', { name: 'Add a package' }).click()
  await type(page, 'What it held when it was bought', '1 L')
  await type(page, 'Price', '14.50 EUR')
  await type(page, 'Use by', '3 May 2030')
  await press(page, 'Put it on the shelf')
  await sees(page, /use by 3 May 2030; 14\.50/)

  for (const [kind, name, holds] of [
    ['bottle', brown, '1 L'],
    ['bottle', flask, '1 L'],
    ['jug', jug, '5 L'],
  ] as const) {
    await page.goto(`/shelf/things/new?kind=${kind}`)
    await type(page, 'Name', name)
    await type(page, 'How much it can hold', holds)
    await press(page, 'Put it on the shelf')
    await sees(page, `${name} stands on the shelf.`)
  }
  const code = await mixed(page, fixer, brown)

  await page.goto('/shelf')
  await sees(page, 'its age ends it first, then the count')
  await sees(page, /800\s*mL of 1000\s*mL/)
  await page.getByRole('searchbox', { name: 'Find' }).fill(code)
  await page.keyboard.press('Enter')
  await headed(page, `${fixer} 1 + 4, lot ${code}`)

  await unfold(page, 'Note a use')
  await type(page, 'How many', '5')
  await type(page, 'Poured out of the bottle', '600')
  await press(page, 'Count it')
  await sees(page, 'Five rolls counted.')
  await sees(page, '15 rolls left')
  await press(page, /^Take back: five rolls/)
  await sees(page, '(taken back)')
  await sees(page, '20 rolls left')

  await unfold(page, 'Pour it over')
  await page.getByRole('combobox', { name: 'Into' }).selectOption({ label: flask })
  await press(page, 'Book the pour')
  await sees(page, `It stands in ${flask} now.`)
  await sees(page, new RegExp(`1000\\s*mL in ${flask}\\.`))
  await unfold(page, 'It was measured otherwise')
  await type(page, 'Found in it', '940')
  await press(page, 'Book what was found')
  await sees(page, `${flask} is booked as measured`)
  await accessible(page, 'a lot with its history', { whole: size === 'laptop' })

  await unfold(page, 'Get rid of it')
  expect(await page.getByText('got rid of as allowed here').count(), 'a fixer has no way but jugs').toBe(0)
  await page.getByRole('radio', { name: `Into ${jug}` }).check()
  await press(page, 'Book it out')
  await sees(page, `What was in ${flask} is booked out.`)
  await page.getByRole('link', { name: 'Waste' }).click()
  const part = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: jug }) })
  await part.getByText(/room for 4060\s*mL of 5000\s*mL/).waitFor()
  await part.getByText('Hand it over').click()
  await part.getByRole('textbox', { name: 'Handed over to' }).fill('the receiving station')
  await part.getByRole('button', { name: 'Note the hand-over' }).click()
  await sees(page, `What was in ${jug} is handed over to the receiving station.`)
  await part.getByText(/room for 5000\s*mL of 5000\s*mL/).waitFor()
})

it('a bottle is added and removed, and comes back, without a mouse', async () => {
  const page = await open('/shelf')
  await tabTo(page, 'Add a bottle')
  await page.keyboard.press('Enter')
  await headed(page, 'Add a bottle')
  await tabTo(page, 'Name')
  await page.keyboard.type('By keys')
  await tabTo(page, 'How much it can hold')
  await page.keyboard.type('500ml')
  await page.keyboard.press('Enter')
  await sees(page, 'By keys stands on the shelf.')
  await page.getByRole('link', { name: 'By keys' }).press('Enter')
  await headed(page, 'Correct By keys')
  await tabTo(page, 'Remove')
  await page.keyboard.press('Enter')
  await sees(page, 'By keys is removed.')
  await press(page, 'Undo')
  await sees(page, 'By keys is back.')
  await page.getByRole('link', { name: 'By keys' }).waitFor()
})
