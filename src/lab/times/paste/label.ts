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

function dilutionIn(text: string): { dilution?: readonly number[]; ambiguous?: string; rest: string } {
  const found = text.match(PLUS) ?? text.match(UNDILUTED)
  if (found) {
    const ratio = readRatio(found[1] ?? '')
    return ratio.kind === 'read' ? { dilution: ratio.value.parts, rest: text.replace(found[0], ' ') } : { rest: text }
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
  if (/^\d{1,5}$/.test(text.trim())) return { index: Number(text) }
  const { dilution, ambiguous, rest: withoutDilution } = dilutionIn(text)
  const index = withoutDilution.match(INDEX)
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

function namesOf(before: string, after: string | undefined, filmKnown: boolean): Pick<Label, 'film' | 'developer'> {
  if (after !== undefined)
    return { ...(before === '' ? {} : { film: before }), ...(after === '' ? {} : { developer: after }) }
  if (before === '') return {}
  return filmKnown ? { developer: before } : { film: before }
}
