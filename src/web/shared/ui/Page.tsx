import { type ReactNode, useEffect, useRef } from 'react'
import { tookStep } from '../navigation/index.js'
import { Words } from './Words.js'

/** The heading of a page. It takes the focus when the person came here by a link, so that it is read first. */
export function Heading({ title, children }: { title: string; children?: ReactNode }) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    document.title = `${title} · Wetside`
  }, [title])
  useEffect(() => {
    if (tookStep()) heading.current?.focus({ preventScroll: true })
  }, [])
  return (
    <h1 ref={heading} tabIndex={-1}>
      {children ?? <Words>{title}</Words>}
    </h1>
  )
}

interface PageProps {
  readonly title: string
  /** One sentence below the heading: what is here. */
  readonly lead?: ReactNode
  /** Buttons at the right of the heading. */
  readonly actions?: ReactNode
  readonly children: ReactNode
}

export function Page({ title, lead, actions, children }: PageProps) {
  return (
    <>
      <header className="page-head">
        <Heading title={title} />
        {actions && <div className="row">{actions}</div>}
        {lead && <p className="lead">{lead}</p>}
      </header>
      {children}
    </>
  )
}
