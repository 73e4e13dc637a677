import type { Drawing, Mark, Point, TextMark, Tone } from '../../score/index.js'
import type { Fonts } from './fonts.js'

/** The roles of a drawing in black on white: what is told by colour on screen is told by weight here. */
export const PAPER_TONES: Readonly<Record<Tone, string>> = {
  ink: '#000000',
  quiet: '#3d3d3d',
  rule: '#d0d0d0',
  edge: '#808080',
  accent: '#000000',
  wash: '#d9d9d9',
  sheet: '#ffffff',
  ground: '#ffffff',
}

/** Paints a drawing with its upper left corner at (x, y). */
export function paintDrawing(fonts: Fonts, drawing: Drawing, x: number, y: number, scale = 1): void {
  const { doc } = fonts
  doc.save()
  doc.translate(x, y).scale(scale)
  for (const mark of drawing.marks) paintMark(fonts, mark)
  doc.restore()
}

function paintMark(fonts: Fonts, mark: Mark): void {
  const { doc } = fonts
  const tone = PAPER_TONES[mark.tone]
  switch (mark.kind) {
    case 'line':
      stroke(doc, [mark.from, mark.to], mark)
      return
    case 'path':
      stroke(doc, mark.points, mark)
      return
    case 'area':
      doc.polygon(...mark.points.map(([x, y]) => [x, y])).fill(tone)
      return
    case 'circle':
      doc.undash().lineWidth(mark.weight).circle(mark.at[0], mark.at[1], mark.radius)
      doc.fillAndStroke(PAPER_TONES[mark.fill], tone)
      return
    case 'diamond': {
      const [x, y] = mark.at
      const r = mark.radius
      doc.polygon([x - r, y], [x, y - r], [x + r, y], [x, y + r]).fill(tone)
      return
    }
    case 'text':
      write(fonts, mark, tone)
  }
}

function stroke(
  doc: PDFKit.PDFDocument,
  points: readonly Point[],
  { tone, weight, dash }: { tone: Tone; weight: number; dash?: readonly number[] },
): void {
  const [first, ...rest] = points
  if (first === undefined) return
  doc.moveTo(first[0], first[1])
  for (const [x, y] of rest) doc.lineTo(x, y)
  doc.lineJoin('round').lineWidth(weight)
  if (dash === undefined) doc.undash()
  else doc.dash(dash[0] ?? 1, { space: dash[1] ?? dash[0] ?? 1 })
  doc.stroke(PAPER_TONES[tone]).undash()
}

function write(fonts: Fonts, mark: TextMark, tone: string): void {
  const face = mark.strong ? 'strong' : 'text'
  const width = fonts.width(mark.text, face, mark.size)
  const left = mark.at[0] - (mark.anchor === 'start' ? 0 : mark.anchor === 'middle' ? width / 2 : width)
  if (mark.halo !== null) {
    const air = 0.15 * mark.size
    const height = 0.95 * mark.size
    fonts.doc.rect(left - air, mark.at[1] - 0.75 * mark.size, width + 2 * air, height).fill(PAPER_TONES[mark.halo])
  }
  fonts.doc.fillColor(tone)
  fonts.set(mark.text, face, mark.size, left, mark.at[1])
}
