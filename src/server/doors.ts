import { hostname } from 'node:os'
import type { FastifyRequest } from 'fastify'
import { failed, ok, problem, type Result } from '../kernel/index.js'
import { type Config, houseAddresses } from './config.js'

const bare = (host: string): string =>
  host
    .toLowerCase()
    .replace(/:\d+$/, '')
    .replace(/^\[|\]$/g, '')

/** The names this server answers to. A page elsewhere that points its own name at us is refused by this list. */
export function ownNames(config: Config): ReadonlySet<string> {
  const name = hostname().toLowerCase()
  return new Set(['localhost', '127.0.0.1', '::1', name, `${name}.local`, ...houseAddresses(), ...config.extraHosts])
}

/** Refuses foreign host names, and writes that a page of another origin sends. */
export function checkDoor(request: FastifyRequest, names: ReadonlySet<string>): Result<null> {
  const host = request.headers.host ?? ''
  if (!names.has(bare(host))) return failed(problem('request.host', { host, allowed: [...names] }))
  const origin = request.headers.origin
  if (origin === undefined || request.method === 'GET' || request.method === 'HEAD') return ok(null)
  return sameOrigin(origin, host) ? ok(null) : failed(problem('request.origin', { origin }))
}

function sameOrigin(origin: string, host: string): boolean {
  return URL.canParse(origin) && new URL(origin).host === host.toLowerCase()
}
