import { useState } from 'react'
import { type Celsius, celsius, millilitres, writeTemperature, writeVolume } from '../../../../kernel/index.js'
import { fromTheTaps } from '../../../../science/index.js'
import { say } from '../../../../words/index.js'
import { Button, useWriter, Words } from '../../../shared/ui/index.js'

export interface FromTheTapsProps {
  readonly name: string
  /** What the tap gives by itself. */
  readonly cold: Celsius
  readonly wanted: Celsius
}

const LITRE = millilitres(1000)
/** Where the count begins: what a hand bears well. */
const HOT = celsius(38)
const STEP = 1
const HOTTEST = 60

/** Water that is too cold for the film, mixed with hot: how much of each for a litre. */
export function FromTheTaps({ name, cold, wanted }: FromTheTapsProps) {
  const writer = useWriter()
  const [hot, setHot] = useState<Celsius>(HOT)
  const mixed = fromTheTaps({ volume: LITRE, wanted, hot, cold })
  const step = (by: number) => setHot(celsius(Math.min(HOTTEST, hot + by)))
  const parts = (value: Parameters<typeof writeVolume>[0]) => writeVolume(value, writer.units)
  return (
    <div className="note taps">
      <p role="status">
        <Words>
          {mixed.ok
            ? say('ready.taps', { name, hot: parts(mixed.value.hot), cold: parts(mixed.value.cold), at: hot }, writer)
            : mixed.problem.sentence}
        </Words>
      </p>
      <div className="thermometer-row">
        <Button onClick={() => step(-STEP)} aria-label="Hot tap a degree less">
          −
        </Button>
        <output>
          <Words>{`hot tap ${writeTemperature(hot, writer.units)}`}</Words>
        </output>
        <Button onClick={() => step(STEP)} aria-label="Hot tap a degree more">
          +
        </Button>
      </div>
    </div>
  )
}
