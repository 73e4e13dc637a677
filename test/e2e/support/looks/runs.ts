import { takeIn } from '../send.js'
import { hold } from '../sink.js'
import { headed, sees } from '../steps.js'
import { at, type Look, NO_ANSWER, type Row } from './kinds.js'

const nobody =
  (path: string): Look =>
  async ({ page, go }) => {
    await go(path)
    await page.getByRole('alert').waitFor()
  }

const runs: Row = {
  empty: { 'as it comes': at('/runs', 'No run has been planned yet.') },
  full: { 'as it comes': at('/runs', 'done') },
  away: { 'as it comes': at('/runs', NO_ANSWER) },
  trouble: 'nothing is typed or sent here',
  opened: 'links and nothing else',
}

const runNew: Row = {
  empty: { 'as it comes': at('/runs/new', 'No developing time is kept on this bench') },
  full: { 'as it comes': at('/runs/new', /^Develop \d/) },
  away: {
    'kept in vain': async ({ page, go }) => {
      await go('/runs/new')
      await page.getByRole('textbox', { name: 'Develop for' }).fill('8:00')
      await page.getByRole('textbox', { name: 'What is on the reels' }).fill('Away 100')
      await page.getByRole('button', { name: 'Keep this plan' }).click()
      await sees(page, NO_ANSWER)
    },
  },
  trouble: {
    'baths too far apart, and nothing on the reels': async ({ page, go }) => {
      await go('/runs/new')
      await page.getByRole('textbox', { name: 'What is on the reels' }).fill('')
      await page.getByText('Temperatures of the other baths').click()
      await page.getByRole('textbox', { name: 'Stop', exact: true }).fill('12')
      await page.getByRole('button', { name: 'Keep this plan' }).click()
      await sees(page, /above are not right yet/)
    },
  },
  opened: {
    'rolls chosen: one stopped, one for which a reason is asked, one that wants another time': async ({ page, go }) => {
      await go('/runs/new')
      const colour = { film: 'Ember 200', process: 'colour-negative' }
      const backed = { film: 'Reel 250', treatment: { as: 'index', index: 400 }, remarks: ['carbon-backing'] }
      for (const { number } of await takeIn(page, colour, { ...colour, whose: 'Ida' }, backed)) {
        const code = page.getByRole('textbox', { name: 'Rolls of the register' })
        await code.fill(number)
        await sees(page, 'One roll waits. Enter takes it.')
        await code.press('Enter')
        await page.getByRole('button', { name: `Leave ${number} out` }).waitFor()
      }
      await page.getByRole('textbox', { name: 'Rolls of the register' }).fill('Tarn')
    },
  },
}

const run: Row = {
  empty: { 'none of this name': nobody('/runs/:run') },
  full: { 'before the pour': at('/runs/:run', 'This device') },
  away: { 'as it comes': at('/runs/:run', NO_ANSWER) },
  trouble: {
    'the bench goes away before the pour': async ({ page, go }) => {
      await go('/runs/:run')
      await sees(page, 'The bench answers')
      await page.context().setOffline(true)
      await sees(page, 'The bench does not answer.')
    },
  },
  opened: {
    'a developer that is warm': async ({ page, go }) => {
      await go('/runs/:run')
      for (let press = 0; press < 9; press++)
        await page.getByRole('button', { name: 'A tenth of a degree more' }).click()
      await headed(page, /^Developer is .* warm$/)
    },
    'the tank under way, and the card for what went wrong': async ({ page, go }) => {
      await go('/runs/:run')
      await hold(page, /^Hold: begin/)
      await hold(page, /^Hold: developer is in/)
      await page.getByRole('button', { name: 'Something went wrong' }).click()
      await page.getByRole('button', { name: 'The tank leaks' }).click()
      await sees(page, /^Stand it in a tray/)
    },
  },
}

const runLoad: Row = {
  empty: { 'as it comes': at('/runs/:run/load', 'Load the film') },
  full: { 'as it comes': at('/runs/:run/load', 'Load the film') },
  away: { 'as it comes': at('/runs/:run/load', 'Load the film') },
  trouble: 'nothing is typed or sent here',
  opened: 'the dark page has no light and no words; the test of a whole run goes through it',
}

const runRecord: Row = {
  empty: { 'none of this name': nobody('/runs/:run/record') },
  full: { 'as it comes': at('/runs/:ended/record', 'Against the plan') },
  away: { 'as it comes': at('/runs/:run/record', NO_ANSWER) },
  trouble: 'every choice and every note can be kept',
  opened: {
    'a verdict that is kept': async ({ page, go }) => {
      await go('/runs/:ended/record')
      await page.getByRole('radio', { name: 'right' }).check()
      await page.getByRole('button', { name: 'Keep the verdict' }).click()
      await sees(page, /^What was said of tank/)
    },
  },
}

const runPaperWhich: Row = {
  empty: { 'as it comes': at('/runs/paper', 'No plan waits on this bench.') },
  full: { 'as it comes': at('/runs/paper', /^planned/) },
  away: { 'as it comes': at('/runs/paper', NO_ANSWER) },
  trouble: 'nothing is typed or sent here',
  opened: 'links and nothing else',
}

const runPaper: Row = {
  empty: { 'none of this name': nobody('/runs/:run/paper') },
  full: { 'as it comes': at('/runs/:run/paper', 'What the record will say') },
  away: { 'as it comes': at('/runs/:run/paper', NO_ANSWER) },
  trouble: {
    'a developer poured out too late': async ({ page, go }) => {
      await go('/runs/:run/paper')
      await page.getByLabel('Day').fill('2026-01-02')
      await page.getByRole('textbox', { name: 'Zero by the clock' }).fill('14:00')
      await page.getByRole('textbox', { name: 'Developer out at' }).fill('14:50')
      await page.getByRole('button', { name: 'Put it on record' }).click()
      await sees(page, /needs? another look/)
    },
  },
  opened: 'nothing opens over the form; keeping it leads to the record',
}

export const runsRows = {
  runs,
  'run-new': runNew,
  run,
  'run-paper': runPaper,
  'run-paper-which': runPaperWhich,
  'run-load': runLoad,
  'run-record': runRecord,
}
