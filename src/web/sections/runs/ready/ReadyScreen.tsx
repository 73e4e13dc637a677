import type { TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import { type Run, runSheetAddress } from '../../../shared/api/index.js'
import { ButtonLink, Heading, useWriter, Words } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'
import { briefLoad } from '../names.js'
import { PlanAnswer, ScoreFigure } from '../plan/PlanAnswer.js'
import { DeviceState } from '../run/DeviceState.js'
import { Hold } from '../run/Hold.js'
import { OtherBaths } from './OtherBaths.js'
import { PourNow } from './PourNow.js'
import { SetOut } from './SetOut.js'
import { useDeveloper } from './useDeveloper.js'

/** What stands at the sink has no smaller text, px. */
const TEXT = 24

/** Before you pour: what the thermometer says, what that makes of the time, and what this device can do. */
export function ReadyScreen({ running, run, tank }: { running: Running; run: Run; tank: TankFollowing }) {
  const writer = useWriter()
  const developer = useDeveloper(running, run, tank)
  const [first] = tank.plan.tank.recipe.steps
  const begin = () => {
    running.write(tank.tank, null, { kind: 'started' })
    if (developer?.reading) running.write(tank.tank, developer.index, developer.reading)
  }
  return (
    <div className="run-screen ready">
      {running.score.tanks.length > 1 && (
        <p className="quiet">{say('ready.tank', { tank: tank.tank, load: briefLoad(run, tank.tank) }, writer)}</p>
      )}
      {developer === null ? (
        <>
          <Heading title={`Before you pour: tank ${tank.tank}`} />
          <Hold
            className="confirm"
            label={say('ready.hold-begin', { name: first?.name ?? '' }, writer)}
            onHeld={begin}
          />
        </>
      ) : (
        <PourNow developer={developer} thermometer={run.plan.thermometer} onPour={begin} />
      )}
      <SetOut run={run} tank={tank} />
      <OtherBaths run={run} tank={tank} developer={developer?.shown ?? null} />
      <section>
        <h2>The plan</h2>
        <PlanAnswer score={running.score} />
        <ScoreFigure name={tank.plan.tank.recipe.name} score={running.score} text={TEXT} />
        {run.plan.practice !== null && (
          <p className="quiet">
            <Words>{say('plan.practice', {}, writer)}</Words>
          </p>
        )}
        <div className="row">
          <a className="btn" href={runSheetAddress(run.id)} target="_blank" rel="noreferrer">
            Print the bench sheet
          </a>
          <ButtonLink href={`/runs/${run.id}/paper`}>Type in from paper</ButtonLink>
          <ButtonLink href="/runs">All runs</ButtonLink>
        </div>
      </section>
      <DeviceState running={running} withTrials />
    </div>
  )
}
