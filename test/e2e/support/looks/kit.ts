import type { Page } from 'playwright-core'
import { sees } from '../steps.js'
import { at, type Look, NO_ANSWER, type Row } from './kinds.js'

let made = 0

/** Types a tank in, by a name of its own. */
async function typeTank(page: Page, name: string, holds: string) {
  await page.getByRole('textbox', { name: 'Name' }).fill(name)
  await page.getByRole('textbox', { name: 'What it holds, and how much covers that' }).fill(holds)
  await page.getByRole('button', { name: 'Keep it', exact: true }).click()
}

const withTank: Look = async ({ page, go }) => {
  await go('/shelf/kit/new')
  const name = `Two-reel ${++made}`
  await typeTank(page, name, '135, 2, 580 mL')
  await page.getByRole('link', { name }).waitFor()
}

/** The page of a tank that was just typed in. */
const onTank: Look = async (scene) => {
  await withTank(scene)
  await scene.page.getByRole('link', { name: `Two-reel ${made}` }).click()
  await scene.page.getByRole('heading', { level: 1, name: `Two-reel ${made}` }).waitFor()
}

const NO_VESSEL = '/shelf/kit/00000000-0000-7000-8000-000000000000'

const kit: Row = {
  empty: { 'as it comes': at('/shelf/kit', 'No tank and no reel is here yet.') },
  full: { 'with a tank': withTank },
  away: { 'as it comes': at('/shelf/kit', NO_ANSWER) },
  trouble: 'nothing is typed or sent here',
  opened: 'its links lead to other pages',
}

const vesselNew: Row = {
  empty: { 'as it comes': at('/shelf/kit/new') },
  full: { 'as it comes': at('/shelf/kit/new') },
  away: {
    'kept in vain': async ({ page, go }) => {
      await go('/shelf/kit/new')
      await typeTank(page, 'Spare', '135, 1, 290 mL')
      await sees(page, NO_ANSWER)
    },
  },
  trouble: {
    'a line that cannot be read': async ({ page, go }) => {
      await go('/shelf/kit/new')
      await typeTank(page, 'Spare', '135, two, 290 mL')
      await sees(page, /^Line 1/)
    },
  },
  opened: 'a form and nothing else; its kinds are the browser’s own list',
}

const vessel: Row = {
  empty: { 'none of this name': at(NO_VESSEL, 'Not in the kit') },
  full: { 'as it comes': onTank },
  away: { 'as it comes': at(NO_VESSEL, NO_ANSWER) },
  trouble: {
    'nothing that it holds': async (scene) => {
      await onTank(scene)
      await scene.page.getByRole('textbox', { name: 'What it holds, and how much covers that' }).fill('')
      await scene.page.getByRole('button', { name: 'Keep the correction' }).click()
      await sees(scene.page, 'One line at least')
    },
  },
  opened: {
    'the way back after a removal': async (scene) => {
      await onTank(scene)
      await scene.page.getByRole('main').getByRole('button', { name: 'Remove it' }).click()
      await scene.page.getByRole('button', { name: 'Undo' }).waitFor()
    },
  },
}

const films: Row = {
  empty: { 'as it comes': at('/times/films', 'No film is known here yet.') },
  full: { 'as it comes': at('/times/films', 'nothing kept: 10') },
  away: { 'as it comes': at('/times/films', NO_ANSWER) },
  trouble: 'a name that is not known opens the page of that film',
  opened: 'its links lead to other pages',
}

const FILM = '/times/films/Corvane%20400'

const film: Row = {
  empty: { 'a film of which nothing is known': at(FILM, 'It was in no run that has ended yet.') },
  full: { 'as it comes': at(FILM, 'This worked best.') },
  away: { 'as it comes': at(FILM, NO_ANSWER) },
  trouble: {
    'a tolerance that is none': async ({ page, go }) => {
      await go(FILM)
      await page.getByRole('textbox', { name: 'Less' }).fill('much')
      await page.getByRole('button', { name: 'Keep what I know of it' }).click()
      await sees(page, 'A number, 0 to 50')
    },
  },
  opened: {
    'strips asked for, and kept': async ({ page, go }) => {
      await go(FILM)
      await page.getByRole('radio', { name: 'in contrast, by its strips' }).check()
      await page.getByRole('textbox', { name: 'Less' }).fill('0.05')
      await page.getByRole('textbox', { name: 'More' }).fill('0.05')
      await page.getByRole('textbox', { name: 'Strips' }).fill('5:00, 0.45\n10:00, 0.66')
      await page.getByRole('button', { name: 'Keep what I know of it' }).click()
      await page.getByRole('button', { name: 'Undo' }).waitFor()
    },
  },
}

export const kitRows = { kit, 'vessel-new': vesselNew, vessel, films, film }
