import { failed, type Millilitres, ok, type Result, type UnitSystem } from '../../kernel/index.js'
import {
  CARRIED_ALKALI,
  type StopAcid,
  type StopBetween,
  type StopCapacity,
  stopCapacity,
  stopFor,
  stopMolarity,
} from '../../science/index.js'
import type { StopAnswer, StopQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer, writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { volumesOf } from '../baths/quantities.js'
import { listText } from '../lists.js'
import { numbersOf } from '../options.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'

export interface StopOptions extends Common, Partial<StopBetween> {
  readonly volume?: string
  readonly percent?: string
  readonly acid?: StopAcid
  readonly rolls?: string
  readonly published?: string
  readonly carried?: string
  readonly alkali?: string
}

/** Prints how many rolls a stop bath has left, and whether water would do. */
export async function stop(file: string | undefined, options: StopOptions, output: Output): Promise<number> {
  const units = unitsOf(options)
  const question = await asked(file, options, units)
  if (!question.ok) return refuse(output, question.problem, options)
  return tellWorked(viewOf(question.value, writerFor(units)), options, output)
}

/** A file holds JSON; there is no list to read. */
async function asked(
  file: string | undefined,
  options: StopOptions,
  system: UnitSystem,
): Promise<Result<StopQuestion>> {
  if (file === undefined) return byOptions(options, system)
  const text = await listText(file)
  if (!text.ok) return text
  return isJson(text.value)
    ? await jsonIn(text.value, 'the question', 'stop-question')
    : failed(usage('The file should hold JSON, as docs/schemas/stop-question.json describes it.'))
}

function byOptions(options: StopOptions, system: UnitSystem): Result<StopQuestion> {
  const volumes = volumesOf(options, ['volume', 'carried'], system)
  if (!volumes.ok) return volumes
  const numbers = numbersOf(options, ['percent', 'rolls', 'published', 'alkali'])
  if (!numbers.ok) return numbers
  const { volume, carried = CARRIED_ALKALI.volume } = volumes.value
  const { percent, rolls = 0, published: count, alkali = CARRIED_ALKALI.alkali } = numbers.value
  const { developer, fixer } = options
  const placed = developer !== undefined || fixer !== undefined
  if ((volume === undefined) !== (percent === undefined) || (volume === undefined && !placed))
    return failed(usage('Say how much stop bath and how strong (--volume 1L --percent 1), or what it stands between.'))
  return ok({
    ...(volume === undefined || percent === undefined
      ? {}
      : {
          bath: {
            volume_ml: volume,
            percent,
            acid: options.acid ?? 'acetic',
            rolls,
            carried_ml: carried,
            alkali_mol_per_l: alkali,
            ...(count === undefined ? {} : { published_rolls_per_litre: count }),
          },
        }),
    ...(placed ? { between: { developer: developer ?? 'ordinary', fixer: fixer ?? 'acid' } } : {}),
  })
}

type Bath = NonNullable<StopQuestion['bath']>
interface Counted extends StopCapacity {
  readonly molarity: number
}

function viewOf({ bath, between }: StopQuestion, writer: Writer): Result<StopAnswer> {
  const counted = bath === undefined ? ok(null) : countOf(bath)
  if (!counted.ok) return counted
  const found = counted.value
  const advice = between === undefined ? null : stopFor(between)
  return ok({
    bath: found && {
      takes_mol: found.takes,
      rolls_to_turning: found.byAcid,
      rolls_to_purple: found.toPurple,
      rolls_published: found.byPublished,
      decides: found.decides,
      left: found.left,
    },
    stop: advice?.stop ?? null,
    sentences: [
      ...(found ? countSentences(found, writer) : []),
      ...(advice ? [say(`stop.${advice.stop}`, advice, writer)] : []),
    ],
    working: bath && found ? countWorking(bath, found, writer) : [],
  })
}

function countOf(bath: Bath): Result<Counted> {
  const molarity = stopMolarity(bath.percent, bath.acid)
  if (!molarity.ok) return molarity
  const { published_rolls_per_litre: count } = bath
  const found = stopCapacity({
    volume: bath.volume_ml as Millilitres,
    molarity: molarity.value,
    acid: bath.acid,
    rolls: bath.rolls,
    carried: { volume: bath.carried_ml as Millilitres, alkali: bath.alkali_mol_per_l, origin: 'assumption' },
    ...(count === undefined ? {} : { published: count }),
  })
  return found.ok ? ok({ ...found.value, molarity: molarity.value }) : found
}

const countSentences = ({ left, decides, byAcid, toPurple }: Counted, writer: Writer): string[] => [
  say('stop.left', { left, published: decides === 'published' }, writer),
  say('stop.by-acid', { turning: byAcid, purple: toPurple }, writer),
]

function countWorking(bath: Bath, { molarity, part, takes }: Counted, writer: Writer): WorkingLine[] {
  const carried = { volume: bath.carried_ml as Millilitres, alkali: bath.alkali_mol_per_l }
  const moles = (carried.volume / 1000) * carried.alkali
  return [
    {
      line: say('stop.working.acid', { percent: bath.percent, molarity }, writer),
      source: say('stop.source.acid', {}, writer),
    },
    { line: say('stop.working.takes', { part, takes }, writer), source: say('stop.source.takes', {}, writer) },
    {
      line: say('stop.working.carried', { ...carried, moles }, writer),
      source: say('stop.source.carried', {}, writer),
    },
  ]
}
