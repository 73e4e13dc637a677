import type { TimeRecord } from '../../../../wire/index.js'
import { timeCardAddress, useBench } from '../../../shared/api/index.js'
import type { useQuestion } from './useQuestion.js'

interface PrintLinkProps {
  readonly record: TimeRecord
  readonly question: ReturnType<typeof useQuestion>
  readonly ready: boolean
  /** On a laptop it stands beside the question, on a phone at the end. */
  readonly place: 'top' | 'end'
}

/** The card of this film as a file to print, with the answer on it when there is one. */
export function PrintLink({ record, question, ready, place }: PrintLinkProps) {
  const paper = useBench().data?.paper
  const { temperature, factor, thermometerId } = question
  const asked =
    ready && temperature.kind === 'read'
      ? {
          at_c: temperature.value as number,
          ...(thermometerId === '' ? {} : { thermometer_id: thermometerId }),
          ...(factor?.kind === 'read' ? { factor: factor.value } : {}),
        }
      : {}
  return (
    <a
      className={`btn print-${place}`}
      href={timeCardAddress(record.id, { ...asked, ...(paper ? { paper } : {}) })}
      target="_blank"
      rel="noreferrer"
    >
      Print as a card
    </a>
  )
}
