import { ok, type Result } from '../../kernel/index.js'
import { findRolls, getOrder, listOrders, moveRolls, rollByNumber } from '../../lab/index.js'
import type {
  FindRolls,
  MoveRolls,
  OrderRecord,
  RollBatch,
  RollRecord,
  RollSummaries,
  RollSummary,
} from '../../wire/index.js'
import { say, writeDay, writeTimeOfDay } from '../../words/index.js'
import { tell } from '../answer.js'
import { jsonAs } from '../asked.js'
import { atBench } from '../data/at-bench.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'

export interface FindOptions extends Common {
  readonly state?: string
  readonly film?: string
  readonly whose?: string
  readonly dueBy?: string
  readonly order?: string
  readonly most?: string
}

const lineOf = (roll: RollSummary, options: Common): string => say('roll.line', roll, unitsOf(options))

/** Prints rolls by words, state, film, person, day and order, newest number first. */
export async function find(words: readonly string[], options: FindOptions, output: Output): Promise<number> {
  const asked = await search(words, options)
  if (!asked.ok) return refuse(output, asked.problem, options)
  const found = await atBench<RollSummaries>({
    path: '/api/rolls/find',
    body: asked.value,
    writes: false,
    here: (context, rooms) => findRolls(context, rooms, asked.value),
  })
  if (!found.ok) return refuse(output, found.problem, options)
  const view = found.value
  const count = say('roll.found', { found: view.found, shown: view.rolls.length }, unitsOf(options))
  return print(view, [...view.rolls.map((roll) => lineOf(roll, options)), count], options, output)
}

async function search(words: readonly string[], options: FindOptions): Promise<Result<FindRolls>> {
  const { schemas } = await import('../../wire/index.js')
  const look = {
    words: words.join(' '),
    state: options.state?.split(',') ?? [],
    film: options.film ?? '',
    whose: options.whose ?? '',
    due_by: options.dueBy ?? null,
    order_id: options.order ?? null,
  }
  const asked = { look, ...(options.most === undefined ? {} : { most: Number(options.most) }) }
  return jsonAs(JSON.stringify(asked), 'the search', schemas.FindRolls) as Result<FindRolls>
}

const print = (view: object, lines: readonly string[], options: Common, output: Output): number =>
  tell({ view, lines, working: () => [] }, options, output)

const byNumber = (number: string) =>
  atBench<RollRecord>({
    path: `/api/rolls/by-number?number=${encodeURIComponent(number)}`,
    writes: false,
    here: (_, rooms) => rollByNumber(rooms, number),
  })

/** Prints one roll with its way, by the number on its sticker or what the sticker's code holds. */
export async function show(number: string, options: Common, output: Output): Promise<number> {
  const found = await byNumber(number)
  if (!found.ok) return refuse(output, found.problem, options)
  const roll = found.value
  const steps = roll.history.map((step) => say('roll.step', { ...step, at: moment(step.at) }, unitsOf(options)))
  const taken = say('roll.step', { ...NOTHING, at: moment(roll.taken_in_at), state: 'taken-in' }, unitsOf(options))
  return print(roll, [lineOf(roll, options), taken, ...steps], options, output)
}

const NOTHING = { hook: '', reason: '', retracted: false }
const moment = (at: string): string =>
  `${writeDay(Date.parse(at), 'UTC')}, ${writeTimeOfDay(Date.parse(at), 'UTC')} UTC`

/** The rolls of these numbers, or the first number that none has. */
export async function rollsOf(numbers: readonly string[]): Promise<Result<RollRecord[]>> {
  const rolls: RollRecord[] = []
  for (const number of numbers) {
    const found = await byNumber(number)
    if (!found.ok) return found
    rolls.push(found.value)
  }
  return ok(rolls)
}

export interface MoveOptions extends Common {
  readonly reason?: string
  readonly hook?: string
  readonly run?: string
  readonly at?: string
}

/** Moves rolls a step on: all of them or none. */
export async function move(
  state: string,
  numbers: readonly string[],
  options: MoveOptions,
  output: Output,
): Promise<number> {
  const rolls = await rollsOf(numbers)
  if (!rolls.ok) return refuse(output, rolls.problem, options)
  const { schemas } = await import('../../wire/index.js')
  const asked = {
    roll_ids: rolls.value.map(({ id }) => id),
    state,
    hook: options.hook ?? '',
    reason: options.reason ?? '',
    run_id: options.run ?? null,
    at: options.at ?? null,
  }
  const request = jsonAs(JSON.stringify(asked), 'the step', schemas.MoveRolls) as Result<MoveRolls>
  if (!request.ok) return refuse(output, request.problem, options)
  const moved = await atBench<RollBatch>({
    path: '/api/rolls/move',
    body: request.value,
    writes: true,
    here: (context, rooms) => moveRolls(context, rooms, request.value),
  })
  if (!moved.ok) return refuse(output, moved.problem, options)
  return print(
    moved.value,
    moved.value.rolls.map((roll) => lineOf(roll, options)),
    options,
    output,
  )
}

/** Prints orders, newest first, or one with its rolls. */
export async function orders(id: string | undefined, options: Common, output: Output): Promise<number> {
  if (id !== undefined) return oneOrder(id, options, output)
  const found = await atBench<{ orders: OrderRecord[] }>({
    path: '/api/orders',
    writes: false,
    here: async (_, rooms) => ok(await listOrders(rooms)),
  })
  if (!found.ok) return refuse(output, found.problem, options)
  return print(
    found.value,
    found.value.orders.map((order) => orderLine(order, options)),
    options,
    output,
  )
}

async function oneOrder(id: string, options: Common, output: Output): Promise<number> {
  const found = await atBench<OrderRecord>({
    path: `/api/orders/${encodeURIComponent(id)}`,
    writes: false,
    here: (_, rooms) => getOrder(rooms, id),
  })
  if (!found.ok) return refuse(output, found.problem, options)
  const lines = [orderLine(found.value, options), ...found.value.rolls.map((roll) => lineOf(roll, options))]
  return print(found.value, lines, options, output)
}

const orderLine = (order: OrderRecord, options: Common): string =>
  say('order.line', { ...order, here: order.rolls.length }, unitsOf(options))
