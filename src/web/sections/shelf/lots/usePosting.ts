import { say } from '../../../../words/index.js'
import { type Posted, useWrite } from '../../../shared/api/index.js'
import { takeBack } from '../../../shared/desk/index.js'
import { useTell, useWriter } from '../../../shared/ui/index.js'

/** An entry of the ledger is booked and said, with the way back: a further entry that takes it back. */
export function usePosting<A>(book: (asked: A) => Promise<Posted>) {
  const writer = useWriter()
  const tell = useTell()
  const back = useWrite((id: string) => takeBack(id, {}), 'shelf')
  const { mutate, ...state } = useWrite(book, 'shelf')
  const post = (asked: A, sentence: (posted: Posted) => string, afterwards?: (posted: Posted) => void) =>
    mutate(asked, {
      onSuccess: (posted) => {
        afterwards?.(posted)
        const undo = async () => {
          await back.mutateAsync(posted.entry.id)
          return say('lot.taken-back', {}, writer)
        }
        tell({ sentence: sentence(posted), undo })
      },
    })
  return { post, isPending: state.isPending, fault: state.isError ? state.error : null }
}
