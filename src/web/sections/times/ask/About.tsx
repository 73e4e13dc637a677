import type { ReactNode } from 'react'
import type { TimeRecord } from '../../../../wire/index.js'
import { useRemoval } from '../../../shared/desk/index.js'
import { Button, ButtonLink } from '../../../shared/ui/index.js'
import { keptTime } from '../keptTime.js'

/** The ways to change this time. */
export function About({ record, children }: { record: TimeRecord; children: ReactNode }) {
  const { removeIt, waits } = useRemoval(keptTime(record))
  return (
    <footer className="about">
      <div className="row">
        {children}
        <ButtonLink href={`/times/${record.id}/edit`}>Correct this time</ButtonLink>
        <Button onClick={removeIt} waits={waits}>
          Remove
        </Button>
      </div>
    </footer>
  )
}
