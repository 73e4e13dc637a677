import { useState } from 'react'
import { ACT_KINDS, type ActKind, BATH_KINDS, type BathKind } from '../../../../score/index.js'
import { Button, Select } from '../../../shared/ui/index.js'
import { KIND_NAMES } from '../kinds.js'
import type { StepDraft } from './draft.js'

interface AddStepProps {
  readonly steps: readonly StepDraft[]
  readonly onAdd: (kind: BathKind | ActKind, behind: string | null) => void
}

const KINDS = [...BATH_KINDS, ...ACT_KINDS].map((kind) => [kind, KIND_NAMES[kind]] as const)
const FIRST = ''

/** Another bath, or something done to the film between baths. */
export function AddStep({ steps, onAdd }: AddStepProps) {
  const [kind, setKind] = useState<BathKind | ActKind>('rinse')
  const [chosen, setBehind] = useState<string | null>(null)
  const last = steps.at(-1)?.id ?? FIRST
  const behind = chosen !== null && steps.some(({ id }) => id === chosen) ? chosen : last
  return (
    <div className="add-step">
      <Select label="Another step" value={kind} options={KINDS} onValue={setKind} />
      <Select
        label="It comes behind"
        value={behind}
        options={[
          ...steps.map(({ id, name }, i) => [id, `${i + 1} ${name}`] as const),
          [FIRST, 'nothing: it is the first'] as const,
        ]}
        onValue={setBehind}
      />
      <Button onClick={() => onAdd(kind, behind === FIRST ? null : behind)}>Add it</Button>
    </div>
  )
}
