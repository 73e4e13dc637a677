/** Where a quantity lies along an edge of the drawing. */
export interface Scale {
  readonly from: number
  readonly to: number
  at(value: number): number
}

/** Equal differences are equal lengths. `from` lies at `start`, `to` at `end`; a value outside goes on straight. */
export function linearScale(from: number, to: number, start: number, end: number): Scale {
  return { from, to, at: (value) => start + ((value - from) / (to - from)) * (end - start) }
}

/** Equal ratios are equal lengths; `from`, `to` and every value are over 0. */
export function logScale(from: number, to: number, start: number, end: number): Scale {
  const straight = linearScale(Math.log(from), Math.log(to), start, end)
  return { from, to, at: (value) => straight.at(Math.log(value)) }
}
