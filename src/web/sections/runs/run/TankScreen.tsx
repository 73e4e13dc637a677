import { useState } from 'react'
import type { TankFollowing } from '../../../../score/index.js'
import { say } from '../../../../words/index.js'
import type { Run } from '../../../shared/api/index.js'
import { Heading, useWriter, Words } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'
import { useSounds } from '../engine/useSounds.js'
import { briefLoad } from '../names.js'
import { BathLead } from './BathLead.js'
import { Confirm } from './Confirm.js'
import { DeviceState } from './DeviceState.js'
import { NextJob } from './NextJob.js'
import { OnTheSide } from './OnTheSide.js'
import { OtherTanks } from './OtherTanks.js'
import { Said } from './Said.js'
import { Strip } from './Strip.js'
import { Thermometer } from './Thermometer.js'
import { WhyStep } from './WhyStep.js'

interface TankScreenProps {
  readonly running: Running
  readonly run: Run
  readonly tank: TankFollowing
  /** Shows another tank of the run. */
  readonly choose: (tank: string) => void
}

/** A tank under way, to be read at arm's length and worked with wet hands. */
export function TankScreen({ running, run, tank, choose }: TankScreenProps) {
  const writer = useWriter()
  const [said, setSaid] = useState<string | null>(null)
  useSounds(running)
  const { practice: speed } = run.plan
  const practice = speed === null ? [] : [say('runs.row.practice', { speed }, writer)]
  const screen = { running, tank, tell: setSaid }
  return (
    <div className="run-screen tank">
      <div className="tank-first">
        <header className="tank-head">
          <Heading title={`Tank ${tank.tank}`} />
          <p className="quiet">
            <Words>{[briefLoad(run, tank.tank), ...practice].join('; ')}</Words>
          </p>
        </header>
        <OtherTanks running={running} tank={tank} choose={choose} />
        <section className="tank-bath" aria-label="Bath">
          <BathLead running={running} tank={tank} />
          <Strip running={running} tank={tank} />
        </section>
        <div className="tank-work">
          <NextJob running={running} tank={tank} />
          <Thermometer {...screen} off={run.plan.thermometer?.off_c ?? 0} />
          <Said running={running} tank={tank} said={said} />
          <Confirm {...screen} />
        </div>
      </div>
      <OnTheSide {...screen} run={run} />
      <WhyStep tank={tank} />
      <DeviceState running={running} withTrials={false} />
    </div>
  )
}
