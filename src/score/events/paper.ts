import type { EventStamp } from './definition.js'

/** Stands for the device of what was typed in from paper; a life of it is one sheet as it was sent. */
export const PAPER = 'paper'

export const isFromPaper = ({ device }: Pick<EventStamp, 'device'>): boolean => device === PAPER
