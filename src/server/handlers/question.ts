import type { Celsius } from '../../kernel/index.js'
import type { Question } from '../../lab/index.js'
import type { QueryOf } from '../../wire/index.js'

/** The question a query string asks of a kept time. */
export const questionOf = (query: Omit<QueryOf<'answerTime'>, 'at_c'>, at: Celsius): Question => ({
  at,
  modifiers: query.factor === undefined ? [] : [{ name: 'other', factor: query.factor, origin: 'assumption' }],
  ...(query.thermometer_error_c === undefined ? {} : { thermometerError: query.thermometer_error_c }),
  ...(query.thermometer_id === undefined ? {} : { thermometerId: query.thermometer_id }),
})
