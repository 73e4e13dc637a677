import { createRequire } from 'node:module'
import PDFDocument from 'pdfkit'
import type { Face } from './page.js'

const require = createRequire(import.meta.url)
const WEIGHTS = { text: 400, strong: 600 } as const
/** Latin first; a letter it lacks is looked for in the next. */
const SUBSETS = ['latin', 'latin-ext'] as const
type FontName = `${Face}.${(typeof SUBSETS)[number]}`

const fileOf = (name: FontName): string => {
  const [face, subset] = name.split('.') as [Face, string]
  const family = 'atkinson-hyperlegible-next'
  return require.resolve(`@fontsource/${family}/files/${family}-${subset}-${WEIGHTS[face]}-normal.woff`)
}

/** A stretch of text in one font, and where it begins. */
export interface Run {
  readonly font: FontName
  readonly text: string
  readonly offset: number
}

/** The narrow space before a unit. The fonts have none: a gap of this many ems is set in its place. */
const NARROW = { space: '\u202f', ems: 0.2 }

/** The size that texts are measured at. */
const EM = 1000

/** Figures of one width, so that those under one another line up. */
const FEATURES: PDFKit.Mixins.OpenTypeFeatures[] = ['tnum', 'kern', 'mark', 'ccmp']

/** What pdfkit keeps of an opened font; it publishes no type for it. */
interface OpenedFont {
  readonly _font: { readonly font: { hasGlyphForCodePoint(code: number): boolean } }
}

/** The fonts of one document: registers, measures and sets text, choosing for each letter a font that has it. */
export class Fonts {
  /** Texts already parted, at the size `EM`: laying out measures the same words again and again. */
  readonly #parted = new Map<string, { runs: Run[]; width: number }>()
  readonly #has = new Map<FontName, (code: number) => boolean>()

  constructor(readonly doc: PDFKit.PDFDocument) {
    for (const face of Object.keys(WEIGHTS) as Face[]) {
      for (const subset of SUBSETS) {
        const name: FontName = `${face}.${subset}`
        doc.registerFont(name, fileOf(name))
        doc.font(name)
        const { font } = (doc as unknown as OpenedFont)._font
        this.#has.set(name, (code) => font.hasGlyphForCodePoint(code))
      }
    }
  }

  width(text: string, face: Face, size: number): number {
    return this.runs(text, face, size).width
  }

  /** Sets a line of text with its left end at `x`, on the baseline `y`. */
  set(text: string, face: Face, size: number, x: number, y: number): void {
    for (const run of this.runs(text, face, size).runs) {
      this.doc.font(run.font).fontSize(size)
      this.doc.text(run.text, x + run.offset, y, { lineBreak: false, baseline: 'alphabetic', features: FEATURES })
    }
  }

  /** How a text is parted among the fonts, and the width of the whole; both grow with the size. */
  runs(text: string, face: Face, size: number): { runs: Run[]; width: number } {
    const key = `${face} ${text}`
    const known = this.#parted.get(key) ?? this.#part(text, face)
    this.#parted.set(key, known)
    const scale = size / EM
    return { runs: known.runs.map((run) => ({ ...run, offset: run.offset * scale })), width: known.width * scale }
  }

  /** Whether some letter of a text is in none of the fonts, so that it is set as a box. */
  lacks(text: string, face: Face): boolean {
    return [...text.normalize('NFC')].some((letter) => !/\s/.test(letter) && this.#fontOf(letter, face) === undefined)
  }

  #fontOf(letter: string, face: Face): FontName | undefined {
    const code = letter.codePointAt(0) ?? 0
    return SUBSETS.map((subset): FontName => `${face}.${subset}`).find((name) => this.#has.get(name)?.(code))
  }

  #part(text: string, face: Face): { runs: Run[]; width: number } {
    const runs: Run[] = []
    let offset = 0
    const parts = text.normalize('NFC').split(NARROW.space)
    parts.forEach((part, i) => {
      const last = i === parts.length - 1
      const stretches = this.#stretches(part, face)
      stretches.forEach(({ font, text: letters }, j) => {
        // The space is written too, so that the text copied out of the PDF has one; the next run starts before its end.
        const ending = !last && j === stretches.length - 1 ? ' ' : ''
        runs.push({ font, text: letters + ending, offset })
        offset += this.doc.font(font).fontSize(EM).widthOfString(letters, { features: FEATURES })
      })
      if (!last) offset += NARROW.ems * EM
    })
    return { runs, width: offset }
  }

  /** A letter that no font has stays in the first one, which shows it as a box. */
  #stretches(text: string, face: Face): { font: FontName; text: string }[] {
    const stretches: { font: FontName; text: string }[] = []
    for (const letter of text) {
      const font = this.#fontOf(letter, face) ?? `${face}.latin`
      const last = stretches.at(-1)
      if (last?.font === font) last.text += letter
      else stretches.push({ font, text: letter })
    }
    return stretches
  }
}

/** Fonts on a document that is thrown away: for laying out before anything is painted. */
export const measuringFonts = (): Fonts => new Fonts(new PDFDocument({ autoFirstPage: false }))
