export { writeDay, writeTimeOfDay } from './day.js'
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
export { type Code, catalogue, type Params, say } from './say.js'
export { plain, type Writer, writerFor } from './writer.js'
