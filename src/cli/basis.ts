import { all, failed, type Result, readDuration, readTemperature, type UnitSystem } from '../kernel/index.js'
import {
  DEVELOPER_CLASSES,
  type DeveloperClass,
  type DeveloperKind,
  defineBasis,
  type RateLaw,
  type SheetPoint,
  type TimeBasis,
} from '../science/index.js'
import { numberOf, typed, usage } from './output.js'

/** How a developing time is stated on the command line. */
export interface BasisOptions {
  readonly point?: readonly string[]
  readonly law?: string
  readonly kind?: string
  readonly class?: string
  readonly coefficient?: string
}

const KINDS: readonly DeveloperKind[] = ['ordinary', 'single-bath', 'fixed']
const LAWS: readonly RateLaw[] = ['exponential', 'arrhenius']

/** `20C 9:30` or `20C=9:30`. */
export function pointOf(text: string, system: UnitSystem): Result<SheetPoint> {
  const cut = text.trim().match(/^(.+?°?\s*[CF]?)\s*[=,\s]\s*([^=,\s]+(?:\s*(?:min|s|sec))?)$/i)
  if (!cut) return failed(usage(`“${text}” is not a point. Write the temperature and its time, like “20C 9:30”.`))
  const temperature = typed(readTemperature(cut[1] as string, { system }))
  if (!temperature.ok) return temperature
  const time = typed(readDuration(cut[2] as string, { what: 'a developing time' }))
  return time.ok ? { ok: true, value: { temperature: temperature.value, time: time.value } } : time
}

const oneOf = <T extends string>(
  name: string,
  text: string | undefined,
  allowed: readonly T[],
  usual: T,
): Result<T> => {
  if (text === undefined) return { ok: true, value: usual }
  const found = allowed.find((one) => one === text)
  return found
    ? { ok: true, value: found }
    : failed(usage(`--${name} is “${text}”; it should be one of ${allowed.join(', ')}.`))
}

/** The basis out of the options, checked as everywhere else. */
export function basisFrom(options: BasisOptions, system: UnitSystem): Result<TimeBasis> {
  const points = all((options.point ?? []).map((text) => pointOf(text, system)))
  if (!points.ok) return points
  const kind = oneOf('kind', options.kind, KINDS, 'ordinary')
  if (!kind.ok) return kind
  const law = oneOf('law', options.law, LAWS, 'exponential')
  if (!law.ok) return law
  const developerClass = oneOf('class', options.class, Object.keys(DEVELOPER_CLASSES) as DeveloperClass[], 'unknown')
  if (!developerClass.ok) return developerClass
  const coefficient = options.coefficient === undefined ? null : numberOf('coefficient', options.coefficient)
  if (coefficient?.ok === false) return coefficient
  return defineBasis({
    kind: kind.value,
    law: law.value,
    points: points.value,
    developerClass: developerClass.value,
    ...(coefficient === null ? {} : { coefficient: coefficient.value }),
  })
}
