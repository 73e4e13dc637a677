import bwip from 'bwip-js/node'
import type { Drawing, Mark } from '../../score/index.js'

/** A QR code before it is drawn: so many modules along each side, and which of them are dark. */
export interface QrModules {
  readonly side: number
  readonly dark: (x: number, y: number) => boolean
}

/** Modules of the light border that a reader needs around a code (ISO/IEC 18004). */
export const QUIET_ZONE = 4

/** A text as a QR code that may lose some 15 % of itself to scratches and drops. */
export function qrModules(text: string): QrModules {
  const [raw] = bwip.raw({ bcid: 'qrcode', text, eclevel: 'M' } as never) as unknown as {
    pixs: number[]
    pixx: number
    pixy: number
  }[]
  if (raw === undefined) throw new Error('The barcode library gave no modules.')
  const { pixs, pixx: side, pixy } = raw
  return { side, dark: (x, y) => x >= 0 && y >= 0 && x < side && y < pixy && pixs[y * side + x] === 1 }
}

/** Neighbouring strips overlap by this part of a module, so that no light seam shows between them. */
const OVERLAP = 0.03

/** A QR code with its light border as a picture `width` wide. */
export function qrDrawing(text: string, width: number, title: string): Drawing {
  const code = qrModules(text)
  const module = width / (code.side + 2 * QUIET_ZONE)
  const marks: Mark[] = []
  for (let y = 0; y < code.side; y++)
    for (const { from, to } of strips(code, y)) {
      const [left, right] = [(QUIET_ZONE + from) * module, (QUIET_ZONE + to) * module]
      const [top, bottom] = [(QUIET_ZONE + y) * module, (QUIET_ZONE + y + 1 + OVERLAP) * module]
      const points = [
        [left, top],
        [right, top],
        [right, bottom],
        [left, bottom],
      ] as const
      marks.push({ kind: 'area', points, tone: 'ink' })
    }
  return { width, height: width, marks, title, description: text }
}

/** The stretches of dark modules of one row. */
function strips({ side, dark }: QrModules, y: number): { from: number; to: number }[] {
  const found: { from: number; to: number }[] = []
  for (let x = 0; x < side; x++) {
    if (!dark(x, y)) continue
    const last = found.at(-1)
    if (last?.to === x) last.to = x + 1
    else found.push({ from: x, to: x + 1 })
  }
  return found
}
