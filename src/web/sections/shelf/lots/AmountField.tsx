import { type Millilitres, type Reading, readVolume, writeVolume } from '../../../../kernel/index.js'
import { QuantityField, useUnits } from '../../../shared/ui/index.js'

interface AmountFieldProps {
  readonly label: string
  readonly hint?: string
  readonly text: string
  readonly onText: (text: string) => void
  readonly trouble?: string | null
  readonly strict?: boolean
}

/** A volume as it is typed; null while nothing is. */
export function useVolume(text: string): Reading<Millilitres> | null {
  const system = useUnits()
  return text.trim() === '' ? null : readVolume(text, { system })
}

/** Volume of a bath, read back beneath. */
export function AmountField(props: AmountFieldProps) {
  const units = useUnits()
  const reading = useVolume(props.text)
  return <QuantityField {...props} reading={reading} write={(value) => writeVolume(value, units)} />
}
