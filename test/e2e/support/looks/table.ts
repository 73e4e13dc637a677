import type { PageName } from '../../../../src/web/app/route-table.js'
import { send, takeIn } from '../send.js'
import { sees } from '../steps.js'
import { bottlesRows } from './bottles.js'
import { houseRows } from './house.js'
import { at, type Look, NO_ANSWER, type Row, type State } from './kinds.js'
import { kitRows } from './kit.js'
import { listsRows } from './lists.js'
import { rollsRows } from './rolls.js'
import { runsRows } from './runs.js'
import { shelfRows } from './shelf.js'
import { timesRows } from './times.js'

const today: Row = {
  empty: { 'as it comes': at('/', 'The bench is bare.') },
  full: {
    'as it comes': at('/', 'Put in last'),
    'film to be hung, film that hangs': async ({ page, go }) => {
      await go('/')
      const [wet, hangs] = await takeIn(page, {}, { film: 'Fell 25', whose: 'Ida' })
      await send(page, '/api/rolls/move', { roll_ids: [wet?.id, hangs?.id], state: 'developed' })
      await send(page, '/api/rolls/move', { roll_ids: [hangs?.id], state: 'hung', hook: 'line 2, clip 7' })
      await go('/')
      await sees(page, `${wet?.number} Tarn 100 is developed and waits for a hook.`)
    },
  },
  away: {
    'as it comes': at('/', NO_ANSWER),
    'the device itself off the network': async ({ page, go }) => {
      await go('/')
      await page.context().setOffline(true)
      await sees(page, 'The bench does not answer just now.')
    },
  },
  trouble: {
    'a fault of our own': async ({ page, go }) => {
      await page.route('**/api/today', (route) => route.fulfill({ json: {} }), { times: 1 })
      await go('/')
      await page.getByRole('heading', { level: 1, name: 'This page stopped' }).waitFor()
    },
  },
  opened: 'nothing opens over Today; its steps lead to other pages',
}

/** The answer to an address that no route fits. */
const notFound: Row = {
  empty: { 'as it comes': at('/no/such/place', 'Nothing is here') },
  full: { 'as it comes': at('/no/such/place', 'Nothing is here') },
  away: { 'as it comes': at('/no/such/place', 'Nothing is here') },
  trouble: 'it is itself the trouble, and nothing is typed or sent here',
  opened: 'two links and nothing else',
}

/** What a device that the bench does not know sees in place of every page but the one to pair it. */
const notPaired: Row = {
  empty: {
    'in place of Today': at('/', 'This device is not paired yet'),
    'in place of a page that is not': at('/no/such/place', 'This device is not paired yet'),
  },
  full: 'a stranger sees nothing of what is kept, so it is the same page',
  away: 'without an answer nobody is known to be a stranger; the pages say that the server is away',
  trouble: 'it is itself the trouble, and nothing is typed or sent here',
  opened: 'one link and nothing else',
}

export const LOOKS: Readonly<Record<PageName | 'not-found' | 'not-paired', Row>> = {
  today,
  ...bottlesRows,
  ...shelfRows,
  ...kitRows,
  ...timesRows,
  ...runsRows,
  ...rollsRows,
  ...listsRows,
  ...houseRows,
  'not-found': notFound,
  'not-paired': notPaired,
}

/** Rows that are met by a device the server does not know; they need a server without an owner. */
const STRANGERS: readonly string[] = ['pair', 'order-link', 'not-paired'] satisfies (keyof typeof LOOKS)[]

/** Every look of a state with its name, for a stranger or for the owner. */
export function looks(state: State, of: 'owner' | 'stranger'): (readonly [string, Look])[] {
  return Object.entries(LOOKS)
    .filter(([name]) => STRANGERS.includes(name) === (of === 'stranger'))
    .flatMap(([name, { [state]: found }]) =>
      typeof found === 'string'
        ? []
        : Object.entries(found).map(([which, look]) => [`${name}, ${state}: ${which}`, look] as const),
    )
}
