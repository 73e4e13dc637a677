export type { GraphLabels } from './picture/candidates.js'
export type * from './picture/drawing.js'
export { type TimeGraphInput, timeGraph } from './picture/time-graph.js'
