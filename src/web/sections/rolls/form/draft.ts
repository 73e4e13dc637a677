import type { Result } from '../../../../kernel/index.js'
import { writePartialDay } from '../../../../kernel/index.js'
import {
  type Known,
  readDue,
  readExpired,
  readExposed,
  readFormat,
  readIndex,
  rollOf,
  type TakenProcess,
  type TakenRemark,
  type TakenRoll,
  writeFormat,
} from '../../../../planning/index.js'
import type { RollSummary } from '../../../shared/api/index.js'

/** The form as it is typed: texts only, so that nothing half written is lost. */
export interface RollDraft {
  readonly film: string
  readonly format: string
  readonly index: string
  readonly wanted: string
  readonly exposed: string
  readonly expired: string
  readonly due: string
  readonly process: TakenProcess | ''
  readonly remarks: readonly TakenRemark[]
  readonly whose: string
  readonly note: string
}

export const EMPTY: RollDraft = {
  film: '',
  format: '',
  index: '',
  wanted: '',
  exposed: '',
  expired: '',
  due: '',
  process: '',
  remarks: [],
  whose: '',
  note: '',
}

/** A roll as it would be typed. */
export function draftOf(roll: RollSummary): RollDraft {
  const day = (value: string | null) => (value === null ? '' : writePartialDay(value))
  const { treatment } = roll
  return {
    film: roll.film,
    format: writeFormat(roll),
    index: roll.exposure_index === null ? '' : String(roll.exposure_index),
    wanted:
      treatment.as === 'index'
        ? `as ${treatment.index}`
        : treatment.as === 'contrast'
          ? `contrast ${treatment.contrast}`
          : '',
    exposed: day(roll.exposed),
    expired: day(roll.expired_since),
    due: day(roll.due),
    process: roll.process,
    remarks: roll.remarks,
    whose: roll.whose ?? '',
    note: roll.note,
  }
}

export interface RollReading {
  /** How single fields were read, by field, where that is worth saying. */
  readonly echoes: Readonly<Record<string, string>>
  /** Sentences by field: `film`, `format`, `exposure_index`, `treatment`, `exposed`, `expired_since`, `due`, `process`. */
  readonly troubles: Readonly<Record<string, string>>
  readonly roll: TakenRoll | null
}

/** How the whole form is read. What is missing counts as trouble, which the form says once it was tried. */
export function readDraft(draft: RollDraft, known: Known): RollReading {
  const troubles: Record<string, string> = {}
  const echoes: Record<string, string> = {}
  const read = <T>(field: string, text: string, reader: (text: string) => Result<T>): T | undefined => {
    if (text.trim() === '') return undefined
    const result = reader(text.trim())
    if (result.ok) return result.value
    troubles[field] = result.problem.sentence
    return undefined
  }
  const cut = read('format', draft.format, readFormat)
  const index = read('exposure_index', draft.index, readIndex)
  const dates = {
    exposed: read('exposed', draft.exposed, (text) => readExposed(text, known)),
    expired_since: read('expired_since', draft.expired, readExpired),
    due: read('due', draft.due, (text) => readDue(text, known)),
  }
  for (const [field, value] of Object.entries(dates))
    if (value !== undefined) echoes[field] = `read as ${writePartialDay(value)}`
  if (cut) echoes.format = `read as ${writeFormat(cut)}`
  const roll = rollOf(
    {
      film: draft.film,
      ...(cut ?? {}),
      ...(draft.process === '' ? {} : { process: draft.process }),
      exposure_index: index ?? null,
      wanted: draft.wanted,
      exposed: dates.exposed ?? null,
      expired_since: dates.expired_since ?? null,
      due: dates.due ?? null,
      remarks: [...draft.remarks],
      whose: draft.whose.trim() === '' ? null : draft.whose.trim(),
      note: draft.note,
    },
    known,
  )
  if (roll.ok) {
    if (roll.value.treatment.as === 'index') echoes.treatment = `read as ${roll.value.treatment.index}`
    return { echoes, troubles, roll: Object.keys(troubles).length === 0 ? roll.value : null }
  }
  const field = roll.problem.field ?? 'film'
  return { echoes, troubles: { [field]: roll.problem.sentence, ...troubles }, roll: null }
}
