import { useEffect, useState } from 'react'
import { type Celsius, writeTemperature } from '../../../../kernel/index.js'
import { say } from '../../../../words/index.js'
import type { Run } from '../../../shared/api/index.js'
import { deviceClock } from '../../../shared/platform/index.js'
import { Button, Heading, useWriter, Words } from '../../../shared/ui/index.js'
import { writeCount } from '../run/BathLead.js'
import { Hold } from '../run/Hold.js'
import type { ReadyDeveloper } from './useDeveloper.js'

const STEP = 0.1
/** So much colder than the plan the water should be that is to bring the developer there, °C; warmer likewise. */
const WATER = 5

interface PourNowProps {
  readonly developer: ReadyDeveloper
  readonly thermometer: Run['plan']['thermometer']
  readonly onPour: () => void
}

/** Pour now for so long in place of the plan's time, or bring the developer to the plan. */
export function PourNow({ developer, thermometer, onPour }: PourNowProps) {
  const writer = useWriter()
  const { planned, shown, shows, step, plannedTime, time, error, pull } = developer
  const by = shown - planned
  const off = Math.abs(by) >= STEP / 2
  const title = off
    ? say(by > 0 ? 'ready.warm' : 'ready.cold', { by: Math.abs(by) }, writer)
    : say('ready.as-planned', { temperature: shown }, writer)
  return (
    <>
      <Heading title={title} />
      <p>
        <Words>
          {off ? say('ready.reads', { temperature: shown, planned }, writer) : say('ready.reads-planned', {}, writer)}
        </Words>
      </p>
      <OwnError thermometer={thermometer} />
      <div className="thermometer-row">
        <Button onClick={() => step(-STEP)} aria-label="A tenth of a degree less">
          −
        </Button>
        <output className="reading-shown">
          <Words>{writeTemperature(shows, writer.units)}</Words>
        </output>
        <Button onClick={() => step(STEP)} aria-label="A tenth of a degree more">
          +
        </Button>
      </div>
      <section className="ready-way">
        {time === null ? (
          <p className="care">The developer cannot be followed at this temperature. Bring it nearer to the plan.</p>
        ) : (
          <>
            <h2>
              Pour now{' '}
              <span className="rest">
                {off
                  ? say('ready.pour-for', { time, planned: plannedTime }, writer)
                  : say('ready.pour-planned', { planned: plannedTime }, writer)}
              </span>
            </h2>
            <p className="quiet">
              <Words>{say('ready.half-degree', error, writer)}</Words>{' '}
              {pull !== null && <Words>{say('ready.room', { by: pull }, writer)}</Words>}
            </p>
            <Hold className="confirm" label={say('ready.hold-pour', { temperature: shown }, writer)} onHeld={onPour} />
          </>
        )}
      </section>
      {off && <Temper by={by} planned={planned} />}
    </>
  )
}

/** A thermometer that is known to show too much or too little: its figures stand here, what is reckoned is put right. */
function OwnError({ thermometer }: Pick<PourNowProps, 'thermometer'>) {
  const writer = useWriter()
  const { off_c: by, band_c: band } = thermometer ?? {}
  if (thermometer === null || by === undefined || band === undefined || Math.abs(by) < STEP / 2) return null
  return (
    <p className="quiet">
      <Words>{say('ready.thermometer', { name: thermometer.name, by, band }, writer)}</Words>
    </p>
  )
}

const AGAIN_MS = 120_000

/** Water colder or warmer than the plan around the graduate, and when to read again. */
function Temper({ by, planned }: { by: number; planned: Celsius }) {
  const writer = useWriter()
  const [until, setUntil] = useState<number | null>(null)
  const [, look] = useState(0)
  useEffect(() => {
    const looking = setInterval(() => look((times) => times + 1), 1000)
    return () => clearInterval(looking)
  }, [])
  const left = until === null ? 0 : until - deviceClock.monotonic()
  const toward = (planned - Math.sign(by) * WATER) as Celsius
  return (
    <section className="ready-way">
      <h2>
        {by > 0 ? 'Cool it' : 'Warm it'} <span className="rest">and read again</span>
      </h2>
      <p className="quiet">
        <Words>{say('ready.cool', { toward }, writer)}</Words>
      </p>
      <Hold
        label="Hold: it stands in water"
        more={until === null ? undefined : left > 0 ? `read again in ${writeCount(left / 1000)}` : 'read again now'}
        onHeld={() => setUntil(deviceClock.monotonic() + AGAIN_MS)}
      />
    </section>
  )
}
