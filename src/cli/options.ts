import { all, failed, ok, type Result } from '../kernel/index.js'
import { numberOf, usage } from './output.js'

/** The options among `names` that were given, as plain numbers. */
export function numbersOf<Name extends string>(
  given: { readonly [name in Name]?: string },
  names: readonly Name[],
): Result<{ readonly [name in Name]?: number }> {
  const stated = names.filter((name) => given[name] !== undefined)
  const numbers = all(stated.map((name) => numberOf(flagOf(name), given[name] as string)))
  if (!numbers.ok) return numbers
  return ok(Object.fromEntries(stated.map((name, i) => [name, numbers.value[i]])) as { [name in Name]?: number })
}

/** `readingError` as it is typed: `reading-error`. */
const flagOf = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)

/** `0.085=0.10` as its two numbers. */
export function pairOf(option: string, text: string, like: string): Result<readonly [number, number]> {
  const [one, other, ...rest] = text.split('=')
  if (one === undefined || other === undefined || rest.length > 0)
    return failed(usage(`--${option} is “${text}”; it should be like “${like}”.`))
  const both = all([numberOf(option, one), numberOf(option, other)])
  return both.ok ? ok(both.value as unknown as readonly [number, number]) : both
}
