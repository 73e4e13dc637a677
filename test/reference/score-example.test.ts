import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { celsius, expectOk, minutes, writeDuration } from '../../src/kernel/index.js'
import { defineBasis } from '../../src/science/index.js'
import { fold, follow, type Happening, plan, type RunEvent, SHIPPED_RECIPES } from '../../src/score/index.js'

/** The rows of the page's worked example: what they say by what they are called. */
function pageRows(): ReadonlyMap<string, string> {
  const text = readFileSync(new URL('../../docs/science/score.md', import.meta.url), 'utf8')
  const table = text.split('<!-- example: score -->')[1]?.split('<!-- end -->')[0] ?? ''
  const cells = table
    .trim()
    .split('\n')
    .slice(2)
    .map((line) => line.split('|').map((cell) => cell.trim()))
  return new Map(cells.map(([, name, value]) => [name as string, value as string]))
}
const rows = pageRows()
const says = (name: string): string => {
  const value = rows.get(name)
  if (value === undefined) throw new Error(`The page has no row “${name}”.`)
  return value
}
const seconds = (clock: string): number => {
  const [whole, rest] = clock.split(':').map(Number) as [number, number]
  return whole * 60 + rest
}

const ZERO = 1_800_000_000_000
/** Seconds of pouring before the developer's clock starts. */
const POUR = 15
const [recipe] = SHIPPED_RECIPES
if (recipe === undefined) throw new Error('No list of baths is shipped.')
const points = [{ temperature: celsius(20), time: minutes(8) }]
const basis = expectOk(defineBasis({ kind: 'ordinary', points, coefficient: 2.5 }))
const development = { from: 'basis', basis, temperature: celsius(20) } as const
const score = expectOk(plan([{ recipe, conditions: { tank: 'A', development } }]))

const event = (clock: number, happening: Happening): RunEvent => {
  const monotonicMs = (POUR + clock) * 1000
  const stamp = { device: 'phone', life: 'one', monotonicMs, wallMs: ZERO + monotonicMs, serverOffsetMs: ZERO }
  return { ...happening, ...stamp, id: `e${clock}`, tank: 'A', bath: 0, actor: 'someone' }
}
function at(clock: number, events: readonly RunEvent[]) {
  const [tank] = follow(score, fold(score, events), ZERO + (POUR + clock) * 1000).tanks
  if (tank === undefined) throw new Error('No tank is followed.')
  return tank
}
const clockOf = (instant: number | undefined): string => {
  const second = ((instant ?? Number.NaN) - ZERO) / 1000 - POUR
  return writeDuration(Math.round(second) as never)
}

describe('worked example of the page on the score', () => {
  const [degrees, when] = says('reading').split(' °C at ') as [string, string]
  const read = seconds(when)
  const poured = event(0, { kind: 'poured-in' })
  const reading = event(read, { kind: 'reading', temperature: celsius(Number(degrees)), confirmed: false })

  it('the plan', () => {
    expect(clockOf(at(1, [poured]).pourOut?.at)).toBe(says("pour out by the plan, on the bath's clock"))
  })

  it('what the reading does', () => {
    const tank = at(read, [poured, reading])
    expect(`${tank.developed?.done.toFixed(1)} s`).toBe(says('done by then'))
    expect(clockOf(tank.pourOut?.at)).toBe(says('pour out'))
    expect(`${tank.changed?.by.toFixed(1)} s`).toBe(says('sooner by'))
  })

  it('the record', () => {
    const out = seconds(says('poured out at'))
    const { developed } = at(out + 60, [poured, reading, event(out, { kind: 'poured-out' })])
    const percent = (fraction: number | undefined) => `${((fraction ?? Number.NaN) * 100).toFixed(1)} %`
    expect(percent(developed?.fraction)).toBe(says('development against plan'))
    expect(`${percent(developed?.low)} to ${percent(developed?.high)}`).toBe(says('by the thermometer'))
  })
})
