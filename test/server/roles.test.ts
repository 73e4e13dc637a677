import { beforeAll, describe, expect, it } from 'vitest'
import { ROLES, type Role, type Route, type RouteName, routes } from '../../src/wire/index.js'
import { comparison, thermometer, time } from '../support/bench.js'
import { happened, listOfBaths, runPlan } from '../support/runs.js'
import { type Asked, expectRefusal, houses, PHONE, type Served } from '../support/server.js'

/**
 * Who may call what, written out once more apart from the route table, so that a route whose roles are changed
 * or forgotten is noticed here.
 */
const OWNER = ['owner']
const BENCH = ['owner', 'device']
const ANYBODY = ['owner', 'device', 'order-link', 'nobody']
const expected: Record<RouteName, readonly string[]> = {
  health: ANYBODY,
  today: BENCH,
  feed: BENCH,
  listTimes: BENCH,
  keepTimes: BENCH,
  getTime: BENCH,
  correctTime: BENCH,
  removeTime: BENCH,
  undoTime: BENCH,
  answerTime: BENCH,
  timeCard: BENCH,
  readTable: BENCH,
  listThermometers: BENCH,
  addThermometer: BENCH,
  correctThermometer: BENCH,
  removeThermometer: BENCH,
  undoThermometer: BENCH,
  checkThermometer: BENCH,
  withdrawCheck: BENCH,
  addClassSet: BENCH,
  listRecipes: BENCH,
  recipePaper: BENCH,
  keepRecipe: BENCH,
  correctRecipe: BENCH,
  removeRecipe: BENCH,
  undoRecipe: BENCH,
  listRuns: BENCH,
  planRun: BENCH,
  getRun: BENCH,
  runEvents: BENCH,
  addRunEvents: BENCH,
  followRun: BENCH,
  abandonRun: BENCH,
  judgeRun: BENCH,
  runSheet: BENCH,
  runRecord: BENCH,
  findRolls: BENCH,
  takeInRolls: BENCH,
  getRoll: BENCH,
  rollByNumber: BENCH,
  correctRoll: BENCH,
  undoRoll: BENCH,
  moveRolls: BENCH,
  changeRolls: BENCH,
  undoRollBatch: BENCH,
  reserveNumbers: BENCH,
  rollNumbering: BENCH,
  changeNumbering: BENCH,
  listViews: BENCH,
  keepView: BENCH,
  removeView: BENCH,
  listOrders: BENCH,
  addOrder: BENCH,
  getOrder: BENCH,
  correctOrder: BENCH,
  removeOrder: BENCH,
  undoOrder: BENCH,
  handBack: BENCH,
  makeOrderLink: BENCH,
  revokeOrderLink: BENCH,
  orderStanding: ANYBODY,
  rollStickers: BENCH,
  orderSlip: BENCH,
  exportRegister: BENCH,
  exportRegisterTable: BENCH,
  importRegister: OWNER,
  listFilms: BENCH,
  keepFilm: BENCH,
  correctFilm: BENCH,
  removeFilm: BENCH,
  undoFilm: BENCH,
  listVessels: BENCH,
  keepVessel: BENCH,
  correctVessel: BENCH,
  removeVessel: BENCH,
  undoVessel: BENCH,
  listProducts: BENCH,
  startingProducts: BENCH,
  keepProduct: BENCH,
  correctProduct: BENCH,
  removeProduct: BENCH,
  undoProduct: BENCH,
  shelf: BENCH,
  addContainer: BENCH,
  correctContainer: BENCH,
  removeContainer: BENCH,
  undoContainer: BENCH,
  findLots: BENCH,
  getLot: BENCH,
  lotByCode: BENCH,
  finishMix: BENCH,
  useBath: BENCH,
  testBath: BENCH,
  stationBath: BENCH,
  movePortion: BENCH,
  measureContents: BENCH,
  discard: BENCH,
  handOver: BENCH,
  takeBack: BENCH,
  pairOfBaths: BENCH,
  lotLabels: BENCH,
  handOverRecord: BENCH,
  wasteLog: BENCH,
  rotateBaths: BENCH,
  washFromBottle: BENCH,
  costOfRun: BENCH,
  getBench: BENCH,
  changeSettings: BENCH,
  openDemo: BENCH,
  removeDemo: BENCH,
  backup: OWNER,
  restore: OWNER,
  newPairingCode: OWNER,
  pair: ANYBODY,
  listDevices: OWNER,
  removeDevice: OWNER,
}

