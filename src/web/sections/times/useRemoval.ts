import type { TimeRecord } from '../../../wire/index.js'
import { say } from '../../../words/index.js'
import { useWrite } from '../../shared/api/index.js'
import { removeTime, undoTime } from '../../shared/desk/index.js'
import { nameOf } from '../../shared/figures/index.js'
import { go } from '../../shared/navigation/index.js'
import { sentenceOf, useTell, useWriter } from '../../shared/ui/index.js'

/** Removes a time at once and offers the way back. */
export function useRemoval(record: TimeRecord) {
  const writer = useWriter()
  const tell = useTell()
  const name = nameOf(record)
  const back = useWrite((revision: number) => undoTime(record.id, { seen_revision: revision }), 'times')
  const remove = useWrite(() => removeTime(record.id, { seen_revision: record.revision }), 'times')
  const bringBack = async (revision: number) => {
    await back.mutateAsync(revision)
    return say('web.brought-back', { name }, writer)
  }
  const removeIt = () =>
    remove.mutate(undefined, {
      onSuccess: (removed) => {
        go('/times')
        tell({ sentence: say('web.removed', { name }, writer), undo: () => bringBack(removed.revision) })
      },
      onError: (fault) => tell({ sentence: sentenceOf(fault) }),
    })
  return { removeIt, bringBack, waits: remove.isPending }
}
