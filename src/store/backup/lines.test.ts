import { Readable } from 'node:stream'
import { setImmediate } from 'node:timers/promises'
import { expect, it } from 'vitest'
import { linesOf } from './lines.js'

it('loses no line to a reader that is busy with something else first', async () => {
  const lines = Array.from({ length: 5000 }, (_, i) => `line ${i}`)
  const reading = linesOf(
    Readable.from([Buffer.from(lines.slice(0, 10).join('\n')), Buffer.from(`\n${lines.slice(10).join('\n')}\n`)]),
  )
  for (let turn = 0; turn < 20; turn++) await setImmediate()
  const read: string[] = []
  for await (const line of reading) read.push(line)
  expect(read).toEqual(lines)
})
