import { describe, expect, it } from 'vitest'
import film from '../reference/data/film-cases.json' with { type: 'json' }
import { command } from '../support/commands.js'

/** What a command prints with --json. */
const answered = async (argv: string[], input = '') => {
  const { code, out, err } = await command([...argv, '--json'], input)
  expect([code, err]).toEqual([0, []])
  return JSON.parse(out.join('\n'))
}

describe('practice cases by command', () => {
  it('P17: densities by times under the enlarger', async () => {
    for (const [blank, matched, wanted] of film.enlarger as [number, number, number][]) {
      const { densities } = await answered(['density', '--enlarger', `${blank}=${matched}`])
      expect(Math.abs(densities[0].density - wanted)).toBeLessThanOrEqual(film.tolerance.density.value)
    }
  })

  it('P18: a scanner put right near its known step, and refused far from it', async () => {
    const { known, says, far } = film.scanner
    const asked = (read: number) => ['density', '--read', String(read), '--known', `${says}=${known}`]
    const { densities } = await answered(asked(says))
    expect(densities[0].density).toBeCloseTo(film.scanner.true, 3)
    expect(densities[0].basis).toBe('one-step')
    expect((await command(asked(far))).err.join(' ')).toMatch(/outside what was calibrated/)
  })

  it('P19: zones judged from a list', async () => {
    const { read, models } = await answered(['zones', '-'], film.zones.densities.join(' '))
    expect(read.speed_met).toBe(true)
    expect(Math.abs(read.gradient - film.zones.gradient)).toBeLessThanOrEqual(film.tolerance.gradient.value)
    expect(models).toEqual([])
  })

  it('P20: the index of each frame', async () => {
    const { apertures, indexes, index, stopsUnder, normal } = film.inCamera
    // Four stops under the meter's 1/15, exactly.
    const frames = apertures.map((aperture) => `f/${aperture} 1/240`).join('\n')
    const meter = ['--iso', String(index), '--meter', `f/${normal.aperture} 1/15`, '--under', String(stopsUnder)]
    const answer = await answered(['index', ...meter], frames)
    expect(answer.frames.map((frame: { index: number }) => Math.round(frame.index))).toEqual(indexes)
    expect(answer.own).toBe(null)
  })

  it('P21: film and paper multiplied, and the room between two densities', async () => {
    const { paper } = film
    const asked = ['--gradient', paper.film, '--paper', paper.paper, '--from', paper.from, '--to', paper.to].map(String)
    const { print_gradient, room } = await answered(['range', ...asked])
    expect(print_gradient).toBeCloseTo(paper.product, 9)
    expect(Math.abs(room.log_range - paper.log)).toBeLessThanOrEqual(film.tolerance.room.value)
    expect(room.stops.toFixed(1)).toBe(paper.stops.toFixed(1))
  })
})

/** Density of a strip whose straight part has this slope, to 0.01: the toe lies about log H −2.18. */
const densityAt = (gamma: number, logH: number): string =>
  (0.22 + gamma * 0.15 * Math.log1p(Math.exp((logH + 2.184701) / 0.15))).toFixed(2)
/** Densities in the order of a 21-step tablet, exposed so that its steps run from log H 0 to −3. */
const stripOf = (gamma: number): string[] => Array.from({ length: 21 }, (_, i) => densityAt(gamma, -0.15 * i))
const behind = ['--tablet', '21-step', '--lamp', '0.05', '--base', '0.22']

