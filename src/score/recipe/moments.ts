/** Half of the millisecond in which clocks and presses are told, seconds. */
const HALF_A_TICK = 0.0005

/**
 * Whether a moment lies before another, both in seconds. Instants are whole milliseconds, but seconds summed from
 * them carry a rounding in their last figures; two that differ by less than half a millisecond are one moment, so
 * that a bath at the very second of its draining is not called overdue by a rounding.
 */
export const isBefore = (a: number, b: number): boolean => a < b - HALF_A_TICK
