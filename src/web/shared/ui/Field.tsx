import { type ComponentProps, type ReactNode, useId } from 'react'
import { Words } from './Words.js'

interface FieldProps {
  readonly label: string
  readonly hint?: string | undefined
  /** How the text was read. */
  readonly echo?: string | null | undefined
  /** What is wrong and what would be right. */
  readonly trouble?: string | null | undefined
  /** Buttons to choose between two readings. */
  readonly children?: ReactNode
}
type InputProps = Omit<ComponentProps<'input'>, 'children' | 'onChange'> & { onText: (text: string) => void }

/** A line to type in, with how it was read beneath it, or the sentence about what is wrong. */
export function TextField({ label, hint, echo, trouble, children, onText, ...rest }: FieldProps & InputProps) {
  const id = useId()
  return (
    <Frame id={id} label={label} hint={hint} echo={echo} trouble={trouble} below={children}>
      <input
        autoComplete="off"
        spellCheck={false}
        {...rest}
        id={id}
        className="input"
        aria-describedby={`${id}-said`}
        aria-invalid={trouble ? true : undefined}
        onChange={(event) => onText(event.target.value)}
      />
    </Frame>
  )
}

export function TextArea({
  label,
  hint,
  trouble,
  onText,
  ...rest
}: FieldProps & Omit<ComponentProps<'textarea'>, 'onChange'> & { onText: (text: string) => void }) {
  const id = useId()
  return (
    <Frame id={id} label={label} hint={hint} trouble={trouble}>
      <textarea
        spellCheck={false}
        {...rest}
        id={id}
        className={`input ${rest.className ?? ''}`}
        aria-describedby={`${id}-said`}
        onChange={(event) => onText(event.target.value)}
      />
    </Frame>
  )
}

export function Select<T extends string>({
  label,
  hint,
  value,
  options,
  onValue,
}: FieldProps & { value: T; options: readonly (readonly [T, string])[]; onValue: (value: T) => void }) {
  const id = useId()
  return (
    <Frame id={id} label={label} hint={hint}>
      <select
        id={id}
        className="input"
        aria-describedby={`${id}-said`}
        value={value}
        onChange={(event) => onValue(event.target.value as T)}
      >
        {options.map(([option, words]) => (
          <option key={option} value={option}>
            {words}
          </option>
        ))}
      </select>
    </Frame>
  )
}

function Frame({ id, label, hint, echo, trouble, below, children }: FieldProps & { id: string; below?: ReactNode }) {
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {children}
      <div id={`${id}-said`}>
        {trouble ? (
          <p className="trouble">
            <Words>{trouble}</Words>
          </p>
        ) : echo ? (
          <p className="echo">
            <Words>{echo}</Words>
          </p>
        ) : hint ? (
          <p className="hint">
            <Words>{hint}</Words>
          </p>
        ) : null}
      </div>
      {below}
    </div>
  )
}
