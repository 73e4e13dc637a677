export {
  BENCH_ROLES,
  type BenchRole,
  type Between,
  type BetweenReason,
  type BetweenRule,
  between,
  makesTogether,
} from './contamination/order.js'
export { HANDS_GAP, startsWithFreeHands } from './hands/free.js'
export * from './intake/index.js'
export type { Cancellation, IntegerProgram, IntegerSolver, Solution, Sum } from './integer-program.js'
export { rollNumberIn } from './loads/number-in.js'
export { type SharedTime, servedAt, sharedTime, type Tolerance, type Wanted } from './loads/shared-time.js'
export {
  coverOf,
  fitsTank,
  type KitTank,
  type Load,
  loadOf,
  type OnItsReel,
  type TankThatFits,
  tanksFor,
} from './loads/tank-fits.js'
export {
  type FilmProcess,
  madeFor,
  type RollToLoad,
  type StopRemark,
  stopOf,
  throughList,
} from './loads/wrong-process.js'
export type {
  MixAsked,
  MixCaution,
  MixDoubt,
  MixedProduct,
  MixSheet,
  MixSource,
  MixStep,
} from './mixing/definition.js'
export { type PackageShape, type ProductShape, productToMix, sourcesFor } from './mixing/from-records.js'
export { mixSheet } from './mixing/sheet.js'
