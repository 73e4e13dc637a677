import { useState } from 'react'
import type { DeviceView } from '../../../wire/index.js'
import { say } from '../../../words/index.js'
import { newPairingCode, removeDevice, useDevices, useWrite } from '../../shared/api/index.js'
import { Asked, Button, Dialog, Trouble, useTell, useWriter, Words } from '../../shared/ui/index.js'

/** Phones and other devices that may work at this bench. */
export function DevicesPart({ zone }: { zone: string }) {
  const writer = useWriter()
  const devices = useDevices()
  const [leaving, setLeaving] = useState<DeviceView | null>(null)
  return (
    <section aria-labelledby="devices">
      <h2 id="devices">Phones</h2>
      <p>{say('house.phones', {}, writer)}</p>
      <PairingCode />
      <Asked query={devices}>
        {(all) => (
          <ul className="checks">
            {all.map((device) => (
              <li key={device.id}>
                <p>
                  {device.name}
                  <br />
                  <span className="small">
                    <Words>{say('house.paired', { day: dayOf(device.paired_at, zone) }, writer)}</Words>
                  </span>
                </p>
                <Button look="bare" onClick={() => setLeaving(device)} aria-label={`Remove ${device.name}`}>
                  Remove
                </Button>
              </li>
            ))}
          </ul>
        )}
      </Asked>
      {leaving && <Leaving device={leaving} onClose={() => setLeaving(null)} />}
    </section>
  )
}

function PairingCode() {
  const writer = useWriter()
  const code = useWrite(() => newPairingCode({}))
  return (
    <>
      {code.data && (
        <figure className="pairing">
          <img
            src={`data:image/svg+xml,${encodeURIComponent(code.data.qr_svg)}`}
            alt="QR code with the address below"
            width={220}
            height={220}
          />
          <figcaption>
            <p>{say('house.pairing-how', {}, writer)}</p>
            <p className="raw">{code.data.address}</p>
            <p>
              Code <strong className="raw">{code.data.code}</strong>
            </p>
          </figcaption>
        </figure>
      )}
      {code.isError && <Trouble fault={code.error} />}
      <p className="row">
        <Button onClick={() => code.mutate(undefined)} waits={code.isPending}>
          {code.data ? 'Draw a new code' : 'Pair a phone'}
        </Button>
      </p>
    </>
  )
}

function Leaving({ device, onClose }: { device: DeviceView; onClose: () => void }) {
  const writer = useWriter()
  const tell = useTell()
  const remove = useWrite(() => removeDevice(device.id, {}), 'devices')
  const removeIt = () =>
    remove.mutate(undefined, {
      onSuccess: () => {
        tell({ sentence: say('house.device-gone', { name: device.name }, writer) })
        onClose()
      },
    })
  return (
    <Dialog title={`End the pairing of ${device.name}?`} onClose={onClose}>
      <p>{say('house.device-ends', {}, writer)}</p>
      {remove.isError && <Trouble fault={remove.error} />}
      <div className="row">
        <Button look="go" onClick={removeIt} waits={remove.isPending}>
          End the pairing
        </Button>
        <Button onClick={onClose}>Keep it paired</Button>
      </div>
    </Dialog>
  )
}

const dayOf = (instant: string, zone: string) =>
  new Date(instant).toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: zone })
