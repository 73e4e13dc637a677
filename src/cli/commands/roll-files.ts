import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { failed, ok, problem, type Result } from '../../kernel/index.js'
import {
  type Bench,
  type Context,
  importRegister,
  type Rooms,
  readRegister,
  registerTable,
  rollRegister,
  slipOf,
  stickerRolls,
} from '../../lab/index.js'
import type { ImportedRegister, RollRegister } from '../../wire/index.js'
import { say } from '../../words/index.js'
import { atBench } from '../data/at-bench.js'
import { clock, openData } from '../data/open.js'
import { askServer } from '../data/server.js'
import { baseOf, toFile, written } from '../data/to-file.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'
import { rollsOf } from './bench-rolls.js'

/** Writes the whole register to a file: a table when its name ends with .csv, else JSON. */
export async function exportRolls(file: string, options: Common, output: Output): Promise<number> {
  const found = await atBench<RollRegister>({
    path: '/api/rolls/register',
    writes: false,
    here: async (_, rooms) => ok(await rollRegister(rooms)),
  })
  if (!found.ok) return refuse(output, found.problem, options)
  const text = file.endsWith('.csv') ? registerTable(found.value) : `${JSON.stringify(found.value, null, 2)}\n`
  const done = await written(file, text)
  if (!done.ok) return refuse(output, done.problem, options)
  output.out(
    options.json
      ? JSON.stringify({ file, rolls: found.value.rolls.length }, null, 2)
      : say('register.exported', { rolls: found.value.rolls.length, file }, unitsOf(options)),
  )
  return 0
}

/** Takes an exported register in. */
export async function importRolls(file: string, options: Common, output: Output): Promise<number> {
  const text = await readFile(file, 'utf8').catch((thrown: NodeJS.ErrnoException) => thrown)
  if (typeof text !== 'string')
    return refuse(output, problem('house.file-unreadable', { file, reason: text.code ?? text.message }), options)
  const register = await readRegister(text)
  if (!register.ok) return refuse(output, register.problem, options)
  const taken = await atBench<ImportedRegister>({
    path: '/api/rolls/register',
    body: { text },
    writes: true,
    here: (context, rooms) => importRegister(context, rooms, register.value),
  })
  if (!taken.ok) return refuse(output, taken.problem, options)
  output.out(
    options.json ? JSON.stringify(taken.value, null, 2) : say('register.imported', taken.value, unitsOf(options)),
  )
  return 0
}

export interface PaperOptions extends Common {
  readonly paper?: 'A4' | 'Letter'
  readonly base?: string
  readonly order?: string
  readonly used?: string
  readonly token?: string
}

type Here = (context: Context, rooms: Rooms, bench: Bench, base: string) => Promise<Result<Uint8Array>>

/** A paper set by the running program, or here where none runs. */
async function paper(
  path: string,
  query: URLSearchParams,
  options: PaperOptions,
  here: Here,
): Promise<Result<Uint8Array>> {
  const data = await openData()
  if (!data.ok) return data
  if (data.value.kind === 'server') {
    const answer = await askServer(data.value.base, `${path}?${query}`)
    return answer.ok ? ok(new Uint8Array(await answer.value.arrayBuffer())) : answer
  }
  await data.value.store.close()
  const base = baseOf(options)
  if (!base.ok) return base
  return atBench({
    path,
    writes: false,
    here: async (context, rooms) => {
      const bench = await rooms.house.bench(context.bench)
      if (bench === null) return failed(problem('record.not-found', { what: 'bench', id: 'own' }))
      return here(context, rooms, bench, base.value)
    },
  })
}

/** Writes paired stickers of rolls, or of an order, to a PDF. */
export async function stickers(
  file: string,
  numbers: readonly string[],
  options: PaperOptions,
  output: Output,
): Promise<number> {
  const rolls = await rollsOf(numbers)
  if (!rolls.ok) return refuse(output, rolls.problem, options)
  const ids = rolls.value.map(({ id }) => id)
  const used = Number(options.used ?? 0)
  const query = new URLSearchParams({
    ...(options.order === undefined ? {} : { order_id: options.order }),
    ...(ids.length === 0 ? {} : { roll_ids: ids.join(',') }),
    ...(options.paper === undefined ? {} : { paper: options.paper }),
    used: String(used),
  })
  const pdf = await paper('/api/rolls/stickers.pdf', query, options, async (_, rooms, bench, base) => {
    const wanted = await stickerRolls(rooms, options.order ?? null, ids)
    if (!wanted.ok) return wanted
    const { stickerSheet } = await import('../../print/index.js')
    const sheet = { rolls: wanted.value, base, paper: options.paper ?? bench.paper, used, printedAt: clock.now() }
    return ok(await stickerSheet(sheet))
  })
  return toFile(file, pdf, options, output)
}

/** Writes the slip of an order to a PDF; with the token of a link that stands, its code is on it. */
export async function slip(order: string, file: string, options: PaperOptions, output: Output): Promise<number> {
  const { token } = options
  const query = new URLSearchParams({
    ...(token === undefined ? {} : { token }),
    ...(options.paper === undefined ? {} : { paper: options.paper }),
  })
  const path = `/api/orders/${encodeURIComponent(order)}/slip.pdf`
  const pdf = await paper(path, query, options, async (context, rooms, bench, base) => {
    const hash = token === undefined ? null : createHash('sha256').update(token).digest('hex')
    const found = await slipOf(context, rooms, order, hash)
    if (!found.ok) return found
    const { linkAddress, orderSlip } = await import('../../print/index.js')
    const { link, ...said } = found.value
    const shown =
      link === null || token === undefined ? null : { address: linkAddress(base, token), expiresAt: link.expiresAt }
    const sheet = { ...said, bench, link: shown, paper: options.paper ?? bench.paper, printedAt: clock.now() }
    return ok(await orderSlip(sheet))
  })
  return toFile(file, pdf, options, output)
}
