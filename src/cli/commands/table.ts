import { readTable } from '../../lab/index.js'
import { plain, writerFor } from '../../words/index.js'
import { listText } from '../lists.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'

/** Prints how a pasted table of times is read, line by line. Keeps nothing. */
export async function table(file: string | undefined, options: Common, output: Output): Promise<number> {
  const text = await listText(file)
  if (!text.ok) return refuse(output, text.problem, options)
  const read = readTable(text.value, writerFor(unitsOf(options)))
  if (!read.ok) return refuse(output, read.problem, options)
  if (options.json) {
    output.out(JSON.stringify(read.value, null, 2))
    return 0
  }
  for (const line of read.value.lines)
    for (const sentence of [line.read_as ?? 'Not used.', ...line.trouble.map((trouble) => trouble.sentence)])
      output.out(plain(`${String(line.number).padStart(3)}  ${sentence}`))
  output.out(
    `${read.value.count} times for ${read.value.times.length} ${read.value.times.length === 1 ? 'film' : 'films or indices'}.`,
  )
  return 0
}
