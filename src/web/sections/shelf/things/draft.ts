import {
  type Grams,
  type Millilitres,
  type Reading,
  readDay,
  readMass,
  readVolume,
  type UnitSystem,
  writeMass,
  writePartialDay,
  writeVolume,
} from '../../../../kernel/index.js'
import type { ContainerStatement, ContainerStatementInput } from '../../../shared/api/index.js'
import { readPrice, writePrice } from './facts.js'

export type Kind = ContainerStatement['kind']
type Shape = Extract<ContainerStatement, { kind: 'bottle' }>['shape']

/** A package, bottle or jug as it is typed. */
export interface ThingDraft {
  readonly name: string
  readonly shape: Shape
  readonly amount: string
  readonly product: string
  readonly part: string
  readonly unit: 'ml' | 'g'
  readonly bought: string
  readonly useBy: string
  readonly opened: string
  readonly price: string
  readonly note: string
}

export const EMPTY_THING: ThingDraft = {
  name: '',
  shape: 'stoppered',
  amount: '',
  product: '',
  part: '',
  unit: 'ml',
  bought: '',
  useBy: '',
  opened: '',
  price: '',
  note: '',
}

const day = (value: string | null) => (value === null ? '' : writePartialDay(value))

/** What is kept, as it would be typed. */
export function draftOf(statement: ContainerStatement, units: UnitSystem): ThingDraft {
  const { name, note } = statement
  if (statement.kind === 'package')
    return {
      ...EMPTY_THING,
      name,
      note,
      amount:
        statement.unit === 'ml'
          ? writeVolume(statement.full as Millilitres, units)
          : writeMass(statement.full as Grams, units),
      product: statement.product_id,
      part: statement.part,
      unit: statement.unit,
      bought: day(statement.bought),
      useBy: day(statement.use_by),
      opened: day(statement.opened),
      price: statement.price === null ? '' : writePrice(statement.price).replace('\u202f', ' '),
    }
  const amount = writeVolume(statement.holds_ml as Millilitres, units)
  return statement.kind === 'bottle'
    ? { ...EMPTY_THING, name, note, amount, shape: statement.shape }
    : { ...EMPTY_THING, name, note, amount, opened: day(statement.opened) }
}

/** How it is read; `statement` is null while something is missing or wrong. */
export interface ThingReading {
  readonly amount: Reading<number> | null
  readonly days: Readonly<Record<'bought' | 'useBy' | 'opened', Reading<string> | null>>
  readonly price: ReturnType<typeof readPrice>
  readonly statement: ContainerStatementInput | null
}

export function readThing(kind: Kind, draft: ThingDraft, units: UnitSystem, today: string): ThingReading {
  const grams = kind === 'package' && draft.unit === 'g'
  const amount =
    draft.amount.trim() === '' ? null : (grams ? readMass : readVolume)(draft.amount, { system: units } as never)
  const on = (text: string) => (text.trim() === '' ? null : readDay(text, { today }))
  const days = { bought: on(draft.bought), useBy: on(draft.useBy), opened: on(draft.opened) }
  const price = readPrice(draft.price)
  const reading = { amount, days, price }
  const wrongDay = Object.values(days).some((one) => one !== null && one.kind !== 'read')
  if (amount?.kind !== 'read' || wrongDay) return { ...reading, statement: null }
  if (kind === 'package' && (draft.product === '' || (draft.price.trim() !== '' && price === null)))
    return { ...reading, statement: null }
  if (kind !== 'package' && draft.name.trim() === '') return { ...reading, statement: null }
  return { ...reading, statement: statementOf(kind, draft, reading, amount.value) }
}

const dayOf = (reading: Reading<string> | null) => (reading?.kind === 'read' ? reading.value : null)

function statementOf(
  kind: Kind,
  draft: ThingDraft,
  { days, price }: Pick<ThingReading, 'days' | 'price'>,
  amount: number,
): ContainerStatementInput {
  const name = draft.name.trim()
  const { note } = draft
  if (kind === 'bottle') return { kind, name, note, shape: draft.shape, holds_ml: amount }
  if (kind === 'jug') return { kind, name, note, holds_ml: amount, opened: dayOf(days.opened) }
  return {
    kind,
    name,
    note,
    product_id: draft.product,
    part: draft.part.trim(),
    unit: draft.unit,
    full: amount,
    bought: dayOf(days.bought),
    use_by: dayOf(days.useBy),
    opened: dayOf(days.opened),
    price,
  }
}
