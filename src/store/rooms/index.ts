import type { Rooms } from '../../lab/index.js'
import type { Db } from '../schema.js'
import { feedRoom } from './feed.js'
import { houseRoom } from './house.js'
import { kitRoom } from './kit.js'
import { ordersRoom } from './orders.js'
import { peopleRoom } from './people.js'
import { recipesRoom } from './recipes.js'
import { rollsRoom } from './rolls.js'
import { runsRoom } from './runs.js'
import { shelfRoom } from './shelf.js'
import { statementsRoom } from './statements.js'
import { timesRoom } from './times.js'

/** All rooms of one bench in one transaction. */
export const roomsOf = (db: Db, bench: string): Rooms => ({
  times: timesRoom(db, bench),
  kit: kitRoom(db, bench),
  recipes: recipesRoom(db, bench),
  runs: runsRoom(db, bench),
  rolls: rollsRoom(db, bench),
  orders: ordersRoom(db, bench),
  films: statementsRoom(db, bench, 'film'),
  vessels: statementsRoom(db, bench, 'vessel'),
  views: statementsRoom(db, bench, 'view'),
  products: statementsRoom(db, bench, 'product'),
  shelf: shelfRoom(db, bench),
  house: houseRoom(db),
  people: peopleRoom(db, bench),
  feed: feedRoom(db, bench),
})
