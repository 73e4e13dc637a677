import { say } from '../../../words/index.js'
import { useBench } from '../../shared/api/index.js'
import { Asked, Page, useWriter } from '../../shared/ui/index.js'
import { BackupPart } from './BackupPart.js'
import { DemoPart } from './DemoPart.js'
import { DevicesPart } from './DevicesPart.js'
import { GroundPart } from './GroundPart.js'
import { SettingsPart } from './SettingsPart.js'

export function HousePage() {
  const bench = useBench()
  const writer = useWriter()
  return (
    <Page title="House" lead={say('house.lead', {}, writer)}>
      <Asked query={bench}>
        {(view) => (
          <div className="house">
            <div>
              <SettingsPart key={JSON.stringify(view)} bench={view} />
              <GroundPart />
            </div>
            <div>
              {view.role === 'owner' && <DevicesPart zone={view.zone} />}
              {view.role === 'owner' && <BackupPart />}
              <DemoPart bench={view} />
              <section aria-labelledby="interface">
                <h2 id="interface">For other programs</h2>
                <p>{say('house.interface', {}, writer)}</p>
                <p>
                  <a href="/api/docs">Read the interface page</a>
                </p>
              </section>
            </div>
          </div>
        )}
      </Asked>
    </Page>
  )
}
