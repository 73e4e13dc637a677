import type { z } from 'zod'
import { ANYBODY, BENCH, OWNER, type Role } from './roles.js'
import { routesOfRegister } from './routes-of-register.js'
import { routesOfRollPaper } from './routes-of-roll-paper.js'
import { routesOfRolls } from './routes-of-rolls.js'
import { routesOfRuns } from './routes-of-runs.js'
import { routesOfShelf } from './routes-of-shelf.js'
import { routesOfShelfPaper } from './routes-of-shelf-paper.js'
import { IdParams, Nothing, Paper, Seen } from './schemas/common.js'
import * as house from './schemas/house.js'
import * as kit from './schemas/kit.js'
import * as people from './schemas/people.js'
import * as times from './schemas/times.js'

/** One route of the HTTP interface. The server, the OpenAPI page, the web client and the tests are made from these. */
export interface Route {
  readonly method: 'GET' | 'POST' | 'PUT' | 'DELETE'
  readonly path: string
  readonly roles: readonly Role[]
  /** Changes something kept; takes an Idempotency-Key header. */
  readonly writes: boolean
  readonly summary: string
  readonly params?: z.ZodObject
  readonly query?: z.ZodObject
  readonly body?: z.ZodType
  /** Media type of a body that is a file and comes in as a stream. */
  readonly bodyFile?: 'application/x-ndjson'
  /** Schema of the JSON answer, or the media type of another kind of answer. */
  readonly answer: z.ZodType | 'application/pdf' | 'text/csv' | 'application/x-ndjson' | 'text/event-stream'
  readonly bodyLimit?: number
}

const routesOf = <const T extends Record<string, Route>>(table: T): T => table
const read = { method: 'GET', roles: BENCH, writes: false } as const
const post = { method: 'POST', roles: BENCH, writes: true } as const
const put = { method: 'PUT', roles: BENCH, writes: true } as const
const del = { method: 'DELETE', roles: BENCH, writes: true } as const

