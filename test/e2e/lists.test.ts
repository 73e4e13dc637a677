import { expect, it } from 'vitest'
import { accessible } from './support/axe.js'
import { bench, type Size } from './support/browser.js'
import { focusedName, goTo, headed, sees } from './support/steps.js'

const { open } = bench()

it.each<Size>(['phone', 'laptop'])(
  'a list is copied, changed by keyboard, taken back and removed on a %s',
  async (size) => {
    const page = await open('/runs', size)
    const name = `Sunday ${size}`
    await page.getByRole('link', { name: 'Lists of baths' }).click()
    await page.getByRole('link', { name: /^Three baths, acid stop/ }).click()
    await headed(page, 'Three baths, acid stop')
    await page.getByRole('link', { name: 'Copy it' }).click()
    await page.getByRole('textbox', { name: 'Name of the list' }).fill(name)

    await page.getByRole('button', { name: 'Move Wetting agent earlier' }).focus()
    await page.keyboard.press('Enter')
    await sees(page, /^Wetting agent is now step 10 of 13\.$/)
    await page.keyboard.press('Enter')
    await sees(page, /^Wetting agent is now step 9 of 13\.$/)
    expect(await focusedName(page)).toBe('Move Wetting agent earlier')
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.getByRole('button', { name: 'Move Wetting agent later' }).click()
    await page.getByRole('button', { name: 'Take out Lid off' }).click()
    await sees(page, 'Lid off is taken out.')

    await page.getByRole('button', { name: 'Change Stop' }).click()
    await page.getByRole('textbox', { name: 'Time', exact: true }).fill('45 s')
    await page.getByRole('textbox', { name: 'Why it is there' }).fill('Our tap water is hard.')
    await page.getByRole('button', { name: 'Keep the copy' }).click()
    await headed(page, name)
    await sees(page, 'Our tap water is hard.')
    await sees(page, '0:45')
    await expect.poll(() => page.getByText('Lid off').count()).toBe(0)
    await accessible(page, 'a list of one’s own', { whole: size === 'laptop' })

    await page.getByRole('link', { name: 'Change it' }).click()
    await page.getByRole('combobox', { name: 'Another step' }).selectOption({ label: 'Rinse' })
    await page.getByRole('combobox', { name: 'It comes behind' }).selectOption({ label: '1 Developer' })
    await page.getByRole('button', { name: 'Add it' }).click()
    await sees(page, 'Rinse is step 2 of 13.')
    await page.getByRole('button', { name: 'Keep the change' }).click()
    // The page that was typed on is headed by the name too, and has an Undo of its own.
    await page.getByRole('link', { name: 'Change it' }).waitFor()
    await page.getByRole('heading', { name: /Rinse/ }).waitFor()
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.getByRole('heading', { name: /Rinse/ }).waitFor({ state: 'detached' })

    await goTo(page, 'Runs')
    await page.getByRole('link', { name: 'Plan a run' }).click()
    await page.getByRole('combobox', { name: 'List of baths' }).selectOption({ label: name })
    await page.getByRole('link', { name: 'Look at this list' }).click()
    await page.getByRole('button', { name: 'Remove it' }).click()
    await headed(page, 'Lists of baths')
    await expect.poll(() => page.getByRole('link', { name: new RegExp(`^${name}`) }).count()).toBe(0)
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.getByRole('link', { name: new RegExp(`^${name}`) }).waitFor()
  },
)

it('a colour list says that its time is not moved, and refuses a developing time in a sentence', async () => {
  const page = await open('/runs/lists/colour-negative')
  await sees(page, /^3:15, and no other\. The time of colour developer is not moved/)
  await page.getByRole('link', { name: 'Copy it' }).click()
  await page.getByRole('button', { name: 'Change Colour developer' }).click()
  await sees(page, /^3:15, and no other\./)
  await page.getByRole('combobox', { name: 'How long' }).selectOption({ label: 'as long as the developing time says' })
  await sees(page, /^Colour developer has one time at one temperature; give it fixed seconds/)
})
