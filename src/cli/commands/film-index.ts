import { all, failed, ok, type Result } from '../../kernel/index.js'
import { indexOfFrame, ownIndex } from '../../science/index.js'
import type { IndexAnswer, IndexQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer, writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { board } from '../board.js'
import { listText } from '../lists.js'
import { framesIn, saySetting, settingIn } from '../negatives/settings.js'
import { numbersOf } from '../options.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'

export interface IndexOptions extends Common {
  readonly iso?: string
  readonly meter?: string
  readonly under?: string
  readonly base?: string
}

/** Prints the index that each frame stands for, and one's own where densities are given. */
export async function filmIndex(file: string | undefined, options: IndexOptions, output: Output): Promise<number> {
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const question = isJson(text.value)
    ? await jsonIn(text.value, 'the question', 'index-question')
    : asked(text.value, options)
  if (!question.ok) return refuse(output, question.problem, options)
  const writer = writerFor(unitsOf(options))
  const view = answered(question.value, writer)
  if (!view.ok) return refuse(output, view.problem, options)
  const frames = view.value.frames.map((frame) =>
    say('index.frame', { setting: saySetting(frame), index: frame.index, density: frame.net_density }, writer),
  )
  const lines = [...frames, view.value.sentence]
  return tell({ view: view.value, lines, working: () => board(view.value.working) }, options, output)
}

function asked(text: string, options: IndexOptions): Result<IndexQuestion> {
  const numbers = numbersOf(options, ['iso', 'under', 'base'])
  if (!numbers.ok) return numbers
  const { iso, under = 0, base = 0 } = numbers.value
  if (iso === undefined || options.meter === undefined)
    return failed(usage('Say what the meter was set to and what it said: --iso 400 --meter "f/11 1/15".'))
  const meter = settingIn(options.meter)
  if (!meter.ok) return meter
  const frames = framesIn(text, base)
  if (!frames.ok) return frames
  return ok({ index: iso, meter: meter.value, stops_under: under, stop_fraction: 2, frames: frames.value })
}

function answered(question: IndexQuestion, writer: Writer): Result<IndexAnswer> {
  const { meter, frames, stops_under, stop_fraction } = question
  const normal = { aperture: meter.aperture, time: meter.time_s }
  const indexes = all(
    frames.map(({ aperture, time_s }) =>
      indexOfFrame(
        question.index,
        normal,
        { aperture, time: time_s },
        {
          stopsUnder: stops_under,
          fraction: stop_fraction,
        },
      ),
    ),
  )
  if (!indexes.ok) return indexes
  const shown = frames.map(({ aperture, time_s, net_density = null }, i) => ({
    aperture,
    time_s,
    index: indexes.value[i] as number,
    net_density,
  }))
  const own = ownOf(shown, question.reading_error)
  return ok({
    frames: shown,
    own: own?.ok ? own.value : null,
    undefined_because: own === null || own.ok ? null : own.problem.sentence,
    sentence: sentenceOf(own, writer),
    working: workingOf(question, shown, own, writer),
  })
}

type Own = Result<NonNullable<IndexAnswer['own']>> | null

/** Null when no frame has a density; frames without one are left out. */
function ownOf(frames: IndexAnswer['frames'], readingError: number | undefined): Own {
  const read = frames.flatMap(({ index, net_density }) =>
    net_density === null ? [] : [{ index, netDensity: net_density }],
  )
  if (read.length === 0) return null
  const own = ownIndex(read, readingError)
  if (!own.ok) return own
  const { index, low, high, named } = own.value
  const { arithmetic, degrees, name } = named
  return ok({ index, low, high, named: { arithmetic, degrees, name } })
}

function sentenceOf(own: Own, writer: Writer): string {
  if (own === null) return say('index.frames-only', {}, writer)
  if (!own.ok) return say('index.none', { reason: own.problem.sentence }, writer)
  const { index, low, high, named } = own.value
  return say('index.own', { value: index, low, high, name: named.name }, writer)
}

function workingOf(question: IndexQuestion, frames: IndexAnswer['frames'], own: Own, writer: Writer): WorkingLine[] {
  const { index: from, meter, stops_under } = question
  return [
    {
      line: say('index.work.meter', { setting: saySetting(meter), index: from, under: stops_under }, writer),
      source: say('strip.source.stated', {}, writer),
    },
    ...frames.map(({ index, ...setting }) => ({
      line: say(
        'index.work.frame',
        { setting: saySetting(setting), less: Math.log2(index / from), index, from },
        writer,
      ),
      source: say('index.source.marks', {}, writer),
    })),
    ...(own?.ok
      ? [
          {
            line: say('index.work.own', { index: own.value.index }, writer),
            source: say('strip.source.iso', {}, writer),
          },
        ]
      : []),
  ]
}
