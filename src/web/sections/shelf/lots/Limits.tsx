import { say, writeDay } from '../../../../words/index.js'
import { type OnShelf, useBench } from '../../../shared/api/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { Bar } from '../stand/Bar.js'
import { firstTwo } from '../stand/next.js'

/** Everything that may end a bath, the one that decides first, each with where its figure is from. */
export function Limits({ one }: { one: OnShelf }) {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  const { left } = one
  if (left === null || left.limits.length === 0)
    return <p className="quiet">{say('bottle.left-unknown', { inPackage: false }, writer)}</p>
  const { first } = firstTwo(left)
  const others = left.limits.filter((limit) => limit !== first).sort((a, b) => a.part - b.part)
  return (
    <>
      <ul className="limits">
        {[...(first === null ? [] : [first]), ...others].map((limit) => (
          <li key={limit.by}>
            <p className="limit-head">
              <span className={limit === first ? 'decides' : ''}>
                {say('bottle.limit-name', { by: limit.by }, writer)}
                {limit === first && <span className="quiet"> decides</span>}
              </span>
              <span className={limit === first ? 'decides' : ''}>
                <Words>{say('bottle.limit', limit, writer)}</Words>
              </span>
            </p>
            <Bar part={limit.part} />
            <p className="small">
              {[
                ...(limit.ends === null
                  ? []
                  : [say('bottle.limit-ends', { day: writeDay(Date.parse(limit.ends), zone) }, writer)]),
                say('bottle.limit-from', { origin: limit.origin, source: limit.source }, writer),
              ].join('; ')}
            </p>
          </li>
        ))}
      </ul>
      {left.whole && left.whole.ordinary !== left.whole.tabular && <p>{say('bottle.families', left.whole, writer)}</p>}
      {left.next_time_factor !== null && left.next_time_factor > 1 && (
        <p>{say('bottle.next-time', { factor: left.next_time_factor }, writer)}</p>
      )}
    </>
  )
}
