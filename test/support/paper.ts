import { spawn } from 'node:child_process'
import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader'

/** A code found on paper: what it holds, and where its left upper corner lies, in points. */
export interface FoundCode {
  readonly text: string
  readonly x: number
  readonly y: number
}
/** A word in print and the box around it, in points from the left upper corner of its page. */
interface FoundWord {
  readonly text: string
  readonly x: number
  readonly y: number
}

const DOTS_PER_INCH = 150
const POINTS_PER_DOT = 72 / DOTS_PER_INCH

/** Makes the reader of codes ready; once a file. */
export async function readerOfCodes(): Promise<void> {
  const wasm = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm')
  const bytes = (await readFile(wasm)).buffer as ArrayBuffer
  await prepareZXingModule({ overrides: { wasmBinary: bytes }, fireImmediately: true })
}

/** Every QR code on a page of a PDF, as a scanner sees it. */
export async function codesOn(pdf: Uint8Array, page = 1): Promise<FoundCode[]> {
  const only = ['-f', String(page), '-l', String(page)]
  const picture = await tool('pdftoppm', ['-png', '-gray', '-r', String(DOTS_PER_INCH), ...only, '-'], pdf)
  const found = await readBarcodes(new Uint8Array(picture), { formats: ['QRCode'], maxNumberOfSymbols: 100 })
  return found.map(({ text, position }) => ({
    text,
    x: position.topLeft.x * POINTS_PER_DOT,
    y: position.topLeft.y * POINTS_PER_DOT,
  }))
}

/** Every word on a page of a PDF. */
export async function wordsOn(pdf: Uint8Array, page = 1): Promise<FoundWord[]> {
  const boxes = await tool('pdftotext', ['-bbox', '-f', `${page}`, '-l', `${page}`, '-', '-'], pdf)
  const word = /<word xMin="([\d.]+)" yMin="([\d.]+)"[^>]*>([^<]*)<\/word>/g
  return [...boxes.toString('utf8').matchAll(word)].map(([, x, y, text]) => ({
    x: Number(x),
    y: Number(y),
    text: text as string,
  }))
}

/** Runs a program of the operating system on a file that is given to its standard input. */
function tool(name: string, argv: readonly string[], input: Uint8Array): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    const child = spawn(name, argv, { stdio: ['pipe', 'pipe', 'inherit'] })
    const chunks: Buffer[] = []
    child.stdout.on('data', (chunk: Buffer) => chunks.push(chunk))
    child.once('error', reject)
    child.once('close', (code) =>
      code === 0 ? resolve(Buffer.concat(chunks)) : reject(new Error(`${name} ended with ${code}`)),
    )
    child.stdin.end(input)
  })
}
