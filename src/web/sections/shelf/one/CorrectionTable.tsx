import {
  type Celsius,
  celsius,
  fahrenheit,
  type UnitSystem,
  writeDegrees,
  writeTemperature,
} from '../../../../kernel/index.js'
import type { CorrectedReading } from '../../../../science/index.js'
import type { ThermometerRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { correctionFor } from '../../../shared/figures/index.js'
import { useUnits, useWriter, Words } from '../../../shared/ui/index.js'

const SHOWN: Record<UnitSystem, readonly Celsius[]> = {
  metric: [18, 20, 22, 24, 38].map(celsius),
  us: [65, 68, 70, 75, 100].map(fahrenheit),
}

/** What it reads, and what the bath then is, at the temperatures people use. */
export function CorrectionTable({ one }: { one: ThermometerRecord }) {
  const units = useUnits()
  const writer = useWriter()
  const correction = correctionFor(one)
  if (!correction.ok)
    return (
      <p className="note">
        <Words>{correction.problem.sentence}</Words>
      </p>
    )
  const rows = SHOWN[units]
    .filter((read) => read >= one.scale_low_c && read <= one.scale_high_c)
    .map((read) => correction.value.at(read))
  const silent = correction.value.saysNothingNear
  return (
    <section aria-labelledby="correction">
      <h2 id="correction">What its readings mean</h2>
      {silent !== null && (
        <p className="note">
          <Words>{say('thermometer.says-nothing-near', { near: silent }, writer)}</Words>
        </p>
      )}
      <table className="figures">
        <thead>
          <tr>
            <th scope="col">reads</th>
            <th scope="col">the bath is</th>
            <th scope="col">give or take</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <Row key={row.read} row={row} units={units} />
          ))}
        </tbody>
      </table>
    </section>
  )
}

function Row({ row, units }: { row: CorrectedReading; units: UnitSystem }) {
  return (
    <tr>
      <td>
        <Words>{writeTemperature(row.read, units)}</Words>
      </td>
      <td>
        <strong>
          <Words>{writeTemperature(row.true, units)}</Words>
        </strong>
        {row.basis === 'unchecked' && <span className="quiet"> by its word alone</span>}
      </td>
      <td>
        <Words>{writeDegrees(row.band, units)}</Words>
      </td>
    </tr>
  )
}
