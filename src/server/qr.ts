import bwip from 'bwip-js/node'
import { qrModules } from '../print/index.js'

/** The pairing address as a QR code for the page. */
export const pairingQr = (address: string): string => bwip.toSVG({ bcid: 'qrcode', text: address, scale: 3 })

/** Black on white whatever the terminal's own colours are; not every reader takes a code in negative. */
const BLACK_ON_WHITE = '\u001b[30;107m'
const RESET = '\u001b[0m'
/** By which of a character's two modules are dark: none, the upper, the lower, both. */
const HALVES = [' ', '▀', '▄', '█']
const BORDER = 2

/** The same for a terminal: two rows of modules a line, in half blocks, with the quiet border a reader needs. */
export function terminalQr(address: string): string {
  const { side, dark } = qrModules(address)
  const lines: string[] = []
  for (let y = -BORDER; y < side + BORDER; y += 2) {
    let line = ''
    for (let x = -BORDER; x < side + BORDER; x++) line += HALVES[(dark(x, y) ? 1 : 0) + (dark(x, y + 1) ? 2 : 0)]
    lines.push(`${BLACK_ON_WHITE}${line}${RESET}`)
  }
  return lines.join('\n')
}
