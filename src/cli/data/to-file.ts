import { writeFile } from 'node:fs/promises'
import { failed, ok, problem, type Result } from '../../kernel/index.js'
import { say } from '../../words/index.js'
import { type Common, type Output, refuse, unitsOf, usage } from '../output.js'

/** Writes a file, or says why it cannot be. */
export async function written(file: string, bytes: Uint8Array | string): Promise<Result<null>> {
  try {
    await writeFile(file, bytes)
    return ok(null)
  } catch (thrown) {
    const reason = (thrown as NodeJS.ErrnoException).code ?? String(thrown)
    return failed(problem('house.file-unwritable', { file, reason }))
  }
}

/** Writes what was made, or says why it was not, and tells where it is. */
export async function toFile(file: string, pdf: Result<Uint8Array>, options: Common, output: Output): Promise<number> {
  if (!pdf.ok) return refuse(output, pdf.problem, options)
  const done = await written(file, pdf.value)
  if (!done.ok) return refuse(output, done.problem, options)
  output.out(options.json ? JSON.stringify({ file }, null, 2) : say('paper.written', { file }, unitsOf(options)))
  return 0
}

/** Where the codes lead: with nobody running it is not known, so it has to be said. */
export function baseOf({ base }: { readonly base?: string }): Result<string> {
  if (base !== undefined && /^https?:\/\/[^/\s]+$/.test(base)) return ok(base)
  const like = 'like --base http://192.168.1.20:4717'
  return failed(
    usage(base === undefined ? `Say where the bench is reached, ${like}.` : `--base is “${base}”; write it ${like}.`),
  )
}
