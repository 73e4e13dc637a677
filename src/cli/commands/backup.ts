import { createWriteStream } from 'node:fs'
import { type FileHandle, open, rename, unlink } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { linesOf } from '../../store/index.js'
import { openData } from '../data/open.js'
import { askServer } from '../data/server.js'
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

async function fromServer(base: string, file: string): Promise<Result<null>> {
  const answer = await askServer(base, '/api/backup')
  return answer.ok ? writeWhole(file, Readable.fromWeb(answer.value.body as never)) : answer
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
  const readable = await open(file).catch((thrown: NodeJS.ErrnoException) => thrown)
  if (readable instanceof Error)
    return refuse(output, problem('house.file-unreadable', { file, reason: readable.code ?? readable.message }))
  try {
    const done = await restoreFrom(readable)
    if (!done.ok) return refuse(output, done.problem)
    output.out(`Restored ${done.value.rows} rows from ${file}.`)
    return 0
  } finally {
    await readable.close()
  }
}

async function restoreFrom(file: FileHandle): Promise<Result<{ rows: number }>> {
  const data = await openData()
  if (!data.ok) return data
  const stream = file.createReadStream({ autoClose: false })
  if (data.value.kind === 'server') return toServer(data.value.base, stream)
  const { store } = data.value
  try {
    return await store.restore(linesOf(stream))
  } finally {
    await store.close()
  }
}

async function toServer(base: string, stream: Readable): Promise<Result<{ rows: number }>> {
  const request = {
    method: 'POST',
    headers: { 'content-type': 'application/x-ndjson' },
    body: Readable.toWeb(stream),
    duplex: 'half',
  } as unknown as RequestInit
  const answer = await askServer(base, '/api/restore', request)
  return answer.ok ? ok((await answer.value.json()) as { rows: number }) : answer
}
