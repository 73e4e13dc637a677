import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify'
import { hasZodFastifySchemaValidationErrors, isResponseSerializationError } from 'fastify-type-provider-zod'
import { type Problem, problem, registry, sentenceIn, type UnitSystem } from '../kernel/index.js'
import type { ProblemBody } from '../wire/index.js'
import { type Issue, shapeProblem } from './shape-problem.js'

/** Sends a problem with the status its registry entry gives, its sentence in the units of the bench. */
export function sendProblem(reply: FastifyReply, found: Problem, units: UnitSystem = 'metric'): FastifyReply {
  const { status, help } = registry[found.code]
  const body: ProblemBody = {
    code: found.code,
    sentence: sentenceIn(found, units),
    details: { ...found.details },
    help,
    ...(found.field === undefined ? {} : { field: found.field }),
  }
  return reply.code(status).type('application/json; charset=utf-8').send(JSON.stringify(body))
}

/** The part of the request that a schema complains of. */
const partOf = (error: FastifyError, request: FastifyRequest): unknown =>
  error.validationContext === 'params'
    ? request.params
    : error.validationContext === 'querystring'
      ? request.query
      : request.body

/** The problem that an error thrown on the way in stands for; null when it is a bug. */
export function problemOfError(error: FastifyError, request: FastifyRequest): Problem | null {
  if (hasZodFastifySchemaValidationErrors(error))
    return shapeProblem(error.validation as unknown as Issue[], partOf(error, request))
  if (isResponseSerializationError(error)) return null
  switch (error.code) {
    case 'FST_ERR_CTP_BODY_TOO_LARGE':
      return problem('request.too-large', { most: `${Math.round(request.routeOptions.bodyLimit / 1024)} KiB` })
    case 'FST_ERR_CTP_INVALID_MEDIA_TYPE':
      return problem('request.media-type', {
        type: request.headers['content-type'] ?? 'none',
        wanted: 'application/json',
      })
    case 'FST_ERR_CTP_INVALID_JSON_BODY':
    case 'FST_ERR_CTP_EMPTY_JSON_BODY':
      return problem('request.not-json', { reason: error.message.replace(/\.$/, '') })
    default:
      return (error.statusCode ?? 500) < 500
        ? problem('request.invalid', { reason: `The request could not be read: ${error.message.replace(/\.$/, '')}.` })
        : null
  }
}
