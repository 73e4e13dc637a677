import type { IntegerProgram, Sum } from '../planning/index.js'

const SIGNS = { 'at most': '<=', 'at least': '>=', exactly: '=' } as const

/** Variables are numbered, so that any name may be used for them. */
export const numbered = (program: IntegerProgram): string[] => Object.keys(program.variables)

/** The program in the open LP text form that solvers read. */
export function lpText(program: IntegerProgram): string {
  const place = new Map(numbered(program).map((name, i) => [name, `x${i}`]))
  const sum = (terms: Sum) =>
    Object.entries(terms)
      .map(([name, factor]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${variable(place, name)}`)
      .join(' ') || '0 x0'
  const limits = program.limits.map((limit, i) => ` c${i}: ${sum(limit.sum)} ${SIGNS[limit.is]} ${limit.bound}`)
  const bounds = Object.entries(program.variables).map(
    ([name, { low, high }]) => ` ${low} <= ${variable(place, name)} <= ${high}`,
  )
  return [
    'Minimize',
    ` obj: ${sum(program.minimise)}`,
    'Subject To',
    ...limits,
    'Bounds',
    ...bounds,
    'General',
    ` ${[...place.values()].join(' ')}`,
    'End',
    '',
  ].join('\n')
}

function variable(place: ReadonlyMap<string, string>, name: string): string {
  const found = place.get(name)
  if (found === undefined) throw new Error(`The program uses “${name}”, which is not among its variables.`)
  return found
}
