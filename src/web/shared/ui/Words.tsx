import { Fragment } from 'react'

const NARROW = '\u202f'

/** A sentence with its narrow spaces widened to what this face needs before a unit. */
export function Words({ children }: { children: string }) {
  const [first = '', ...rest] = children.split(NARROW)
  let at = first.length
  return (
    <>
      {first}
      {rest.map((part) => {
        at += part.length + 1
        return (
          <Fragment key={at}>
            <span className="thin">{NARROW}</span>
            {part}
          </Fragment>
        )
      })}
    </>
  )
}