describe('a strip', () => {
  it('that meets the triangle has an ISO speed, another one a speed by Δ-X that says so', async () => {
    const normal = await answered(['strip', ...behind], stripOf(0.6485).join('\n'))
    expect([normal.speed.kind, normal.speed.label]).toEqual(['iso', '100/21°'])
    const long = await answered(['strip', ...behind], stripOf(0.8).join('\n'))
    expect([long.speed.kind, long.speed.label]).toEqual(['delta-x', '100/21° by Δ-X'])
    expect(long.speed.not_iso_because).toMatch(/0\.97/)
  })

  it('says why a measure is not defined, and gives it no number', async () => {
    const { figures } = await answered(['strip', ...behind], stripOf(0.5).join('\n'))
    const radiographic = figures.find(({ name }: { name: string }) => name === 'radiographic')
    expect(radiographic).toMatchObject({ value: null, low: null, high: null })
    expect(radiographic.undefined_because).toMatch(/ends at/)
  })

  it('without lux-seconds has no speed and still its contrasts', async () => {
    const answer = await answered(['strip', '--tablet', '21-step'], stripOf(0.65).join('\n'))
    expect(answer.speed).toMatchObject({ kind: null, value: null })
    expect(answer.speed.undefined_because).not.toBe(null)
    expect(answer.figures[1].value).toBeGreaterThan(0.6)
    expect(answer.warnings.map(({ code }: { code: string }) => code)).toContain('base-from-lightest-step')
  })

  it('reads the same by named tablet, own tablet, exposures and JSON', async () => {
    const densities = stripOf(0.65)
    const steps = densities.map((density, i) => ({ log_exposure: -0.15 * i, density: Number(density) })).reverse()
    const byName = await answered(['strip', ...behind], densities.join('\n'))
    const own = densities.map((density, i) => `${(0.05 + 0.15 * i).toFixed(2)},${density}`).join('\n')
    const byOwn = await answered(['strip', '--lamp', '0.05', '--base', '0.22'], own)
    const lines = steps.map(({ log_exposure, density }) => `${log_exposure.toFixed(2)};${density}`).join('\n')
    const byExposure = await answered(['strip', '--base', '0.22'], `log lux-seconds;density\n${lines}`)
    const json = { steps, exposure: 'lux-seconds', base_fog: { density: 0.22 } }
    const byJson = await answered(['strip'], JSON.stringify(json))
    for (const other of [byOwn, byExposure, byJson])
      expect(other.figures.map(({ value }: { value: number | null }) => value?.toFixed(6))).toEqual(
        byName.figures.map(({ value }: { value: number | null }) => value?.toFixed(6)),
      )
    expect(byExposure.speed.label).toBe(byName.speed.label)
  })

  it('read by a scanner is put right, and its error is the one that is left', async () => {
    const densities = stripOf(0.65)
    const low = densities.map((density) => (Number(density) / 2).toFixed(4))
    const known = ['--known', '0.1=0.2', '--known', '0.9=1.8']
    const tablet = ['--tablet', '21-step', '--lamp', '0.05', '--base', '0.11']
    const put = await answered(['strip', ...tablet, ...known], low.join('\n'))
    const right = await answered(['strip', ...behind], densities.join('\n'))
    // A larger reading error smooths more, which moves a gradient by less than a hundredth.
    expect(Math.abs(put.figures[1].value - right.figures[1].value)).toBeLessThan(0.01)
    expect(put.reading_error).toBeGreaterThan(right.reading_error)
  })
})

describe('strips developed for several times', () => {
  const family = ['4:00 0.45', '8:00 0.65', '12:00 0.75']
    .map((entry) => entry.split(' '))
    .map(([time, gamma]) => `${time} ${stripOf(Number(gamma)).join(' ')}`)
    .join('\n')

  it('tell time, fog and speed for a contrast; contrasts alone tell the same time without them', async () => {
    const whole = await answered(['contrast', '--wanted', '0.6', ...behind], family)
    expect(whole.speed.named.name).toMatch(/\/2[01]°$/)
    expect([whole.measure, whole.base_fog]).toEqual(['g-bar', 0.22])
    expect(whole.low_s).toBeLessThan(whole.time_s)
    const contrasts = whole.strips
      .map((strip: { time_s: number; contrast: number }) => `${strip.time_s}s ${strip.contrast}`)
      .join('\n')
    const alone = await answered(['contrast', '--wanted', '0.6'], contrasts)
    expect(alone.time_s).toBeCloseTo(whole.time_s, -1)
    expect([alone.speed, alone.base_fog, alone.measure]).toEqual([null, null, null])
  })

  it('takes contrasts or strips, not both, and not neither', async () => {
    const contrasts = [
      { time_s: 240, contrast: 0.5 },
      { time_s: 480, contrast: 0.75 },
    ]
    const both = { wanted: 0.6, contrasts, strips: [] }
    for (const question of [both, { wanted: 0.6 }]) {
      const { code, err } = await command(['contrast'], JSON.stringify(question))
      expect(code).toBe(64)
      expect(err.join(' ')).toMatch(/either the contrasts/)
    }
    expect((await answered(['contrast'], JSON.stringify({ wanted: 0.62, contrasts }))).time_s).toBeCloseTo(335, 0)
  })

  it('compares by Watkins’ rule only when both of its numbers are given', async () => {
    const asked = ['contrast', '--wanted', '0.62', '--appearance', '0:20', '--watkins']
    const strips = '4:00 0.50\n8:00 0.75'
    expect((await answered([...asked, '16'], strips)).watkins_s).toBe(320)
    expect((await command(asked.slice(0, -1), strips)).err.join(' ')).toMatch(/--watkins/)
  })
})

