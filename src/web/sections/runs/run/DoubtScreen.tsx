import { type ClockCandidate, type ClockDoubt, candidatesOf } from '../../../../score/index.js'
import { say, type Writer, writeTimeOfDay } from '../../../../words/index.js'
import { useBench } from '../../../shared/api/index.js'
import { Heading, useWriter, Words } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'
import { stepName } from '../names.js'
import { Hold } from './Hold.js'

const CHOICES = ['by-wall', 'continued'] as const

/** After a reload that cannot know the time: both answers with what they would mean; nothing is guessed. */
export function DoubtScreen({ running, doubt }: { running: Running; doubt: ClockDoubt }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const { score, events, clock, write } = running
  const candidates = candidatesOf(score, events, doubt, clock.read())
  const tank = score.tanks[0]?.tank.tank ?? ''
  return (
    <div className="run-screen">
      <Heading title={say('doubt.title', {}, writer)} />
      <p>{say('doubt.why', {}, writer)}</p>
      {CHOICES.map((choice) => {
        const candidate = candidates[choice]
        if (candidate === null) return null
        const at = writeTimeOfDay(candidate.now, zone)
        return (
          <section key={choice} className="ready-way" aria-label={say(`doubt.${choice}`, { at }, writer)}>
            <h2>{say(`doubt.${choice}`, { at }, writer)}</h2>
            <p className="quiet">
              <Words>{meaningOf(candidate, writer)}</Words>
            </p>
            <Hold
              label={`Hold: it is ${at}`}
              onHeld={() => write(tank, null, { kind: 'clock-settled', life: doubt.life, choice })}
            />
          </section>
        )
      })}
    </div>
  )
}

function meaningOf({ following }: ClockCandidate, writer: Writer): string {
  const [tank] = following.tanks
  if (tank === undefined) return ''
  const index = tank.index ?? tank.awaited?.index ?? 0
  return say('doubt.means', { name: stepName(tank.plan.tank.recipe, index), left: tank.timeLeft }, writer)
}
