import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { celsius, expectOk, minutes, seconds, type UnitSystem } from '../../kernel/index.js'
import { type BasisInput, defineBasis, developingTime, type TimeBasis } from '../../science/index.js'
import { type Box, boxOf, overlap, within } from './boxes.js'
import type { Drawing, Mark, TextMark } from './drawing.js'
import { timeGraph } from './time-graph.js'

const labels = {
  title: 'Developing time against temperature',
  description: 'In words.',
  sheet: 'the sheet: 18.0 to 24.0 °C',
  beyond: 'beyond the sheet',
  doubt: 'give or take',
  reference: '9:30 on the sheet',
  caption: 'time on a log scale; bath held steady',
}

const points = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([at, time]) => ({ temperature: celsius(at), time: minutes(time) }))
const basis = (input: BasisInput): TimeBasis => expectOk(defineBasis(input))

const BASES: Readonly<Record<string, TimeBasis>> = {
  'four points': basis({ kind: 'ordinary', points: points([18, 11.5], [20, 9.5], [22, 8], [24, 6.75]) }),
  'one point': basis({ kind: 'ordinary', points: points([20, 9.5]) }),
  'short times': basis({ kind: 'ordinary', points: points([20, 3.5], [28, 1.5]) }),
  'long times': basis({ kind: 'ordinary', points: points([18, 60], [25, 20]) }),
  'flat points': basis({ kind: 'ordinary', points: points([20, 8], [22, 8], [24, 8]) }),
  'many points': basis({
    kind: 'ordinary',
    points: Array.from({ length: 21 }, (_, i) => ({ temperature: celsius(10 + i), time: seconds(1200 - 40 * i) })),
  }),
  'a fixed time': basis({ kind: 'fixed', points: points([37.8, 3.25]) }),
  'a single bath': basis({ kind: 'single-bath', points: points([21, 7], [24, 6], [27, 5]) }),
}
const SIZES = [
  { width: 340, height: 320 },
  { width: 560, height: 420 },
]

const texts = (drawing: Drawing): TextMark[] => drawing.marks.filter((mark) => mark.kind === 'text')
const ofKind = <K extends Mark['kind']>(drawing: Drawing, kind: K) =>
  drawing.marks.filter((mark): mark is Extract<Mark, { kind: K }> => mark.kind === kind)

/** Every number in a mark, wherever it stands. */
const numbers = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbers)
      : []

function draw(
  of: TimeBasis,
  at: number | null,
  units: UnitSystem = 'metric',
  size = SIZES[0] ?? { width: 0, height: 0 },
): Drawing {
  const asked = at === null ? null : expectOk(developingTime(of, celsius(at)))
  return timeGraph({ basis: of, asked, units, size, labels, minTextSize: 14 })
}

/** Temperatures over the whole range that the basis answers for. */
function answered(of: TimeBasis): number[] {
  const temperatures = Array.from({ length: 19 }, (_, i) => 10 + 1.9 * i)
  return [...temperatures, of.reference.temperature].filter((at) => developingTime(of, celsius(at)).ok)
}

/** What is wrong with the labels: outside the drawing, or on one another. */
function faults(drawing: Drawing): string[] {
  const frame: Box = { left: 0, top: 0, right: drawing.width, bottom: drawing.height }
  const boxes = texts(drawing).map((mark) => ({ text: mark.text, box: boxOf(mark) }))
  return boxes.flatMap(({ text, box }, i) => [
    ...(within(box, frame) ? [] : [`“${text}” outside`]),
    ...boxes.slice(i + 1).flatMap((other) => (overlap(box, other.box) ? [`“${text}” on “${other.text}”`] : [])),
  ])
}

describe.each(Object.entries(BASES))('the graph of %s', (_, of) => {
  it.each(SIZES)('keeps its labels inside and apart at $width by $height, whatever is asked', (size) => {
    for (const units of ['metric', 'us'] as const)
      for (const at of [null, ...answered(of)]) expect(faults(draw(of, at, units, size))).toEqual([])
  })

  it('writes the asked time large and the asked temperature', () => {
    for (const at of answered(of)) {
      const strong = texts(draw(of, at)).filter((mark) => mark.strong)
      expect(strong.map((mark) => mark.size)).toEqual([21])
      expect(texts(draw(of, at)).some((mark) => mark.text === `${at.toFixed(1)}\u202f°C`)).toBe(true)
    }
  })

  it('shows every point of the sheet', () => {
    expect(ofKind(draw(of, null), 'circle')).toHaveLength(of.points.length)
  })
})

