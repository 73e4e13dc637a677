import type { TimeRecord } from '../../../../wire/index.js'
import { Button, ButtonLink, Words } from '../../../shared/ui/index.js'
import { useRemoval } from '../useRemoval.js'

/** What else is noted of this time, and the ways to change it. */
export function About({ record }: { record: TimeRecord }) {
  const { removeIt, waits } = useRemoval(record)
  return (
    <footer className="about">
      {record.note !== '' && (
        <p>
          <Words>{record.note}</Words>
        </p>
      )}
      <div className="row">
        <ButtonLink href={`/times/${record.id}/edit`}>Correct this time</ButtonLink>
        <Button onClick={removeIt} waits={waits}>
          Remove
        </Button>
      </div>
    </footer>
  )
}
