import { expect, it } from 'vitest'
import { command } from './commands.js'

/** A command line that cannot be answered: its exit code, and words that its sentence has to hold. */
export type Refused = [what: string, argv: string[], code: number, words: RegExp, input?: string]

/** Each ends with its exit code, nothing printed as an answer, and a sentence without a hole in it. */
export function refuses(cases: readonly Refused[], first: readonly string[] = []): void {
  it.each([...cases])('%s', async (_, argv, code, words, input) => {
    const ran = await command([...first, ...argv], input)
    expect([ran.code, ran.out]).toEqual([code, []])
    const said = ran.err.join(' ')
    expect(said).toMatch(words)
    expect(said).not.toMatch(/missing\)|undefined|NaN|\[object/)
  })
}
