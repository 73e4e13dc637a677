import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { bench, type Size } from './support/browser.js'
import { keepTime, planRun } from './support/plan-run.js'
import { headed, plainSpaces, sees } from './support/steps.js'

const { open } = bench()

const box = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true })

/** A run of three baths that was done yesterday, typed in from its sheet. */
async function typeIn(size: Size, film: string) {
  const page = await open('/times', size)
  await keepTime(page, film)
  await planRun(page, film)
  await page.getByRole('link', { name: 'Type in from paper' }).click()
  await headed(page, 'Type in a run done on paper')
  await saysNothingBefore(page)
  await page.getByLabel('Day').fill(new Date(Date.now() - 86_400_000).toISOString().slice(0, 10))
  await box(page, 'Zero by the clock').fill('14:00:00')
  await sees(page, 'read as 14:00:00')

  await whatCannotBe(page)
  await whatIsOdd(page)
  await page.reload()
  await expect
    .poll(() => box(page, 'Developer out at').inputValue(), { message: 'typing survives a reload' })
    .toBe('14:08:05')
  await box(page, 'Developer reads 1').fill('20')
  await somethingWentWrong(page)
  await page.getByRole('button', { name: 'Add a remark' }).click()
  await box(page, 'Remark 1').fill('cold morning')
  await page.getByRole('checkbox', { name: 'Wetting agent was left out' }).check()
  await box(page, 'Why Wetting agent was left out').fill('had none')
  await page.getByRole('button', { name: 'Put it on record' }).click()
  await sees(page, 'What stood on the sheet is on record.')
  await onRecord(page)
  return page
}

/** An empty form complains of nothing until somebody wants to keep it. */
async function saysNothingBefore(page: Page) {
  const complaint = page.getByText(/^No time of day is typed yet/)
  await box(page, 'Zero by the clock').waitFor()
  expect(await complaint.count()).toBe(0)
  await page.getByRole('button', { name: 'Put it on record' }).click()
  await complaint.first().waitFor()
}

/** While a correction is on its way, the Undo of what it corrects does nothing. */
async function keepsBeforeUndo(page: Page) {
  let letGo = () => {}
  const held = new Promise<void>((resolve) => {
    letGo = resolve
  })
  const sent: string[] = []
  await page.route('**/api/runs/*/events', async (route) => {
    sent.push(route.request().method())
    await held
    await route.continue()
  })
  await page.getByRole('button', { name: 'Put it on record' }).click()
  const undo = page.getByRole('button', { name: 'Undo' })
  await expect.poll(() => undo.getAttribute('aria-disabled')).toBe('true')
  await undo.click({ force: true })
  letGo()
  await headed(page, /: Three baths, acid stop$/)
  await sees(page, /^Developer came out .* late/)
  expect(sent.filter((method) => method === 'POST')).toHaveLength(1)
  await page.unroute('**/api/runs/*/events')
}

async function whatCannotBe(page: Page) {
  await box(page, 'Developer out at').fill('13:50:00')
  await sees(page, /Developer out at 13:50:00 would be before Zero at 14:00:00/)
}

/** Half an hour late is possible, so it is asked about; the right time ends the question. */
async function whatIsOdd(page: Page) {
  await box(page, 'Developer out at').fill('14:38:05')
  await sees(page, /Developer out at 14:38:05 is 30:\d\d later than the sheet leads to expect/)
  await page.getByRole('button', { name: 'Put it on record' }).click()
  await sees(page, 'One field needs another look before this can be kept.')
  await page.getByRole('checkbox', { name: 'The sheet has it so' }).check()
  await box(page, 'Developer out at').fill('14:08')
  await sees(page, 'read as some second of 14:08')
  await box(page, 'Developer out at').fill('14:08:05')
  await sees(page, 'read as 14:08:05')
}

/** A mishap wants its time; what it was and when goes on record, and giving up may be taken back in the form. */
async function somethingWentWrong(page: Page) {
  await page.getByRole('button', { name: 'Something went wrong' }).click()
  await page.getByRole('combobox', { name: 'What went wrong 1' }).selectOption({ label: 'The tank leaks' })
  await page.getByRole('button', { name: 'Put it on record' }).click()
  await sees(page, 'When did it go wrong? About is enough, as 14:12.')
  await box(page, 'Went wrong at 1').fill('14:03:00')
  await page.getByRole('checkbox', { name: 'Tank A was given up' }).check()
  await box(page, 'Why tank A was given up').fill('too little left')
  await page.getByRole('checkbox', { name: 'Tank A was given up' }).uncheck()
}

async function onRecord(page: Page) {
  await sees(page, /^Done on paper, typed in on /)
  await sees(page, /Development was 100\s%|Development was 101\s%/)
  await sees(page, /Nobody wrote down when these were done/)
  await sees(page, 'cold morning')
  await sees(page, /^The tank leaks, at 14:03:00/)
  const developer = plainSpaces((await page.getByRole('row', { name: /^Developer/ }).textContent()) ?? '')
  expect(developer).toContain('14:00:')
  expect(developer).toContain('14:08:05')
}

it.each<Size>(['phone', 'laptop'])(
  'a run done on paper is typed in, corrected and taken back on a %s',
  async (size) => {
    const page = await typeIn(size, `Paper ${size}`)
    await page.getByRole('link', { name: 'Correct what was typed in' }).click()
    await headed(page, 'Correct what was typed in')
    await expect.poll(() => box(page, 'Developer out at').inputValue()).toBe('14:08:05')
    await box(page, 'Developer out at').fill('14:09:05')
    await keepsBeforeUndo(page)
    await page.getByRole('button', { name: 'Undo' }).click()
    await sees(page, 'What was typed in is taken back; the form still has it.')
    await page
      .getByText(/^Developer came out .* late/)
      .first()
      .waitFor({ state: 'hidden' })
  },
)
