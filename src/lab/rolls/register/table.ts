import { ok, type Result } from '../../../kernel/index.js'
import type { RollRegister } from '../../../wire/index.js'
import { type Cell, filmCells, number, orderCells, orNull, rollCells, text } from './cells.js'
import { type Row, readCsv, unreadable, writeCsv } from './csv.js'

type Film = RollRegister['films'][number]
type Order = RollRegister['orders'][number]
type Roll = RollRegister['rolls'][number]

/** The columns of what is not stated but noted of each kind of record. */
const numbering = { version: number, pattern: orNull(text) }
const counter = { kind: text, year: number, last: number }
const stated = { id: text, at: text, by: text }
const counted = { counted_out: orNull(number), counted_out_at: orNull(text), counted_out_by: orNull(text) }
const roll = {
  id: text,
  number: text,
  year: number,
  n: number,
  twin: orNull(number),
  order_id: orNull(text),
  at: text,
  by: text,
}
const step = {
  id: text,
  roll_id: text,
  at: text,
  by: text,
  state: orNull(text),
  run_id: orNull(text),
  hook: text,
  reason: text,
  batch_id: orNull(text),
  retracts: orNull(text),
}

/** All columns, first those that say what a row is. */
const COLUMNS: readonly string[] = [
  ...new Set(
    ['record', numbering, counter, roll, rollCells, step, orderCells, counted, filmCells].flatMap((part) =>
      typeof part === 'string' ? part : Object.keys(part),
    ),
  ),
]

type Fields = Readonly<Record<string, unknown>>
type Cells = Readonly<Record<string, Cell>>

/** A row of the kind `record`: the fields in their columns, the others empty. */
function row(record: string, fields: Fields, cells: Cells): string[] {
  return COLUMNS.map((column) => {
    if (column === 'record') return record
    const cell = cells[column]
    return cell === undefined ? '' : cell.write(fields[column] as never)
  })
}

/** The register as one table: a row for each film, order, roll and step of a roll. */
export function registerTable({ version, pattern, counters, films, orders, rolls }: RollRegister): string {
  return writeCsv([
    COLUMNS,
    row('numbering', { version, pattern }, numbering),
    ...counters.map((one) => row('counter', one, counter)),
    ...films.map((film) => row('film', { ...film.statement, ...head(film) }, { ...filmCells, ...stated })),
    ...orders.map((order) => row('order', orderFields(order), { ...orderCells, ...stated, ...counted })),
    ...rolls.flatMap((one) => [
      row('roll', { ...rollFields(one), state: stateOf(one) }, { ...rollCells, ...roll, state: text }),
      ...one.steps.map((taken) => row('step', { ...taken, roll_id: one.id }, step)),
    ]),
  ])
}

const head = ({ id, saved_at, saved_by }: Film | Order): Fields => ({ id, at: saved_at, by: saved_by })

const orderFields = (order: Order): Fields => ({
  ...order.statement,
  ...head(order),
  counted_out: order.counted_out?.count ?? null,
  counted_out_at: order.counted_out?.at ?? null,
  counted_out_by: order.counted_out?.by ?? null,
})

const rollFields = ({ statement, taken_in_at, taken_in_by, ...noted }: Roll): Fields => ({
  ...statement,
  ...noted,
  at: taken_in_at,
  by: taken_in_by,
})

/** Where its steps leave a roll: for whoever looks at the table, since reading it the steps say that. */
function stateOf({ steps }: Roll): string {
  const retracted = new Set(steps.map(({ retracts }) => retracts))
  return steps.findLast(({ id, state }) => state !== null && !retracted.has(id))?.state ?? 'taken-in'
}

/** What was read from a table: the register, its shape not looked at yet, and the lines its parts stand on. */
export interface ReadTable {
  readonly register: Readonly<Record<'films' | 'orders' | 'rolls' | 'counters', readonly unknown[]>> & Fields
  readonly lines: Readonly<Record<string, readonly number[]>>
}

interface Gathered {
  register: Record<'films' | 'orders' | 'rolls' | 'counters', unknown[]> & Record<string, unknown>
  lines: Record<'films' | 'orders' | 'rolls' | 'counters', number[]>
  steps: Map<string, unknown[]>
}

/** Reads such a table back. Columns may stand in any order, and further ones are passed over. */
export function readTable(table: string): Result<ReadTable> {
  const rows = readCsv(table)
  if (!rows.ok) return rows
  const [heading, ...others] = rows.value
  if (heading?.cells.includes('record') !== true) return unreadable(1, 'there is no column “record”')
  const gathered: Gathered = {
    register: { register: 'rolls', version: undefined, pattern: null, counters: [], films: [], orders: [], rolls: [] },
    lines: { counters: [], films: [], orders: [], rolls: [] },
    steps: new Map(),
  }
  for (const one of others) {
    if (one.cells.every((cell) => cell === '')) continue
    if (one.cells.length !== heading.cells.length)
      return unreadable(one.line, `it has ${one.cells.length} cells and the heading has ${heading.cells.length}`)
    const taken = take(gathered, one, (column) => one.cells[heading.cells.indexOf(column)] ?? '')
    if (!taken.ok) return taken
  }
  return ok({ register: gathered.register, lines: gathered.lines })
}

type At = (column: string) => string

/** The fields that stand in the columns of `cells`; one that was left out is no field. */
const fieldsOf = (cells: Cells, at: At): Fields =>
  Object.fromEntries(
    Object.entries(cells).flatMap(([column, cell]) => {
      const value = cell.read(at(column))
      return value === undefined ? [] : [[column, value] as const]
    }),
  )

function take({ register, lines, steps }: Gathered, { line }: Row, at: At): Result<null> {
  const put = (list: keyof Gathered['lines'], record: Fields) => {
    register[list].push(record)
    lines[list].push(line)
    return ok(null)
  }
  switch (at('record')) {
    case 'numbering':
      Object.assign(register, fieldsOf(numbering, at))
      return ok(null)
    case 'counter':
      return put('counters', fieldsOf(counter, at))
    case 'film':
      return put('films', { ...savedFields(at), statement: fieldsOf(filmCells, at) })
    case 'order':
      return put('orders', {
        ...savedFields(at),
        statement: fieldsOf(orderCells, at),
        counted_out: countedOut(fieldsOf(counted, at)),
      })
    case 'roll': {
      const { at: taken_in_at, by: taken_in_by, ...noted } = fieldsOf(roll, at)
      const taken: unknown[] = []
      steps.set(at('id'), taken)
      return put('rolls', { ...noted, taken_in_at, taken_in_by, statement: fieldsOf(rollCells, at), steps: taken })
    }
    case 'step': {
      const { roll_id: _, ...noted } = fieldsOf(step, at)
      const of = steps.get(at('roll_id'))
      if (of === undefined) return unreadable(line, 'this step belongs to no roll above it')
      of.push(noted)
      return ok(null)
    }
    default:
      return unreadable(line, `“${at('record')}” is no kind of record`)
  }
}

function savedFields(at: At): Fields {
  const { id, at: saved_at, by: saved_by } = fieldsOf(stated, at)
  return { id, saved_at, saved_by }
}

const countedOut = ({ counted_out, counted_out_at, counted_out_by }: Fields): Fields | null =>
  counted_out === null ? null : { count: counted_out, at: counted_out_at, by: counted_out_by }
