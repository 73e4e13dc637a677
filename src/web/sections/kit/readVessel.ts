import { readDuration, readMass, readVolume, type UnitSystem } from '../../../kernel/index.js'
import type { VesselStatementInput } from '../../shared/api/index.js'

/** One thing of the kit as it is being typed; only the fields of its kind count. */
export interface VesselDraft {
  readonly kind: 'tank' | 'reel' | 'graduate' | 'syringe'
  readonly name: string
  readonly moved: 'inversion' | 'rotary'
  readonly material: 'steel' | 'plastic' | 'glass'
  /** Lines such as `135, 2, 580 mL`. */
  readonly holds: string
  readonly warmth: string
  readonly constant: string
  /** Formats of a reel, such as `135, 120`. */
  readonly formats: string
  /** When it was last wet; empty while it is dry. */
  readonly wetAt: string
  readonly volume: string
  readonly marks: string
  readonly note: string
}

export const EMPTY_VESSEL: VesselDraft = {
  kind: 'tank',
  name: '',
  moved: 'inversion',
  material: 'plastic',
  holds: '',
  warmth: '',
  constant: '',
  formats: '135',
  wetAt: '',
  volume: '',
  marks: '',
  note: '',
}

type Format = Extract<VesselStatementInput, { kind: 'reel' }>['formats'][number]
const FORMATS: readonly Format[] = [
  '135',
  '120',
  '220',
  '127',
  '110',
  '4x5',
  '5x7',
  '8x10',
  '11x14',
  '9x12cm',
  '13x18cm',
]

export type VesselTroubles = Partial<Record<keyof VesselDraft, string>>
export type VesselReading =
  | { readonly statement: VesselStatementInput }
  | { readonly statement: null; readonly troubles: VesselTroubles }

const formatIn = (word: string): Format | null =>
  FORMATS.find((format) => format === word.trim().toLowerCase().replace('×', 'x').replaceAll(' ', '')) ?? null

/** What was typed as a thing of the kit, or what is wrong with each field. */
export function readVessel(draft: VesselDraft, units: UnitSystem): VesselReading {
  const troubles: { -readonly [K in keyof VesselTroubles]: VesselTroubles[K] } = {}
  const name = draft.name.trim()
  const note = draft.note.trim()
  if (name === '') troubles.name = 'This is still empty.'
  const done = (statement: VesselStatementInput): VesselReading =>
    Object.keys(troubles).length === 0 ? { statement } : { statement: null, troubles }
  const { kind, material, moved } = draft
  if (kind === 'tank') {
    const holds = holdsIn(draft.holds, units)
    if (typeof holds === 'string') troubles.holds = holds
    const warmth = optional(draft.warmth, (text) => readMass(text, { system: units }))
    if (warmth === undefined) troubles.warmth = 'Such as 60 g: what its walls take, as grams of water.'
    const constant = optional(draft.constant, (text) => readDuration(text))
    if (constant === undefined) troubles.constant = 'Such as 1:10:00: two thirds of a difference are gone by then.'
    return done({
      kind,
      name,
      material,
      moved,
      holds: typeof holds === 'string' ? [] : holds,
      warmth_g: warmth ?? null,
      time_constant_s: constant ?? null,
      note,
    })
  }
  if (kind === 'reel') {
    const formats = draft.formats.split(/[,;\s]+/).filter(Boolean)
    const known = formats.flatMap((word) => formatIn(word) ?? [])
    if (known.length === 0 || known.length < formats.length)
      troubles.formats = `“${draft.formats}” is not a list of formats. Such as 135, 120.`
    return done({ kind, name, material, formats: known, wet_at: draft.wetAt === '' ? null : draft.wetAt, note })
  }
  const volume = readVolume(draft.volume, { system: units })
  if (volume.kind !== 'read') troubles.volume = 'Such as 600 mL.'
  const marks = readVolume(draft.marks, { system: units })
  if (marks.kind !== 'read') troubles.marks = 'Such as 10 mL.'
  return done({
    kind,
    name,
    holds_ml: volume.kind === 'read' ? volume.value : 0,
    marked_every_ml: marks.kind === 'read' ? marks.value : 0,
    note,
  })
}

/** Null where nothing is typed, undefined where it cannot be read. */
function optional<T>(text: string, read: (text: string) => { kind: string; value?: T }): T | null | undefined {
  if (text.trim() === '') return null
  const reading = read(text)
  return reading.kind === 'read' ? reading.value : undefined
}

type Holds = Extract<VesselStatementInput, { kind: 'tank' }>['holds']

/** Lines of format, number and volume; a sentence about the first that is none. */
function holdsIn(text: string, units: UnitSystem): Holds | string {
  const lines = text.split('\n').filter((line) => line.trim() !== '')
  if (lines.length === 0) return 'One line at least, such as: 135, 2, 580 mL'
  const holds: Holds = []
  for (const [i, line] of lines.entries()) {
    const [word = '', count = '', ...rest] = line.split(/[,;\t]/)
    const format = formatIn(word)
    const volume = readVolume(rest.join(','), { system: units })
    const reels = Number(count.trim())
    if (format === null || !Number.isInteger(reels) || reels < 1 || reels > 40 || volume.kind !== 'read')
      return `Line ${i + 1}, “${line.trim()}”: write format, number and volume, such as 135, 2, 580 mL`
    holds.push({ format, reels, covers_ml: volume.value })
  }
  return holds
}
