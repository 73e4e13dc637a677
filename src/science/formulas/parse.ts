import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { ATOMIC_WEIGHTS } from './elements.js'

/** How many atoms of each element, and the charge: −2 for S2O3 2−. */
export interface Composition {
  readonly atoms: Readonly<Record<string, number>>
  readonly charge: number
}

const LONGEST = 120
const MOST_ATOMS = 1e6
const DEEPEST = 8
const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉'

/**
 * Reads a chemical formula: elements with counts, groups in round or square brackets, waters of crystallisation after a
 * dot, a middle dot or an asterisk with a count before them, and a charge at the end as `^2-` or `2-` after a blank.
 * A dot between digits is read as the dot of a hydrate: formulas here have whole counts. Refused with the place.
 */
export function readFormula(text: string): Result<Composition> {
  const plain = [...text.trim()]
    .map((sign) => (SUBSCRIPTS.includes(sign) ? String(SUBSCRIPTS.indexOf(sign)) : sign))
    .join('')
    .replaceAll('−', '-')
  const found =
    plain.length === 0 || plain.length > LONGEST
      ? refuse(plain.slice(0, 40), 1, 'it should have 1 to 120 signs')
      : read(plain)
  return found
}

const refuse = (formula: string, place: number, reason: string): Result<never> =>
  failed(problem('formula.unreadable', { formula, place, reason }))

function read(text: string): Result<Composition> {
  const { body, charge } = chargeOf(text)
  const atoms = new Map<string, number>()
  let from = 0
  for (const part of body.split(/[.·*]/)) {
    const lead = /^\s*(\d*)/.exec(part) as RegExpExecArray
    // A count before the whole formula is as good as one before its water.
    const times = lead[1] === '' || lead[1] === undefined ? 1 : Number(lead[1])
    const inner = part.slice(lead[0].length).trimEnd()
    const start = from + lead[0].length
    if (inner === '') return refuse(text, start + 1, 'a formula should stand here')
    const group = groupOf(text, inner, start)
    if (!group.ok) return group
    for (const [element, count] of group.value) atoms.set(element, (atoms.get(element) ?? 0) + count * times)
    from += part.length + 1
  }
  const most = Math.max(...atoms.values())
  const least = Math.min(...atoms.values())
  if (least < 1 || most > MOST_ATOMS) return refuse(text, 1, `counts should be from 1 to ${MOST_ATOMS}`)
  return ok({ atoms: Object.fromEntries(atoms), charge })
}

/** `SO4^2-`, `Na+`, `S2O3 2-`: the charge is cut off. */
function chargeOf(text: string): { body: string; charge: number } {
  const found = /^(.*?)(?:\^|\s+)(\d{0,2})([+-])$/.exec(text) ?? /^(.*?[A-Za-z)\]])()([+-])$/.exec(text)
  if (found === null) return { body: text, charge: 0 }
  const size = found[2] === '' ? 1 : Number(found[2])
  return { body: found[1] as string, charge: found[3] === '-' ? -size : size }
}

type Atoms = Map<string, number>

/** Elements and groups one after the other; `at` is where they begin in the text, for refusals. */
function groupOf(text: string, inner: string, at: number): Result<Atoms> {
  const open: Atoms[] = [new Map()]
  const brackets: string[] = []
  const token = /([A-Z][a-z]?)(\d*)|([([])|([)\]])(\d*)/y
  while (token.lastIndex < inner.length) {
    const place = at + token.lastIndex + 1
    const found = token.exec(inner)
    if (found === null) return refuse(text, place, 'an element, a bracket or a count should stand here')
    const [, element, count, opening, closing, groupCount] = found
    if (element !== undefined) {
      if (!Object.hasOwn(ATOMIC_WEIGHTS, element))
        return failed(problem('formula.element-unknown', { element, formula: text }))
      add(open.at(-1) as Atoms, element, countOf(count))
    } else if (opening !== undefined) {
      if (brackets.length >= DEEPEST) return refuse(text, place, 'brackets go at most eight deep')
      brackets.push(opening)
      open.push(new Map())
    } else {
      const partner = closing === ')' ? '(' : '['
      if (brackets.pop() !== partner) return refuse(text, place, `“${closing}” closes nothing`)
      const group = open.pop() as Atoms
      if (group.size === 0) return refuse(text, place, 'the brackets are empty')
      for (const [name, atoms] of group) add(open.at(-1) as Atoms, name, atoms * countOf(groupCount))
    }
  }
  return brackets.length > 0
    ? refuse(text, at + inner.length, `“${brackets.at(-1)}” is not closed`)
    : ok(open[0] as Atoms)
}

const countOf = (digits: string | undefined): number => (digits === '' || digits === undefined ? 1 : Number(digits))
const add = (atoms: Atoms, element: string, count: number) => atoms.set(element, (atoms.get(element) ?? 0) + count)

/** Molar mass in g/mol; the mass of lost or gained electrons is far below the last digit. */
export function molarMass(formula: string): Result<number> {
  const read = readFormula(formula)
  if (!read.ok) return read
  const mass = Object.entries(read.value.atoms).reduce(
    (sum, [element, count]) => sum + count * (ATOMIC_WEIGHTS[element] as number),
    0,
  )
  return ok(mass)
}

/** A composition written out, carbon first, then hydrogen, then by letter, as indexes do; charge behind. */
export function writeFormula({ atoms, charge }: Composition): string {
  const rank = (element: string) => (element === 'C' ? 0 : element === 'H' ? 1 : 2)
  const body = Object.entries(atoms)
    .sort(([a], [b]) => rank(a) - rank(b) || (a < b ? -1 : 1))
    .map(([element, count]) => `${element}${count === 1 ? '' : count}`)
    .join('')
  if (charge === 0) return body
  const size = Math.abs(charge) === 1 ? '' : String(Math.abs(charge))
  return `${body}^${size}${charge < 0 ? '-' : '+'}`
}
