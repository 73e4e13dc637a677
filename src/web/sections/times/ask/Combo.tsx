import { type KeyboardEvent, useId, useState } from 'react'

interface ComboProps {
  /** What the word stands for, for those who do not see its place in the sentence. */
  readonly label: string
  readonly value: string
  readonly options: readonly string[]
  readonly onChoose: (value: string) => void
}

/** A dotted word of the question: type over it or choose among what is kept. */
export function Combo({ label, value, options, onChoose }: ComboProps) {
  const id = useId()
  const [text, setText] = useState<string | null>(null)
  const [open, setOpen] = useState(false)
  const [at, setAt] = useState(-1)
  const wanted = text?.trim().toLowerCase() ?? ''
  const shown = options.filter((option) => option.toLowerCase().includes(wanted))
  const close = () => {
    setOpen(false)
    setText(null)
    setAt(-1)
  }
  const choose = (option: string) => {
    close()
    if (option !== value) onChoose(option)
  }
  const press = (event: KeyboardEvent) => {
    if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      event.preventDefault()
      setOpen(true)
      const step = event.key === 'ArrowDown' ? 1 : -1
      setAt((now) => (shown.length === 0 ? -1 : (now + step + shown.length) % shown.length))
    } else if (event.key === 'Enter') {
      const option = shown[at] ?? shown[0]
      if (open && option !== undefined) choose(option)
    } else if (event.key === 'Escape' && open) {
      event.preventDefault()
      close()
    }
  }
  return (
    <span className="combo">
      <input
        role="combobox"
        aria-label={label}
        aria-expanded={open}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={at >= 0 ? `${id}-${at}` : undefined}
        autoComplete="off"
        spellCheck={false}
        className="ask"
        size={Math.max(2, (text ?? value).length)}
        value={text ?? value}
        onFocus={(event) => event.target.select()}
        onClick={() => setOpen(true)}
        onChange={(event) => {
          setText(event.target.value)
          setOpen(true)
          setAt(-1)
        }}
        onKeyDown={press}
        onBlur={close}
      />
      <span
        role="listbox"
        id={`${id}-list`}
        aria-label={`${label}: what is kept`}
        className="options"
        hidden={!open || shown.length === 0}
      >
        {shown.map((option, place) => (
          // biome-ignore lint/a11y/useFocusableInteractive: the field keeps the focus and names the option it is on
          // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are handled by the field
          <span
            key={option}
            role="option"
            id={`${id}-${place}`}
            aria-selected={place === at}
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => choose(option)}
          >
            {option}
          </span>
        ))}
      </span>
      {open && shown.length === 0 && <span className="options quiet">“{text}” is not kept here</span>}
    </span>
  )
}
