import { createReadStream, createWriteStream } from 'node:fs'
import { rename, unlink } from 'node:fs/promises'
import { createInterface } from 'node:readline'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { failed, ok, problem, type Result } from '../../kernel/index.js'
import type { ProblemBody } from '../../wire/index.js'
import { openData } from '../data/open.js'
import { type Output, refuse } from '../output.js'

/** Writes everything kept to one file. The file appears whole or not at all. */
export async function backup(file: string, output: Output): Promise<number> {
  const data = await openData()
  if (!data.ok) return refuse(output, data.problem)
  const whole = data.value
  const written =
    whole.kind === 'store'
      ? await writeWhole(file, Readable.from(whole.store.backup()))
      : await fromServer(whole.base, file)
  if (whole.kind === 'store') await whole.store.close()
  if (!written.ok) return refuse(output, written.problem)
  output.out(`Everything kept is in ${file}.`)
  return 0
}

async function writeWhole(file: string, source: Readable): Promise<Result<null>> {
  const part = `${file}.part`
  try {
    await pipeline(source, createWriteStream(part))
    await rename(part, file)
    return ok(null)
  } catch (thrown) {
    await unlink(part).catch(() => undefined)
    return failed(
      problem('house.file-unwritable', { file, reason: (thrown as NodeJS.ErrnoException).code ?? String(thrown) }),
    )
  }
}

const noAnswer = (base: string) =>
  failed(problem('house.data-unreachable', { reason: `the running program at ${base} does not answer` }))

async function fromServer(base: string, file: string): Promise<Result<null>> {
  const answer = await fetch(`${base}/api/backup`).catch(() => null)
  if (answer === null || !answer.ok || answer.body === null) return noAnswer(base)
  return writeWhole(file, Readable.fromWeb(answer.body as never))
}

/** Puts a backup in place of everything kept. A damaged file changes nothing. */
export async function restore(file: string, options: { readonly replace?: boolean }, output: Output): Promise<number> {
  if (!options.replace)
    return refuse(
      output,
      problem('command.usage', {
        reason: `Everything kept now would be replaced by what is in ${file}. Say so with --replace; make a backup first.`,
      }),
    )
  const data = await openData()
  if (!data.ok) return refuse(output, data.problem)
  const place = data.value
  try {
    const lines = createInterface({ input: createReadStream(file) })
    const done = place.kind === 'store' ? await place.store.restore(lines) : await toServer(place.base, file)
    if (!done.ok) return refuse(output, done.problem)
    output.out(`Restored ${done.value.rows} rows from ${file}.`)
    return 0
  } catch (thrown) {
    return refuse(
      output,
      problem('house.file-unreadable', { file, reason: (thrown as NodeJS.ErrnoException).code ?? String(thrown) }),
    )
  } finally {
    if (place.kind === 'store') await place.store.close()
  }
}

async function toServer(base: string, file: string): Promise<Result<{ rows: number }>> {
  const body = Readable.toWeb(createReadStream(file))
  const request = {
    method: 'POST',
    headers: { 'content-type': 'application/x-ndjson' },
    body,
    duplex: 'half',
  } as unknown as RequestInit
  const answer = await fetch(`${base}/api/restore`, request).catch(() => null)
  if (answer === null) return noAnswer(base)
  if (answer.ok) return ok((await answer.json()) as { rows: number })
  const { sentence } = (await answer.json()) as ProblemBody
  return failed({ ...problem('house.backup-unreadable', { reason: sentence }), sentence })
}
