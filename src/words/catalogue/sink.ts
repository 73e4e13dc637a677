import { mishapWords } from './mishaps.js'
import { ruinsWords } from './ruins.js'
import { runPagesWords } from './run-pages.js'
import { runsWords } from './runs.js'
import { scoreWords } from './score.js'
import { webWords } from './web.js'

/** What a phone at the sink may have to say: the frame of every page, and a run. Every page loads these, so few. */
export const sinkWords = {
  ...webWords,
  ...scoreWords,
  ...runsWords,
  ...runPagesWords,
  ...mishapWords,
  ...ruinsWords,
} as const
