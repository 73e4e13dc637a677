import { readRatio } from '../../../kernel/index.js'

/** What the words beside the numbers say. */
export interface Label {
  readonly film?: string
  readonly developer?: string
  readonly index?: number
  readonly dilution?: readonly number[]
  /** A ratio with a colon: two readings, so it is asked about and not used. */
  readonly ambiguous?: string
}

const INDEX = /(?:\b(?:EI|ISO|ASA|index|exposed at|rated at|at)|@)\s*:?\s*(\d{1,5})(?:\/\d+°?)?(?![\d.,:+])/i
const PLUS = /\b(\d+(?:\.\d+)?(?:\s*\+\s*\d+(?:\.\d+)?)+)/
const COLON = /\b(\d{1,3}:\d{1,3})\b/
const UNDILUTED = /\b(stock|undiluted)\b/i

const isIndex = (text: string): boolean => /^\d{1,5}$/.test(text) && Number(text) >= 1 && Number(text) <= 25_600
const canBeKept = (parts: readonly number[]): boolean => parts.length <= 4 && parts.every((part) => part <= 1000)

function dilutionIn(text: string): { dilution?: readonly number[]; ambiguous?: string; rest: string } {
  const found = text.match(PLUS) ?? text.match(UNDILUTED)
  if (found) {
    const ratio = readRatio(found[1] ?? '')
    return ratio.kind === 'read' && canBeKept(ratio.value.parts)
      ? { dilution: ratio.value.parts, rest: text.replace(found[0], ' ') }
      : { rest: text }
  }
  const colon = text.match(COLON)
  return colon ? { ambiguous: colon[1] as string, rest: text.replace(colon[0], ' ') } : { rest: text }
}

const clean = (text: string): string => text.replace(/\s+/g, ' ').replace(/^[\s,:;–-]+|[\s,:;–-]+$/g, '')

/**
 * Takes “Corvane 400 at 800 in ascorbate 1 + 3” apart. What is left over is the film, unless a film is known
 * already: then it is the developer.
 */
export function readLabel(text: string, filmKnown: boolean): Label {
  if (isIndex(text.trim())) return { index: Number(text) }
  const { dilution, ambiguous, rest: withoutDilution } = dilutionIn(text)
  const found = withoutDilution.match(INDEX)
  const index = found && isIndex(found[1] as string) ? found : null
  const rest = index ? withoutDilution.replace(index[0], ' ') : withoutDilution
  const [before, after] = rest.split(/\bin\b|,\s/i, 2)
  const names = namesOf(clean(before ?? ''), after === undefined ? undefined : clean(after), filmKnown)
  return {
    ...names,
    ...(index ? { index: Number(index[1]) } : {}),
    ...(dilution ? { dilution } : {}),
    ...(ambiguous === undefined ? {} : { ambiguous }),
  }
}

/** What a column of labels holds, by the word above it. */
export type Role = 'film' | 'developer' | 'index' | 'dilution'

const ROLES: readonly (readonly [Role, RegExp])[] = [
  ['film', /^films?$/i],
  ['developer', /^dev(?:elopers?)?\.?$/i],
  ['index', /^(?:EI|ISO|ASA|index|exposure index|exposed at|speed)$/i],
  ['dilution', /^(?:dilution|dil\.?)$/i],
]

/** The roles of the cells before a line of temperatures, if they are headings and not names. */
export function rolesOf(cells: readonly string[]): Role[] | null {
  const roles = cells.map((cell) => ROLES.find(([, word]) => word.test(cell))?.[0])
  return cells.length > 0 && roles.every((role) => role !== undefined) ? (roles as Role[]) : null
}

/** What the cells at the head of a row say, each under its heading. */
export const labelByRoles = (cells: readonly string[], roles: readonly Role[]): Label =>
  Object.assign({}, ...cells.map((cell, i) => partOf(clean(cell), roles[i] as Role)))

function partOf(cell: string, role: Role): Label {
  if (cell === '') return {}
  if (role === 'film') return { film: cell }
  if (role === 'developer') return { developer: cell }
  if (role === 'index') return isIndex(cell) ? { index: Number(cell) } : {}
  const { dilution, ambiguous } = dilutionIn(cell)
  return { ...(dilution ? { dilution } : {}), ...(ambiguous === undefined ? {} : { ambiguous }) }
}

function namesOf(before: string, after: string | undefined, filmKnown: boolean): Pick<Label, 'film' | 'developer'> {
  if (after !== undefined)
    return { ...(before === '' ? {} : { film: before }), ...(after === '' ? {} : { developer: after }) }
  if (before === '') return {}
  return filmKnown ? { developer: before } : { film: before }
}