/** The time at a height, read off the figures on the axis as a person would. */
function readTime(drawing: Drawing, y: number): number {
  const figures = texts(drawing).flatMap((mark) => {
    const [, whole, last] = /^(\d+)(?::(\d\d)|\u202fmin)$/u.exec(mark.text) ?? []
    const onAxis = mark.anchor === 'end' && !mark.strong && whole !== undefined
    return onAxis ? [{ time: Number(whole) * 60 + Number(last ?? 0), y: mark.at[1] - 0.34 * mark.size }] : []
  })
  const [low, high] = [figures.at(0), figures.at(-1)]
  if (low === undefined || high === undefined) throw new Error('The axis has no figures.')
  return low.time * (high.time / low.time) ** ((y - low.y) / (high.y - low.y))
}

describe('the asked point', () => {
  it('stands at its time', () => {
    for (const at of [17, 19.3, 21.6, 24, 26]) {
      const of = BASES['four points'] as TimeBasis
      const drawing = draw(of, at)
      const [diamond] = ofKind(drawing, 'diamond')
      const expected = expectOk(developingTime(of, celsius(at))).time
      expect(readTime(drawing, diamond?.at[1] ?? 0) / expected).toBeCloseTo(1, 9)
    }
  })

  it('is absent when nothing is asked', () => {
    expect(ofKind(draw(BASES['one point'] as TimeBasis, null), 'diamond')).toEqual([])
  })
})

describe('the halo of a label', () => {
  const haloOf = (at: number, of = BASES['four points'] as TimeBasis) => {
    const drawing = draw(of, at, 'metric', SIZES[1])
    const [sheet] = ofKind(drawing, 'area').filter(({ tone }) => tone === 'sheet')
    const edges = (sheet?.points ?? []).map(([x]) => x)
    const [cold, warm] = [Math.min(...edges), Math.max(...edges)]
    return texts(drawing)
      .filter(({ halo }) => halo !== null)
      .map((mark) => {
        const { left, right } = boxOf(mark)
        const middle = (left + right) / 2
        return { halo: mark.halo, over: middle >= cold && middle <= warm ? 'sheet' : 'ground' }
      })
  }

  it('is of the tone that the label lies on', () => {
    const labels = [17, 19.3, 21.6, 26].flatMap((at) => haloOf(at))
    expect(new Set(labels.map(({ halo }) => halo))).toEqual(new Set(['sheet', 'ground']))
    for (const { halo, over } of labels) expect(halo).toBe(over)
  })
})

describe('the line', () => {
  const tones = (name: string) =>
    ofKind(draw(BASES[name] as TimeBasis, null), 'path').map((path) => path.dash !== undefined)

  it('is solid inside the sheet and dotted beyond both its ends', () => {
    expect(tones('four points')).toEqual([true, true, false])
  })
  it('is dotted only where the sheet has one point', () => {
    expect(tones('one point')).toEqual([true, true])
  })
  it('stays inside the sheet of a single bath', () => {
    expect(tones('a single bath')).toEqual([false])
  })
  it('is not drawn for a fixed time', () => {
    expect(tones('a fixed time')).toEqual([])
  })
})

describe('any basis', () => {
  const anyPoints = fc
    .array(fc.tuple(fc.integer({ min: 0, max: 45 }), fc.integer({ min: 20, max: 7200 })), {
      minLength: 1,
      maxLength: 12,
    })
    .map((pairs) => [...new Map(pairs)].sort(([a], [b]) => a - b))
    // Warmer is faster, as an ordinary developer must be.
    .map((pairs) => {
      const times = pairs.map(([, time]) => time).sort((a, b) => b - a)
      return pairs.map(([at], i) => ({ temperature: celsius(at), time: seconds(times[i] as number) }))
    })

  it('keeps its figures apart and its caption inside at any width, also where long times crowd the axis of degrees', () => {
    const of = basis({ kind: 'ordinary', points: points([13, 360], [38, 5]) })
    const faulty = Array.from({ length: 61 }, (_, i) => 300 + i).flatMap((width) =>
      faults(draw(of, null, 'us', { width, height: 320 })).map((fault) => `${width}: ${fault}`),
    )
    expect(faulty).toEqual([])
  })

  it('is drawn in finite numbers, its labels inside and apart', () => {
    let drawn = 0
    fc.assert(
      fc.property(anyPoints, fc.integer({ min: 0, max: 45 }), fc.boolean(), (sheet, at, us) => {
        const of = defineBasis({ kind: 'ordinary', points: sheet })
        if (!of.ok) return
        drawn += 1
        const asked = developingTime(of.value, celsius(at)).ok ? at : null
        const drawing = draw(of.value, asked, us ? 'us' : 'metric')
        expect(drawing.marks.flatMap(numbers).every(Number.isFinite)).toBe(true)
        expect(faults(drawing)).toEqual([])
      }),
      { seed: 20261, numRuns: 120 },
    )
    expect(drawn).toBeGreaterThan(25)
  })
})
