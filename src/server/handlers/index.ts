import type { RouteName } from '../../wire/index.js'
import type { Handlers } from '../call.js'
import { houseHandlers } from './house.js'
import { kitHandlers } from './kit.js'
import { peopleHandlers } from './people.js'
import { recipesHandlers } from './recipes.js'
import { registerHandlers } from './register.js'
import { rollPaperHandlers } from './roll-paper.js'
import { rollsHandlers } from './rolls.js'
import { runsHandlers } from './runs.js'
import { shelfHandlers } from './shelf.js'
import { shelfPaperHandlers } from './shelf-paper.js'
import { timesHandlers } from './times.js'

/** One handler for every route of the table; a route without one does not compile. */
export const handlers: Handlers<RouteName> = {
  ...timesHandlers,
  ...kitHandlers,
  ...recipesHandlers,
  ...runsHandlers,
  ...rollsHandlers,
  ...shelfHandlers,
  ...shelfPaperHandlers,
  ...rollPaperHandlers,
  ...registerHandlers,
  ...houseHandlers,
  ...peopleHandlers,
}
