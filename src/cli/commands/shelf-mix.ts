import {
  failed,
  type Grams,
  grams,
  instantText,
  type Millilitres,
  nameKey,
  ok,
  problem,
  type Result,
  readVolume,
} from '../../kernel/index.js'
import { finishMix, listProducts } from '../../lab/index.js'
import { mixSheet, productToMix, sourcesFor } from '../../planning/index.js'
import { saltNamed } from '../../science/index.js'
import type { Posted, ProductRecord, Shelf } from '../../wire/index.js'
import { mixDoubt, mixLines, plain, say, writerFor } from '../../words/index.js'
import { tell } from '../answer.js'
import { atBench } from '../data/at-bench.js'
import { clock } from '../data/open.js'
import { type Common, numberOf, type Output, refuse, typed, unitsOf, usage } from '../output.js'
import { booked, containerNamed, lookAtShelf, tellPosted } from '../shelf/at.js'

export interface MixOptions extends Common {
  readonly parts?: string
  readonly rolls?: string
  readonly scale?: string
  readonly into?: string
  readonly note?: string
}

/** Prints the numbered sheet of a mix, and with a bottle named finishes it: the lot is made, its packages taken from. */
export async function mix(product: string, volume: string, options: MixOptions, output: Output): Promise<number> {
  const planned = await sheetFor(product, volume, options)
  if (!planned.ok) return refuse(output, planned.problem, options)
  const { sheet, shelf, record, parts, total } = planned.value
  if (options.into === undefined) return tellSheet(sheet, options, output)
  const stops = sheet.doubts.find(({ stops: stopped }) => stopped)
  if (stops !== undefined) return refuse(output, usage(plain(mixDoubt(stops, writerFor(unitsOf(options))))), options)
  const bottle = containerNamed(shelf, options.into)
  if (!bottle.ok) return refuse(output, bottle.problem, options)
  const done = await booked<never, Posted>({
    path: '/api/lots',
    schema: 'FinishMix',
    body: {
      product_id: record.id,
      parts,
      from: sheet.takes.map(({ id, amount }) => ({ container_id: id, amount })),
      into: [{ container_id: bottle.value, ml: total }],
      note: options.note ?? '',
    },
    here: (context, rooms, body) => finishMix(context, rooms, body),
  })
  return tellPosted(done, options, output)
}

async function sheetFor(product: string, volume: string, options: MixOptions) {
  const total = typed(readVolume(volume, { system: unitsOf(options), what: 'the volume' }))
  if (!total.ok) return total
  const parts = partsIn(options.parts)
  if (!parts.ok) return parts
  const rolls = options.rolls === undefined ? ok(null) : numberOf('rolls', options.rolls)
  if (!rolls.ok) return rolls
  const scale = options.scale === undefined ? ok(null) : numberOf('scale', options.scale)
  if (!scale.ok) return scale
  const found = await findProduct(product)
  if (!found.ok) return found
  const shelf = await lookAtShelf()
  if (!shelf.ok) return shelf
  const record = found.value
  const sheet = mixSheet({
    product: productToMix(record),
    volume: total.value as Millilitres,
    parts: parts.value,
    sources: sourcesFor(record, shelf.value.packages),
    today: instantText(clock.now()).slice(0, 10),
    ...(rolls.value === null ? {} : { rolls: rolls.value }),
    ...(scale.value === null ? {} : { scaleStep: grams(scale.value) as Grams }),
  })
  if (!sheet.ok) return sheet
  return ok({ sheet: sheet.value, shelf: shelf.value as Shelf, record, parts: parts.value, total: Number(total.value) })
}

/** `1+4`, or none for stock. A colon has two readings and is not taken here. */
function partsIn(text: string | undefined): Result<number[] | null> {
  if (text === undefined) return ok(null)
  if (!/^\d+(?:[.,]\d+)?(?:\s*\+\s*\d+(?:[.,]\d+)?)+$/.test(text.trim()))
    return failed(usage(`--parts is “${text}”; write it with a plus, like 1+4: a colon is read two ways.`))
  return ok(text.split('+').map((part) => Number(part.trim().replace(',', '.'))))
}

async function findProduct(name: string): Promise<Result<ProductRecord>> {
  const found = await atBench<{ products: ProductRecord[] }>({
    path: '/api/products',
    writes: false,
    here: async (_, rooms) => ok(await listProducts(rooms)),
  })
  if (!found.ok) return found
  const all = found.value.products
  const record = all.find((one) => one.id === name || nameKey(one.name) === nameKey(name))
  return record === undefined ? failed(problem('record.not-found', { what: 'product', id: name })) : ok(record)
}

type Sheet = Extract<Awaited<ReturnType<typeof sheetFor>>, { ok: true }>['value']['sheet']

function tellSheet(sheet: Sheet, options: Common, output: Output): number {
  const w = writerFor(unitsOf(options))
  const doubts = sheet.doubts.map((doubt) => mixDoubt(doubt, w))
  const name = (id: string) => {
    const salt = saltNamed(id)
    return salt.ok ? salt.value.name : id
  }
  const steps = mixLines(sheet.steps, name, w).flatMap(({ says, below }, i) => [
    `${i + 1}. ${says}`,
    ...below.map((line) => `   ${line}`),
  ])
  const before = doubts.length === 0 ? [] : [say('mix.before', {}, w), ...doubts.map((line) => `- ${line}`), '']
  return tell({ view: sheet, lines: [...before, ...steps], working: () => [] }, options, output)
}
