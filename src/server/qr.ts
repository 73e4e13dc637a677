import bwip from 'bwip-js/node'

/** The pairing address as a QR code for the page. */
export const pairingQr = (address: string): string => bwip.toSVG({ bcid: 'qrcode', text: address, scale: 3 })

/** The same for a terminal: two rows of modules a line, in half blocks, with the quiet border a reader needs. */
export function terminalQr(address: string): string {
  const raw = (
    bwip.raw({ bcid: 'qrcode', text: address }) as unknown as { pixs: number[]; pixx: number; pixy: number }[]
  )[0]
  if (raw === undefined) return ''
  const border = 2
  const dark = (x: number, y: number) =>
    x >= 0 && y >= 0 && x < raw.pixx && y < raw.pixy && raw.pixs[y * raw.pixx + x] === 1
  const lines: string[] = []
  for (let y = -border; y < raw.pixy + border; y += 2) {
    let line = ''
    for (let x = -border; x < raw.pixx + border; x++)
      line += [' ', '▀', '▄', '█'][(dark(x, y) ? 0 : 1) + (dark(x, y + 1) ? 0 : 2)]
    lines.push(line)
  }
  return lines.join('\n')
}
