import type { Readable } from 'node:stream'
import type { FastifyReply, FastifyRequest } from 'fastify'
import type { Result } from '../kernel/index.js'
import type { Context, Rooms, WriteKey } from '../lab/index.js'
import type { AnswerOf, BodyOf, ParamsOf, QueryOf, RouteName, routes } from '../wire/index.js'
import { writerFor } from '../words/index.js'
import type { House } from './house.js'

/** Who calls, at which bench, and with which write key. */
export interface Caller {
  readonly house: House
  readonly context: Context
  readonly key: WriteKey | null
}

/** One checked call: the parts of the request, already validated by the route's schemas. */
export interface Call<N extends RouteName> extends Caller {
  readonly params: ParamsOf<N>
  readonly query: QueryOf<N>
  readonly body: BodyOf<N>
  readonly request: FastifyRequest
  readonly reply: FastifyReply
}

/** An answer that is not JSON: a file, or null when the handler writes to the connection itself. */
export type Sent = { readonly body: Readable | Uint8Array; readonly fileName: string } | null

/** What a handler answers with: what the route's schema says, or a file. */
type Answered<N extends RouteName> = (typeof routes)[N]['answer'] extends string ? Sent : AnswerOf<N>
export type Handler<N extends RouteName> = (call: Call<N>) => Promise<Result<Answered<N>>>
export type Handlers<N extends RouteName> = { readonly [K in N]: Handler<K> }

/** A use case that changes something, in one transaction with its feed rows and its write key. */
export const write = <T>(
  caller: Caller,
  work: (context: Context, rooms: Rooms) => Promise<Result<T>>,
): Promise<Result<T>> => caller.house.store.write(caller.context, caller.key, (rooms) => work(caller.context, rooms))

export const read = <T>(caller: Caller, work: (rooms: Rooms) => Promise<T>): Promise<T> =>
  caller.house.store.read(caller.context.bench, work)

/** Writes quantities as the caller's bench has them. */
export const writer = async (caller: Caller) =>
  writerFor((await read(caller, (rooms) => rooms.house.bench(caller.context.bench)))?.units ?? 'metric')
