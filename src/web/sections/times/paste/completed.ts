import type { PastedReading, TimeStatement } from '../../../../wire/index.js'

interface Completed {
  /** Ready to be kept; empty while a name is missing. */
  readonly times: TimeStatement[]
  readonly count: number
  /** The cells that are left out, as they stand in the text. */
  readonly left: readonly string[]
  /** What the text does not name. */
  readonly wants: readonly ('film' | 'developer')[]
}

/** The times that were read, with the names typed beside the text where the text has none. */
export function completed(reading: PastedReading | null, names: { film: string; developer: string }): Completed {
  const read = reading?.times ?? []
  const wants = (['film', 'developer'] as const).filter((what) => read.some((time) => time[what].trim() === ''))
  const times = read.map((time) => ({
    ...time,
    film: time.film.trim() || names.film.trim(),
    developer: time.developer.trim() || names.developer.trim(),
  }))
  const whole = times.every((time) => time.film !== '' && time.developer !== '')
  const left = (reading?.lines ?? [])
    .flatMap((line) => line.trouble.map(({ cell }) => cell))
    .filter((cell) => cell !== '')
  return { times: whole ? times : [], count: reading?.count ?? 0, left, wants }
}
