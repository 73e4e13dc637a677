import { expect, it } from 'vitest'
import { bench } from './support/browser.js'
import { focusedName, headed, heading, sees, tabTo } from './support/steps.js'

const { open } = bench()

it('a time is entered, asked and removed, and the removal undone, without a mouse', async () => {
  const page = await open('/')
  await headed(page, 'Today')
  await page.keyboard.press('Tab')
  expect(await focusedName(page)).toBe('Go to the page itself')
  await page.keyboard.press('Enter')
  await tabTo(page, 'Add a developing time')
  await page.keyboard.press('Enter')
  await headed(page, 'Add a time')
  expect(await focusedName(page), 'the new page is read from its heading').toBe('Add a time')

  for (const [field, text] of [
    ['Film', 'Keys 200'],
    ['Exposure index', '200'],
    ['Developer', 'metol'],
    ['Dilution', '1+1'],
    ['Temperature 1', '20'],
    ['Time 1', '9.5 min'],
  ] as const) {
    await tabTo(page, field)
    await page.keyboard.type(text)
  }
  await sees(page, 'read as 9:30')
  await page.keyboard.press('Enter')
  await sees(page, 'Keys 200 at 200 in metol 1 + 1 is kept.')

  await tabTo(page, 'Temperature of the developer')
  await page.keyboard.type('22')
  await headed(page, /^Develop \d+:\d\d in place of 9:30/)
  await tabTo(page, 'Remove')
  await page.keyboard.press('Enter')
  await sees(page, 'Keys 200 at 200 in metol 1 + 1 is removed.')
  await tabTo(page, 'Undo')
  await page.keyboard.press('Enter')
  await sees(page, 'Keys 200 at 200 in metol 1 + 1 is back.')
  await page.getByRole('link', { name: /Keys 200/ }).waitFor()
})

it('a word of the question is chosen with the arrow keys', async () => {
  const page = await open('/house')
  await page.getByRole('button', { name: 'Open the demo bench' }).press('Enter')
  await sees(page, 'This is the demo bench, all invented.')
  await page.getByRole('link', { name: 'Fell 25 in p-aminophenol' }).press('Enter')
  await headed(page, 'Develop 9:00 as the sheet says')
  const film = page.getByRole('combobox', { name: 'Film' })
  await film.focus()
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Escape')
  expect(await film.inputValue()).toBe('Fell 25')
  await page.keyboard.type('tar')
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Enter')
  await headed(page, /^Develop (8:30|6:00) /)
  expect(await page.getByRole('combobox', { name: 'Film' }).inputValue()).toBe('Tarn 100')
  expect(await heading(page)).not.toContain('9:00')
})
