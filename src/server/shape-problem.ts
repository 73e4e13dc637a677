import { type Problem, problem } from '../kernel/index.js'

/** One complaint of a schema about a request, as the validator hands it on. */
export interface Issue {
  readonly keyword: string
  readonly instancePath: string
  readonly message?: string
  readonly params: Readonly<Record<string, unknown>>
}

const LONGEST_QUOTE = 60
const partsOf = (path: string): string[] => path.split('/').filter(Boolean)

/** `/points/0/time_s` as people write it: `points[0].time_s`. */
const fieldOf = (parts: readonly string[]): string =>
  parts.map((part, i) => (/^\d+$/.test(part) ? `[${part}]` : i === 0 ? part : `.${part}`)).join('')

const valueAt = (whole: unknown, parts: readonly string[]): unknown =>
  parts.reduce<unknown>(
    (value, part) =>
      typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[part] : undefined,
    whole,
  )

/** A value short enough to be quoted; a long one is only named by its kind. */
function quoted(value: unknown): string {
  if (typeof value === 'number') return String(value).replace('-', '−')
  if (typeof value === 'string')
    return value.length <= LONGEST_QUOTE
      ? `“${value.replace(/\p{Cc}/gu, '\u{fffd}')}”`
      : `a text of ${value.length} characters`
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`
  return typeof value === 'object' && value !== null ? 'an object' : String(value)
}

const KINDS: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'a text',
  array: 'a list',
  object: 'an object',
  boolean: 'true or false',
}
const counted = (count: unknown, one: string) => `${String(count)} ${one}${count === 1 ? '' : 's'}`

/** How much there may be of a value: of a number its size, of a text its characters, of a list its items. */
function amount(params: Readonly<Record<string, unknown>>, bound: 'minimum' | 'maximum'): string {
  const limit = params[bound]
  const word = bound === 'minimum' ? 'at least' : 'at most'
  if (params.origin === 'string') return `${word} ${counted(limit, 'character')} long`
  if (params.origin === 'array') return `a list of ${word} ${counted(limit, 'item')}`
  return params.inclusive === false ? `${bound === 'minimum' ? 'above' : 'below'} ${limit}` : `${word} ${limit}`
}

/** What would be right in place of the value. */
function right({ keyword, params, message }: Issue): string {
  switch (keyword) {
    case 'invalid_type':
      return KINDS[String(params.expected)] ?? String(params.expected)
    case 'too_small':
      return amount(params, 'minimum')
    case 'too_big':
      return amount(params, 'maximum')
    case 'invalid_value':
      return `one of ${(params.values as unknown[]).map(String).join(', ')}`
    case 'invalid_format':
      if (params.format === 'regex') return message ?? 'a text of another form'
      return params.format === 'uuid' ? 'an id, as this program gives them (a UUID)' : `written as ${params.format}`
    default:
      return message ?? 'as the description of this interface has it'
  }
}

/** The first thing wrong with the shape of a request, with its place, its value, and what would be right. */
export function shapeProblem(issues: readonly Issue[], whole: unknown): Problem {
  const issue = issues[0] as Issue
  const parts = partsOf(issue.instancePath)
  const more = issues.length > 1 ? ` (${issues.length - 1} more in this request.)` : ''
  const refused = (field: string, reason: string) =>
    problem('request.invalid', { reason: `${reason}${more}` }, field === '' ? undefined : field)
  if (issue.keyword === 'unrecognized_keys') {
    const [unknown] = issue.params.keys as readonly string[]
    const field = fieldOf([...parts, unknown as string])
    return refused(field, `“${field}” is not a field of this request; its fields are listed in /api/openapi.json.`)
  }
  const field = fieldOf(parts)
  const value = valueAt(whole, parts)
  const subject = field === '' ? 'The request' : `“${field}”`
  const state = value === undefined ? (field === '' ? 'has no body' : 'is missing') : `is ${quoted(value)}`
  return refused(field, `${subject} ${state}; it should be ${right(issue)}.`)
}
