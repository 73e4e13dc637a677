import { ok, type Result } from '../../kernel/index.js'
import { type Bench, type Context, handOverOf, labelsOf, newBench, type Rooms, wasteLog } from '../../lab/index.js'
import { atBench } from '../data/at-bench.js'
import { clock, openData } from '../data/open.js'
import { askServer } from '../data/server.js'
import { baseOf, toFile } from '../data/to-file.js'
import type { Common, Output } from '../output.js'

type Here = (context: Context, rooms: Rooms, bench: Bench) => Promise<Result<Uint8Array>>

/** Where nothing was kept yet nobody has said what paper there is. */
const newBenchOf = ({ bench, clock: now }: Context): Bench => newBench(bench, 'own', now.now(), '')

/** A file made by the running program, or here where none runs. */
async function made(path: string, here: Here): Promise<Result<Uint8Array>> {
  const data = await openData()
  if (!data.ok) return data
  if (data.value.kind === 'server') {
    const answer = await askServer(data.value.base, path)
    return answer.ok ? ok(new Uint8Array(await answer.value.arrayBuffer())) : answer
  }
  await data.value.store.close()
  return atBench({
    path,
    writes: false,
    here: async (context, rooms) =>
      here(context, rooms, (await rooms.house.bench(context.bench)) ?? newBenchOf(context)),
  })
}

export interface LabelOptions extends Common {
  readonly layout?: 'A4' | 'Letter' | 'roll'
  readonly base?: string
  readonly used?: string
}

/** Writes labels of bottles to a PDF, one a lot. */
export async function labels(
  file: string,
  codes: readonly string[],
  options: LabelOptions,
  output: Output,
): Promise<number> {
  const { layout } = options
  const used = Number(options.used ?? 0)
  const query = new URLSearchParams({ codes: codes.join(','), used: String(used), ...(layout ? { layout } : {}) })
  const pdf = await made(`/api/lots/labels.pdf?${query}`, async (context, rooms, bench) => {
    const lots = await labelsOf(context, rooms, codes)
    if (!lots.ok) return lots
    const address = baseOf(options)
    if (!address.ok) return address
    const { labelSheet } = await import('../../print/index.js')
    const sheet = { lots: lots.value, base: address.value, used, layout: layout ?? bench.paper, zone: bench.zone }
    return ok(await labelSheet({ ...sheet, printedAt: clock.now() }))
  })
  return toFile(file, pdf, options, output)
}

/** Writes the record of a hand-over to a PDF. */
export async function handOverPaper(
  entry: string,
  file: string,
  options: Common & { readonly paper?: 'A4' | 'Letter' },
  output: Output,
): Promise<number> {
  const { paper } = options
  const path = `/api/shelf-entries/${encodeURIComponent(entry)}/hand-over.pdf${paper ? `?paper=${paper}` : ''}`
  const pdf = await made(path, async (_, rooms, bench) => {
    const handOver = await handOverOf(rooms, entry)
    if (!handOver.ok) return handOver
    const { handOverRecord } = await import('../../print/index.js')
    const sheet = { bench, handOver: handOver.value, units: bench.units, paper: paper ?? bench.paper }
    return ok(await handOverRecord({ ...sheet, printedAt: clock.now() }))
  })
  return toFile(file, pdf, options, output)
}

/** Writes everything that went into jugs and out of them to a table. */
export async function writeWasteLog(file: string, options: Common, output: Output): Promise<number> {
  const table = await made('/api/shelf/waste-log.csv', async (_, rooms) =>
    ok(new TextEncoder().encode(await wasteLog(rooms))),
  )
  return toFile(file, table, options, output)
}
