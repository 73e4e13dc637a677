import { learnProblems } from './problems/problem.js'
import { deskProblems } from './problems/registry/desk.js'

export { type Clock, DAY_MS, type Instant, instantText, SetClock } from './clock.js'
export { dayAt, type WallClocks, wallClocks } from './local-time.js'
export { compareNames, nameKey } from './names.js'
export {
  learnProblems,
  type Problem,
  type ProblemDetails,
  problem,
  type QuotedDegrees,
  type QuotedTemperature,
  sentenceIn,
} from './problems/problem.js'
export { type ProblemCode, type Registered, registry } from './problems/registry.js'
export * from './quantities/index.js'
export { type Ids, idsFrom, type Random, SeededRandom, uuidV7 } from './random.js'
export { all, andThen, expectOk, type Failed, failed, type Ok, ok, type Result } from './result.js'
export { deskProblems }

// Left out of the built pages, which learn the problems of the desk with the first page that is for one.
learnProblems(deskProblems)

export { inZone, isZone } from './zones.js'
