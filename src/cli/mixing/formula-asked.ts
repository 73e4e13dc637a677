import { all, failed, ok, type Result, readMass, type UnitSystem } from '../../kernel/index.js'
import type { FormulaQuestion } from '../../wire/index.js'
import { jsonIn, questionIn } from '../asked.js'
import { listText } from '../lists.js'
import { typed, usage } from '../output.js'
import { volumeOf } from './typed.js'

/** How a bath mixed by weight is asked for. */
export interface FormulaOptions {
  readonly mix?: string
  readonly volume?: string
  readonly allOf?: string
  readonly have?: readonly string[]
  readonly scale?: string
}

/** The question out of options, or whole out of JSON. */
export const formulaAsked = (
  file: string | undefined,
  options: FormulaOptions,
  system: UnitSystem,
): Promise<Result<FormulaQuestion>> =>
  file === undefined ? asked(options, system) : questionIn(file, 'formula-question')

async function asked(options: FormulaOptions, system: UnitSystem): Promise<Result<FormulaQuestion>> {
  if (options.mix === undefined)
    return failed(usage('Say what to mix, --mix plain-hypo, or name a file that holds your own, --mix mine.json.'))
  const formula = await formulaOf(options.mix)
  if (!formula.ok) return formula
  const volume = options.volume === undefined ? null : volumeOf('volume', options.volume, system)
  if (volume?.ok === false) return volume
  const allOf = options.allOf === undefined ? null : allOfIn(options.allOf, system)
  if (allOf?.ok === false) return allOf
  const scale = options.scale === undefined ? null : typed(readMass(options.scale, { system }))
  if (scale?.ok === false) return scale
  const atHand = all((options.have ?? []).map(atHandIn))
  if (!atHand.ok) return atHand
  return ok({
    formula: formula.value,
    ...(volume === null ? {} : { volume_ml: volume.value }),
    ...(allOf === null ? {} : { all_of: allOf.value }),
    ...(scale === null ? {} : { scale_step_g: scale.value }),
    at_hand: [...atHand.value],
  })
}

/** A file is told from a name by its ending. */
async function formulaOf(name: string): Promise<Result<FormulaQuestion['formula']>> {
  if (!name.endsWith('.json')) return ok(name)
  const text = await listText(name)
  return text.ok ? jsonIn(text.value, `${name} is no formula`, 'bath-formula') : text
}

/** `hypo=500g`: all there is of one salt. */
function allOfIn(text: string, system: UnitSystem): Result<NonNullable<FormulaQuestion['all_of']>> {
  const [salt, mass, ...rest] = text.split('=')
  if (!salt || !mass || rest.length > 0)
    return failed(usage(`--all-of is “${text}”; it should name a salt and what there is of it, like “hypo=500g”.`))
  const grams = typed(readMass(mass, { system }))
  return grams.ok ? ok({ salt, grams: grams.value }) : grams
}

/** `hypo-anhydrous`, or `hypo=hypo-anhydrous` with the salt of the formula before it. */
function atHandIn(text: string): Result<FormulaQuestion['at_hand'][number]> {
  const [one, other, ...rest] = text.split('=')
  if (!one || other === '' || rest.length > 0)
    return failed(usage(`--have is “${text}”; it should be like “hypo-anhydrous” or “hypo=hypo-anhydrous”.`))
  return ok(other === undefined ? { salt: one } : { salt: other, instead: one })
}
