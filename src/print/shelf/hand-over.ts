import type { Millilitres } from '../../kernel/index.js'
import { SILVER_RULE } from '../../science/index.js'
import { say, writeDay, writerFor } from '../../words/index.js'
import { columnOf, flow } from '../setting/flow.js'
import { type Fonts, measuringFonts } from '../setting/fonts.js'
import type { Pages } from '../setting/page.js'
import { paintPages } from '../setting/paint-page.js'
import { beside, gap, pencilLines, rule, stacked, text } from '../setting/pieces.js'
import type { HandOverInput } from './definition.js'

/** The record of waste given to whoever takes it: when, to whom, how much, the silver in it. Tagged PDF. */
export const handOverRecord = (input: HandOverInput): Promise<Uint8Array> =>
  paintPages(handOverPages(input, measuringFonts()), input.printedAt)

const BODY = { size: 12 } as const
const STRONG = { size: 12, face: 'strong' } as const
const QUIET = { size: 10, ink: 'quiet' } as const
const HANG = 150

/** The record laid out, not yet painted. */
export function handOverPages({ bench, handOver, units, paper, printedAt }: HandOverInput, fonts: Fonts): Pages {
  const w = writerFor(units)
  const whole = columnOf(paper)
  const { silver_g: silver } = handOver
  const facts: readonly (readonly [string, string])[] = [
    [say('hand-over.when', {}, w), writeDay(Date.parse(handOver.at), bench.zone)],
    [say('hand-over.to', {}, w), handOver.to],
    [say('hand-over.from', {}, w), handOver.jug],
    [say('hand-over.amount', {}, w), w.volume(handOver.ml as Millilitres)],
    [say('hand-over.rolls', {}, w), say('hand-over.count', handOver, w)],
    [say('hand-over.silver', {}, w), say('hand-over.band', silver, w)],
    ...(handOver.note === '' ? [] : [[say('hand-over.note', {}, w), handOver.note] as const]),
  ]
  const label = { left: whole.left, width: HANG - 10 }
  const rest = { left: whole.left + HANG, width: whole.width - HANG }
  const signed = stacked([
    gap(24),
    beside([
      stacked([pencilLines(label, 1, 24), text(fonts, 'P', say('hand-over.day', {}, w), QUIET, label)]),
      stacked([pencilLines(rest, 1, 24), text(fonts, 'P', say('hand-over.signed', {}, w), QUIET, rest)]),
    ]),
  ])
  return flow(
    fonts,
    [
      text(fonts, 'P', bench.name, BODY, whole),
      text(fonts, 'H1', say('hand-over.title', {}, w), { size: 24, face: 'strong' }, whole),
      gap(10),
      ...facts.map(([name, words]) =>
        stacked([
          rule(whole, 5),
          beside([text(fonts, 'H2', name, STRONG, label), text(fonts, 'P', words, BODY, rest)]),
          gap(4),
        ]),
      ),
      gap(8),
      text(fonts, 'P', say('hand-over.limit', { limit: SILVER_RULE.milligramsPerLitre }, w), QUIET, whole),
      text(fonts, 'P', say('silver.decides', {}, w), QUIET, whole),
    ],
    {
      title: say('hand-over.title', {}, w),
      paper,
      foot: say('sheet.foot', { today: writeDay(printedAt, bench.zone) }, w),
      last: { least: signed.height, of: () => signed },
      pageOf: (page, pages) => say('sheet.page', { page, pages }, w),
    },
  )
}
