import { useState } from 'react'
import { Button, Dialog, TextField } from '../../../shared/ui/index.js'
import { Hold } from './Hold.js'

interface AskReasonProps {
  readonly title: string
  readonly hold: string
  readonly onReason: (reason: string) => void
  readonly onClose: () => void
}

/** Asks for the reason that will stand in the record. */
export function AskReason({ title, hold, onReason, onClose }: AskReasonProps) {
  const [reason, setReason] = useState('')
  const [tried, setTried] = useState(false)
  const take = () => {
    setTried(true)
    if (reason.trim() === '') return
    onReason(reason.trim())
    onClose()
  }
  return (
    <Dialog title={title} onClose={onClose}>
      <div className="stack">
        <TextField
          label="Why"
          value={reason}
          onText={setReason}
          maxLength={200}
          trouble={tried && reason.trim() === '' ? 'The record wants a reason, such as: not needed.' : null}
        />
        <Hold label={hold} onHeld={take} />
        <Button onClick={onClose}>No, go on</Button>
      </div>
    </Dialog>
  )
}
