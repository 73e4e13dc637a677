import { type Celsius, type Reading, writeTemperature } from '../../../../kernel/index.js'
import type { ThermometerRecord } from '../../../../wire/index.js'
import { QuantityField, useUnits } from '../../../shared/ui/index.js'

interface SetRowProps {
  readonly one: ThermometerRecord
  readonly text: string
  readonly reading: Reading<Celsius> | null
  readonly strict: boolean
  readonly onText: (text: string) => void
}

export function SetRow({ one, text, reading, strict, onText }: SetRowProps) {
  const units = useUnits()
  return (
    <QuantityField
      label={one.name}
      text={text}
      onText={onText}
      reading={reading}
      write={(value) => writeTemperature(value, units)}
      strict={strict}
    />
  )
}
