import { say } from '../../../words/index.js'
import { type Kind, useWrite } from '../api/index.js'
import { go } from '../navigation/index.js'
import { sentenceOf, useTell, useWriter } from '../ui/index.js'

interface Seen {
  readonly seen_revision: number
}

interface Kept {
  readonly name: string
  readonly kind: Kind
  /** Goes back to the state before the revision that was seen. */
  readonly undo: (seen: Seen) => Promise<unknown>
}

/** What was done to something that is kept, said together with the way back. */
export function useWayBack({ name, kind, undo }: Kept) {
  const writer = useWriter()
  const tell = useTell()
  const back = useWrite((revision: number) => undo({ seen_revision: revision }), kind)
  const wentBack = async (revision: number, sentence: string) => {
    await back.mutateAsync(revision)
    return sentence
  }
  const bringBack = (revision: number) => wentBack(revision, say('web.brought-back', { name }, writer))
  return {
    bringBack,
    changed: (sentence: string, revision: number) =>
      tell({ sentence, undo: () => wentBack(revision, say('web.undone', { name }, writer)) }),
    removed: (revision: number) =>
      tell({ sentence: say('web.removed', { name }, writer), undo: () => bringBack(revision) }),
  }
}

interface Removable extends Kept {
  readonly remove: () => Promise<{ readonly revision: number | null }>
  /** Where the others stand. */
  readonly leadsTo: string
}

/** Removes something that is kept at once and offers the way back. */
export function useRemoval({ remove, leadsTo, ...kept }: Removable) {
  const tell = useTell()
  const { removed } = useWayBack(kept)
  const removing = useWrite(remove, kept.kind)
  const removeIt = () =>
    removing.mutate(undefined, {
      onSuccess: ({ revision }) => {
        go(leadsTo)
        removed(revision ?? 0)
      },
      onError: (fault) => tell({ sentence: sentenceOf(fault) }),
    })
  return { removeIt, waits: removing.isPending }
}
