import { type ReactNode, useId } from 'react'

interface ChoicesProps<T extends string> {
  readonly legend: string
  readonly value: T
  readonly options: readonly (readonly [T, ReactNode])[]
  readonly onValue: (value: T) => void
}

/** One of a few, each in plain words. */
export function Choices<T extends string>({ legend, value, options, onValue }: ChoicesProps<T>) {
  const name = useId()
  return (
    <fieldset className="choices">
      <legend>{legend}</legend>
      {options.map(([option, words]) => (
        <label key={option}>
          <input type="radio" name={name} checked={option === value} onChange={() => onValue(option)} />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  )
}
