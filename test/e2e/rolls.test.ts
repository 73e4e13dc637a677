import type { Page } from 'playwright-core'
import { beforeAll, expect, it } from 'vitest'
import { codesOn, readerOfCodes } from '../support/paper.js'
import { accessible } from './support/axe.js'
import { bench, type Size } from './support/browser.js'
import { send } from './support/send.js'
import { focusedName, headed, sees, tabTo } from './support/steps.js'

const { open } = bench()
beforeAll(readerOfCodes)

/** Fourteen rolls of two people; the ninth line is wrong at first. */
const handedOver = (ida: string, jon: string, wrong: string) => `${ida}:
5 × Corvane 400, 135-36, EI 400
Corvane 400, 135-24, EI 400, push 1, exposed summer 2024
Weir colour 200, 135, colour negative
2 × Tarn 100, 120, note: two shared
${jon}:
Tarn 100, 120, EI 100, 3 May 2025
2 × Fell 25, 135, found, expired since 1998
Tarn 100, ${wrong}
Tarn 100, 4x5 ×6`

const chooseAll = (page: Page) => page.getByRole('checkbox', { name: 'Choose all on this page' }).check()
const step = async (page: Page, label: string) => {
  await page.getByRole('combobox', { name: 'Next step' }).selectOption({ label })
  await page.getByRole('button', { name: 'Note the step' }).click()
}

it.each<Size>(['phone', 'laptop'])(
  'fourteen rolls of two people are pasted in, followed and counted out on a %s',
  async (size) => {
    const page = await open('/rolls', size)
    const [ida, jon] = [`Ida ${size}`, `Jon ${size}`]
    await page.getByRole('link', { name: 'Take in several' }).first().click()
    await page.getByLabel('The rolls, a line each').fill(handedOver(ida, jon, '6x6'))
    await sees(page, /^“6x6” is no format that is taken in here\. Write 135-36, 120/)
    await page.reload()
    await sees(page, /^“6x6” is no format/)
    await page.getByRole('button', { name: /^Take in/ }).click()
    await sees(page, 'One line cannot be read yet.')
    await page.getByLabel('The rolls, a line each').fill(handedOver(ida, jon, '120'))
    await sees(page, /developed as 800, a push/)

    await page.getByRole('textbox', { name: `Rolls of ${ida} counted` }).fill('8')
    await page.getByRole('textbox', { name: `Rolls of ${jon} counted` }).fill('5')
    await sees(page, `8 rolls of ${ida} were counted and 9 are listed. Nothing is taken in`)
    await page.getByRole('button', { name: 'Take in 14 rolls' }).click()
    await sees(page, `8 rolls of ${ida} were counted and 9 are listed.`)
    await page.getByRole('textbox', { name: `Rolls of ${ida} counted` }).fill('9')
    await page.getByRole('button', { name: 'Take in 14 rolls' }).click()
    await sees(page, /^14 rolls taken in: \d{4}-\d{4} to \d{4}-\d{4}\.$/)

    await page.getByRole('searchbox', { name: 'Find' }).fill(ida)
    await sees(page, 'Nine rolls.')
    await chooseAll(page)
    await step(page, 'developed')
    await sees(page, 'Nine rolls: developed.')
    await page.getByRole('button', { name: 'Undo' }).click()
    await sees(page, 'Nine rolls are as before.')
    await page.getByRole('combobox', { name: 'State' }).selectOption({ label: 'waiting' })
    await chooseAll(page)
    await step(page, 'sleeved')
    await sees(page, 'No roll is as you look for it.')

    await page.goto('/rolls/orders')
    await page.getByRole('link', { name: new RegExp(`^${ida}`) }).click()
    await headed(page, `Order of ${ida}`)
    await page.getByRole('textbox', { name: 'Rolls counted out' }).fill('8')
    await page.getByRole('button', { name: 'Hand back' }).click()
    await sees(page, /^8 rolls were counted and 9 should be here\. Nothing is handed back/)
    await accessible(page, 'a count that does not match', { whole: size === 'laptop' })
    await page.getByRole('textbox', { name: 'Rolls counted out' }).fill('9')
    await page.getByRole('button', { name: 'Hand back' }).click()
    await sees(page, `Nine rolls of ${ida} handed back.`)
    await sees(page, 'Nine rolls counted out and handed back.')
  },
)

