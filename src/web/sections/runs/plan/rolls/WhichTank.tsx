import { useVessels } from '../../../../shared/desk/index.js'
import { Select } from '../../../../shared/ui/index.js'

interface WhichTankProps {
  readonly vessel: string
  readonly onTank: (vessel: string) => void
}

/** The tank of the kit that it is, once there is one: what is planned then has to fit it. */
export function WhichTank({ vessel, onTank }: WhichTankProps) {
  const tanks = (useVessels().data ?? []).filter(({ statement }) => statement.kind === 'tank')
  if (tanks.length === 0) return null
  return (
    <Select
      label="Tank of the shelf"
      hint="The plan then has to fit it."
      value={vessel}
      options={[['', 'none of the shelf'], ...tanks.map(({ id, statement }) => [id, statement.name] as const)]}
      onValue={onTank}
    />
  )
}
