import type { TimeRecord } from '../../../../wire/index.js'
import { say } from '../../../../words/index.js'
import { useWrite } from '../../../shared/api/index.js'
import { correctTime, useWayBack } from '../../../shared/desk/index.js'
import { nameOf } from '../../../shared/figures/index.js'
import { Choices, sentenceOf, useTell, useWriter } from '../../../shared/ui/index.js'
import { keptTime } from '../keptTime.js'
import { statementOf } from '../statement.js'

/** Which of the two laws the record goes by; it is kept on the record. */
export function LawChoice({ record }: { record: TimeRecord }) {
  const writer = useWriter()
  const tell = useTell()
  const { changed } = useWayBack(keptTime(record))
  const correct = useWrite(
    (law: TimeRecord['law']) =>
      correctTime(record.id, { seen_revision: record.revision, statement: { ...statementOf(record), law } }),
    'times',
  )
  const choose = (law: TimeRecord['law']) =>
    correct.mutate(law, {
      onSuccess: (kept) => changed(say('web.law-kept', { name: nameOf(record), law }, writer), kept.revision),
      onError: (fault) => tell({ sentence: sentenceOf(fault) }),
    })
  return (
    <Choices
      legend="Law beyond and between the sheet’s times"
      value={record.law}
      options={[
        ['exponential', 'Exponential: each ten degrees multiply the speed by the same number'],
        ['arrhenius', 'Arrhenius: by the absolute temperature, as chemistry has it'],
      ]}
      onValue={choose}
    />
  )
}