const UNKNOWN = '0190d1c2-0000-7000-8000-000000000000'
const seen = { seen_revision: 1 }

const ROLL = { film: 'Tarn 100', process: 'black-and-white', format: '135' }
const ORDER = { person: 'Ida', counted_in: 2 }
const FILM = { name: 'Tarn 100', process: 'black-and-white' }
const FIXER = { name: 'Fixer', role: 'fixer', use: 'reusable' }
const BOTTLE = { kind: 'bottle', name: 'Brown 1', holds_ml: 1000 }
const GRADUATE = { kind: 'graduate', name: 'Small', holds_ml: 100, marked_every_ml: 1 }

/** A body that the schema of the route takes; whether the use case then likes it is not asked here. */
const bodies: Partial<Record<RouteName, unknown>> = {
  keepTimes: { times: [time()] },
  correctTime: { ...seen, statement: time() },
  removeTime: seen,
  undoTime: seen,
  readTable: { text: '20 °C 9:30' },
  addThermometer: thermometer(),
  correctThermometer: { ...seen, statement: thermometer() },
  removeThermometer: seen,
  undoThermometer: seen,
  checkThermometer: comparison(20.4, 20),
  addClassSet: { trusted_id: null, readings: [] },
  keepRecipe: { statement: listOfBaths() },
  correctRecipe: { ...seen, statement: listOfBaths() },
  removeRecipe: seen,
  undoRecipe: seen,
  planRun: runPlan(),
  addRunEvents: { events: [happened('started', 1)] },
  abandonRun: { reason: 'no film' },
  judgeRun: { tank: 'A', density: 'right' },
  findRolls: {},
  takeInRolls: { rolls: [{ statement: ROLL }] },
  correctRoll: { ...seen, statement: ROLL },
  undoRoll: seen,
  moveRolls: { roll_ids: [UNKNOWN], state: 'hung' },
  changeRolls: { roll_ids: [UNKNOWN], change: { whose: 'Ida' } },
  reserveNumbers: { count: 3 },
  changeNumbering: { pattern: '{year}-{n4}' },
  keepView: { name: 'Mine', look: {} },
  removeView: seen,
  addOrder: ORDER,
  correctOrder: { ...seen, statement: ORDER },
  removeOrder: seen,
  undoOrder: seen,
  handBack: { counted_out: 1 },
  importRegister: { text: 'no register' },
  keepFilm: FILM,
  correctFilm: { ...seen, statement: FILM },
  removeFilm: seen,
  undoFilm: seen,
  keepVessel: { statement: GRADUATE },
  correctVessel: { ...seen, statement: GRADUATE },
  removeVessel: seen,
  undoVessel: seen,
  keepProduct: FIXER,
  correctProduct: { ...seen, statement: FIXER },
  removeProduct: seen,
  undoProduct: seen,
  addContainer: { statement: BOTTLE },
  correctContainer: { ...seen, statement: BOTTLE },
  removeContainer: seen,
  undoContainer: seen,
  finishMix: { product_id: UNKNOWN, into: [{ container_id: UNKNOWN, ml: 1000 }] },
  useBath: { container_id: UNKNOWN, poured: 300 },
  testBath: { container_id: UNKNOWN, test: { of: 'ph', ph: 5 } },
  stationBath: { container_id: UNKNOWN, station: 'first' },
  movePortion: { from_id: UNKNOWN, into_id: UNKNOWN },
  measureContents: { container_id: UNKNOWN, found: 1, seen: 2 },
  discard: { container_id: UNKNOWN, where: 'spilt' },
  handOver: { jug_id: UNKNOWN, to: 'The town' },
  pairOfBaths: { first_id: UNKNOWN, second_id: UNKNOWN },
  rotateBaths: { first_id: UNKNOWN, second_id: UNKNOWN, jug_id: UNKNOWN },
  washFromBottle: { wash: { steps: [{ kind: 'change', volume_ml: 300, time_s: 180 }] } },
  changeSettings: { name: 'Cellar', units: 'metric', paper: 'A4', zone: 'UTC' },
  restore: 'not a backup\n',
  pair: { code: 'WRONG', name: 'Phone' },
}

const queries: Partial<Record<RouteName, string>> = {
  answerTime: '?at_c=21',
  rollByNumber: '?number=2026-0001',
  lotByCode: '?code=26-001',
  lotLabels: '?codes=26-001',
}

