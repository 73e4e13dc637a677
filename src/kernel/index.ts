export { type Clock, type Instant, instantText, SetClock } from './clock.js'
export {
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
