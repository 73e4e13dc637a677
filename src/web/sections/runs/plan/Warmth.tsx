import { celsius, writeMass, writeTemperature } from '../../../../kernel/index.js'
import type { VesselMaterial } from '../../../../science/index.js'
import { say } from '../../../../words/index.js'
import { correctionFor } from '../../../shared/figures/index.js'
import { QuantityField, Select, useUnits, useWriter, Words } from '../../../shared/ui/index.js'
import type { PlanFieldsProps } from './PlanFields.js'

/** Where nothing is typed yet, what a reading means is said at the temperature most developers are used at. */
const USUAL = celsius(20)

/** With which thermometer all temperatures of the plan are read, and what its readings mean. */
export function ReadWith({ draft, change, reading, thermometers, thermometer }: PlanFieldsProps) {
  const writer = useWriter()
  if (thermometers.length === 0) return null
  const read = reading.temperature?.kind === 'read' ? reading.temperature.value : USUAL
  const correction = thermometer === null ? null : correctionFor(thermometer)
  const meant = correction?.ok ? correction.value.at(read) : null
  return (
    <>
      <Select
        label="Thermometer"
        hint="Temperatures are typed as it shows them."
        value={draft.thermometer}
        options={[['', 'none of the shelf'], ...thermometers.map(({ id, name }) => [id, name] as const)]}
        onValue={(chosen) => change({ thermometer: chosen })}
      />
      {thermometer !== null && meant !== null && (
        <p className="small" role="status">
          <Words>{say('plan.thermometer', { name: thermometer.name, ...meant }, writer)}</Words>
        </p>
      )}
      {correction?.ok === false && (
        <p className="note" role="status">
          <Words>{correction.problem.sentence}</Words>
        </p>
      )}
    </>
  )
}

const MATERIALS: readonly (readonly [VesselMaterial, string])[] = [
  ['plastic', 'plastic'],
  ['steel', 'steel'],
  ['glass', 'glass'],
]

/** What pulls the developer once it is poured. */
export function RoomAndTank({ draft, change, reading }: PlanFieldsProps) {
  const units = useUnits()
  return (
    <details open={draft.room !== ''}>
      <summary>The room and the tank itself</summary>
      <div className="form-pair">
        <QuantityField
          label="The room is at"
          hint="Needs the volume too."
          text={draft.room}
          onText={(room) => change({ room })}
          reading={reading.room}
          write={(value) => writeTemperature(value, units)}
        />
        <Select
          label="The tank is of"
          value={draft.material}
          options={MATERIALS}
          onValue={(material) => change({ material })}
        />
        <QuantityField
          label="Tank and reels weigh"
          hint="Empty and dry."
          text={draft.weight}
          onText={(weight) => change({ weight })}
          reading={reading.weight}
          write={(value) => writeMass(value, units)}
        />
      </div>
    </details>
  )
}
