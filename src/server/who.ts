import type { FastifyRequest } from 'fastify'
import { failed, ok, type Problem, problem, type Result } from '../kernel/index.js'
import type { Actor } from '../lab/index.js'
import type { Role, Route } from '../wire/index.js'
import type { House } from './house.js'
import { sha256 } from './secrets.js'

export const DEVICE_COOKIE = 'wetside_device'
export const BENCH_COOKIE = 'wetside_bench'
const LOOPBACK = /^(::1|(::ffff:)?127(\.\d{1,3}){3})$/

/** What proxies add; one of them is enough to tell that the caller is somebody else. */
const FORWARDED = ['forwarded', 'via', 'x-forwarded-for', 'x-forwarded-host', 'x-forwarded-proto', 'x-real-ip']

/** A call from this machine itself, not one that a proxy on it passes on. */
const fromThisMachine = (request: FastifyRequest): boolean =>
  LOOPBACK.test(request.socket.remoteAddress ?? '') &&
  FORWARDED.every((header) => request.headers[header] === undefined)

/** Who is calling: the owner by loopback, a paired device by its cookie, else nobody. */
export async function whoIs(request: FastifyRequest, house: House): Promise<Actor> {
  if (house.config.loopbackIsOwner && fromThisMachine(request)) return { role: 'owner', id: 'owner' }
  const token = request.cookies[DEVICE_COOKIE]
  if (token === undefined || token.length > 100) return { role: 'nobody', id: 'nobody' }
  const device = await house.store.read(house.homeBench, (rooms) => rooms.people.deviceByToken(sha256(token)))
  return device === null || device.removedAt !== null
    ? { role: 'nobody', id: 'nobody' }
    : { role: 'device', id: device.id }
}

/** The bench this browser has open: its own choice while that bench exists, else the house's own. */
export async function benchOf(request: FastifyRequest, house: House): Promise<string> {
  const chosen = request.cookies[BENCH_COOKIE]
  if (chosen === undefined || chosen === house.homeBench || !/^[0-9a-f-]{36}$/.test(chosen)) return house.homeBench
  const bench = await house.store.read(house.homeBench, (rooms) => rooms.house.bench(chosen))
  return bench === null ? house.homeBench : bench.id
}

/** Whether a role may use a route. */
export function mayCall(route: Pick<Route, 'roles'>, role: Role): Result<null> {
  if (route.roles.includes(role)) return ok(null)
  const refusal: Problem =
    role === 'nobody' || role === 'order-link'
      ? problem('request.who')
      : problem('request.not-allowed', { role, allowed: [...route.roles] })
  return failed(refusal)
}
