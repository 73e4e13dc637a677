import { say, writeDay } from '../../../../words/index.js'
import { type OnShelf, type ProductRecord, useBench } from '../../../shared/api/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { Bar } from './Bar.js'
import { firstTwo, isHalfFull, type Next, nextFor } from './next.js'
import { contentsOf, fullness } from './shown.js'

interface BottleRowProps {
  readonly one: OnShelf
  readonly product: ProductRecord | undefined
  readonly now: number
}

/** One bottle: what is in it, what is left of it by what ends it first, and what it asks for. */
export function BottleRow({ one, product, now }: BottleRowProps) {
  const writer = useWriter()
  const { lot, left, statement, station } = one
  if (lot === null) return null
  const next = nextFor(one, product, now)
  const sub = { code: lot.code, bottle: statement.name, full: fullness(one), station, clearing: left?.clearing ?? null }
  return (
    <li>
      <Link className="bottle" href={`/shelf/lots/${lot.id}`}>
        <span className="bottle-name">
          <strong>{contentsOf(one)}</strong>
          <span className="small">
            <Words>{say('bottle.sub', sub, writer)}</Words>
          </span>
        </span>
        <LeftCell one={one} />
        <Figures one={one} />
        <NextCell next={next} />
      </Link>
    </li>
  )
}

function LeftCell({ one }: { one: OnShelf }) {
  const writer = useWriter()
  const { left } = one
  const two = left === null ? null : firstTwo(left)
  if (left === null || two === null || two.first === null)
    return <span className="bottle-left small">{say('bottle.left-unknown', { inPackage: false }, writer)}</span>
  const words = say(
    'bottle.left',
    {
      first: two.first,
      next: two.next?.by ?? null,
      silver: left.silver_g_per_l?.usual ?? null,
      halfFull: isHalfFull(one),
    },
    writer,
  )
  return (
    <span className="bottle-left">
      <Bar part={two.first.part} mark={two.next?.part ?? null} />
      <span className="small">
        <Words>{words}</Words>
      </span>
    </span>
  )
}

function Figures({ one }: { one: OnShelf }) {
  const writer = useWriter()
  const { left, held, unit } = one
  const decides = left?.decides ?? null
  const byAge = decides === 'age'
  return (
    <span className="bottle-figures">
      <Figure name="volume" strong={false}>
        {say('bottle.amount', { held, unit }, writer)}
      </Figure>
      <Figure name="rolls" strong={decides !== null && !byAge}>
        {left?.whole ? String(left.whole.ordinary) : null}
      </Figure>
      <Figure name="days" strong={byAge}>
        {left?.days == null ? null : String(Math.floor(left.days))}
      </Figure>
    </span>
  )
}

function Figure({ name, strong, children }: { name: string; strong: boolean; children: string | null }) {
  return (
    <span className="figure">
      <span className="figure-name">{name}</span>
      {children === null ? (
        <span className="quiet">
          <span className="unseen">not known</span>
          <span aria-hidden="true">–</span>
        </span>
      ) : (
        <span className={strong ? 'decides' : ''}>
          <Words>{children}</Words>
        </span>
      )}
    </span>
  )
}

/** What has to be done stands in a frame; advice and calm are words. */
const LOOKS: Readonly<Record<Next['act'], 'asks' | 'says' | 'quiet'>> = {
  discard: 'asks',
  fresh: 'asks',
  test: 'asks',
  'top-up': 'asks',
  decant: 'says',
  soon: 'says',
  nothing: 'quiet',
}

function NextCell({ next }: { next: Next }) {
  const words = useNextWords()(next)
  return (
    <span className={`bottle-next ${LOOKS[next.act]}`}>
      <Words>{words}</Words>
    </span>
  )
}

/** What a bottle asks for, in words. */
export function useNextWords(): (next: Next) => string {
  const writer = useWriter()
  const zone = useBench().data?.zone ?? 'UTC'
  return (next) => {
    switch (next.act) {
      case 'discard':
        return say('bottle.next.discard', {}, writer)
      case 'top-up':
        return say('bottle.next.top-up', { due: next.due }, writer)
      case 'fresh':
        return say('bottle.next.fresh', { rolls: next.rolls }, writer)
      case 'test':
        return say('bottle.next.test', { rolls: next.rolls }, writer)
      case 'decant':
        return say('bottle.next.decant', { days: next.days }, writer)
      case 'soon':
        return say('bottle.next.soon', { day: writeDay(next.at, zone) }, writer)
      case 'nothing':
        return say('bottle.next.nothing', {}, writer)
    }
  }
}
