import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { beforeAll, expect, it } from 'vitest'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'
import { pairingAddress } from '../../src/server/handlers/people.js'
import { terminalQr } from '../../src/server/qr.js'
import { newPairingCode } from '../../src/server/secrets.js'

/** Whether the upper and the lower half of a character are black. */
const HALVES: Readonly<Record<string, readonly [boolean, boolean]>> = {
  ' ': [false, false],
  '▀': [true, false],
  '▄': [false, true],
  '█': [true, true],
}
const withoutColours = (line: string): string => line.replace('\u001b[30;107m', '').replace('\u001b[0m', '')

/** The terminal's half blocks as a picture, each module four pixels wide. */
function pictureOf(text: string): { data: Uint8ClampedArray; width: number; height: number; colorSpace: 'srgb' } {
  const scale = 4
  const rows = text.split('\n').flatMap((line) => {
    const cells = [...withoutColours(line)].map((character) => HALVES[character] as readonly [boolean, boolean])
    return [cells.map(([upper]) => upper), cells.map(([, lower]) => lower)]
  })
  const [width, height] = [(rows[0]?.length ?? 0) * scale, rows.length * scale]
  const data = new Uint8ClampedArray(width * height * 4).fill(255)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      if (rows[Math.floor(y / scale)]?.[Math.floor(x / scale)])
        data.fill(0, (y * width + x) * 4, (y * width + x) * 4 + 3)
  return { data, width, height, colorSpace: 'srgb' }
}

beforeAll(async () => {
  const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm')
  await prepareZXingModule({
    overrides: { wasmBinary: (await readFile(wasm)).buffer as ArrayBuffer },
    fireImmediately: true,
  })
})

it('puts the address with its one-time code into the terminal so that a reader finds it', async () => {
  const address = pairingAddress('http://192.168.1.20:4717', newPairingCode())
  const [found] = await readBarcodes(pictureOf(terminalQr(address)) as never, { formats: ['QRCode'] })
  expect(found?.text).toBe(address)
})

it('makes codes of ten clear characters, each its own', () => {
  const codes = Array.from({ length: 200 }, () => newPairingCode())
  for (const code of codes) expect(code).toMatch(/^[2-9A-HJKMNP-Z]{5}-[2-9A-HJKMNP-Z]{5}$/)
  expect(new Set(codes).size).toBe(200)
})
