import { failed, ok, problem, type Result } from '../../../kernel/index.js'
import type { RollRegister } from '../../../wire/index.js'
import { type ReadTable, readTable } from './table.js'

/** A register as it was exported, JSON or a table; the first thing wrong with it is named with its place. */
export async function readRegister(text: string): Promise<Result<RollRegister>> {
  const read = /^\ufeff?\s*\{/.test(text) ? fromJson(text) : readTable(text)
  if (!read.ok) return read
  // Loaded when there is a register to judge: the shapes take longer to load than most of what this folder does.
  const { schemas } = await import('../../../wire/index.js')
  const judged = schemas.RollRegister.safeParse(read.value.register)
  if (judged.success) return ok(judged.data)
  const [issue] = judged.error.issues
  const path = (issue?.path ?? []).map(String)
  return failed(
    problem('register.unreadable', {
      where: placeOf(path, read.value),
      reason: issue?.message ?? 'it has another shape',
    }),
  )
}

type Read = Pick<ReadTable, 'lines'> & { readonly register: unknown }

function fromJson(text: string): Result<Read> {
  try {
    return ok({ register: JSON.parse(text.replace(/^\ufeff/, '')), lines: {} })
  } catch {
    return failed(problem('register.unreadable', { where: 'the file', reason: 'it is neither a table nor JSON' }))
  }
}

/** `line 14, frames` of a table; `rolls.3.statement.frames` of JSON. */
function placeOf(path: readonly string[], { lines }: Read): string {
  const [list = '', index = ''] = path
  const line = lines[list]?.[Number(index)]
  if (line === undefined) return path.join('.') || 'the file'
  return `line ${line}, ${
    path
      .slice(2)
      .filter((part) => part !== 'statement')
      .join('.') || 'the row'
  }`
}
