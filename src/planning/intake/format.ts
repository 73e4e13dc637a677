import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { FRAMES_135 } from '../../science/index.js'
import type { TakenFormat, TakenRoll } from './taken.js'

type Cut = Pick<TakenRoll, 'format' | 'frames' | 'sheets'>

const ROLLS: readonly TakenFormat[] = ['120', '220', '127', '110']
const INCHES: readonly TakenFormat[] = ['4x5', '5x7', '8x10', '11x14']
const CENTIMETRES: readonly TakenFormat[] = ['9x12cm', '13x18cm']
const MOST_SHEETS = 500

/**
 * Reads how film is cut: `135` (36 frames), `135-24`, `36 exp`, `120`, `4×5`, `9×12 cm`, `12 sheets 4x5`, `4×5 ×12`.
 * Undefined for what does not look like a format at all; half-frame counts are frames: `135-72`.
 */
export function formatIn(text: string): Result<Cut> | undefined {
  const plain = text.toLowerCase().replaceAll('×', 'x').replace(/\s+/g, ' ').trim()
  return small(plain, text) ?? rollFilm(plain) ?? sheets(plain, text)
}

/** The same where a format has to stand: what does not look like one is refused with those there are. */
export const readFormat = (text: string): Result<Cut> =>
  formatIn(text) ?? failed(problem('intake.format-unknown', { text }, 'format'))

/** `135-36`, `120`, `12 sheets 4×5`. */
export function writeFormat({ format, frames, sheets: count }: Cut): string {
  if (format === '135') return `135-${frames ?? 36}`
  const size = format.replace('x', '×').replace('cm', ' cm')
  return count === 1 ? size : `${count} sheets ${size}`
}

function small(plain: string, text: string): Result<Cut> | undefined {
  const [, length, exposures] =
    /^(?:135|35 ?mm)(?: ?[-/ ] ?(\d{1,4}))?(?: ?(?:exp|exposures|frames)\.?)?$/.exec(plain) ??
    /^()(\d{1,4}) ?(?:exp|exposures|frames)\.?$/.exec(plain) ??
    []
  if (length === undefined && exposures === undefined && !/^(?:135|35 ?mm)$/.test(plain)) return undefined
  const frames = Number(exposures || length || 36)
  if (frames < FRAMES_135.low || frames > FRAMES_135.high)
    return failed(problem('intake.frames-out-of-range', { text, frames, ...limits }, 'frames'))
  return ok({ format: '135', frames: frames === 36 ? null : frames, sheets: 1 })
}

const limits = { low: FRAMES_135.low, high: FRAMES_135.high }

function rollFilm(plain: string): Result<Cut> | undefined {
  const format = ROLLS.find((one) => plain === one || plain === `${one} film` || plain === `${one} roll`)
  return format && ok({ format, frames: null, sheets: 1 })
}

function sheets(plain: string, text: string): Result<Cut> | undefined {
  const found =
    /^(?:(\d{1,4}) ?(?:sheets? ?(?:of )?|x ))?(\d{1,2} ?x ?\d{1,2}) ?(cm|in|inch|")?(?: ?x ?(\d{1,4})| sheets?| (\d{1,4}) ?sheets?)?$/.exec(
      plain,
    )
  if (found === null) return undefined
  const [, before, size = '', unit, times, after] = found
  const name = size.replaceAll(' ', '')
  const format =
    INCHES.find((one) => one === name && unit !== 'cm') ??
    CENTIMETRES.find((one) => one === `${name}cm` && (unit === undefined || unit === 'cm'))
  if (format === undefined) return failed(problem('intake.format-unknown', { text }, 'format'))
  const count = Number(before ?? times ?? after ?? 1)
  if (count < 1 || count > MOST_SHEETS)
    return failed(problem('intake.sheets-out-of-range', { text, count, most: MOST_SHEETS }, 'sheets'))
  return ok({ format, frames: null, sheets: count })
}
