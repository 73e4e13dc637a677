import { ok, type Result } from '../../kernel/index.js'
import { refusedOutside } from '../range.js'

/** A rule as reference, with its date: local codes and the receiving authority decide. */
export interface WasteRule {
  readonly id: string
  readonly says: string
  readonly figure: { readonly low?: number; readonly high?: number; readonly unit: string }
  readonly source: string
  /** Year of the text that was read. */
  readonly asOf: number
}

/** Silver in mg/L at and above which waste counts as hazardous in the United States. */
export const SILVER_RULE = {
  milligramsPerLitre: 5,
  source: '40 CFR 261.24 (D011), TCLP; a liquid under 0.5 % solids is its own extract',
  asOf: 2004,
} as const

/** Federal rules of the United States, as they were read. Elsewhere other rules hold, and local ones are often stricter. */
export const WASTE_RULES: readonly WasteRule[] = [
  {
    id: 'very-small-generator',
    says: 'A very small generator makes at most this a month and keeps at most 1000 kg.',
    figure: { high: 100, unit: 'kg a month' },
    source: '40 CFR 262.14',
    asOf: 2016,
  },
  {
    id: 'small-generator',
    says: 'A small generator makes more than 100 and less than this a month, keeps at most 6000 kg, for 180 days.',
    figure: { low: 100, high: 1000, unit: 'kg a month' },
    source: '40 CFR 262.16',
    asOf: 2016,
  },
  {
    id: 'large-generator',
    says: 'From this a month on, a large generator; waste stays 90 days at most.',
    figure: { low: 1000, unit: 'kg a month' },
    source: '40 CFR 262.17',
    asOf: 2016,
  },
  {
    id: 'sewer-acid',
    says: 'Nothing below this pH goes into a public sewer; authorities often set an upper bound too, 9 to 12.',
    figure: { low: 5, unit: 'pH' },
    source: '40 CFR 403.5(b)',
    asOf: 2005,
  },
  {
    id: 'septic',
    says: 'No process waste goes into a septic tank or on the ground.',
    figure: { unit: '' },
    source: 'EPA 570/9-91-036D (wells); common practice',
    asOf: 1991,
  },
]

/** A gas or dust of the darkroom and what is taken as bearable. */
export interface Exposure {
  readonly of: string
  readonly limit: string
  readonly from: string
  readonly source: string
}

/** Limits at work, as reference; a home has no measuring, so ventilate and keep from making the gas at all. */
export const EXPOSURES: readonly Exposure[] = [
  {
    of: 'sulfur dioxide',
    limit: '2 ppm over a shift, 5 ppm for a quarter of an hour; 100 ppm is dangerous to life',
    from: 'acid on sulfite or hypo',
    source: 'NIOSH pocket guide',
  },
  {
    of: 'hydroquinone dust',
    limit: '2 mg/m³ for a quarter of an hour',
    from: 'weighing developer',
    source: 'NIOSH pocket guide',
  },
  {
    of: 'acetic acid',
    limit: '10 ppm over a shift',
    from: 'glacial acid',
    source: 'Hazardous Chemicals Handbook, table 5.12',
  },
]

/** Sulfur dioxide in air, ppm: over a shift, over a quarter of an hour, dangerous to life (NIOSH pocket guide). */
export const SULFUR_DIOXIDE_LIMITS = { shift: 2, quarterHour: 5, dangerous: 100, source: 'NIOSH pocket guide' } as const

/** Changes of air an hour: a navy mixing room's 20, and the 12 of a state code until 1999. */
export const AIR_CHANGES = {
  mixing: 20,
  darkroom: 12,
  source: 'NAVEDTRA 14209, ch. 9; Wisconsin DCOMM 32.27(9), until 1999',
} as const

const ROOM = { low: 1, high: 10_000 }

/** What a fan must move for so many changes of air an hour (1 to 60), m³/h: a room of 9.6 m³ at 12 takes 115.2. */
export function fanFor(cubicMetres: number, changes: number = AIR_CHANGES.darkroom): Result<number> {
  const refused =
    refusedOutside('waste.bad-value', 'A room in cubic metres', cubicMetres, ROOM, 'room') ??
    refusedOutside('waste.bad-value', 'Changes of air an hour', changes, { low: 1, high: 60 }, 'changes')
  return refused ?? ok(cubicMetres * changes)
}

/** Who says what may be poured away. Never this program: it keeps count, and names them. */
export const DISPOSAL = {
  decidedBy: ['local-codes', 'receiving-authority'],
  never: ['septic-tank', 'garden'],
  source: 'EPA 570/9-91-036D (1992, wells); septic tanks by common practice',
} as const

/** Categories of 40 CFR 262, for a business; homes are outside it, states and sewers have their own rules. */
export type Generator = 'very-small' | 'small' | 'large'

/** Which federal category so many kilograms of hazardous waste a month would be, 0 to 10⁶: 100 is still very small. */
export function generatorOf(kilogramsPerMonth: number): Result<Generator> {
  const range = { low: 0, high: 1e6 }
  const refused = refusedOutside('waste.bad-value', 'Waste in kilograms a month', kilogramsPerMonth, range, 'kilograms')
  if (refused) return refused
  return ok(kilogramsPerMonth <= 100 ? 'very-small' : kilogramsPerMonth < 1000 ? 'small' : 'large')
}
