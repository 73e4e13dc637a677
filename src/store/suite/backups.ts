import { createHash } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import type { Context, Store } from '../../lab/index.js'
import { newestDataVersion } from '../index.js'
import { furnished, keep, linesOf, NOON, newBench, type Open, streamOf, timeOf, world } from './house.js'

/** Backup and restore: whole, of one moment, or refused without a trace. */
export function backupsBehave(open: Open): void {
  const at = world(3)
  let store: Store
  let context: Context
  let lines: string[]
  beforeAll(async () => {
    store = await open()
    context = await furnished(store, at)
    lines = await linesOf(store)
  })
  afterAll(() => store.close())

  it('says what it is, and holds no pairing code and no write key', async () => {
    const head = JSON.parse(lines[0] ?? '')
    expect(head).toMatchObject({ format: 'wetside-backup', version: 1, dataVersion: newestDataVersion })
    expect(head.madeAt).toBe(new Date(NOON).toISOString())
    expect(head.tables).not.toContain('pairing_codes')
    expect(head.tables).not.toContain('write_keys')
    const tables = new Set(lines.slice(1, -1).map((line) => JSON.parse(line).t))
    expect([...tables].sort()).toEqual([...head.tables].sort())
    expect(JSON.parse(lines.at(-1) ?? '')).toMatchObject({ end: true, rows: lines.length - 2 })
  })

  it('brings everything back, whatever came after', async () => {
    const later = await newBench(store, at)
    const heard = vi.fn()
    const stop = store.listen(context.bench, heard)
    const restored = await store.restore(streamOf(lines))
    const value = { tables: 30, rows: lines.length - 2, dataVersion: newestDataVersion }
    expect(restored).toEqual({ ok: true, value })
    expect(await linesOf(store)).toEqual(lines)
    expect(await store.read(later.bench, (rooms) => rooms.house.bench(later.bench))).toBeNull()
    await vi.waitFor(() => expect(heard).toHaveBeenCalled())
    stop()
    await keep(store, context, (rooms) => rooms.times.addRevision(timeOf(at.ids.next())))
    expect((await store.restore(streamOf([...lines, '']))).ok).toBe(true)
    expect(await linesOf(store)).toEqual(lines)
  })

  it('shows one moment even while writes go on', async () => {
    const seen: string[] = []
    for await (const line of store.backup()) {
      if (seen.push(line.trimEnd()) === 1)
        await keep(store, context, (rooms) => rooms.times.addRevision(timeOf(at.ids.next())))
    }
    expect(seen).toEqual(lines)
    await store.restore(streamOf(lines))
  })

  it('can be left half read', async () => {
    for await (const line of store.backup()) if (line.includes('"t"')) break
    expect(await linesOf(store)).toEqual(lines)
  })

  it('holds many rows, in batches', async () => {
    await keep(store, context, async (rooms) => {
      for (let i = 0; i < 1203; i++) await rooms.feed.tell({ kind: 'times', subject: `${i}` }, NOON)
    })
    const many = await linesOf(store)
    expect(many).toHaveLength(lines.length + 1203)
    expect((await store.restore(streamOf(many))).ok).toBe(true)
    expect(await linesOf(store)).toEqual(many)
    await store.restore(streamOf(lines))
  })

  describe('a damaged backup changes nothing and is refused', () => {
    const refused = async (damaged: readonly string[], code = 'house.backup-unreadable') => {
      const answer = await store.restore(streamOf(damaged))
      expect(answer).toMatchObject({ ok: false, problem: { code } })
      return answer.ok ? '' : answer.problem.sentence
    }

    it('when it is cut after any line, or any line is missing', async () => {
      for (let i = 0; i < lines.length; i++) {
        await refused(lines.slice(0, i))
        await refused(lines.toSpliced(i, 1))
      }
      expect(await linesOf(store)).toEqual(lines)
    })

    it('when any line is changed, cut or doubled', async () => {
      for (let i = 0; i < lines.length; i++) {
        const line = lines[i] ?? ''
        const middle = Math.floor(line.length / 2)
        const other = line[middle] === '0' ? '1' : '0'
        await refused(lines.toSpliced(i, 1, line.slice(0, middle) + other + line.slice(middle + 1)))
        await refused(lines.toSpliced(i, 1, line.slice(0, middle)))
        await refused(lines.toSpliced(i, 0, line))
      }
      expect(await linesOf(store)).toEqual(lines)
    })

    it('when two rows have changed places', async () => {
      expect(await refused([...lines.slice(0, 2), lines[3], lines[2], ...lines.slice(4)] as string[])).toContain(
        'checksum',
      )
    })

    it('when its checksum is right but its rows do not fit each other', async () => {
      const head = lines[0] ?? ''
      const orphan = lines.find((line) => line.includes('"reference_time_points"') && line.includes('"t"')) ?? ''
      await refused(signed([head, orphan]))
      const bench = lines.find((line) => line.startsWith('{"t":"benches"')) ?? ''
      await refused(signed([head, bench, bench]))
      await refused(signed([head, bench.replace('"zone"', '"no_such_column"')]))
      await refused(signed([head, bench.replace(`"created_at":${NOON}`, '"created_at":"noon"')]))
      await refused(signed([head, '{"t":"data_version","r":{"version":9,"applied_at":1}}']))
      await refused(signed([head.replace('"benches",', '"benches","write_keys",')]))
      expect(await linesOf(store)).toEqual(lines)
    })

    it('when it is of another kind, or newer than this program', async () => {
      await refused([])
      await refused(['hello'])
      await refused(['{"format":"something else"}'])
      const newer = (lines[0] ?? '').replace(/"dataVersion":\d+/, `"dataVersion":${newestDataVersion + 1}`)
      expect(await refused(signed([newer]), 'house.backup-newer')).toContain(`${newestDataVersion + 1}`)
      expect(await linesOf(store)).toEqual(lines)
    })

    it('when something follows its end', async () => {
      await refused([...lines, lines[1] ?? ''])
      expect(await linesOf(store)).toEqual(lines)
    })
  })
}

/** Lines with a right last line, as someone would forge them. */
function signed(body: readonly string[]): string[] {
  const sha256 = createHash('sha256')
    .update(body.map((line) => `${line}\n`).join(''))
    .digest('hex')
  return [...body, JSON.stringify({ end: true, rows: body.length - 1, sha256 })]
}
