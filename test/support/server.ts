import { join } from 'node:path'
import type { FastifyInstance } from 'fastify'
import { afterAll, expect } from 'vitest'
import { expectOk, type ProblemCode, registry, SetClock } from '../../src/kernel/index.js'
import { type Config, type House, openHouse } from '../../src/server/index.js'
import { everythingIn, NOON } from './bench.js'
import { tempFolders } from './folders.js'

/** The address of a phone on the house network. */
export const PHONE = '192.168.7.23'
export const NAME = 'darkroom.example'

export interface Asked {
  readonly method?: string
  readonly url: string
  readonly body?: unknown
  readonly headers?: Record<string, string>
  readonly cookies?: Record<string, string>
  /** The caller's address; this machine's own when left out. */
  readonly from?: string
}
export interface Answered {
  readonly status: number
  readonly headers: Record<string, string | string[] | number | undefined>
  readonly text: string
  readonly raw: Buffer
  readonly cookies: readonly { name: string; value: string }[]
  // biome-ignore lint/suspicious/noExplicitAny: answers of every route; the tests look at what they expect.
  readonly json: any
}

export interface Served {
  readonly app: FastifyInstance
  readonly house: House
  readonly clock: SetClock
  ask(asked: Asked): Promise<Answered>
  /** Pairs a phone and gives what it sends along from then on. */
  pair(name?: string): Promise<{ id: string; as: Pick<Asked, 'from' | 'cookies'> }>
  everything(): Promise<string[]>
}

/** Serves houses on true SQLite files without listening anywhere. */
export function houses(): (changes?: Partial<Config>) => Promise<Served> {
  const folder = tempFolders()
  const open: Served[] = []
  afterAll(async () => {
    for (const { app, house } of open) {
      await app.close()
      await house.store.close()
    }
  })
  return async (changes = {}) => {
    const clock = new SetClock(NOON)
    const config: Config = {
      host: '127.0.0.1',
      port: 0,
      database: { kind: 'sqlite', file: join(folder(), 'wetside.db') },
      loopbackIsOwner: true,
      extraHosts: [NAME],
      ...changes,
    }
    const { app, house } = expectOk(await openHouse(config, clock))
    await app.ready()
    const served = servedBy(app, house, clock)
    open.push(served)
    return served
  }
}

export function servedBy(app: FastifyInstance, house: House, clock: SetClock): Served {
  const ask = async ({ method = 'GET', url, body, headers = {}, cookies, from = '127.0.0.1' }: Asked) => {
    const answer = await app.inject({
      method: method as 'GET',
      url,
      headers: { host: 'localhost', ...headers },
      remoteAddress: from,
      ...(body === undefined ? {} : { payload: body as object }),
      ...(cookies === undefined ? {} : { cookies }),
    })
    const isJson = answer.payload !== '' && String(answer.headers['content-type'] ?? '').startsWith('application/json')
    return {
      status: answer.statusCode,
      headers: answer.headers,
      text: answer.payload,
      raw: answer.rawPayload,
      cookies: answer.cookies,
      json: isJson ? JSON.parse(answer.payload) : undefined,
    } as Answered
  }
  const pair = async (name = 'Phone') => {
    const code = await ask({ method: 'POST', url: '/api/pairing-codes', body: {} })
    const paired = await ask({
      method: 'POST',
      url: '/api/pair',
      body: { code: code.json.code, name },
      from: PHONE,
    })
    expect(paired.status).toBe(200)
    const cookies = Object.fromEntries(paired.cookies.map((cookie) => [cookie.name, cookie.value]))
    return { id: paired.json.id as string, as: { from: PHONE, cookies } }
  }
  return { app, house, clock, ask, pair, everything: () => everythingIn(house.store) }
}

/** An answer that refuses: the registered status of its code, and a sentence with every value filled in. */
export function expectRefusal(answer: Answered, code: ProblemCode): void {
  expect([answer.status, answer.json?.code]).toEqual([registry[code].status, code])
  expect(answer.json.help).toBe(registry[code].help)
  expect(answer.json.sentence).toMatch(/^[^{}]{10,600}[.?]$/)
  expect(answer.json.sentence).not.toContain(' missing)')
}
