import type { Page } from 'playwright-core'
import { expect, it } from 'vitest'
import { bench, type Size } from './support/browser.js'
import { keepTime } from './support/plan-run.js'
import { count, hold, readable, readableBefore, SinkClock } from './support/sink.js'
import { headed, sees } from './support/steps.js'

const { open } = bench()

/** Tank A stands for an hour; three baths of 8:00 go into its rest in tank B. */
async function planTwo(page: Page, film: string) {
  await page.goto('/runs/new')
  await page.getByRole('combobox', { name: 'List of baths' }).selectOption({ label: 'Stand development' })
  await page.getByRole('textbox', { name: 'What is on the reels' }).fill('Combe 25')
  await page.getByRole('textbox', { name: 'Label' }).fill('roll 12')
  await page.getByRole('button', { name: 'Plan another tank beside it' }).click()
  await page.getByRole('radio', { name: 'Tank B' }).waitFor()
  await page.getByRole('combobox', { name: 'List of baths' }).selectOption({ label: 'Three baths, acid stop' })
  await page.getByRole('combobox', { name: 'Developing time' }).selectOption({ label: `${film} in ascorbate` })
  await page.getByRole('textbox', { name: 'Label' }).fill('roll 13')
  await sees(page, /^Develop 8:00 at 20\.0/)
  await sees(page, /Tank B begins at 1:\d\d: from then on hands are never needed at two tanks at once\./)
  await page.getByRole('radio', { name: 'Tank A' }).check()
  expect(await page.getByRole('textbox', { name: 'Label' }).inputValue()).toBe('roll 12')
  await page.getByRole('button', { name: 'Keep this plan' }).click()
  await headed(page, 'Before you pour: tank A')
}

/** Holds whatever the tank that is shown waits for, at its second. */
async function holdWhenDue(page: Page, clock: SinkClock) {
  const left = page.getByRole('timer', { name: /, time left$/ })
  const goesIn = page.getByText('until it is in', { exact: true })
  if (await goesIn.isVisible()) {
    await clock.pass((await count(page, /, time left$/)) + 1)
    await goesIn.waitFor({ state: 'detached' })
  }
  if (await left.isVisible()) await clock.pass(await count(page, /, time left$/))
  await hold(page, /^Hold: /)
  await page.waitForTimeout(200)
}

/** Goes on with one tank until it asks for nothing more, shown by hand where the other one is shown. */
async function untilOver(page: Page, clock: SinkClock, tank: string) {
  const shown = page.getByRole('heading', { name: `Tank ${tank}`, exact: true })
  const beside = page.getByRole('button', { name: new RegExp(`^Tank ${tank}: `) })
  for (let step = 0; step < 40; step++) {
    if (await beside.isVisible()) await beside.click()
    else if (!(await shown.isVisible())) return
    await headed(page, `Tank ${tank}`)
    await holdWhenDue(page, clock)
  }
}

it.each(['phone', 'laptop'] as const)('two tanks in one run on a %s', { timeout: 120_000 }, async (size: Size) => {
  const clock = new SinkClock()
  const page = await open('/times', size)
  await keepTime(page, `Fold ${size}`)
  await clock.wind(page)
  await planTwo(page, `Fold ${size}`)
  await readableBefore(page)
  await hold(page, 'Hold: begin with developer')
  await headed(page, 'Tank A')
  await sees(page, /^Tank B: pour developer in/)
  await clock.pass(15)
  await hold(page, 'Hold: developer is in')
  await page.getByRole('button', { name: 'Undo: developer in' }).waitFor()

  // Left alone, the screen goes to the tank that needs hands next; a press shows the other one until that changes.
  await clock.pass(60)
  await headed(page, 'Tank B')
  await page.getByRole('button', { name: /^Tank A: / }).click()
  await headed(page, 'Tank A')
  expect(await count(page, 'Developer, time left')).toBeGreaterThan(3300)
  await page.getByRole('button', { name: /^Tank B: / }).click()
  await headed(page, 'Tank B')
  await clock.pass(await count(page, /time left$/))
  await hold(page, 'Hold: developer is in')
  await page.getByRole('button', { name: 'Undo: developer in' }).waitFor()
  await readable(page, 'two tanks')

  await untilOver(page, clock, 'B')
  await headed(page, 'Tank A')
  expect(await page.getByRole('region', { name: 'Other tanks' }).count()).toBe(0)
  await untilOver(page, clock, 'A')
  await page.getByRole('link', { name: 'Read the record' }).click()
  await sees(page, /roll 12/)
  await sees(page, /roll 13/)
  await sees(page, /Development was (98|99|100|101|102)\s% of the plan/)
})
