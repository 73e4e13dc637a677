import cookie from '@fastify/cookie'
import swagger from '@fastify/swagger'
import Fastify, { type FastifyInstance } from 'fastify'
import {
  jsonSchemaTransform,
  jsonSchemaTransformObject,
  serializerCompiler,
  validatorCompiler,
} from 'fastify-type-provider-zod'
import { problem } from '../kernel/index.js'
import { type Route, routes } from '../wire/index.js'
import { problemOfError, sendProblem } from './answer-problem.js'
import { checkDoor, ownNames } from './doors.js'
import type { House } from './house.js'
import { registerInterfacePage } from './interface-page.js'
import { registerRoutes } from './routes.js'
import { registerWeb } from './web.js'

const POLICY = [
  "default-src 'self'",
  "img-src 'self' data: blob:",
  "style-src 'self' 'unsafe-inline'",
  "object-src 'none'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
  "form-action 'self'",
].join('; ')

/** The document of the interface; bodies that are files have no schema to check and are added here. */
const documented: typeof jsonSchemaTransformObject = (input) => {
  const document = jsonSchemaTransformObject(input) as OpenApi
  for (const [operationId, route] of Object.entries(routes) as [string, Route][]) {
    if (route.bodyFile === undefined) continue
    const operation = Object.values(document.paths)
      .flatMap((path) => Object.values(path))
      .find((one) => one.operationId === operationId)
    if (operation)
      operation.requestBody = {
        required: true,
        content: { [route.bodyFile]: { schema: { type: 'string', format: 'binary' } } },
      }
  }
  return document as unknown as ReturnType<typeof jsonSchemaTransformObject>
}

interface OpenApi {
  readonly paths: Record<string, Record<string, { operationId?: string; requestBody?: unknown }>>
}

/** The whole HTTP interface over a house. */
export async function createApp(house: House): Promise<FastifyInstance> {
  const app = Fastify({
    logger: false,
    bodyLimit: 1024 * 1024,
    routerOptions: { maxParamLength: 200 },
    forceCloseConnections: true,
    frameworkErrors: (_error, request, reply) =>
      sendProblem(reply, problem('request.bad-address', { path: request.url.slice(0, 200) })),
  })
  app.setValidatorCompiler(validatorCompiler)
  app.setSerializerCompiler(serializerCompiler)
  await app.register(cookie)
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: { title: 'Wetside', version: '1', description: 'The HTTP interface of one darkroom bench.' },
    },
    transform: jsonSchemaTransform,
    transformObject: documented,
  })
  const names = ownNames(house.config)
  app.addHook('onRequest', async (request, reply) => {
    const door = checkDoor(request, names)
    if (!door.ok) return sendProblem(reply, door.problem)
    reply.headers({
      'content-security-policy': POLICY,
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
    })
  })
  // Fastify reads plain text unasked; here a body is JSON or a file.
  app.removeContentTypeParser('text/plain')
  // A backup comes in as a stream, line by line; it is never held whole.
  app.addContentTypeParser('application/x-ndjson', (_request, payload, done) => done(null, payload))
  app.setErrorHandler((error, request, reply) => {
    const known = problemOfError(error as never, request)
    if (known !== null) return sendProblem(reply, known)
    const reference = house.ids.next()
    console.error(`${reference} ${request.method} ${request.url}`, error)
    return sendProblem(reply, problem('server.bug', { reference }))
  })
  await app.register(async (scope) => registerRoutes(scope, house))
  await registerInterfacePage(app)
  await registerWeb(app, house)
  return app
}
