import { deskProblems } from './registry/desk.js'
import { sinkProblems } from './registry/sink.js'

export type { Registered } from './registry/registered.js'

/**
 * Every expected failure in one table: code, sentence, HTTP status, exit code, help anchor. Each area has its file
 * in `registry/`. `docs/errors.md` is generated from here.
 */
export const registry = { ...sinkProblems, ...deskProblems } as const

export type ProblemCode = keyof typeof registry
