import type { TimeStatement } from '../../src/wire/index.js'
import type { Developer, Film } from './names.js'

/** A statement with nothing said that need not be. */
export const blank = (film: Film, developer: Developer): TimeStatement => ({
  film: film.name,
  exposure_index: film.index,
  developer: developer.name,
  dilution_parts: developer.parts === null ? null : [...developer.parts],
  agitation: '',
  kind: developer.kind,
  law: 'exponential',
  developer_class: 'unknown',
  coefficient: null,
  usable: null,
  window: null,
  points: [],
  source_words: '',
  source_origin: 'sheet',
  note: '',
})
