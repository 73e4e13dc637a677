import {
  failed,
  type Millilitres,
  ok,
  type Result,
  readDuration,
  readVolume,
  type Seconds,
  type UnitSystem,
} from '../../kernel/index.js'
import { numberOf, typed, usage } from '../output.js'

/** The volumes among `options` that were given, by their names. */
export function volumesOf<Name extends string>(
  given: { readonly [name in Name]?: string },
  names: readonly Name[],
  system: UnitSystem,
): Result<{ readonly [name in Name]?: Millilitres }> {
  const found: { [name in Name]?: Millilitres } = {}
  for (const name of names) {
    const text = given[name]
    if (text === undefined) continue
    const volume = typed(readVolume(text, { system, what: `--${name}` }))
    if (!volume.ok) return volume
    found[name] = volume.value
  }
  return ok(found)
}

/** A clearing time; a bare number is seconds here, since no clip takes minutes by the dozen. */
export const clearingIn = (text: string): Result<Seconds> =>
  typed(readDuration(/^\d+([.,]\d+)?$/.test(text.trim()) ? `${text.trim()} s` : text, { what: 'a clearing time' }))

/** `12/25` as its two numbers. */
export function partIn(option: string, text: string): Result<readonly [number, number]> {
  const [done, of, ...rest] = text.split('/')
  if (done === undefined || of === undefined || rest.length > 0)
    return failed(usage(`--${option} is “${text}”; it should be like “12/25”: done, and what the bath carries.`))
  const first = numberOf(option, done)
  if (!first.ok) return first
  const second = numberOf(option, of)
  return second.ok ? ok([first.value, second.value]) : second
}
