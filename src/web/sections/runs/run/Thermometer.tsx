import { useState } from 'react'
import { type Celsius, writeTemperature } from '../../../../kernel/index.js'
import { type ReadingTold, type TankFollowing, tryReading } from '../../../../score/index.js'
import { say, type Writer } from '../../../../words/index.js'
import { Button, useWriter, Words } from '../../../shared/ui/index.js'
import type { Running } from '../engine/useRunning.js'
import { sayOf } from '../names.js'
import { Hold } from './Hold.js'
import type { ScreenPart } from './screen.js'

const STEP = 0.1
const toTenth = (temperature: number): Celsius => (Math.round(temperature * 10) / 10) as Celsius

/** What a reading would be worth now. */
export function triedReading(
  { score, state, now }: Running,
  { tank: name }: TankFollowing,
  temperature: Celsius,
  confirmed = false,
): ReadingTold | null {
  const plan = score.tanks.find(({ tank }) => tank.tank === name)
  const known = state.tanks.find(({ tank }) => tank === name)
  return plan === undefined || known === undefined ? null : tryReading(plan, known, now, temperature, confirmed)
}

interface ThermometerProps extends ScreenPart {
  /** How much the thermometer shows too much: figures here are what it shows, what is written down is put right. */
  readonly off: number
}

/** A reading set by steps of a tenth from where the bath should be, taken by a hold; a doubtful one asks first. */
export function Thermometer({ running, tank, tell, off }: ThermometerProps) {
  const writer = useWriter()
  const [typed, setTyped] = useState<Celsius | null>(null)
  const [asked, setAsked] = useState(false)
  const under = tank.plan.laid.find(({ index }) => index === tank.index)
  if (tank.developed === null || under?.development?.from !== 'basis' || under.outBy === 'pressed') return null
  const expected = tank.developed.temperature
  const shown = typed ?? toTenth(expected)
  const step = (by: number) => {
    setAsked(false)
    setTyped(toTenth(shown + by))
  }
  const take = () => {
    const tried = triedReading(running, tank, shown, asked)
    if (tried === null) return
    const sure = tried.verdict === 'fine' || asked
    if (tried.verdict === 'outside' || !sure) {
      tell(doubtful(tried, writer))
      setAsked(tried.verdict !== 'outside')
      return
    }
    running.write(tank.tank, under.index, { kind: 'reading', temperature: shown, confirmed: asked })
    tell(null)
    setTyped(null)
    setAsked(false)
  }
  return (
    <section className="thermometer" aria-label="Thermometer">
      <div className="lead-row">
        <h2>Thermometer</h2>
        <p className="quiet">
          <Words>{say('tank.expected', { temperature: (expected + off) as Celsius }, writer)}</Words>
        </p>
      </div>
      <div className="thermometer-row">
        <Button onClick={() => step(-STEP)} aria-label="A tenth of a degree less">
          −
        </Button>
        <Hold
          className="reading"
          label={writeTemperature((shown + off) as Celsius, writer.units)}
          more={asked ? 'hold: it is so' : 'hold to take'}
          onHeld={take}
        />
        <Button onClick={() => step(STEP)} aria-label="A tenth of a degree more">
          +
        </Button>
      </div>
    </section>
  )
}

/** Why a reading is asked about, or not taken. */
export const doubtful = (tried: ReadingTold, writer: Writer): string =>
  sayOf(`run.reading.${tried.verdict}`, tried, writer)
