import { readNumber, readRatio, writeRatio } from '../../../../kernel/index.js'
import { say, type Writer } from '../../../../words/index.js'
import type { ProductRecord, ProductStatementInput, StartingProducts } from '../../../shared/api/index.js'

type Statement = StartingProducts['products'][number]

/** Figures that a label may give; the words of the form and the field of the statement. */
export const FIGURES = [
  ['rolls_per_litre', 'Rolls a litre', 'How many ordinary rolls a litre carries.'],
  ['floor_ml_per_roll', 'Least for a roll, in mL', 'Of concentrate or stock, whatever the volume.'],
  [
    'family_capacity',
    'Tabular and high-iodide film, as a part',
    'Of the count of ordinary film; empty is 0.6, assumed.',
  ],
  ['silver_limit_g_per_l', 'Silver it may hold, in g/L', 'Empty is what is usual for its salt.'],
  ['carried_out_ml_per_roll', 'Carried out by a roll, in mL', 'Empty is 20.'],
  ['replenish_ml_per_roll', 'Replenisher for a roll, in mL', ''],
  ['longer_percent_per_roll', 'Each roll lengthens the next time by, in per cent', ''],
] as const

/** Days that it keeps, by how it stands. */
export const KEEPS = [
  ['full', 'Full bottle, days'],
  ['half_full', 'Half-full bottle, days'],
  ['tank', 'Tank with a lid, days'],
  ['tray', 'Open tray, days'],
] as const

/** A product as it is typed. */
export interface ProductDraft {
  readonly name: string
  readonly role: Statement['role']
  readonly form: Statement['form']
  readonly use: Statement['use']
  readonly dilutions: string
  readonly parts: string
  readonly salt: '' | NonNullable<Statement['fixer']>['salt']
  readonly alkaline: boolean
  readonly acid: '' | NonNullable<Statement['stop']>['acid']
  readonly percent: string
  readonly figures: Readonly<Record<string, string>>
  readonly keeps: Readonly<Record<string, string>>
  readonly developerClass: NonNullable<Statement['coefficient_class']>
  readonly hazards: readonly Statement['hazards'][number][]
  readonly amounts: readonly string[]
  readonly origin: Statement['origin']
  readonly source: string
  readonly note: string
}

const text = (value: number | null | undefined): string => (value == null ? '' : String(value))

/** What is kept or begun with, as it would be typed. */
export function draftOf(said: Statement): ProductDraft {
  return {
    name: said.name,
    role: said.role,
    form: said.form,
    use: said.use,
    dilutions: said.dilutions.map((parts) => writeRatio({ parts })).join(', '),
    parts: said.package_parts.join(', '),
    salt: said.fixer?.salt ?? '',
    alkaline: said.fixer?.alkaline ?? false,
    acid: said.stop?.acid ?? '',
    percent: text(said.stop?.percent),
    figures: Object.fromEntries(FIGURES.map(([name]) => [name, text(said[name])])),
    keeps: Object.fromEntries(KEEPS.map(([name]) => [name, text(said.keeps[name])])),
    developerClass: said.coefficient_class ?? 'unknown',
    hazards: said.hazards,
    amounts: (said.formula?.additions ?? []).map(({ g_per_l, ml_per_l }) => text(g_per_l ?? ml_per_l)),
    origin: said.origin,
    source: said.source,
    note: said.note,
  }
}

/** Before anything is known. */
export const BLANK: ProductDraft = {
  name: '',
  role: 'fixer',
  form: 'liquid',
  use: 'reusable',
  dilutions: '',
  parts: '',
  salt: '',
  alkaline: false,
  acid: '',
  percent: '',
  figures: {},
  keeps: {},
  developerClass: 'unknown',
  hazards: [],
  amounts: [],
  origin: 'label',
  source: '',
  note: '',
}

/** How it is read: sentences by field, and the statement once nothing is wrong. */
export interface ProductReading {
  readonly troubles: Readonly<Record<string, string>>
  readonly statement: ProductStatementInput | null
}

export function readProduct(
  draft: ProductDraft,
  formula: ProductRecord['formula'],
  process: Statement['process'],
  writer: Writer,
): ProductReading {
  const troubles: Record<string, string> = {}
  const number = (field: string, typed: string | undefined): number | null => {
    if (typed === undefined || typed.trim() === '') return null
    const value = readNumber(typed.trim())
    if (value === undefined) troubles[field] = say('product.number-unread', { text: typed }, writer)
    return value ?? null
  }
  if (draft.name.trim() === '') troubles.name = say('bottle.missing', {}, writer)
  const dilutions = readDilutions(draft.dilutions, writer, troubles)
  const figures = Object.fromEntries(FIGURES.map(([name]) => [name, number(name, draft.figures[name])]))
  const keeps = Object.fromEntries(KEEPS.map(([name]) => [name, number(name, draft.keeps[name])]))
  const percent = number('percent', draft.percent)
  const additions = (formula?.additions ?? []).map((addition, place) => {
    const amount = number(`amount-${place}`, draft.amounts[place]) ?? 0
    return addition.ml_per_l === null ? { ...addition, g_per_l: amount } : { ...addition, ml_per_l: amount }
  })
  const statement: ProductStatementInput = {
    name: draft.name.trim(),
    role: draft.role,
    process,
    form: draft.form,
    use: draft.use,
    package_parts: draft.parts
      .split(/[,;]/)
      .map((part) => part.trim())
      .filter(Boolean),
    dilutions,
    fixer: draft.role === 'fixer' && draft.salt !== '' ? { salt: draft.salt, alkaline: draft.alkaline } : null,
    stop: draft.role === 'stop' && draft.acid !== '' && percent !== null ? { acid: draft.acid, percent } : null,
    ...figures,
    replenish_ml_per_roll: draft.use === 'replenished' ? (figures.replenish_ml_per_roll ?? null) : null,
    keeps,
    coefficient_class: draft.role === 'developer' ? draft.developerClass : null,
    hazards: [...draft.hazards],
    formula: formula === null ? null : { ...formula, additions },
    origin: draft.origin,
    source: draft.source.trim(),
    note: draft.note,
  }
  return { troubles, statement: Object.keys(troubles).length === 0 ? statement : null }
}

function readDilutions(typed: string, writer: Writer, troubles: Record<string, string>): number[][] {
  const dilutions: number[][] = []
  for (const part of typed.split(/[,;]| or /).filter((one) => one.trim() !== '')) {
    const reading = readRatio(part)
    if (reading.kind === 'read') dilutions.push([...reading.value.parts])
    else
      troubles.dilutions ??=
        reading.kind === 'asked'
          ? reading.problem.sentence
          : say('product.dilution-unread', { text: part.trim() }, writer)
  }
  return dilutions
}
