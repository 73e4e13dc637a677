import Fastify from 'fastify'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { type ProblemCode, problem, registry } from '../../src/kernel/index.js'
import { sendProblem } from '../../src/server/answer-problem.js'
import { houses } from '../support/server.js'

const serve = houses()
afterEach(() => vi.restoreAllMocks())

describe('every registered problem', () => {
  it.each(Object.keys(registry) as ProblemCode[])('%s goes out with its registered status', async (code) => {
    const app = Fastify()
    app.get('/', (_request, reply) => sendProblem(reply, problem(code, {}, 'some.field')))
    const answer = await app.inject('/')
    await app.close()
    expect(answer.statusCode).toBe(registry[code].status)
    expect(answer.headers['content-type']).toContain('application/json')
    expect(answer.json()).toMatchObject({ code, help: registry[code].help, field: 'some.field' })
  })
})

describe('a bug', () => {
  it('is answered with a number to find it by, without its words, and keeps nothing', async () => {
    const served = await serve()
    const logged = vi.spyOn(console, 'error').mockImplementation(() => undefined)
    vi.spyOn(served.house.store, 'read').mockRejectedValueOnce(new Error('secret detail'))
    const answer = await served.ask({ url: '/api/times' })
    expect([answer.status, answer.json.code]).toEqual([500, 'server.bug'])
    expect(answer.text).not.toContain('secret detail')
    const [line, thrown] = logged.mock.calls[0] as [string, Error]
    expect(line).toContain(answer.json.details.reference)
    expect(answer.json.sentence).toContain(answer.json.details.reference)
    expect(thrown.message).toBe('secret detail')
  })
})
