import { sees } from '../steps.js'
import { at, NO_ANSWER, type Row } from './kinds.js'

const shelf: Row = {
  empty: { 'as it comes': at('/shelf', 'Nothing stands on the shelf yet.') },
  full: { 'as it comes': at('/shelf', 'air in the bottle ends it first, then volume') },
  away: { 'as it comes': at('/shelf', NO_ANSWER) },
  trouble: {
    'words that no bottle has': async ({ page, go }) => {
      await go('/shelf')
      await page.getByRole('searchbox', { name: 'Find' }).fill('nowhere')
      await sees(page, 'No bottle here has these words.')
    },
  },
  opened: {
    'the way back after a removal': async ({ page, go }) => {
      await go('/shelf/thermometers/:thermometer')
      await page.getByRole('button', { name: 'Remove', exact: true }).click()
      await page.getByRole('button', { name: 'Undo' }).waitFor()
    },
  },
}

const thermometerNew: Row = {
  empty: { 'as it comes': at('/shelf/thermometers/new') },
  full: { 'as it comes': at('/shelf/thermometers/new') },
  away: {
    'kept in vain': async ({ page, go }) => {
      await go('/shelf/thermometers/new')
      await page.getByRole('textbox', { name: 'Name' }).fill('Spare')
      await page.getByRole('textbox', { name: 'Its scale begins at' }).fill('0')
      await page.getByRole('textbox', { name: 'Its scale ends at' }).fill('50')
      await page.getByRole('button', { name: 'Keep this thermometer' }).click()
      await sees(page, NO_ANSWER)
    },
  },
  trouble: {
    'a scale upside down, a name missing': async ({ page, go }) => {
      await go('/shelf/thermometers/new')
      await page.getByRole('textbox', { name: 'Its scale begins at' }).fill('50')
      await page.getByRole('textbox', { name: 'Its scale ends at' }).fill('0')
      await page.getByRole('button', { name: 'Keep this thermometer' }).click()
      await sees(page, 'the low end comes first')
    },
  },
  opened: 'a form and nothing else; its kinds are the browser’s own list',
}

const thermometer: Row = {
  empty: { 'none of this name': at('/shelf/thermometers/:thermometer', 'No such thermometer') },
  full: { 'as it comes': at('/shelf/thermometers/:thermometer', 'Check it') },
  away: { 'as it comes': at('/shelf/thermometers/:thermometer', NO_ANSWER) },
  trouble: {
    'a check far off': async ({ page, go }) => {
      await go('/shelf/thermometers/:thermometer')
      await page.getByRole('textbox', { name: 'It reads' }).fill('29')
      await page.getByRole('textbox', { name: 'The trusted one reads' }).fill('20')
      await page.getByRole('button', { name: 'Keep this check' }).click()
      await sees(page, 'the thermometer is broken or one of the two was read wrongly')
    },
  },
  opened: {
    'the check in boiling water, a check withdrawn': async ({ page, go }) => {
      await go('/shelf/thermometers/:thermometer')
      const withdraw = page.getByRole('button', { name: /^Withdraw the check/ }).first()
      await withdraw.click()
      await sees(page, 'The check is withdrawn')
      await page.getByRole('radio', { name: /boil/i }).check()
    },
  },
}

const thermometerEdit: Row = {
  empty: { 'none of this name': at('/shelf/thermometers/:thermometer/edit', 'No such thermometer') },
  full: { 'as it comes': at('/shelf/thermometers/:thermometer/edit', /^Correct /) },
  away: { 'as it comes': at('/shelf/thermometers/:thermometer/edit', NO_ANSWER) },
  trouble: {
    'a scale upside down': async ({ page, go }) => {
      await go('/shelf/thermometers/:thermometer/edit')
      await page.getByRole('textbox', { name: 'Its scale begins at' }).fill('150')
      await sees(page, 'the low end comes first')
    },
  },
  opened: 'a form and nothing else; its kinds are the browser’s own list',
}

const classSet: Row = {
  empty: { 'too few thermometers': at('/shelf/class-set', 'A comparison needs at least two thermometers') },
  full: { 'as it comes': at('/shelf/class-set', 'What each one reads') },
  away: { 'as it comes': at('/shelf/class-set', NO_ANSWER) },
  trouble: {
    'nothing filled in, a reading that cannot be read': async ({ page, go, thermometers }) => {
      await go('/shelf/class-set')
      const [first = ''] = await thermometers()
      await page.getByRole('textbox', { name: first, exact: true }).fill('x')
      await page.getByRole('button', { name: 'Keep a check for each' }).click()
      await page.getByRole('alert').waitFor()
    },
  },
  opened: {
    'the results': async ({ page, go, thermometers }) => {
      await go('/shelf/class-set')
      for (const name of await thermometers()) await page.getByRole('textbox', { name, exact: true }).fill('20.5')
      await page.getByRole('button', { name: 'Keep a check for each' }).click()
      await page.getByRole('heading', { name: /^The beaker was at/ }).waitFor()
    },
  },
}

// A comparison needs two thermometers, so the removal on the shelf comes last.
export const shelfRows = {
  'class-set': classSet,
  'thermometer-new': thermometerNew,
  thermometer,
  'thermometer-edit': thermometerEdit,
  shelf,
}
