import type { Instant } from '../../kernel/index.js'
import type { EventStamp } from './definition.js'
import type { RunState } from './fold.js'

/** Stands for the device of what was typed in from paper; a life of it is one sheet as it was sent. */
export const PAPER = 'paper'

export const isFromPaper = ({ device }: Pick<EventStamp, 'device'>): boolean => device === PAPER

/** When a run that was done on paper was last typed in, by the clock of that device; undefined for one that was not. */
export const typedInAt = ({ events }: Pick<RunState, 'events'>): Instant | undefined =>
  events.findLast(({ event, stands }) => stands && isFromPaper(event))?.event.wallMs
