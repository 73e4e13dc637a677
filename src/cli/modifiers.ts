import { all, failed, ok, type Result } from '../kernel/index.js'
import {
  type Agitation,
  agitationFactor,
  isOwnIndex,
  type Modifier,
  type PracticeFactor,
  pushFactor,
  repeatUseFactor,
  type TimeQuestion,
} from '../science/index.js'
import { say, type Writer } from '../words/index.js'
import { numbersOf } from './options.js'
import { usage } from './output.js'

/** How factors on a time are stated on the command line. */
export interface ModifierOptions {
  readonly factor?: string
  readonly ofIndex?: string
  readonly exposedAt?: string
  readonly push?: string
  readonly agitation?: Agitation
  readonly use?: string
  readonly preWet?: string
}

/** The same as numbers, as JSON has them. */
export interface Modifying {
  readonly factor?: number
  readonly ofIndex?: number
  readonly exposedAt?: number
  readonly push?: number
  readonly agitation?: Agitation
  readonly use?: number
  readonly preWet?: number
}

type Asked = Pick<TimeQuestion, 'modifiers' | 'indexes'>

/** The factors that were asked for; `ofTime` is the index that a stored time is for, where it is known. */
export function modifiersBy(options: ModifierOptions, ofTime: number | null, writer: Writer): Result<Asked> {
  const numbers = numbersOf(options, ['factor', 'ofIndex', 'exposedAt', 'push', 'use', 'preWet'])
  if (!numbers.ok) return numbers
  const { agitation } = options
  return modifiersOf({ ...numbers.value, ...(agitation === undefined ? {} : { agitation }) }, ofTime, writer)
}

/** The factors by numbers. */
export function modifiersOf(asked: Modifying, ofTime: number | null, writer: Writer): Result<Asked> {
  const { factor, ofIndex = ofTime ?? undefined, exposedAt, push, use, preWet, agitation } = asked
  if (exposedAt !== undefined && ofIndex === undefined)
    return failed(usage('Say which index the time is for, too: --of-index 400.'))
  const indexes = ofIndex === undefined || exposedAt === undefined ? undefined : { ofTime: ofIndex, exposedAt }
  const own = (name: Modifier['name'], value: number | undefined): Result<Modifier>[] =>
    value === undefined ? [] : [ok({ name, factor: value, origin: 'assumption' })]
  const shown = (found: Result<PracticeFactor>): Result<Modifier> => (found.ok ? ok(noted(found.value, writer)) : found)
  const byPractice = push === undefined && indexes !== undefined && !isOwnIndex(indexes)
  const modifiers = all([
    ...(agitation === undefined ? [] : [shown(ok(agitationFactor(agitation)))]),
    ...own('pre-wet', preWet),
    ...(byPractice ? [shown(pushFactor(indexes))] : own('push-pull', push)),
    ...(use === undefined ? [] : [shown(repeatUseFactor(use))]),
    ...own('other', factor),
  ])
  return modifiers.ok ? ok({ modifiers: modifiers.value, ...(indexes === undefined ? {} : { indexes }) }) : modifiers
}

/** A practised factor says its range, because it is no more than practice. */
const noted = ({ modifier, low, high }: PracticeFactor, writer: Writer): Modifier => ({
  ...modifier,
  note: say('time.factor.practised', { name: say(`time.factor.${modifier.name}`, {}, writer), low, high }, writer),
})
