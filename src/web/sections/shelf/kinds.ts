import type { ThermometerRecord, ThermometerStatement } from '../../../wire/index.js'

type Kind = ThermometerStatement['kind']
type Method = ThermometerRecord['checks'][number]['method']

export const KINDS: readonly (readonly [Kind, string])[] = [
  ['spirit', 'spirit in glass'],
  ['mercury', 'mercury in glass'],
  ['digital', 'digital'],
  ['dial', 'dial with a stem'],
  ['other', 'another kind'],
]
export const kindName = (kind: Kind): string => KINDS.find(([name]) => name === kind)?.[1] ?? kind

export const METHOD_NAMES: Record<Method, string> = {
  entered: 'entered from its paper',
  comparison: 'beside a trusted one',
  ice: 'in melting ice',
  boiling: 'in boiling water',
  'class-set': 'in a set of several',
}
