import { useState } from 'react'
import { Button, Dialog, TextField } from '../../../shared/ui/index.js'
import { Hold } from './Hold.js'

const REASON = 'The record wants a reason, such as: not needed.'

interface AskReasonProps {
  readonly title: string
  readonly hold: string
  /** What the field is called, and what is said when it was left empty. */
  readonly label?: string
  readonly wanted?: string
  readonly onReason: (reason: string) => void
  readonly onClose: () => void
}

/** Asks for a reason, or a note, that will stand in the record. */
export function AskReason({ title, hold, label = 'Why', wanted = REASON, onReason, onClose }: AskReasonProps) {
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
          label={label}
          value={reason}
          onText={setReason}
          maxLength={1000}
          trouble={tried && reason.trim() === '' ? wanted : null}
        />
        <Hold label={hold} onHeld={take} />
        <Button onClick={onClose}>No, go on</Button>
      </div>
    </Dialog>
  )
}