export const routes = routesOf({
  health: {
    ...read,
    path: '/api/health',
    roles: ANYBODY,
    summary: 'Whether the server is ready.',
    answer: house.Health,
  },
  today: { ...read, path: '/api/today', summary: 'What is here and the next sensible step.', answer: house.TodayView },
  feed: {
    ...read,
    path: '/api/feed',
    summary: 'Live changes of the bench; replays after Last-Event-ID.',
    answer: 'text/event-stream',
  },

  listTimes: { ...read, path: '/api/times', summary: 'All developing times of the bench.', answer: times.TimeRecords },
  keepTimes: {
    ...post,
    path: '/api/times',
    summary: 'Keeps one or more developing times.',
    body: times.KeepTimes,
    answer: times.TimeRecords,
  },
  getTime: {
    ...read,
    path: '/api/times/:id',
    summary: 'One developing time.',
    params: IdParams,
    answer: times.TimeRecord,
  },
  correctTime: {
    ...put,
    path: '/api/times/:id',
    summary: 'Corrects a developing time; the old one stays on record.',
    params: IdParams,
    body: times.CorrectTime,
    answer: times.TimeRecord,
  },
  removeTime: {
    ...del,
    path: '/api/times/:id',
    summary: 'Removes a developing time; undo brings it back.',
    params: IdParams,
    body: Seen,
    answer: times.TimeRecord,
  },
  undoTime: {
    ...post,
    path: '/api/times/:id/undo',
    summary: 'Goes back to the state before the last change.',
    params: IdParams,
    body: Seen,
    answer: times.TimeRecord,
  },
  answerTime: {
    ...read,
    path: '/api/times/:id/answer',
    summary: 'The developing time at a temperature, with its factors and band.',
    params: IdParams,
    query: times.TimeQuery,
    answer: times.TimeAnswer,
  },
  timeCard: {
    ...read,
    path: '/api/times/:id/card.pdf',
    summary: 'The time card of a film, to print.',
    params: IdParams,
    query: times.TimeQuery.extend({ at_c: times.TimeQuery.shape.at_c.optional(), paper: Paper.optional() }),
    answer: 'application/pdf',
  },
  readTable: {
    method: 'POST',
    roles: BENCH,
    writes: false,
    path: '/api/times/read-table',
    summary: 'Reads a pasted table line by line; keeps nothing.',
    body: times.PastedText,
    answer: times.PastedReading,
  },

  listThermometers: {
    ...read,
    path: '/api/thermometers',
    summary: 'All thermometers with their checks.',
    answer: kit.ThermometerRecords,
  },
  addThermometer: {
    ...post,
    path: '/api/thermometers',
    summary: 'Adds a thermometer.',
    body: kit.AddThermometer,
    answer: kit.ThermometerRecord,
  },
  correctThermometer: {
    ...put,
    path: '/api/thermometers/:id',
    summary: 'Corrects what is said of a thermometer.',
    params: IdParams,
    body: kit.CorrectThermometer,
    answer: kit.ThermometerRecord,
  },
  removeThermometer: {
    ...del,
    path: '/api/thermometers/:id',
    summary: 'Removes a thermometer; undo brings it back.',
    params: IdParams,
    body: Seen,
    answer: kit.ThermometerRecord,
  },
  undoThermometer: {
    ...post,
    path: '/api/thermometers/:id/undo',
    summary: 'Goes back to the state before the last change.',
    params: IdParams,
    body: Seen,
    answer: kit.ThermometerRecord,
  },
  checkThermometer: {
    ...post,
    path: '/api/thermometers/:id/checks',
    summary: 'Notes one check of a thermometer.',
    params: IdParams,
    body: kit.AddCheck,
    answer: kit.ThermometerRecord,
  },
  withdrawCheck: {
    ...post,
    path: '/api/checks/:id/withdraw',
    summary: 'Withdraws a check that was wrong.',
    params: IdParams,
    body: Nothing,
    answer: kit.ThermometerRecord,
  },
  addClassSet: {
    ...post,
    path: '/api/class-sets',
    summary: 'Several thermometers in one beaker: offsets for all.',
    body: kit.AddClassSet,
    answer: kit.ClassSetResult,
  },

  ...routesOfRuns,
  ...routesOfRolls,
  ...routesOfShelf,
  ...routesOfRollPaper,
  ...routesOfShelfPaper,
  ...routesOfRegister,

  getBench: {
    ...read,
    path: '/api/bench',
    summary: 'The bench, its settings and who is asking.',
    answer: house.BenchView,
  },
  changeSettings: {
    ...put,
    path: '/api/bench',
    summary: 'Changes the settings of the bench.',
    body: house.Settings,
    answer: house.BenchView,
  },
  openDemo: {
    ...post,
    path: '/api/demo',
    summary: 'Opens the demo bench, all invented.',
    body: Nothing,
    answer: house.DemoResult,
  },
  removeDemo: {
    ...del,
    path: '/api/demo',
    summary: 'Removes the demo bench and everything on it.',
    body: Nothing,
    answer: house.DemoResult,
  },
  backup: {
    ...read,
    path: '/api/backup',
    roles: OWNER,
    summary: 'Everything kept, as one file.',
    answer: 'application/x-ndjson',
  },
  restore: {
    method: 'POST',
    path: '/api/restore',
    roles: OWNER,
    writes: true,
    summary: 'Puts a backup in place of everything kept.',
    bodyFile: 'application/x-ndjson',
    answer: house.RestoreResult,
    bodyLimit: 256 * 1024 * 1024,
  },

  newPairingCode: {
    ...post,
    path: '/api/pairing-codes',
    roles: OWNER,
    summary: 'Makes a one-time code to pair a phone.',
    body: Nothing,
    answer: people.PairingCode,
  },
  pair: {
    ...post,
    path: '/api/pair',
    roles: ANYBODY,
    summary: 'Pairs this device by a one-time code.',
    body: people.Pair,
    answer: people.DeviceView,
  },
  listDevices: { ...read, path: '/api/devices', roles: OWNER, summary: 'The paired devices.', answer: people.Devices },
  removeDevice: {
    ...del,
    path: '/api/devices/:id',
    roles: OWNER,
    summary: 'Ends the pairing of a device.',
    params: IdParams,
    body: Nothing,
    answer: people.Devices,
  },
})

export type RouteName = keyof typeof routes
export type BodyOf<N extends RouteName> = (typeof routes)[N] extends { body: infer B extends z.ZodType }
  ? z.output<B>
  : undefined
export type ParamsOf<N extends RouteName> = (typeof routes)[N] extends { params: infer P extends z.ZodType }
  ? z.output<P>
  : undefined
export type QueryOf<N extends RouteName> = (typeof routes)[N] extends { query: infer Q extends z.ZodType }
  ? z.output<Q>
  : undefined
export type AnswerOf<N extends RouteName> = (typeof routes)[N]['answer'] extends infer A extends z.ZodType
  ? z.output<A>
  : never
