import { useState } from 'react'
import { say } from '../../../words/index.js'
import { backupAddress, sendBackup, useWrite } from '../../shared/api/index.js'
import { Button, Dialog, Trouble, useTell, useWriter, Words } from '../../shared/ui/index.js'

/** Everything kept as one file, and the way back from it. */
export function BackupPart() {
  const writer = useWriter()
  const [file, setFile] = useState<File | null>(null)
  return (
    <section aria-labelledby="backup">
      <h2 id="backup">Backup</h2>
      <p>{say('house.backup', {}, writer)}</p>
      <div className="row">
        <a className="btn" href={backupAddress()} download>
          Save a backup
        </a>
        <label className="btn file">
          Put a backup back
          <input
            type="file"
            className="unseen"
            onChange={(event) => {
              setFile(event.target.files?.[0] ?? null)
              event.target.value = ''
            }}
          />
        </label>
      </div>
      {file && <Replacing file={file} onClose={() => setFile(null)} />}
    </section>
  )
}

function Replacing({ file, onClose }: { file: File; onClose: () => void }) {
  const writer = useWriter()
  const tell = useTell()
  const restore = useWrite(sendBackup, 'bench')
  const putBack = () =>
    restore.mutate(file, {
      onSuccess: ({ rows }) => {
        tell({ sentence: say('house.restored', { rows }, writer) })
        onClose()
      },
    })
  return (
    <Dialog title="Put this backup in place of everything?" onClose={onClose}>
      <p>
        <Words>{say('house.restore-asks', { file: file.name }, writer)}</Words>
      </p>
      {restore.isError && <Trouble fault={restore.error} />}
      <div className="row">
        <Button look="go" onClick={putBack} waits={restore.isPending}>
          {restore.isPending ? 'Putting it back …' : 'Put it in place'}
        </Button>
        <Button onClick={onClose}>Leave everything as it is</Button>
      </div>
    </Dialog>
  )
}
