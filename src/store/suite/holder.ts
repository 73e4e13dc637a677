/**
 * A process of its own for the tests: opens the file named by its argument, says how that went in one line of
 * JSON, and then writes for ever, naming each record once its write has been acknowledged.
 */
import { idsFrom, type Random } from '../../kernel/index.js'
import { openStore } from '../index.js'
import { keep, newBench, timeOf } from './house.js'

const clock = { now: () => Date.now() }
const random: Random = { bytes: (count) => crypto.getRandomValues(new Uint8Array(count)) }
const at = { clock, ids: idsFrom(clock, random) }
const say = (content: object) => process.stdout.write(`${JSON.stringify(content)}\n`)

const opened = await openStore({ kind: 'sqlite', file: process.argv[2] ?? '' }, at)
if (!opened.ok) {
  say({ opened: false, code: opened.problem.code, sentence: opened.problem.sentence })
  process.exit(0)
}
const store = opened.value
const context = await newBench(store, at as never)
say({ opened: true, bench: context.bench })
// The tests end it by kill -9; the bound is for the day when they do not.
for (let i = 0; i < 100_000; i++) {
  const id = at.ids.next()
  await keep(store, context, async (rooms) => {
    await rooms.times.addRevision(timeOf(id))
    await rooms.feed.tell({ kind: 'times', subject: id }, clock.now())
  })
  say({ kept: id })
}
