import type { UseQueryResult } from '@tanstack/react-query'
import type { ReactNode } from 'react'
import { ApiProblem } from '../api/index.js'
import { Button } from './Button.js'
import { Words } from './Words.js'

/** What was asked of the server: on its way, answered, or refused in a sentence with a way to ask again. */
export function Asked<T>({ query, children }: { query: UseQueryResult<T>; children: (data: T) => ReactNode }) {
  // What was read before stands while the server is away, but not against its refusal, as of something removed since.
  if (query.data !== undefined && !isRefusal(query.error)) return children(query.data)
  if (query.isError) return <Trouble fault={query.error} again={() => query.refetch()} />
  return <Reading />
}

/** Said while an answer is on its way. */
export const Reading = () => (
  <p className="quiet waiting" role="status">
    Reading the bench …
  </p>
)

const isRefusal = (fault: unknown) => fault instanceof ApiProblem && fault.status >= 400 && fault.status < 500

export function Trouble({ fault, again }: { fault: Error; again?: () => void }) {
  return (
    <div className="note" role="alert">
      <p>
        <Words>{sentenceOf(fault)}</Words>
      </p>
      {again && <Button onClick={again}>Ask again</Button>}
    </div>
  )
}

export const sentenceOf = (fault: unknown): string =>
  fault instanceof ApiProblem
    ? fault.body.sentence
    : 'Something in this page failed that should not have. Load it again; what you typed is kept.'