const askedFor = (name: RouteName): Asked => {
  const route: Route = routes[name]
  const url = route.path.replace(':id', UNKNOWN).replace(':token', UNKNOWN) + (queries[name] ?? '')
  const body = bodies[name] ?? (route.body ? {} : undefined)
  const headers: Record<string, string> = route.bodyFile === undefined ? {} : { 'content-type': route.bodyFile }
  return { method: route.method, url, headers, ...(body === undefined ? {} : { body }) }
}

/** Each kind of caller, as it arrives at the door. An order link gives no cookie that these routes know. */
let served: Served
const callers: Record<Role, () => Promise<Partial<Asked>>> = {
  owner: async () => ({}),
  device: async () => (await served.pair()).as,
  'order-link': async () => ({ from: PHONE, cookies: { wetside_order: UNKNOWN } }),
  nobody: async () => ({ from: PHONE }),
}

const serve = houses()
beforeAll(async () => {
  served = await serve()
})

const isRegistered = (method: string, url: string) => served.app.hasRoute({ method: method as 'GET', url })

describe('who may call what', () => {
  it('every route of the table is served, and nothing else changes anything', async () => {
    for (const route of Object.values(routes) as Route[]) expect(isRegistered(route.method, route.path)).toBe(true)
    const known = new Set((Object.values(routes) as Route[]).map((route) => `${route.method} ${route.path}`))
    const described = Object.entries(served.app.swagger().paths ?? {}).flatMap(([path, methods]) =>
      Object.keys(methods as object).map((method) => `${method.toUpperCase()} ${path.replace(/\{(\w+)\}/, ':$1')}`),
    )
    expect(described.sort()).toEqual([...known].sort())
  })

  it('every route says the same of its roles here and in the table', () => {
    expect(Object.keys(expected).sort()).toEqual(Object.keys(routes).sort())
    for (const [name, roles] of Object.entries(expected)) expect(routes[name as RouteName].roles, name).toEqual(roles)
  })

  describe.each(ROLES)('%s', (role) => {
    let caller: Partial<Asked>
    beforeAll(async () => {
      caller = await callers[role]()
    })
    // The feed of somebody who may follow it does not end; it has its own tests.
    const names = (Object.keys(expected) as RouteName[]).filter(
      (name) => name !== 'feed' || !expected[name].includes(role),
    )
    const may = (name: RouteName) => expected[name].includes(role)
    it.each(names)('at %s', async (name) => {
      const answer = await served.ask({ ...askedFor(name), ...caller })
      if (may(name)) expect([401, 500]).not.toContain(answer.status)
      else expectRefusal(answer, role === 'device' ? 'request.not-allowed' : 'request.who')
    })

    it('changes nothing where it is refused', async () => {
      const before = await served.everything()
      for (const name of names) if (!may(name)) await served.ask({ ...askedFor(name), ...caller })
      expect(await served.everything()).toEqual(before)
    })
  })

  it('a stranger is turned away before the body is judged', async () => {
    expectRefusal(
      await served.ask({ method: 'POST', url: '/api/times', body: { wrong: 1 }, from: PHONE }),
      'request.who',
    )
  })
})

describe('the owner', () => {
  it.each(['127.0.0.1', '127.9.9.9', '::1', '::ffff:127.0.0.1'])('is a caller from %s', async (from) => {
    expect((await served.ask({ url: '/api/bench', from })).json.role).toBe('owner')
  })

  it.each(['192.168.1.5', '10.0.0.1', '128.0.0.1', '::ffff:192.168.1.5', 'fe80::1', '1127.0.0.1'])(
    'is not a caller from %s',
    async (from) => expectRefusal(await served.ask({ url: '/api/backup', from }), 'request.who'),
  )

  it.each(['forwarded', 'via', 'x-forwarded-for', 'x-forwarded-host', 'x-forwarded-proto', 'x-real-ip'])(
    'is nobody whose call a proxy passed on (%s)',
    async (header) =>
      expectRefusal(await served.ask({ url: '/api/backup', headers: { [header]: '127.0.0.1' } }), 'request.who'),
  )

  it('cannot be claimed by a header from elsewhere', async () => {
    const headers = { 'x-forwarded-for': '127.0.0.1', forwarded: 'for=127.0.0.1' }
    expectRefusal(await served.ask({ url: '/api/backup', from: PHONE, headers }), 'request.who')
  })

  it('is nobody where loopback does not count', async () => {
    const proxied = await serve({ loopbackIsOwner: false })
    expectRefusal(await proxied.ask({ url: '/api/today' }), 'request.who')
  })
})
