import { PassThrough } from 'node:stream'
import { vi } from 'vitest'
import { run } from '../../src/cli/main.js'

export interface Ran {
  readonly code: number
  readonly out: readonly string[]
  readonly err: readonly string[]
}

/** Runs one command line in this process, with `input` as its standard input; `runs` may be the program as built. */
export async function command(argv: readonly string[], input = '', runs: typeof run = run): Promise<Ran> {
  const [out, err]: [string[], string[]] = [[], []]
  const stdin = new PassThrough()
  stdin.end(input)
  const standard = vi.spyOn(process, 'stdin', 'get').mockReturnValue(stdin as never)
  const lines = (to: string[]) => (text: string) => void to.push(...text.split('\n'))
  try {
    return { code: await runs(argv, { out: lines(out), err: lines(err) }), out, err }
  } finally {
    standard.mockRestore()
  }
}
