import type { Celsius } from '../../../../kernel/index.js'
import { type Laid, scorePicture, type TankFollowing, type TankPlan } from '../../../../score/index.js'
import { say, type Writer, writeTimeOfDay } from '../../../../words/index.js'
import { useBench } from '../../../shared/api/index.js'
import { Drawing, useSize, useWriter } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'

/** No text on the screen of a tank is smaller, px. */
const TEXT = 24
/** Less than this shows nothing that could be read at arm's length, more is no clearer, px. */
const PICTURE = { least: 126, most: { developing: 560, plain: 200 }, narrowest: 280 } as const

/**
 * The bath under way as its stave: the area of development where there is one, the turns, and the clock. It takes the
 * room that the counts and the hold leave, and gives way to them where there is too little.
 */
export function Strip({ running, tank }: { running: Running; tank: TankFollowing }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const [frame, room] = useSize<HTMLDivElement>()
  const shown = tank.plan.laid.find(({ index }) => index === tank.index) ?? tank.plan.laid[0]
  const began = running.score.tanks.find(({ tank: { tank: name } }) => name === tank.tank)
  if (shown === undefined || began === undefined) return null
  const size = { width: room.width, height: Math.min(room.height, mostOf(shown)) }
  const fits = size.width >= PICTURE.narrowest && size.height >= PICTURE.least
  const picture = fits ? pictureOf({ running, tank, shown, began, size, writer }) : null
  const until = writeTimeOfDay(Math.round(tank.zero + shown.due * 1000), zone)
  const isBath = shown.step.step === 'bath'
  return (
    <figure className="strip">
      <div ref={frame} className="strip-room">
        {picture && <Drawing picture={picture} />}
      </div>
      <figcaption>{say(isBath ? 'tank.pour-out-at' : 'tank.done-at', { at: until }, writer)}</figcaption>
    </figure>
  )
}

const mostOf = ({ course }: Laid): number => (course === null ? PICTURE.most.plain : PICTURE.most.developing)

interface Shown {
  readonly running: Running
  readonly tank: TankFollowing
  readonly shown: Laid
  readonly began: TankPlan
  readonly size: { readonly width: number; readonly height: number }
  readonly writer: Writer
}

function pictureOf({ running, tank, shown, began, size, writer }: Shown) {
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
    size,
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
