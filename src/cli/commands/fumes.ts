import { failed, ok, type Result, type UnitSystem } from '../../kernel/index.js'
import {
  AIR_CHANGES,
  fanFor,
  pouredTogether,
  ppmInRoom,
  type Solution,
  SULFUR_DIOXIDE_LIMITS,
  stopMolarity,
  sulfiteBath,
  sulfiteIn,
} from '../../science/index.js'
import type { FumesAnswer, FumesQuestion } from '../../wire/index.js'
import { say, type Writer, writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { questionIn } from '../asked.js'
import { volumesOf } from '../baths/quantities.js'
import { numbersOf } from '../options.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'

export interface FumesOptions extends Common {
  readonly sulfite?: string
  readonly bath?: string
  readonly acid?: string
  readonly percent?: string
  readonly room?: string
}

/** Prints how much sulfur dioxide acid would free from a sulfite bath: the proof of why nobody should pour it. */
export async function fumes(file: string | undefined, options: FumesOptions, output: Output): Promise<number> {
  const units = unitsOf(options)
  // Without a file nothing is read: the question is asked by options.
  const question = file === undefined ? asked(options, units) : await questionIn(file, 'fumes-question')
  if (!question.ok) return refuse(output, question.problem, options)
  return tellWorked(viewOf(question.value, writerFor(units)), options, output)
}

/** What options leave out is filled in as the shape of the question does; the shapes are read for JSON only. */
function asked(options: FumesOptions, system: UnitSystem): Result<FumesQuestion> {
  const volumes = volumesOf(options, ['bath', 'acid'], system)
  if (!volumes.ok) return volumes
  const numbers = numbersOf(options, ['sulfite', 'percent', 'room'])
  if (!numbers.ok) return numbers
  const { bath = 1000, acid } = volumes.value
  const { sulfite, percent = 5, room = 10 } = numbers.value
  if (sulfite === undefined || acid === undefined)
    return failed(usage('Say the sulfite of the bath and the acid poured in: --sulfite 100 --acid 500mL.'))
  return ok({ sulfite_g_per_l: sulfite, bath_ml: bath, acid_ml: acid, acid_percent: percent, room_m3: room })
}

/** The bath, the acid, and both together. */
function solutionsOf(question: FumesQuestion): Result<{ bath: Solution; molarity: number; mixed: Solution }> {
  const bath = sulfiteBath(question.sulfite_g_per_l)
  if (!bath.ok) return bath
  const molarity = stopMolarity(question.acid_percent)
  if (!molarity.ok) return molarity
  const acid: Solution = { acids: [{ acid: 'acetic', molarity: molarity.value }], spectators: 0 }
  const mixed = pouredTogether(bath.value, question.bath_ml, acid, question.acid_ml)
  return mixed.ok ? ok({ bath: bath.value, molarity: molarity.value, mixed: mixed.value }) : mixed
}

function viewOf(question: FumesQuestion, writer: Writer): Result<FumesAnswer> {
  const solutions = solutionsOf(question)
  if (!solutions.ok) return solutions
  const { bath, molarity, mixed } = solutions.value
  const before = sulfiteIn(bath)
  if (!before.ok) return before
  const after = sulfiteIn(mixed)
  if (!after.ok) return after
  const room = question.room_m3
  const litres = (question.bath_ml + question.acid_ml) / 1000
  const gas = after.value.gasGramsPerLitre * litres
  const whole = after.value.wholeGramsPerLitre * litres
  const ppm = ppmInRoom(gas, room)
  if (!ppm.ok) return ppm
  const most = ppmInRoom(whole, room)
  if (!most.ok) return most
  const fan = fanFor(room)
  if (!fan.ok) return fan
  const { shift, quarterHour, dangerous } = SULFUR_DIOXIDE_LIMITS
  const part = ({ pH, sulfurDioxide }: typeof before.value) => ({ ph: pH, sulfur_dioxide: sulfurDioxide })
  const says = ({ pH, sulfurDioxide: share }: typeof before.value) => ({ pH, share })
  return ok({
    before: part(before.value),
    after: part(after.value),
    gas_g: gas,
    ppm: ppm.value,
    whole_g: whole,
    whole_ppm: most.value,
    limits_ppm: { shift, quarter_hour: quarterHour, dangerous },
    fan_m3_per_h: fan.value,
    sentences: [
      say('fumes.never', {}, writer),
      say('fumes.before', says(before.value), writer),
      say('fumes.after', { ...says(after.value), gas }, writer),
      say('fumes.room', { ppm: ppm.value, quarterHour, dangerous, room }, writer),
      say('fumes.whole', { grams: whole, ppm: most.value }, writer),
      say('fumes.fan', { fan: fan.value, changes: AIR_CHANGES.darkroom }, writer),
    ],
    working: workingOf(question, { sulfite: bath.acids[0]?.molarity ?? 0, acid: molarity, gas }, writer),
  })
}

function workingOf(
  question: FumesQuestion,
  found: { readonly sulfite: number; readonly acid: number; readonly gas: number },
  writer: Writer,
): FumesAnswer['working'] {
  return [
    {
      line: say('fumes.working.sulfite', { grams: question.sulfite_g_per_l, molarity: found.sulfite }, writer),
      source: say('fumes.source.mass', {}, writer),
    },
    {
      line: say('fumes.working.acid', { percent: question.acid_percent, molarity: found.acid }, writer),
      source: say('fumes.source.mass', {}, writer),
    },
    { line: say('fumes.working.balance', {}, writer), source: say('fumes.source.pKa', {}, writer) },
    {
      line: say('fumes.working.ppm', { grams: found.gas, room: question.room_m3 }, writer),
      source: say('fumes.source.air', {}, writer),
    },
  ]
}
