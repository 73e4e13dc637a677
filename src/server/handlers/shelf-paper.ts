import { instantText, ok } from '../../kernel/index.js'
import { type Bench, handOverOf, labelsOf, type Rooms, wasteLog } from '../../lab/index.js'
import { say } from '../../words/index.js'
import { type Caller, type Handlers, read } from '../call.js'

/** Setting paper takes a library of its own, which is loaded with the first that is asked for. */
const print = () => import('../../print/index.js')
const benchOf = async (caller: Caller, rooms: Rooms): Promise<Bench> =>
  (await rooms.house.bench(caller.context.bench)) as Bench

export const shelfPaperHandlers: Handlers<'lotLabels' | 'handOverRecord' | 'wasteLog'> = {
  lotLabels: async (call) => {
    const { codes, layout, used } = call.query
    const found = await read(call, async (rooms) => {
      const lots = await labelsOf(call.context, rooms, codes.split(','))
      return lots.ok ? ok({ lots: lots.value, bench: await benchOf(call, rooms) }) : lots
    })
    if (!found.ok) return found
    const { lots, bench } = found.value
    const body = await (await print()).labelSheet({
      ...{ lots, used, layout: layout ?? bench.paper, zone: bench.zone },
      base: call.house.address(),
      printedAt: call.house.clock.now(),
    })
    return ok({ body, fileName: `${say('label.title', {}, bench.units)}.pdf` })
  },
  handOverRecord: async (call) => {
    const found = await read(call, async (rooms) => {
      const handOver = await handOverOf(rooms, call.params.id)
      return handOver.ok ? ok({ handOver: handOver.value, bench: await benchOf(call, rooms) }) : handOver
    })
    if (!found.ok) return found
    const { handOver, bench } = found.value
    const paper = call.query.paper ?? bench.paper
    const printedAt = call.house.clock.now()
    const body = await (await print()).handOverRecord({ bench, handOver, units: bench.units, paper, printedAt })
    return ok({ body, fileName: `${say('hand-over.title', {}, bench.units)}.pdf` })
  },
  wasteLog: async (call) => {
    const body = new TextEncoder().encode(await read(call, wasteLog))
    return ok({ body, fileName: `waste-${instantText(call.house.clock.now()).slice(0, 10)}.csv` })
  },
}
