import { ANYBODY, BENCH } from './roles.js'
import { IdParams, Nothing, Seen } from './schemas/common.js'
import * as films from './schemas/films.js'
import * as orders from './schemas/orders.js'
import * as rolls from './schemas/rolls.js'
import * as vessels from './schemas/vessels.js'

const read = { method: 'GET', roles: BENCH, writes: false } as const
const post = { method: 'POST', roles: BENCH, writes: true } as const
const put = { method: 'PUT', roles: BENCH, writes: true } as const
const del = { method: 'DELETE', roles: BENCH, writes: true } as const
const UNDO = 'Goes back to the state before the last change.'

const ofRolls = {
  findRolls: {
    ...post,
    writes: false,
    path: '/api/rolls/find',
    summary: 'Rolls by words, state, film, person and dates, newest number first, a page at a time.',
    body: rolls.FindRolls,
    answer: rolls.RollSummaries,
  },
  takeInRolls: {
    ...post,
    path: '/api/rolls',
    summary: 'Takes rolls in: each gets its number, all of them or none.',
    body: rolls.TakeInRolls,
    answer: rolls.RollRecords,
  },
  getRoll: {
    ...read,
    path: '/api/rolls/:id',
    summary: 'One roll with its way.',
    params: IdParams,
    answer: rolls.RollRecord,
  },
  rollByNumber: {
    ...read,
    path: '/api/rolls/by-number',
    summary: 'A roll by the number on its sticker.',
    query: rolls.ByNumber,
    answer: rolls.RollRecord,
  },
  correctRoll: {
    ...put,
    path: '/api/rolls/:id',
    summary: 'Corrects what is said of a roll; the old words stay on record.',
    params: IdParams,
    body: rolls.CorrectRoll,
    answer: rolls.RollRecord,
  },
  undoRoll: {
    ...post,
    path: '/api/rolls/:id/undo',
    summary: UNDO,
    params: IdParams,
    body: Seen,
    answer: rolls.RollRecord,
  },
  moveRolls: {
    ...post,
    path: '/api/rolls/move',
    summary: 'A step on the way for one roll or many: all of them or none.',
    body: rolls.MoveRolls,
    answer: rolls.RollBatch,
  },
  changeRolls: {
    ...post,
    path: '/api/rolls/change',
    summary: 'The same words changed on many rolls: all of them or none.',
    body: rolls.ChangeRolls,
    answer: rolls.RollBatch,
  },
  undoRollBatch: {
    ...post,
    path: '/api/roll-batches/:id/undo',
    summary: 'Takes back what was done to many rolls at once.',
    params: IdParams,
    body: Nothing,
    answer: rolls.RollBatch,
  },
  reserveNumbers: {
    ...post,
    path: '/api/roll-numbers/reserve',
    summary: 'Keeps numbers for this device, to give while it is away.',
    body: rolls.ReserveNumbers,
    answer: rolls.NumberBlock,
  },
  rollNumbering: {
    ...read,
    path: '/api/roll-numbers',
    summary: 'How rolls are numbered.',
    answer: rolls.NumberPattern,
  },
  changeNumbering: {
    ...put,
    path: '/api/roll-numbers',
    summary: 'Changes how further rolls are numbered.',
    body: rolls.NumberPattern,
    answer: rolls.NumberPattern,
  },
  listViews: { ...read, path: '/api/roll-views', summary: 'Searches that were saved.', answer: rolls.SavedViews },
  keepView: {
    ...post,
    path: '/api/roll-views',
    summary: 'Saves a search.',
    body: rolls.KeepView,
    answer: rolls.SavedView,
  },
  removeView: {
    ...del,
    path: '/api/roll-views/:id',
    summary: 'Removes a saved search.',
    params: IdParams,
    body: Seen,
    answer: rolls.SavedView,
  },
} as const

