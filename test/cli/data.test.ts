import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { registry } from '../../src/kernel/index.js'
import { listeningFile } from '../../src/store/index.js'
import { time } from '../support/bench.js'
import { command } from '../support/commands.js'
import { dataFolders } from '../support/program.js'
import type { Served } from '../support/server.js'

const { folder, start } = dataFolders()

const keep = (served: Served, ...times: object[]) =>
  served.ask({ method: 'POST', url: '/api/times', body: { times: times.map((one) => time(one)) } })
const asked = (...argv: string[]) => command(['time', '--at', '24C', ...argv])

describe('a stored time', () => {
  it('is found by its words, through the running program and without it', async () => {
    const served = await start()
    await keep(served, {}, { film: 'Tarn 100', exposure_index: 100 })
    const through = await asked('--stored', 'corvane ascorbate')
    expect(through.out[0]).toMatch(/^Develop 6:45/)
    await served.stop()
    expect(await asked('--stored', 'corvane ascorbate')).toEqual(through)
  })

  it('is found by its id', async () => {
    const served = await start()
    const { id } = (await keep(served, {}, {})).json.times[0]
    expect((await asked('--stored', id)).code).toBe(0)
  })

  it('that several fit is asked about, with what would tell them apart', async () => {
    const served = await start()
    const { times } = (await keep(served, { exposure_index: 400 }, { exposure_index: 800 })).json
    const { code, err } = await asked('--stored', 'corvane')
    expect(code).toBe(registry['quantity.ambiguous'].exit)
    for (const { id } of times) expect(err.join(' ')).toContain(id)
    expect((await asked('--stored', 'corvane 800')).code).toBe(0)
  })

  it('that none fits is not found', async () => {
    await keep(await start(), {})
    const { code, err } = await asked('--stored', 'tarn')
    expect(code).toBe(registry['record.not-found'].exit)
    expect(err.join(' ')).toContain('tarn')
  })
})

describe('backup and restore', () => {
  const file = () => join(folder(), 'bench.backup.ndjson')
  const rows = () => readFileSync(file(), 'utf8').trimEnd().split('\n').slice(1, -1)

  it('go through the running program and without it alike', async () => {
    const served = await start()
    await keep(served, { film: 'Kept' })
    const before = await served.everything()
    expect((await command(['backup', file()])).code).toBe(0)
    expect(rows()).toEqual(before)

    await keep(served, { film: 'Later' })
    const restored = await command(['restore', file(), '--replace'])
    expect(restored.out).toEqual([`Restored ${before.length} rows from ${file()}.`])
    expect(await served.everything()).toEqual(before)

    await keep(served, { film: 'Later' })
    await served.stop()
    expect((await command(['restore', file(), '--replace'])).code).toBe(0)
    expect((await command(['backup', file()])).code).toBe(0)
    expect(rows()).toEqual(before)
  })

  it('of a damaged file are refused by the running program in its own words, and change nothing', async () => {
    const served = await start()
    await keep(served, {})
    await command(['backup', file()])
    writeFileSync(file(), readFileSync(file(), 'utf8').replace('Corvane', 'Corvine'))
    const before = await served.everything()
    const { code, err } = await command(['restore', file(), '--replace'])
    expect(code).toBe(registry['house.backup-unreadable'].exit)
    expect(err.join(' ').match(/not a backup/g)).toHaveLength(1)
    expect(await served.everything()).toEqual(before)
  })

  it('leave no half file where the backup cannot be written', async () => {
    await command(['backup', join(folder(), 'nowhere', 'x')])
    expect(existsSync(join(folder(), 'nowhere'))).toBe(false)
  })
})

describe('data that another process holds', () => {
  it('is left alone when the program that holds it says nothing of where it listens', async () => {
    await start()
    writeFileSync(listeningFile(folder()), 'http://127.0.0.1:1\n')
    const { code, err } = await asked('--stored', 'x')
    expect(code).toBe(registry['house.data-unreachable'].exit)
    expect(err.join(' ')).toContain('http://127.0.0.1:1')
  })
})
