import { useState } from 'react'
import { say } from '../../../../words/index.js'
import {
  keepView,
  type RollSearchInput,
  removeView,
  type SavedView,
  useRollViews,
  useWrite,
} from '../../../shared/api/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { Button, sentenceOf, TextField, useTell, useWriter } from '../../../shared/ui/index.js'
import { addressOf, isEverythingHere, type Look, typedLook } from './look.js'

/** Searches that were kept under a name, for everybody at this bench. */
export function Views({ look, asked }: { look: Look; asked: RollSearchInput }) {
  const views = useRollViews().data ?? []
  return (
    <div className="roll-views">
      {views.length > 0 && (
        <ul className="checks" aria-label="Saved views">
          {views.map((view) => (
            <OneView key={view.id} view={view} />
          ))}
        </ul>
      )}
      {!isEverythingHere(look) && <KeepView asked={asked} />}
    </div>
  )
}

function OneView({ view }: { view: SavedView }) {
  const writer = useWriter()
  const tell = useTell()
  const { id, name, revision, look } = view
  const again = useWrite(() => keepView({ name, look }), 'rolls')
  const remove = useWrite(() => removeView(id, { seen_revision: revision }), 'rolls')
  const undo = async () => {
    await again.mutateAsync(undefined)
    return say('rolls.view-back', { name }, writer)
  }
  return (
    <li>
      <Link href={addressOf(typedLook(look))}>{name}</Link>
      <Button
        look="bare"
        aria-label={`Remove the view ${name}`}
        waits={remove.isPending}
        onClick={() =>
          remove.mutate(undefined, {
            onSuccess: () => tell({ sentence: say('rolls.view-gone', { name }, writer), undo }),
            onError: (fault) => tell({ sentence: sentenceOf(fault) }),
          })
        }
      >
        Remove
      </Button>
    </li>
  )
}

function KeepView({ asked }: { asked: RollSearchInput }) {
  const writer = useWriter()
  const tell = useTell()
  const [name, setName] = useState('')
  const [trouble, setTrouble] = useState<string | null>(null)
  const keep = useWrite(() => keepView({ name: name.trim(), look: asked }), 'rolls')
  const keepIt = () => {
    if (name.trim() === '') return setTrouble(say('rolls.view-unnamed', {}, writer))
    keep.mutate(undefined, {
      onSuccess: () => {
        setName('')
        setTrouble(null)
        tell({ sentence: say('rolls.view-kept', { name: name.trim() }, writer) })
      },
      onError: (fault) => setTrouble(sentenceOf(fault)),
    })
  }
  return (
    <div className="keep-view">
      <TextField label="Keep this search as" value={name} onText={setName} trouble={trouble} maxLength={120} />
      <Button onClick={keepIt} waits={keep.isPending}>
        Keep the view
      </Button>
    </div>
  )
}
