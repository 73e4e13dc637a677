import { join } from 'node:path'
import fastifyStatic from '@fastify/static'
import type { FastifyInstance } from 'fastify'
import { problem } from '../kernel/index.js'
import { sendProblem } from './answer-problem.js'
import type { House } from './house.js'

/** The built pages: hashed assets for ever, and the one page for every address that is not the interface's. */
export async function registerWeb(app: FastifyInstance, house: House): Promise<void> {
  const folder = house.webFolder
  if (folder !== null)
    await app.register(fastifyStatic, {
      root: join(folder, 'assets'),
      prefix: '/assets/',
      immutable: true,
      maxAge: '365d',
      wildcard: true,
    })
  app.setNotFoundHandler((request, reply) => {
    // Only the path counts: a page may be asked for with a decimal in its query, such as ?at=21.6.
    const path = request.url.split('?')[0] ?? ''
    // A roll's number may have a full stop in it; every other page's address that has one is a file's.
    const isFile = /\.\w+$/.test(path) && !path.startsWith('/r/')
    const isPage = request.method === 'GET' && !path.startsWith('/api') && !path.startsWith('/assets/') && !isFile
    if (folder === null || !isPage)
      return sendProblem(reply, problem('request.no-such-route', { path: request.url.slice(0, 200) }))
    return reply.header('cache-control', 'no-cache').sendFile('index.html', folder)
  })
}
