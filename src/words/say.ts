import type { UnitSystem } from '../kernel/index.js'
import { controlWords } from './catalogue/control.js'
import { doseWords } from './catalogue/dose.js'
import { housePagesWords } from './catalogue/house-pages.js'
import { mishapWords } from './catalogue/mishaps.js'
import { pasteWords } from './catalogue/paste.js'
import { cardWords, graphWords } from './catalogue/print.js'
import { runPagesWords } from './catalogue/run-pages.js'
import { benchSheetWords, runRecordWords } from './catalogue/run-paper.js'
import { runsWords } from './catalogue/runs.js'
import { scoreWords } from './catalogue/score.js'
import { shelfPagesWords } from './catalogue/shelf-pages.js'
import { thermometerWords } from './catalogue/thermometers.js'
import { timesWords } from './catalogue/times.js'
import { timesPagesWords } from './catalogue/times-pages.js'
import { todayWords } from './catalogue/today.js'
import { webWords } from './catalogue/web.js'
import { type Writer, writerFor } from './writer.js'

export const catalogue = {
  ...timesWords,
  ...thermometerWords,
  ...todayWords,
  ...pasteWords,
  ...doseWords,
  ...controlWords,
  ...webWords,
  ...timesPagesWords,
  ...shelfPagesWords,
  ...housePagesWords,
  ...graphWords,
  ...cardWords,
  ...scoreWords,
  ...runsWords,
  ...runPagesWords,
  ...mishapWords,
  ...benchSheetWords,
  ...runRecordWords,
} as const
export type Code = keyof typeof catalogue
export type Params<C extends Code> = Parameters<(typeof catalogue)[C]>[0]

/**
 * The sentence for a code, in the units given. Every text that a person reads about the work comes from here,
 * so that screen, paper, terminal and voice say the same.
 */
export function say<C extends Code>(code: C, params: Params<C>, units: UnitSystem | Writer): string {
  const writer = typeof units === 'string' ? writerFor(units) : units
  const sentence = catalogue[code] as (params: Params<C>, writer: Writer) => string
  return sentence(params, writer)
}
