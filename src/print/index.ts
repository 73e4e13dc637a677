export { type TimeCardInput, timeCard } from './card/time-card.js'
export { benchSheet } from './run/bench-sheet.js'
export type { BenchSheetInput, RunRecordInput } from './run/definition.js'
export { runRecord } from './run/run-record.js'
