import { Readable } from 'node:stream'
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify'
import { type Problem, problem, type Result } from '../kernel/index.js'
import type { Actor, Context, WriteKey } from '../lab/index.js'
import { type Route, type RouteName, routes, schemas } from '../wire/index.js'
import { sendProblem } from './answer-problem.js'
import type { Call, Sent } from './call.js'
import { handlers } from './handlers/index.js'
import type { House } from './house.js'
import { sha256 } from './secrets.js'
import { benchOf, mayCall, whoIs } from './who.js'

declare module 'fastify' {
  interface FastifyRequest {
    actor: Actor
  }
}

const KEY = /^[\x21-\x7e]{8,100}$/

/** The key that makes a write safe to send twice; a write without one is simply not protected that way. */
function keyOf(request: FastifyRequest, route: Route): WriteKey | null | 'bad' {
  const key = request.headers['idempotency-key']
  // A body that is a file is a stream, which cannot be compared; restoring twice does no harm.
  if (!route.writes || route.bodyFile !== undefined || key === undefined) return null
  if (typeof key !== 'string' || !KEY.test(key)) return 'bad'
  return { key, fingerprint: sha256(`${request.method} ${request.url} ${JSON.stringify(request.body ?? null)}`) }
}

const unitsOf = async (house: House, bench: string) =>
  (await house.store.read(bench, (rooms) => rooms.house.bench(bench)))?.units ?? 'metric'

async function serve(name: RouteName, route: Route, house: House, request: FastifyRequest, reply: FastifyReply) {
  const context: Context = {
    actor: request.actor,
    bench: await benchOf(request, house),
    clock: house.clock,
    ids: house.ids,
  }
  const key = keyOf(request, route)
  if (key === 'bad')
    return sendProblem(
      reply,
      problem('request.invalid', {
        reason: 'The Idempotency-Key header holds 8 to 100 printable characters without spaces.',
      }),
    )
  const call = { house, context, key, params: request.params, query: request.query, body: request.body, request, reply }
  const handle = handlers[name] as unknown as (call: unknown) => Promise<Result<unknown>>
  const done = await handle(call as unknown as Call<RouteName>)
  if (!done.ok) return sendProblem(reply, done.problem, await unitsOf(house, context.bench))
  return typeof route.answer === 'string' ? sendFile(reply, route.answer, done.value as Sent) : reply.send(done.value)
}

function sendFile(reply: FastifyReply, mediaType: string, sent: Sent) {
  if (sent === null) return reply
  const body = sent.body instanceof Readable ? sent.body : Buffer.from(sent.body)
  return reply
    .type(mediaType)
    .header('content-disposition', `inline; filename*=UTF-8''${encodeURIComponent(sent.fileName)}`)
    .send(body)
}

/** A body of another type than the route takes; a route that takes a file is not called without one. */
function wrongType(request: FastifyRequest, route: Route): Problem | null {
  const type = request.headers['content-type'] ?? 'none'
  const wanted = route.bodyFile ?? 'application/json'
  const isRight =
    route.bodyFile === undefined
      ? request.body === undefined || type.toLowerCase().startsWith(wanted)
      : request.body instanceof Readable
  return isRight ? null : problem('request.media-type', { type, wanted })
}

/** Registers every route of the table with its schemas, so that what is documented is what is checked. */
export function registerRoutes(app: FastifyInstance, house: House): void {
  app.decorateRequest('actor', null as unknown as Actor)
  for (const [name, route] of Object.entries(routes) as [RouteName, Route][]) {
    const problems = { '4xx': schemas.ProblemBody, '5xx': schemas.ProblemBody }
    app.route({
      method: route.method,
      url: route.path,
      ...(route.bodyLimit === undefined ? {} : { bodyLimit: route.bodyLimit }),
      schema: {
        operationId: name,
        summary: route.summary,
        ...(route.params ? { params: route.params } : {}),
        ...(route.query ? { querystring: route.query } : {}),
        ...(route.body ? { body: route.body } : {}),
        response:
          typeof route.answer === 'string'
            ? {
                200: { description: route.summary, content: { [route.answer]: { schema: schemas.FileBody } } },
                ...problems,
              }
            : { 200: route.answer, ...problems },
      },
      // Who is calling is settled before the body is read, so that a stranger costs little and learns nothing.
      onRequest: async (request, reply) => {
        request.actor = await whoIs(request, house)
        const allowed = mayCall(route, request.actor.role)
        if (!allowed.ok) return sendProblem(reply, allowed.problem)
      },
      preValidation: async (request, reply) => {
        const unread = wrongType(request, route)
        if (unread !== null) return sendProblem(reply, unread)
      },
      handler: (request, reply) => serve(name, route, house, request, reply),
    })
  }
}
