import type { FilmStatement, OrderStatement, RollStatement } from '../../../wire/index.js'

/**
 * How a value is written in a cell and read from one. What cannot be read is given on as it is: the shape of the
 * register says what is wrong with it.
 */
export interface Cell {
  readonly write: (value: never) => string
  /** `undefined` where the value is left out. */
  readonly read: (text: string) => unknown
}

type Treatment = RollStatement['treatment']

export const text: Cell = { write: (value: string) => value, read: (cell) => cell }
export const number: Cell = {
  write: (value: number) => String(value),
  read: (cell) => (cell.trim() === '' || Number.isNaN(Number(cell)) ? cell : Number(cell)),
}
/** An empty cell for what is not stated. */
export const orNull = (cell: Cell): Cell => ({
  write: (value) => (value === null ? '' : cell.write(value)),
  read: (written) => (written === '' ? null : cell.read(written)),
})

/** An empty cell for what is left out. */
const optional = (cell: Cell): Cell => ({
  write: (value) => (value === undefined ? '' : cell.write(value)),
  read: (written) => (written === '' ? undefined : cell.read(written)),
})

/** `found; infrared` */
const words: Cell = {
  write: (value: readonly string[]) => value.join('; '),
  read: (cell) => (cell === '' ? [] : cell.split('; ')),
}

/** `normal`, `index 800`, `contrast 0.62` */
const treatment: Cell = {
  write: (value: Treatment) => {
    if (value.as === 'normal') return 'normal'
    return value.as === 'index' ? `index ${value.index}` : `contrast ${value.contrast}`
  },
  read: (cell) => {
    const [as, figure] = cell.split(' ')
    return as === 'normal' || figure === undefined ? { as } : { as, [as as string]: number.read(figure) }
  },
}

/** What has parts of its own stands as JSON. */
const json: Cell = {
  write: (value) => JSON.stringify(value),
  read: (cell) => {
    try {
      return JSON.parse(cell)
    } catch {
      return cell
    }
  },
}

/** A cell for every field, so that one that is added later is not lost on the way. */
export type CellsOf<Statement> = { readonly [Field in keyof Required<Statement>]: Cell }

export const rollCells: CellsOf<RollStatement> = {
  film: text,
  process: text,
  format: text,
  frames: orNull(number),
  sheets: number,
  whose: orNull(text),
  exposure_index: orNull(number),
  treatment,
  exposed: orNull(text),
  expired_since: orNull(text),
  remarks: words,
  due: orNull(text),
  note: text,
}

export const orderCells: CellsOf<OrderStatement> = {
  person: text,
  contact: text,
  counted_in: number,
  due: orNull(text),
  deposit: text,
  agreed_on_loss: text,
  note: text,
}

export const filmCells: CellsOf<FilmStatement> = {
  name: text,
  process: text,
  tolerance: json,
  strips: optional(json),
  fixing: text,
  remarks: words,
  drying_s: orNull(number),
  keeping: text,
  note: text,
}
