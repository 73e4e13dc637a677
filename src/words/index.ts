import { deskWords } from './catalogue/desk.js'
import { sinkWords } from './catalogue/sink.js'
import { learn } from './say.js'

export { writeDay, writeMinuteOfDay, writeTimeOfDay } from './day.js'
export {
  answerInParts,
  answerSentence,
  bandSentence,
  type Developed,
  type Grounds,
  lawSentence,
  type WorkingLine,
  warningSentence,
  working,
} from './developing.js'
export { type Graphed, graphLabels } from './graph.js'
export { type MixDoubtShape, type MixLine, type MixStepShape, mixDoubt, mixLines } from './mixing.js'
export { type Code, learn, type Params, say } from './say.js'
export { statedMoment } from './stated.js'
export {
  type ActShape,
  actLines,
  type BathRules,
  type BathShape,
  bathLines,
  cautionWords,
  commonLines,
  ORIGIN_MARKS,
  type StepLine,
  shortLength,
  type Turning,
  turningWords,
} from './steps.js'
export { plain, type Writer, writerFor } from './writer.js'
export { deskWords, sinkWords }

/** Every sentence there is. */
export const catalogue = { ...sinkWords, ...deskWords } as const

// Left out of the built pages, which learn the words of the desk with the first page that is for one.
learn(deskWords)
