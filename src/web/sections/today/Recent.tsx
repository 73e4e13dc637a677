import { Fragment } from 'react'
import type { TodayView } from '../../../wire/index.js'
import { Link } from '../../shared/navigation/index.js'

/** What was put in last, by day. */
export function Recent({ recent, zone }: { recent: TodayView['recent']; zone: string }) {
  if (recent.length === 0) return null
  return (
    <section aria-labelledby="recent">
      <h2 id="recent">Put in last</h2>
      <dl className="due">
        {recent.map(({ id, film, developer, saved_at }) => (
          <Fragment key={id}>
            <dt className="quiet">{dayOf(saved_at, zone)}</dt>
            <dd>
              <Link href={`/times/${id}`}>
                {film} in {developer}
              </Link>
            </dd>
          </Fragment>
        ))}
      </dl>
    </section>
  )
}

const dayOf = (instant: string, zone: string): string =>
  new Date(instant).toLocaleDateString('en-GB', { day: 'numeric', month: 'short', timeZone: zone })
