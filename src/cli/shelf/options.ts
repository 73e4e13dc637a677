import { ok, type Result, readVolume } from '../../kernel/index.js'
import { type Common, typed, unitsOf } from '../output.js'

export interface BookOptions extends Common {
  readonly at?: string
  readonly note?: string
}

/** What every entry may say beside what it books. */
export const said = ({ at, note }: BookOptions) => ({
  ...(at === undefined ? {} : { at }),
  ...(note === undefined ? {} : { note }),
})

/** A volume as it was typed, to the microlitre that the ledger counts; null where none was. */
export const ml = (text: string | undefined, what: string, options: Common): Result<number | null> => {
  if (text === undefined) return ok(null)
  const read = typed(readVolume(text, { system: unitsOf(options), what }))
  return read.ok ? ok(Math.round(read.value * 1000) / 1000) : read
}
