import type { DevelopingTime, TimeBasis } from '../../../../science/index.js'
import { timeGraph } from '../../../../score/index.js'
import { graphLabels } from '../../../../words/index.js'
import { Drawing, useUnits, useWidth } from '../../../shared/ui/index.js'

interface GraphProps {
  readonly film: string
  readonly basis: TimeBasis
  readonly asked: DevelopingTime | null
}

/** What the number rests on: the sheet's points, the law through them, its doubt, where the sheet stops. */
export function Graph({ film, basis, asked }: GraphProps) {
  const units = useUnits()
  const [frame, width] = useWidth<HTMLElement>()
  const labels = graphLabels({ film, basis, asked }, units)
  const height = width < 420 ? 340 : 430
  return (
    <figure ref={frame} className="graph" style={{ minHeight: height }}>
      {width >= 280 && (
        <Drawing picture={timeGraph({ basis, asked, units, labels, size: { width, height }, minTextSize: 14 })} />
      )}
    </figure>
  )
}
