import { expect, it } from 'vitest'
import { routeTable } from '../../src/web/app/route-table.js'
import { STATES } from './support/looks/kinds.js'
import { LOOKS, looks } from './support/looks/table.js'

/** What is met at addresses that no route stands for. */
const WITHOUT_ROUTE = ['not-found', 'not-paired']

it('every route, and no other, has its row', () => {
  const routes = routeTable.map(({ page }) => page)
  expect(Object.keys(LOOKS).toSorted()).toEqual([...routes, ...WITHOUT_ROUTE].toSorted())
})

it.each(Object.entries(LOOKS))('%s is looked at in every state, or the table says why not', (_, row) => {
  for (const state of STATES) {
    const found = row[state]
    if (typeof found === 'string') expect(found.split(' ').length, `a reason why not ${state}`).toBeGreaterThan(3)
    else expect(Object.keys(found ?? {}), state).not.toEqual([])
  }
})

it('every look is taken by somebody, once', () => {
  const taken = STATES.flatMap((state) =>
    [...looks(state, 'owner'), ...looks(state, 'stranger')].map(([, look]) => look),
  )
  const written = Object.values(LOOKS).flatMap((row) =>
    STATES.flatMap((state) => (typeof row[state] === 'string' ? [] : Object.values(row[state]))),
  )
  expect(taken.length).toBe(written.length)
  expect(new Set(taken)).toEqual(new Set(written))
})
