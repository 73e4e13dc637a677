import { headed, sees } from '../steps.js'
import { at, type Look, NO_ANSWER, type Row } from './kinds.js'

const nobody =
  (path: string): Look =>
  async ({ page, go }) => {
    await go(path)
    await page.getByRole('alert').waitFor()
  }

const rolls: Row = {
  empty: {
    'as it comes': at('/rolls', 'No roll is on the bench.'),
    'none found': at('/rolls?words=nothing', 'No roll is as you look for it.'),
  },
  full: {
    'as it comes': async ({ page, go }) => {
      await go('/rolls')
      await page.getByRole('checkbox', { name: 'Choose all on this page' }).waitFor()
    },
    'as a table': async ({ page, go }) => {
      await go('/rolls?as=table')
      await page.getByRole('columnheader', { name: 'Film' }).waitFor()
    },
  },
  away: { 'as it comes': at('/rolls', NO_ANSWER) },
  trouble: {
    'a date that cannot be read, a loss without a reason': async ({ page, go }) => {
      await go('/rolls?from=lately')
      await sees(page, '“lately” is left out of the search')
      await page.getByRole('checkbox', { name: 'Choose all on this page' }).check()
      await page.getByRole('combobox', { name: 'Next step' }).selectOption({ label: 'lost' })
      await page.getByRole('button', { name: 'Note the step' }).click()
      await page.getByRole('alert').filter({ hasText: 'without a reason' }).waitFor()
    },
  },
  opened: {
    'all chosen, a change open': async ({ page, go }) => {
      await go('/rolls?words=Tarn')
      await page.getByRole('checkbox', { name: 'Choose all on this page' }).check()
      await page.getByText('Change something on all of them').click()
      await page.getByText('Film, person, dates, saved views').click()
      await page.getByRole('textbox', { name: 'Keep this search as' }).waitFor()
    },
  },
}

const rollNew: Row = {
  empty: { 'as it comes': at('/rolls/new', 'Whose film is it?') },
  full: {
    'somebody else’s': async ({ page, go }) => {
      await go('/rolls/new')
      await page.getByRole('radio', { name: /^Somebody else/ }).check()
      await page.getByRole('textbox', { name: 'Whose' }).fill('Ida')
      await page.getByRole('textbox', { name: 'Rolls of Ida counted' }).waitFor()
    },
  },
  away: {
    'kept in vain': async ({ page, go }) => {
      await go('/rolls/new')
      await page.getByLabel('Film', { exact: true }).fill('Away 100')
      await page.getByRole('textbox', { name: 'Format and length' }).fill('120')
      await page.getByRole('button', { name: 'Take it in' }).click()
      await sees(page, NO_ANSWER)
    },
  },
  trouble: {
    'nothing filled in but a date': async ({ page, go }) => {
      await go('/rolls/new')
      await page.getByLabel('Film', { exact: true }).fill('')
      await page.getByRole('textbox', { name: 'When it was exposed' }).fill('soon')
      await page.getByRole('radio', { name: /^Somebody else/ }).check()
      await page.getByRole('textbox', { name: 'Whose' }).fill('')
      await page.getByRole('button', { name: 'Take it in' }).click()
      await sees(page, 'Whose film it is, is missing.')
    },
  },
  opened: {
    'expired film asks since when': async ({ page, go }) => {
      await go('/rolls/new')
      await page.getByRole('checkbox', { name: 'expired' }).check()
      await page.getByRole('textbox', { name: 'Expired since' }).waitFor()
    },
  },
}

const typed =
  (text: string, words: string | RegExp): Look =>
  async ({ page, go }) => {
    await go('/rolls/several')
    await page.getByLabel('The rolls, a line each').fill(text)
    await sees(page, words)
  }

const rollsMany: Row = {
  empty: { 'as it comes': at('/rolls/several', 'Nothing is typed yet.') },
  full: { 'read back': typed('Ida:\n2 × Tarn 100, 120, push 1, EI 100', 'film of Ida from here on') },
  away: {
    'kept in vain': async (scene) => {
      await typed('Tarn 100, 120', /^line 1/)(scene)
      await scene.page.getByRole('button', { name: 'Take in one roll' }).click()
      await sees(scene.page, NO_ANSWER)
    },
  },
  trouble: {
    'a wrong line, and a count that does not match': async (scene) => {
      await typed('Tarn 100, 120, of Ida\nTarn 100, blue', /“blue” is not understood/)(scene)
      await scene.page.getByRole('textbox', { name: 'Rolls of Ida counted' }).fill('3')
      await scene.page.getByRole('button', { name: /^Take in/ }).click()
      await sees(scene.page, /^3 rolls of Ida were counted and/)
    },
  },
  opened: {
    'what was agreed': async (scene) => {
      await typed('Tarn 100, 120, of Ida', /^line 1/)(scene)
      await scene.page.getByText('Contact, deposit, what was agreed').click()
    },
  },
}