it('a roll is taken in, found, lost with a reason, taken back and corrected without a mouse', async () => {
  const page = await open('/rolls/new')
  await headed(page, 'Take in a roll')
  await tabTo(page, 'Film')
  await page.keyboard.type('Keys 400')
  await tabTo(page, 'Format and length')
  await page.keyboard.type('135-24')
  await tabTo(page, 'When it was exposed')
  await page.keyboard.type('summer 2024')
  await sees(page, 'read as summer 2024')
  await page.keyboard.press('Enter')
  await sees(page, /^Roll \d{4}-\d{4} is taken in\./)
  await headed(page, /Keys 400$/)

  await page.getByRole('combobox', { name: 'Next step' }).selectOption({ label: 'lost' })
  await tabTo(page, 'Note the step')
  await page.keyboard.press('Enter')
  await page.getByRole('alert').filter({ hasText: 'cannot be lost without a reason' }).waitFor()
  await page.getByRole('textbox', { name: 'What happened' }).focus()
  await page.keyboard.type('Not in the drawer.')
  await page.keyboard.press('Enter')
  await sees(page, 'It is lost; nothing more happens to it.')
  await tabTo(page, 'Take this step back')
  await page.keyboard.press('Enter')
  await sees(page, '(taken back)')

  await tabTo(page, 'Correct it')
  await page.keyboard.press('Enter')
  await headed(page, /^Correct roll/)
  expect(await focusedName(page)).toMatch(/^Correct roll/)
  await page.getByRole('textbox', { name: 'Exposed at index' }).fill('400')
  await page.getByRole('textbox', { name: 'What is wanted' }).fill('push 1')
  await sees(page, 'read as 800')
  await page.keyboard.press('Enter')
  await sees(page, 'corrected: index: unknown → 400; wanted: developed as usual → developed as 800')
})

it('a long list comes a page at a time, and a view of it is kept', async () => {
  const page = await open('/rolls/several')
  await page.getByLabel('The rolls, a line each').fill('60 × Many 100, 120')
  await page.getByRole('button', { name: 'Take in 60 rolls' }).click()
  await page.getByRole('searchbox', { name: 'Find' }).fill('many')
  await sees(page, '50 of 60 rolls, newest first.')
  expect(await page.getByRole('checkbox', { name: /^Choose \d/ }).count()).toBe(50)
  await page.getByText('Film, person, dates, saved views').click()
  await page.getByRole('textbox', { name: 'Keep this search as' }).fill('Plenty')
  await page.getByRole('button', { name: 'Keep the view' }).click()
  await sees(page, 'The view Plenty is kept for everybody at this bench.')
  await page.getByRole('link', { name: 'Earlier rolls' }).click()
  await sees(page, '10 of 60 rolls, newest first.')
  await page.goto('/rolls?state=all')
  await page.getByText('Film, person, dates, saved views').click()
  await page.getByRole('link', { name: 'Plenty' }).click()
  await sees(page, '50 of 60 rolls, newest first.')
  await page.getByRole('button', { name: 'Show as a table' }).click()
  await page.getByRole('columnheader', { name: 'Film' }).waitFor()
})

/** Where the codes lead on the paper that a button of the page opens. */
async function codesBehind(page: Page, button: string): Promise<string[]> {
  const href = await page.getByRole('link', { name: button, exact: true }).getAttribute('href')
  const answer = await page.request.get(href ?? '')
  expect([button, answer.headers()['content-type']]).toEqual([button, 'application/pdf'])
  return (await codesOn(await answer.body())).map(({ text }) => new URL(text).pathname).sort()
}

it.each<Size>(['phone', 'laptop'])(
  'stickers and slip of an order are printed on a %s, and what their codes hold leads to its rolls and its link',
  async (size) => {
    const page = await open('/rolls', size)
    const { id } = await send<{ id: string }>(page, '/api/orders', { person: `Mara ${size}`, counted_in: 2 })
    const statement = { film: 'Fell 25', process: 'black-and-white', format: '120', whose: `Mara ${size}` }
    const asked = { order_id: id, rolls: [{ statement }, { statement }] }
    const { rolls } = await send<{ rolls: { number: string }[] }>(page, '/api/rolls', asked)
    const leads = rolls.map(({ number }) => `/r/${number}`)
    await page.goto(`/rolls/orders/${id}`)
    expect(await codesBehind(page, 'Print stickers')).toEqual([...leads, ...leads].sort())
    expect(await codesBehind(page, 'Print the slip')).toEqual([])

    await page.getByRole('button', { name: 'Make a link' }).click()
    const [link = ''] = await codesBehind(page, 'Print the slip with this link')
    await page.goto(link)
    await headed(page, 'How far your film is')
    await sees(page, rolls[0]?.number ?? '')

    await page.goto(leads[1] as string)
    await headed(page, `${rolls[1]?.number} Fell 25`)
    expect(await codesBehind(page, 'Print stickers')).toEqual([leads[1], leads[1]])
  },
)
