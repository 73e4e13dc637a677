import { say } from '../../../../words/index.js'
import { type RollBatch, undoRollBatch, useWrite } from '../../../shared/api/index.js'
import { useTell, useWriter } from '../../../shared/ui/index.js'

/** Says what was done to rolls, and takes all of it back when that is asked. */
export function useBatch() {
  const writer = useWriter()
  const tell = useTell()
  const back = useWrite((id: string) => undoRollBatch(id, {}), 'rolls')
  const takeBack = async (batchId: string): Promise<string> => {
    const { rolls } = await back.mutateAsync(batchId)
    return say('rolls.taken-back', { count: rolls.length, number: rolls[0]?.number ?? '' }, writer)
  }
  const told = ({ batch_id }: RollBatch, sentence: string) => tell({ sentence, undo: () => takeBack(batch_id) })
  return { told, takeBack, waits: back.isPending }
}