const ofOrders = {
  listOrders: { ...read, path: '/api/orders', summary: 'Orders, newest first.', answer: orders.OrderRecords },
  addOrder: {
    ...post,
    path: '/api/orders',
    summary: 'Notes an order.',
    body: orders.AddOrder,
    answer: orders.OrderRecord,
  },
  getOrder: {
    ...read,
    path: '/api/orders/:id',
    summary: 'One order with its rolls.',
    params: IdParams,
    answer: orders.OrderRecord,
  },
  correctOrder: {
    ...put,
    path: '/api/orders/:id',
    summary: 'Corrects an order.',
    params: IdParams,
    body: orders.CorrectOrder,
    answer: orders.OrderRecord,
  },
  removeOrder: {
    ...del,
    path: '/api/orders/:id',
    summary: 'Removes an order that has no rolls; undo brings it back.',
    params: IdParams,
    body: Seen,
    answer: orders.OrderRecord,
  },
  undoOrder: {
    ...post,
    path: '/api/orders/:id/undo',
    summary: UNDO,
    params: IdParams,
    body: Seen,
    answer: orders.OrderRecord,
  },
  handBack: {
    ...post,
    path: '/api/orders/:id/hand-back',
    summary: 'Hands an order back when the count is right.',
    params: IdParams,
    body: orders.HandBack,
    answer: orders.OrderRecord,
  },
  makeOrderLink: {
    ...post,
    path: '/api/orders/:id/links',
    summary: 'Makes a private link that shows how far the order is; its token is shown once.',
    params: IdParams,
    body: orders.MakeOrderLink,
    answer: orders.OrderLink,
  },
  revokeOrderLink: {
    ...post,
    path: '/api/order-links/:id/revoke',
    summary: 'Withdraws a link.',
    params: IdParams,
    body: Nothing,
    answer: orders.OrderRecord,
  },
  orderStanding: {
    ...read,
    path: '/api/order-links/:token',
    roles: ANYBODY,
    summary: 'How far the rolls of an order are, in words; nothing else.',
    params: orders.OrderToken,
    answer: orders.OrderStanding,
  },
} as const

const ofFilmsAndKit = {
  listFilms: { ...read, path: '/api/films', summary: 'Films and what is kept of each.', answer: films.FilmRecords },
  keepFilm: { ...post, path: '/api/films', summary: 'Keeps a film.', body: films.AddFilm, answer: films.FilmRecord },
  correctFilm: {
    ...put,
    path: '/api/films/:id',
    summary: 'Corrects what is kept of a film.',
    params: IdParams,
    body: films.CorrectFilm,
    answer: films.FilmRecord,
  },
  removeFilm: {
    ...del,
    path: '/api/films/:id',
    summary: 'Removes a film; undo brings it back.',
    params: IdParams,
    body: Seen,
    answer: films.FilmRecord,
  },
  undoFilm: {
    ...post,
    path: '/api/films/:id/undo',
    summary: UNDO,
    params: IdParams,
    body: Seen,
    answer: films.FilmRecord,
  },
  listVessels: {
    ...read,
    path: '/api/vessels',
    summary: 'Tanks, reels, graduates and syringes.',
    answer: vessels.VesselRecords,
  },
  keepVessel: {
    ...post,
    path: '/api/vessels',
    summary: 'Adds a tank, a reel, a graduate or a syringe.',
    body: vessels.AddVessel,
    answer: vessels.VesselRecord,
  },
  correctVessel: {
    ...put,
    path: '/api/vessels/:id',
    summary: 'Corrects what is said of it.',
    params: IdParams,
    body: vessels.CorrectVessel,
    answer: vessels.VesselRecord,
  },
  removeVessel: {
    ...del,
    path: '/api/vessels/:id',
    summary: 'Removes it; undo brings it back.',
    params: IdParams,
    body: Seen,
    answer: vessels.VesselRecord,
  },
  undoVessel: {
    ...post,
    path: '/api/vessels/:id/undo',
    summary: UNDO,
    params: IdParams,
    body: Seen,
    answer: vessels.VesselRecord,
  },
} as const

/** Routes of the rolls, whose they are, the films and the kit. */
export const routesOfRolls = { ...ofRolls, ...ofOrders, ...ofFilmsAndKit } as const
