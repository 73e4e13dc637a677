import { type Reading, readDuration, seconds, writeDuration } from '../../../kernel/index.js'
import { say } from '../../../words/index.js'
import type { FilmRecord, FilmStatementInput } from '../../shared/api/index.js'

/** What is known of a film, as it is being typed. */
export interface FilmDraft {
  readonly process: FilmRecord['process']
  readonly tolerance: 'percent' | 'contrast'
  readonly down: string
  readonly up: string
  /** Lines such as `6:00, 0.48`. */
  readonly strips: string
  readonly fixing: 'ordinary' | 'fast-using'
  readonly drying: string
  readonly keeping: string
  readonly note: string
}

export const EMPTY_FILM: FilmDraft = {
  process: 'black-and-white',
  tolerance: 'percent',
  down: '10',
  up: '10',
  strips: '',
  fixing: 'ordinary',
  drying: '',
  keeping: '',
  note: '',
}

export const draftOf = (film: FilmRecord): FilmDraft => ({
  process: film.process,
  tolerance: film.tolerance.in,
  down: `${film.tolerance.down}`,
  up: `${film.tolerance.up}`,
  strips: (film.strips ?? [])
    .map(({ time_s, contrast }) => `${writeDuration(seconds(time_s))}, ${contrast}`)
    .join('\n'),
  fixing: film.fixing,
  drying: film.drying_s === null ? '' : writeDuration(seconds(film.drying_s)),
  keeping: film.keeping,
  note: film.note,
})

export type FilmTroubles = Partial<Record<keyof FilmDraft, string>>
export type FilmReading =
  | { readonly statement: FilmStatementInput }
  | { readonly statement: null; readonly troubles: FilmTroubles }

/** What was typed as a record of this film, or what is wrong with each field. */
export function readFilm(name: string, draft: FilmDraft, remarks: FilmRecord['remarks']): FilmReading {
  const troubles: { -readonly [K in keyof FilmTroubles]: FilmTroubles[K] } = {}
  const bound = draft.tolerance === 'percent' ? 50 : 0.5
  const [down, up] = [numberIn(draft.down), numberIn(draft.up)]
  const wrong = say('film.bad-tolerance', {}, 'metric')
  if (!(down >= 0 && down <= bound)) troubles.down = wrong
  if (!(up >= 0 && up <= bound)) troubles.up = wrong
  const strips = stripsIn(draft.strips)
  if (typeof strips === 'string') troubles.strips = strips
  const drying = draft.drying.trim() === '' ? null : readIn(readDuration(draft.drying))
  if (drying === undefined || (drying !== null && (drying < 600 || drying > 172_800)))
    troubles.drying = say('film.bad-drying', {}, 'metric')
  if (Object.keys(troubles).length > 0) return { statement: null, troubles }
  return {
    statement: {
      name,
      process: draft.process,
      tolerance: { in: draft.tolerance, down, up },
      fixing: draft.fixing,
      remarks,
      drying_s: drying ?? null,
      keeping: draft.keeping.trim(),
      note: draft.note.trim(),
      ...(typeof strips === 'string' || strips.length === 0 ? {} : { strips }),
    },
  }
}

const numberIn = (text: string): number => (text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.')))

const readIn = <T>(reading: Reading<T>): T | undefined => (reading.kind === 'read' ? reading.value : undefined)

type Strips = NonNullable<FilmStatementInput['strips']>

function stripsIn(text: string): Strips | string {
  const strips: Strips = []
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  for (const [i, line] of lines.entries()) {
    const [time = '', contrast = ''] = line.split(/[,;\t]\s*/)
    const read = readIn(readDuration(time))
    const value = numberIn(contrast)
    if (read === undefined || !(value >= 0.02 && value <= 6))
      return say('film.bad-strips', { line: i + 1, text: line.trim() }, 'metric')
    strips.push({ time_s: read, contrast: value })
  }
  return strips
}
