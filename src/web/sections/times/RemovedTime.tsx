import type { TimeRecord } from '../../../wire/index.js'
import { say } from '../../../words/index.js'
import { useWayBack } from '../../shared/desk/index.js'
import { nameOf } from '../../shared/figures/index.js'
import { Button, ButtonLink, Page, useTell, useWriter } from '../../shared/ui/index.js'
import { keptTime } from './keptTime.js'

/** What an old link to a removed time shows. */
export function RemovedTime({ record }: { record: TimeRecord }) {
  const writer = useWriter()
  const tell = useTell()
  const { bringBack } = useWayBack(keptTime(record))
  return (
    <Page title={nameOf(record)} lead={say('web.was-removed', {}, writer)}>
      <p className="row">
        <Button look="go" onClick={async () => tell({ sentence: await bringBack(record.revision) })}>
          Bring it back
        </Button>
        <ButtonLink href="/times">All times</ButtonLink>
      </p>
    </Page>
  )
}
