import { headed, sees } from '../steps.js'
import { at, type Look, NO_ANSWER, type Row } from './kinds.js'

const asking =
  (typed: string): Look =>
  async ({ page, go }) => {
    await go('/times/:time')
    await page.getByRole('textbox', { name: 'Temperature of the developer' }).fill(typed)
    await headed(page, 'No time for this yet')
  }

const removed: Look = async ({ page, go }) => {
  await go('/times/:time')
  await headed(page, /^Develop/)
  await page.getByRole('button', { name: 'Remove', exact: true }).click()
  await page.getByRole('button', { name: 'Undo' }).waitFor()
}

const times: Row = {
  empty: { 'as it comes': at('/times', 'No time is kept yet.') },
  full: { 'as it comes': at('/times', 'Weir colour') },
  away: { 'as it comes': at('/times', NO_ANSWER) },
  trouble: {
    'nothing found': async ({ page, go }) => {
      await go('/times')
      await page.getByRole('searchbox', { name: 'Find a film or a developer' }).fill('no such film')
      await page.getByRole('link', { name: /Weir colour/ }).waitFor({ state: 'detached' })
    },
  },
  opened: { 'the way back after a removal': removed },
}

const timeNew: Row = {
  empty: { 'as it comes': at('/times/new') },
  full: { 'as it comes': at('/times/new') },
  away: {
    'kept in vain': async ({ page, go }) => {
      await go('/times/new')
      await page.getByLabel('Film', { exact: true }).fill('Away 100')
      await page.getByLabel('Developer', { exact: true }).fill('metol')
      await page.getByRole('textbox', { name: 'Temperature 1' }).fill('20')
      await page.getByRole('textbox', { name: 'Time 1' }).fill('9:00')
      await page.getByRole('button', { name: 'Keep this time' }).click()
      await sees(page, NO_ANSWER)
    },
  },
  trouble: {
    'a form with every kind of trouble': async ({ page, go }) => {
      await go('/times/new')
      await page.getByRole('textbox', { name: 'Dilution' }).fill('1:4')
      await page.getByRole('textbox', { name: 'Temperature 1' }).fill('x')
      await page.getByRole('button', { name: 'Keep this time' }).click()
      await sees(page, /fields above are not right yet/)
    },
  },
  opened: {
    'the further fields': async ({ page, go }) => {
      await go('/times/new')
      await page.getByText('More: the law').click()
      await page.getByRole('combobox', { name: 'What it develops with' }).waitFor()
    },
  },
}

const timesPaste: Row = {
  empty: { 'as it comes': at('/times/paste') },
  full: { 'as it comes': at('/times/paste') },
  away: {
    'a text that is not read': async ({ page, go }) => {
      await go('/times/paste')
      await page.getByLabel('The table as text').fill('Fen 100 20C 9:30')
      await sees(page, NO_ANSWER)
    },
  },
  trouble: {
    'a wrong cell': async ({ page, go }) => {
      await go('/times/paste')
      await page.getByLabel('The table as text').fill('Fen 100\n        20C  22C  24C\nEI 100  9:30  8:00  1o')
      await sees(page, /“1o” at/)
    },
    'no times in it': async ({ page, go }) => {
      await go('/times/paste')
      await page.getByLabel('The table as text').fill('Nothing of the kind')
      await sees(page, 'The pasted text holds no time.')
    },
  },
  opened: {
    'what the table leaves out is asked for': async ({ page, go }) => {
      await go('/times/paste')
      await page.getByLabel('The table as text').fill('        20C  22C  24C\nEI 100  9:30  8:00  7:00')
      await page.getByRole('textbox', { name: 'Film' }).waitFor()
      await page.getByRole('textbox', { name: 'Developer' }).waitFor()
    },
  },
}

const time: Row = {
  empty: {
    'none of this name': async ({ page, go }) => {
      await go('/times/:time')
      await page.getByRole('alert').waitFor()
    },
  },
  full: {
    'as it comes': async ({ page, go }) => {
      await go('/times/:time')
      await headed(page, /^Develop/)
    },
  },
  away: { 'as it comes': at('/times/:time', NO_ANSWER) },
  trouble: {
    'a refused temperature': asking('60'),
    'a temperature that cannot be read': asking('warm'),
    'a bare 100, asked about': async (scene) => {
      await asking('100')(scene)
      await scene.page.getByRole('button', { name: /100 °F/ }).waitFor()
    },
    'the time was removed': async (scene) => {
      await removed(scene)
      await scene.page.goBack()
      await sees(scene.page, 'This developing time was removed')
    },
  },
  opened: {
    'the working open, a corrected reading and a warning': async ({ page, go }) => {
      await go('/times/:time?at=25.5&thermometer=:thermometer&factor=1.1')
      await headed(page, /^Develop/)
      for (const figure of await page.getByRole('group').all()) await figure.click({ position: { x: 8, y: 12 } })
    },
    'choosing a film': async ({ page, go }) => {
      await go('/times/:time')
      await page.getByRole('combobox', { name: 'Film' }).click()
      await page.getByRole('option').first().waitFor()
    },
  },
}

const timeEdit: Row = {
  empty: {
    'none of this name': async ({ page, go }) => {
      await go('/times/:time/edit')
      await page.getByRole('alert').waitFor()
    },
  },
  full: { 'as it comes': at('/times/:time/edit', /^Correct /) },
  away: { 'as it comes': at('/times/:time/edit', NO_ANSWER) },
  trouble: {
    'a time that cannot be read': async ({ page, go }) => {
      await go('/times/:time/edit')
      await page.getByRole('textbox', { name: 'Time 1' }).fill('soon')
      await page.getByRole('button', { name: 'Keep the correction' }).click()
      await sees(page, /above (is|are) not right yet/)
    },
  },
  opened: {
    'the further fields': async ({ page, go }) => {
      await go('/times/:time/edit')
      await page.getByText('More: the law').click()
    },
  },
}

export const timesRows = {
  'time-new': timeNew,
  'times-paste': timesPaste,
  time,
  'time-edit': timeEdit,
  times,
}
