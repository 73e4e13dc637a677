import type { ReactNode } from 'react'
import { useRollsHere, useToday } from '../shared/api/index.js'
import { Link } from '../shared/navigation/index.js'
import { BenchLine } from './BenchLine.js'
import type { Section } from './route-table.js'

const PLACES: readonly { section: Section; href: string; name: string }[] = [
  { section: 'today', href: '/', name: 'Today' },
  { section: 'rolls', href: '/rolls', name: 'Rolls' },
  { section: 'runs', href: '/runs', name: 'Runs' },
  { section: 'shelf', href: '/shelf', name: 'Shelf' },
  { section: 'times', href: '/times', name: 'Times' },
  { section: 'house', href: '/house', name: 'House' },
]

interface ShellProps {
  readonly section: Section | null
  /** Without the ways to other pages: for a device that may not open them yet. */
  readonly bare?: boolean
  readonly children: ReactNode
}

/** The frame around every page. The rail comes first for the keyboard, hence the way past it. */
export function Shell({ section, bare = false, children }: ShellProps) {
  if (bare)
    return (
      <main id="page" className="pane alone">
        {children}
      </main>
    )
  return (
    <div className="frame">
      <a className="btn skip" href="#page">
        Go to the page itself
      </a>
      <Rail section={section} />
      <div>
        <BenchLine />
        <main id="page" className="pane" tabIndex={-1}>
          {children}
        </main>
      </div>
    </div>
  )
}

function Rail({ section }: { section: Section | null }) {
  const counts = useToday().data?.counts
  const rolls = useRollsHere().data
  const count: Partial<Record<Section, number | undefined>> = {
    rolls,
    times: counts?.times,
  }
  return (
    <nav className="rail" aria-label="Sections">
      <p className="mark">Wetside</p>
      <ul>
        {PLACES.map((place) => (
          <li key={place.section}>
            <Link href={place.href} {...(place.section === section ? { 'aria-current': 'page' as const } : {})}>
              {place.name}
              {count[place.section] ? <span aria-hidden="true">{count[place.section]}</span> : null}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  )
}
