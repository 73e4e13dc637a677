import { isBath, type MishapCard, mishapCard, type Step } from '../../score/index.js'
import { type Code, say, type Writer } from '../../words/index.js'
import type { Fonts } from '../setting/fonts.js'
import { type Column, gap, type Piece, rule, stacked, text } from '../setting/pieces.js'
import { headed } from './heading.js'

type Mishap = MishapCard['kind']

/** Lines that are said otherwise on paper, where nothing can be pressed or typed. */
const ON_PAPER: Readonly<Partial<Record<string, Code>>> = {
  'mishap.fixer-first.do-3': 'sheet.mishap.restart',
  'mishap.wrong-dilution.do-2': 'sheet.mishap.other-time',
}

/** What to do when something goes wrong with the film still in the dark, in short; all of it on one page, to be found at once. */
export function wrongPieces(fonts: Fonts, steps: readonly Step[], column: Column, w: Writer): Piece[] {
  const title = say('sheet.wrong', {}, w)
  return [
    {
      ...stacked([rule(column, 8), text(fonts, 'H2', title, { size: 15, face: 'strong' }, column), gap(2)]),
      withNext: true,
    },
    ...mishapsOf(steps).map((kind, i, { length }) => {
      const { todo, means } = mishapCard(kind, 'developing')
      const sentences = [...todo, means].map((code) => say((ON_PAPER[code] ?? code) as Code, {} as never, w))
      return { ...headed(fonts, say(`mishap.${kind}`, {}, w), [sentences.join(' ')], column), withNext: i < length - 1 }
    }),
  ]
}

/** Those that can happen to these baths. A dead phone is what the sheet itself is for. */
function mishapsOf(steps: readonly Step[]): Mishap[] {
  const has = (kind: string) => steps.some((step) => isBath(step) && step.kind === kind)
  return [
    ...(has('fix') ? (['fixer-first'] as const) : []),
    'developer-short',
    'wrong-dilution',
    'lid-came-off',
    'tank-leaks',
    ...(has('stop') ? (['stop-skipped'] as const) : []),
  ]
}