describe('zones', () => {
  it('are never mixed: each model has its own rows, and one alone can be asked', async () => {
    const both = await answered(['zones'])
    expect(both.models.map(({ model }: { model: string }) => model)).toEqual(['no-flare', 'flare'])
    const gradients = both.models.map(({ rows }: { rows: { gradient: number }[] }) => rows.map((row) => row.gradient))
    expect(gradients[0][3]).not.toBeCloseTo(gradients[1][3], 2)
    expect((await answered(['zones', '--model', 'flare'])).models).toHaveLength(1)
  })
})

describe('control strips', () => {
  const days = (speed: number[]) => speed.map((one, i) => `day${i + 1} 0.12 ${one} 0.60`).join('\n')
  const speedChart = async (speed: number[], ...more: string[]) => {
    const answer = await answered(['control', '--aim', 'speed-step=0.6', ...more], days(speed))
    return { act: answer.act, ...answer.charts[1] }
  }

  it('wait for chance, act on a trend, a limit and a second strip that agrees', async () => {
    expect(await speedChart([0.6, 0.61, 0.59, 0.6, 0.61, 0.6])).toMatchObject({ act: false, verdict: 'leave-alone' })
    expect(await speedChart([0.6, 0.59, 0.58, 0.57, 0.56, 0.55])).toMatchObject({ act: true, verdict: 'trend' })
    expect(await speedChart([0.6, 0.71])).toMatchObject({ act: true, verdict: 'second-strip' })
    expect(await speedChart([0.6, 0.71], '--second', 'speed-step=0.72')).toMatchObject({ verdict: 'stop' })
    expect(await speedChart([0.6, 0.71], '--second', 'speed-step=0.6')).toMatchObject({ act: false })
  })

  it('that are whole strips are read at the steps the first one chooses', async () => {
    const rows = ['0.12 0.14 0.23 0.61 1.20', '0.12 0.14 0.26 0.62 1.25'].join('\n')
    const { charts } = await answered(['control', '--steps', 'film', '--aim', 'speed-step=0.23'], rows)
    expect(charts[1].deviations[1]).toBeCloseTo(0.03, 9)
    expect(charts[2].aim).toBeCloseTo((0.59 + 0.63) / 2, 9)
  })
})

describe('a fit', () => {
  it('that finds a bottom says its values and what they leave open', async () => {
    const { value, stopped, degrees_of_freedom } = await answered(['fit', 'line'], '0 1\n1 3\n2 5\n3 7\n')
    expect(value[0]).toBeCloseTo(1, 9)
    expect(value[1]).toBeCloseTo(2, 9)
    expect([stopped, degrees_of_freedom]).toEqual(['converged', 2])
  })

  it('that has none says so, and calls nothing an answer', async () => {
    // Grows ever faster, which a curve that levels off can only follow without end.
    const answer = await answered(['fit', 'rise'], '0 0\n1 1\n2 2.2\n3 3.6\n4 5.5\n')
    expect(answer.stopped).not.toBe('converged')
    expect(answer.sentence).toMatch(/^No answer/)
  })
})
