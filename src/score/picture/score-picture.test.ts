import { describe, expect, it } from 'vitest'
import { celsius, expectOk, minutes } from '../../kernel/index.js'
import { defineBasis, dose } from '../../science/index.js'
import type { RunEvent } from '../events/definition.js'
import { fold } from '../events/fold.js'
import { follow } from '../follow/follow.js'
import { courseUntil } from '../plan/course.js'
import { plan } from '../plan/plan.js'
import { isBath } from '../recipe/kinds.js'
import { threeBathAcid } from '../recipe/lists/black-and-white.js'
import { SHIPPED_RECIPES } from '../recipe/shipped.js'
import { developing } from './band.js'
import { boxOf, overlap, within } from './boxes.js'
import type { Drawing, Mark, TextMark } from './drawing.js'
import type { ScorePictureInput, StaveInput } from './score-definition.js'
import { scorePicture } from './score-picture.js'

const basis = expectOk(
  defineBasis({ kind: 'ordinary', points: [{ temperature: celsius(20), time: minutes(9.5) }], coefficient: 2.4 }),
)
const alone = expectOk(defineBasis({ kind: 'single-bath', points: [{ temperature: celsius(24), time: minutes(6) }] }))
const labels = {
  title: 'The score',
  description: 'In words.',
  hands: 'Hands',
  legend: { change: 'bath change: drain, pour, opening turns', turn: 'turns', area: 'area is development' },
}
const SIZES = [
  { form: 'strip', size: { width: 340, height: 190 }, minTextSize: 24 },
  { form: 'strip', size: { width: 360, height: 120 }, minTextSize: 14 },
  { form: 'page', size: { width: 1000, height: 420 }, minTextSize: 14 },
  { form: 'page', size: { width: 520, height: 300 }, minTextSize: 12 },
] as const

const score = expectOk(
  plan(
    ['A', 'B'].map((tank, i) => ({
      recipe: threeBathAcid,
      conditions: { tank, offset: minutes(12 * i), development: { from: 'basis', basis, temperature: celsius(20) } },
    })),
  ),
)
const stave = (tank: (typeof score.tanks)[number]): StaveInput => ({
  plan: tank,
  began: null,
  states: new Map(),
  next: null,
  now: null,
  label: tank.tank.tank,
  note: '3 reels',
  band: ['Developer', '9:30 at 20.0 °C'],
})

const ZERO = 1_800_000_000_000
const stamp = { device: 'phone', life: 'one', serverOffsetMs: ZERO, tank: 'A', bath: 0, actor: 'someone' }
const events: RunEvent[] = [
  { ...stamp, id: 'a', monotonicMs: 15_000, wallMs: ZERO, kind: 'poured-in' },
  {
    ...stamp,
    id: 'b',
    monotonicMs: 195_000,
    wallMs: ZERO,
    kind: 'reading',
    temperature: celsius(20.8),
    confirmed: false,
  },
]
const running = (now: number): StaveInput => {
  const [tank] = follow(score, fold(score, events), ZERO + now * 1000).tanks
  const [began] = score.tanks
  if (tank === undefined || began === undefined) throw new Error('No tank is followed.')
  return {
    ...stave(tank.plan),
    began,
    now,
    next: tank.next?.job.id ?? null,
    states: new Map(tank.jobs.map(({ job, state }) => [job.id, state])),
    band: ['planned 20.0 °C', '65 % developed'],
  }
}

const texts = (drawing: Drawing): TextMark[] => drawing.marks.filter((mark) => mark.kind === 'text')
const numbers = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbers)
      : []

/** What is wrong with the labels: outside the drawing, or on one another. */
function faults(drawing: Drawing): string[] {
  const frame = { left: 0, top: 0, right: drawing.width, bottom: drawing.height }
  const boxes = texts(drawing).map((mark) => ({ text: mark.text, box: boxOf(mark) }))
  return boxes.flatMap(({ text, box }, i) => [
    ...(within(box, frame) ? [] : [`“${text}” outside`]),
    ...boxes.slice(i + 1).flatMap((other) => (overlap(box, other.box) ? [`“${text}” on “${other.text}”`] : [])),
  ])
}

describe.each(SIZES)('the score as a $form of $size.width by $size.height', (form) => {
  const check = (input: Pick<ScorePictureInput, 'staves' | 'span'>) => {
    const drawing = scorePicture({ ...form, ...input, labels })
    expect(faults(drawing)).toEqual([])
    expect(drawing.marks.flatMap(numbers).every(Number.isFinite)).toBe(true)
    expect(texts(drawing).every(({ size }) => size >= form.minTextSize)).toBe(true)
    return drawing
  }

  it('keeps its labels inside and apart for every shipped list', () => {
    for (const recipe of SHIPPED_RECIPES) {
      const timed = recipe.steps.find((step) => isBath(step) && step.time.law === 'by-developing-time')
      const of = timed?.kind === 'single-bath' ? alone : basis
      const development =
        timed === undefined ? null : ({ from: 'basis', basis: of, temperature: of.reference.temperature } as const)
      const [tank] = expectOk(plan([{ recipe, conditions: { tank: 'A', development } }])).tanks
      if (tank !== undefined) check({ staves: [stave(tank)] })
    }
  })

  it('keeps them apart all through a run, whole or zoomed to the developer', () => {
    for (const now of [0, 16, 60, 194, 196, 300, 560, 700]) {
      check({ staves: [running(now)] })
      check({ staves: [running(now)], span: { from: 0, to: 600 } })
    }
  })

  if (form.form === 'page') {
    it('holds two tanks, their names, and their jobs on one line of hands', () => {
      const drawing = check({ staves: score.tanks.map(stave) })
      const words = texts(drawing).map(({ text }) => text)
      for (const word of ['A', 'B', 'Hands', 'Developer', 'Fix']) expect(words).toContain(word)
    })
  }
})

describe('the jobs of a run', () => {
  it('are solid when done, open when to come, and the next one is black', () => {
    const { marks } = scorePicture({ ...SIZES[1], staves: [running(300)], labels })
    const blocks = marks.filter((mark) => mark.kind === 'area' && (mark.tone === 'ink' || mark.tone === 'accent'))
    const { plan: become, states } = running(300)
    const done = become.jobs.filter(({ id }) => states.get(id) === 'done')
    expect(blocks.map((mark) => 'tone' in mark && mark.tone)).toEqual([...done.map(() => 'accent'), 'ink'])
  })
})

describe('the area of the developer’s band', () => {
  /** Area of a polygon by the surveyor's rule. */
  const areaOf = (mark: Extract<Mark, { kind: 'area' }>): number => {
    const { points } = mark
    const twice = points.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = points[(i + 1) % points.length] ?? [x, y]
      return sum + x * nextY - nextX * y
    }, 0)
    return Math.abs(twice) / 2
  }

  it('is the development done, in a warm run as in the plan', () => {
    const drawn = (input: StaveInput) => {
      const drawing = scorePicture({ ...SIZES[2], staves: [input], labels })
      const wash = drawing.marks.find((mark) => mark.kind === 'area' && mark.tone === 'wash')
      return wash?.kind === 'area' ? areaOf(wash) : Number.NaN
    }
    const doseUntil = (input: StaveInput, until: number) => {
      const bath = developing(input.plan)
      return expectOk(dose(basis, courseUntil(bath?.course ?? [], until - (bath?.in ?? 0)))).equivalent
    }
    const [early, late] = [running(255), running(455)]
    expect(drawn(late) / drawn(early)).toBeCloseTo(doseUntil(late, 455) / doseUntil(early, 255), 3)
  })
})
