import { useState } from 'react'
import type { Reading } from '../../../kernel/index.js'
import { Button } from './Button.js'
import { TextField } from './Field.js'
import { Words } from './Words.js'

interface QuantityFieldProps<T> {
  readonly label: string
  readonly hint?: string
  readonly text: string
  readonly onText: (text: string) => void
  /** What became of the text; null while nothing is typed and nothing has to be. */
  readonly reading: Reading<T> | null
  /** How a chosen reading is typed, so that the field can take it over. */
  readonly write: (value: T) => string
  /** A problem that lies beyond the text itself, such as two times at one temperature. */
  readonly trouble?: string | null | undefined
  /** Say at once what is wrong, not only when the person has left the field. */
  readonly strict?: boolean
}

/** A quantity as people write it: read back beneath the field, asked about when it has two honest readings. */
export function QuantityField<T>(props: QuantityFieldProps<T>) {
  const { label, hint, text, onText, reading, write, trouble, strict = false } = props
  const [left, setLeft] = useState(false)
  const asked = reading?.kind === 'asked' ? reading : null
  const refused = reading?.kind === 'refused' && (strict || (left && text !== '')) ? reading.problem.sentence : null
  return (
    <TextField
      label={label}
      hint={hint}
      value={text}
      onText={onText}
      onFocus={() => setLeft(false)}
      onBlur={() => setLeft(true)}
      echo={reading?.kind === 'read' ? `read as ${reading.echo}` : null}
      trouble={asked?.problem.sentence ?? refused ?? trouble}
    >
      {asked && (
        <div className="row">
          {asked.choices.map((choice) => (
            <Button key={choice.label} onClick={() => onText(write(choice.value))}>
              <Words>{choice.label}</Words>
            </Button>
          ))}
        </div>
      )}
    </TextField>
  )
}
