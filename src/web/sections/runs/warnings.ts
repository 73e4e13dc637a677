import type { ScoreWarning } from '../../../score/index.js'
import { type Writer, warningSentence } from '../../../words/index.js'
import { sayOf } from './names.js'

/** A warning of the plan as a sentence. */
export const scoreWarning = (warning: ScoreWarning, writer: Writer): string =>
  warning.code === 'development'
    ? warningSentence(warning.warning, writer)
    : sayOf(`score.warning.${warning.code}`, warning, writer)
