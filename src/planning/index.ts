export * from './intake/index.js'
export type { Cancellation, IntegerProgram, IntegerSolver, Solution, Sum } from './integer-program.js'
export { type SharedTime, sharedTime, type Wanted } from './loads/shared-time.js'
