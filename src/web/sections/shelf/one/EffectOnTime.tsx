import { useState } from 'react'
import type { TimeBasis } from '../../../../science/index.js'
import { effectOfUncorrectedError } from '../../../../science/index.js'
import type { ThermometerRecord, TimeRecord } from '../../../../wire/index.js'
import { say, type Writer } from '../../../../words/index.js'
import { useTimes } from '../../../shared/api/index.js'
import { basisOf, correctionFor, nameOf } from '../../../shared/figures/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { Select, useWriter, Words } from '../../../shared/ui/index.js'

/** What this thermometer, taken at its word, would have done to a kept time. */
export function EffectOnTime({ one }: { one: ThermometerRecord }) {
  const writer = useWriter()
  const times = useTimes().data ?? []
  const [chosen, setChosen] = useState('')
  const time = times.find(({ id }) => id === chosen) ?? times[0]
  const basis = time && basisOf(time)
  if (!time || !basis?.ok) return null
  const { temperature } = basis.value.reference
  return (
    <section aria-labelledby="effect">
      <h2 id="effect">What it would have done to a time</h2>
      <Select
        label="The time"
        value={time.id}
        options={times.map((each) => [each.id, nameOf(each)] as const)}
        onValue={setChosen}
      />
      <p role="status" className="effect">
        <Words>{effectWords(one, time, basis.value, writer)}</Words>
      </p>
      <Link href={`/times/${time.id}?at=${Number(temperature.toFixed(3))}&thermometer=${one.id}`}>
        Ask this time with this thermometer
      </Link>
    </section>
  )
}

/** At the reading that the sheet's own temperature invites. */
function effectWords(one: ThermometerRecord, time: TimeRecord, basis: TimeBasis, writer: Writer): string {
  const read = basis.reference.temperature
  const correction = correctionFor(one)
  if (!correction.ok) return correction.problem.sentence
  const corrected = correction.value.at(read)
  if (time.kind === 'fixed') return say('shelf.effect-fixed', { read, corrected: corrected.true }, writer)
  const effect = effectOfUncorrectedError(basis, read, corrected.true)
  if (!effect.ok) return effect.problem.sentence
  const said = say('thermometer.corrected', { name: one.name, read, corrected: corrected.true }, writer)
  if (Math.abs(effect.value.missing) < 0.5) return `${said} ${say('thermometer.no-effect', {}, writer)}`
  const { byReading, byTruth, missingPart } = effect.value
  return `${said} ${say('thermometer.effect', { uncorrected: byReading, corrected: byTruth, fraction: -missingPart }, writer)} ${say('shelf.effect-right', { time: byTruth }, writer)}`
}
