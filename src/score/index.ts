export type * from './picture/drawing.js'
export type { GraphLabels } from './picture/graph-labels.js'
export { type TimeGraphInput, timeGraph } from './picture/time-graph.js'