const roll: Row = {
  empty: { 'none of this name': nobody('/rolls/:roll') },
  full: { 'as it comes': at('/rolls/:roll', 'What happened to it') },
  away: { 'as it comes': at('/rolls/:roll', NO_ANSWER) },
  trouble: {
    'ruined without a reason': async ({ page, go }) => {
      await go('/rolls/:roll')
      await page.getByRole('combobox', { name: 'Next step' }).selectOption({ label: 'ruined' })
      await page.getByRole('button', { name: 'Note the step' }).click()
      await page.getByRole('alert').filter({ hasText: 'without a reason' }).waitFor()
    },
  },
  opened: {
    'a step taken, and taken back': async ({ page, go }) => {
      await go('/rolls/:roll')
      await page.getByRole('combobox', { name: 'Next step' }).selectOption({ label: 'developed' })
      await page.getByRole('button', { name: 'Note the step' }).click()
      await page.getByRole('button', { name: 'Take this step back' }).click()
      await sees(page, '(taken back)')
    },
  },
}

/** Where the code on a sticker leads: nowhere for a number that no roll has, else at once to the roll's page. */
const rollCode: Row = {
  empty: { 'a number that no roll has': at('/r/1999-0001', /There is no roll 1999-0001/) },
  full: {
    'on to the roll': async ({ page, go }) => {
      await go('/r/2026-0001')
      await sees(page, 'What happened to it')
    },
  },
  away: { 'as it comes': at('/r/2026-0001', NO_ANSWER) },
  trouble: 'a number that no roll has is all that can go wrong; it stands under empty',
  opened: 'it leads on by itself, and nothing opens',
}

const rollEdit: Row = {
  empty: { 'none of this name': nobody('/rolls/:roll/edit') },
  full: { 'as it comes': at('/rolls/:roll/edit', /^Correct roll/) },
  away: { 'as it comes': at('/rolls/:roll/edit', NO_ANSWER) },
  trouble: {
    'a format there is not': async ({ page, go }) => {
      await go('/rolls/:roll/edit')
      await page.getByRole('textbox', { name: 'Format and length' }).fill('6x6')
      await page.getByRole('button', { name: 'Keep the correction' }).click()
      await sees(page, '“6x6” is no format')
    },
  },
  opened: 'the same form as a new roll’s, which is looked at with everything open',
}

const orders: Row = {
  empty: { 'as it comes': at('/rolls/orders', 'No order is on the bench.') },
  full: { 'as it comes': at('/rolls/orders', 'Ida') },
  away: { 'as it comes': at('/rolls/orders', NO_ANSWER) },
  trouble: 'nothing is typed or sent here',
  opened: 'links and nothing else',
}

const order: Row = {
  empty: { 'none of this name': nobody('/rolls/orders/:order') },
  full: {
    'as it comes': async ({ page, go }) => {
      await go('/rolls/orders/:order')
      await headed(page, /^Order of/)
    },
  },
  away: { 'as it comes': at('/rolls/orders/:order', NO_ANSWER) },
  trouble: {
    'a count that does not match, a correction that cannot be': async ({ page, go }) => {
      await go('/rolls/orders/:order')
      await page.getByRole('textbox', { name: 'Rolls counted out' }).fill('40')
      await page.getByRole('button', { name: 'Hand back' }).click()
      await page.getByRole('alert').filter({ hasText: '40 rolls were counted' }).waitFor()
      await page.getByText('Correct the order').click()
      await page.getByRole('textbox', { name: 'Due by' }).fill('soon')
      await page.getByRole('textbox', { name: 'Counted in' }).fill('many')
      await sees(page, /“soon” is not a due day/)
    },
  },
  opened: {
    'a link, shown once': async ({ page, go }) => {
      await go('/rolls/orders/:order')
      await page.getByRole('button', { name: 'Make a link' }).click()
      await sees(page, /\/o\//)
    },
  },
}

export const rollsRows = {
  rolls,
  'roll-new': rollNew,
  'rolls-many': rollsMany,
  roll,
  'roll-code': rollCode,
  'roll-edit': rollEdit,
  orders,
  order,
}
