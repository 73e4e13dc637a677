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

/** Changes of air an hour: a navy mixing room's 20, and the 12 of a state code until 1999. */
export const AIR_CHANGES = { mixing: 20, darkroom: 12 } as const

/** What a fan must move for so many changes of air an hour, m³/h. */
export const fanFor = (volume: number, changes: number): number => volume * changes
