import { sees } from '../steps.js'
import { at, type Look, NO_ANSWER, type Row } from './kinds.js'

/** A list that every bench has. */
const SHIPPED = '/runs/lists/three-bath-acid-stop'

const lists: Row = {
  empty: { 'as it comes': at('/runs/lists', 'By common practice') },
  full: 'a bench that is full has the same lists; the test of lists keeps one of its own and looks at it',
  away: { 'as it comes': at('/runs/lists', NO_ANSWER) },
  trouble: 'nothing is typed or sent here',
  opened: 'links and nothing else',
}

const list: Row = {
  empty: {
    'one of the program': at(SHIPPED, 'Where a bath says nothing else'),
    'none of this name': at('/runs/lists/nothing', 'This list is not on the bench any more.'),
  },
  full: { 'colour, whose time is not moved': at('/runs/lists/colour-negative', /^3:15, and no other\./) },
  away: { 'as it comes': at(SHIPPED, NO_ANSWER) },
  trouble: 'nothing is typed or sent here',
  opened: 'links and nothing else',
}

const opened =
  (step: string): Look =>
  async ({ page, go }) => {
    await go(`${SHIPPED}/copy`)
    await page.getByRole('button', { name: `Change ${step}` }).click()
    await page.getByText(/^Cautions/).click()
  }

const listCopy: Row = {
  empty: { 'as it comes': at(`${SHIPPED}/copy`, 'Another step') },
  full: { 'as it comes': at(`${SHIPPED}/copy`, 'Another step') },
  away: { 'as it comes': at(`${SHIPPED}/copy`, NO_ANSWER) },
  trouble: {
    'a developer that is parted from its stop, and kept in vain': async ({ page, go }) => {
      await go(`${SHIPPED}/copy`)
      await page.getByRole('button', { name: 'Move Hang up earlier' }).click()
      await page.getByRole('button', { name: 'Change Developer' }).click()
      await page.getByRole('textbox', { name: 'Each later turn' }).fill('now and then')
      await page.getByRole('button', { name: 'Keep the copy' }).click()
      await sees(page, /above (is|are) not right yet/)
    },
  },
  opened: { 'a bath': opened('Fix'), 'a step that is not a bath': opened('Lid off') },
}

const listEdit: Row = {
  empty: { 'none of one’s own': at(`${SHIPPED}/edit`, 'No such list') },
  full: 'the same form as the copy’s; the test of lists goes through it',
  away: { 'as it comes': at(`${SHIPPED}/edit`, NO_ANSWER) },
  trouble: 'the same form as the copy’s, which is looked at in trouble',
  opened: 'the same form as the copy’s, which is looked at with its steps open',
}

export const listsRows = { lists, list, 'list-copy': listCopy, 'list-edit': listEdit }
