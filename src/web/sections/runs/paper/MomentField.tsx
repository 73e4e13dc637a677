import type { TimeOfDay } from '../../../../kernel/index.js'
import type { Finding } from '../../../../score/index.js'
import { say, writeDay } from '../../../../words/index.js'
import { TextField, useWriter } from '../../../shared/ui/index.js'
import type { Boxed } from './readDraft.js'

interface MomentFieldProps {
  readonly label: string
  readonly hint: string
  readonly text: string
  readonly onText: (text: string) => void
  readonly boxed: Boxed<TimeOfDay> | undefined
  /** The sheet's own day, as it is shown; a time of another day says so. */
  readonly day: string
  readonly zone: string
  /** Said of an empty box that has to be filled in, once the sheet was to be kept. */
  readonly needed?: string
  /** What is wrong is said at once, not only once the field was left. */
  readonly strict: boolean
}

/** What is to be changed; that nothing is typed yet is said only once the sheet was to be kept. */
function foundWrong(finding: Finding | null, strict: boolean): string | null {
  if (finding === null || finding.stands === 'told') return null
  return finding.problem.code === 'paper.nothing' && !strict ? null : finding.problem.sentence
}

/** A time of day, read back with what it is taken for. */
export function MomentField({ label, hint, text, onText, boxed, day, zone, needed, strict }: MomentFieldProps) {
  const writer = useWriter()
  const { reading = null, at = null, finding = null } = boxed ?? {}
  const unread = reading !== null && reading.kind !== 'read'
  // Half a time is not wrong yet: it is still being typed.
  const trouble = unread && (strict || text.trim().length > 3) ? reading.problem.sentence : null
  const missing = needed !== undefined && strict && text.trim() === '' ? needed : null
  return (
    <TextField
      label={label}
      hint={hint}
      value={text}
      onText={onText}
      inputMode="text"
      trouble={missing ?? trouble ?? foundWrong(finding, strict)}
      echo={reading?.kind === 'read' ? echoOf(reading.value, reading.echo) : null}
    />
  )

  function echoOf({ to }: TimeOfDay, echo: string): string {
    const exact = to === 'minute' ? say('paper.minutes', { at: echo }, writer) : echo
    const other = at === null ? day : writeDay(at, zone)
    return `read as ${exact}${other === day ? '' : say('paper.day-after', { day: other }, writer)}`
  }
}
