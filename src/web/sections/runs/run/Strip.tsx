import type { Celsius } from '../../../../kernel/index.js'
import { type Laid, scorePicture, type TankFollowing, type TankPlan } from '../../../../score/index.js'
import { say, type Writer, writeTimeOfDay } from '../../../../words/index.js'
import { useBench } from '../../../shared/api/index.js'
import { Drawing, useWidth, useWriter } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'

/** No text on the screen of a tank is smaller, px. */
const TEXT = 24
const HEIGHT = { developing: 204, plain: 130 } as const
/** From this width on there is room for more of it, px. */
const WIDE = { from: 520, times: 2 } as const

/** The bath under way as its stave: the area of development where there is one, the turns, and the clock. */
export function Strip({ running, tank }: { running: Running; tank: TankFollowing }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const [frame, width] = useWidth<HTMLElement>()
  const shown = tank.plan.laid.find(({ index }) => index === tank.index) ?? tank.plan.laid[0]
  const began = running.score.tanks.find(({ tank: { tank: name } }) => name === tank.tank)
  if (shown === undefined || began === undefined) return null
  const picture = width >= 280 ? pictureOf({ running, tank, shown, began, width, writer }) : null
  const until = writeTimeOfDay(Math.round(tank.zero + shown.due * 1000), zone)
  const isBath = shown.step.step === 'bath'
  return (
    <figure ref={frame} className="strip" style={{ minHeight: heightOf(shown, width) }}>
      {picture && <Drawing picture={picture} />}
      <figcaption>{say(isBath ? 'tank.pour-out-at' : 'tank.done-at', { at: until }, writer)}</figcaption>
    </figure>
  )
}

const heightOf = ({ course }: Laid, width: number): number =>
  (course === null ? HEIGHT.plain : HEIGHT.developing) * (width >= WIDE.from ? WIDE.times : 1)

interface Shown {
  readonly running: Running
  readonly tank: TankFollowing
  readonly shown: Laid
  readonly began: TankPlan
  readonly width: number
  readonly writer: Writer
}

function pictureOf({ running, tank, shown, began, width, writer }: Shown) {
  const { offset } = tank.plan.tank
  const planned = began.laid[shown.index] ?? shown
  const end = Math.max(shown.free, shown.in + planned.clockEnd - planned.in)
  const { name } = shown.step
  const developed = shown.course === null ? null : tank.developed
  return scorePicture({
    staves: [
      {
        plan: tank.plan,
        // The planned rate belongs to the bath that develops.
        began: developed === null ? null : began,
        states: new Map(tank.jobs.map(({ job, state }) => [job.id, state])),
        next: tank.next?.job.id ?? null,
        now: (running.now - tank.zero) / 1000,
        label: '',
        note: '',
        band: developed === null ? [] : bandOf(began, developed.fraction, writer),
      },
    ],
    form: 'strip',
    span: { from: offset + shown.in, to: offset + Math.max(end, shown.in + 1) },
    size: { width, height: heightOf(shown, width) },
    labels: {
      title: name,
      description:
        developed === null
          ? say('tank.strip-plain', { name }, writer)
          : say('tank.strip', { name, fraction: developed.fraction }, writer),
      hands: '',
      legend: { change: '', turn: '', area: '' },
    },
    minTextSize: TEXT,
  })
}

function bandOf({ tank: { development } }: TankPlan, fraction: number, writer: Writer): string[] {
  const temperature: Celsius | null = development?.from === 'basis' ? development.course.start : null
  const planned = temperature === null ? [] : [say('tank.planned', { temperature }, writer)]
  return [say('tank.developed', { fraction }, writer), ...planned]
}
