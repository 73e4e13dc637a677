import type { ProblemCode } from '../../../src/kernel/index.js'
import { discard, finishMix, useBath } from '../../../src/lab/index.js'
import { schemas } from '../../../src/wire/index.js'
import type { Darkroom, Episode } from '../darkroom.js'
import { bottleOf, usedOnce } from './shelf.js'

type Kind = 'fixer' | 'developer' | 'stop'
interface Mistake {
  readonly what: string
  readonly code: ProblemCode
  readonly kinds: readonly Kind[]
  readonly make: (darkroom: Darkroom, lot: number, kind: Kind) => Parameters<Darkroom['isRefused']>[2]
}

const idOf = (darkroom: Darkroom, lot: number) => darkroom.of(bottleOf(lot)).id
const used = (kind: Kind, rolls: number, more: object) => (darkroom: Darkroom, lot: number) => {
  const asked = usedOnce(idOf(darkroom, lot), kind, rolls, more)
  return ((context, rooms) => useBath(context, rooms, asked)) as Parameters<Darkroom['isRefused']>[2]
}

const MISTAKES: readonly Mistake[] = [
  {
    what: 'takes the stop for the developer',
    code: 'shelf.wrong-role',
    kinds: ['stop'],
    make: used('stop', 1, { for_role: 'developer' }),
  },
  {
    what: 'wants more than the bottle holds',
    code: 'shelf.not-enough',
    kinds: ['developer'],
    make: used('developer', 1, { poured: 1001 }),
  },
  {
    what: 'puts thirty rolls into a litre of fixer',
    code: 'shelf.carries-no-more',
    kinds: ['fixer'],
    make: used('fixer', 30, {}),
  },
  {
    what: 'does not say where the fixer went back',
    code: 'shelf.back-where',
    kinds: ['fixer'],
    make: used('fixer', 1, { back_into: null }),
  },
  {
    what: 'would pour fixer away',
    code: 'shelf.into-a-jug-only',
    kinds: ['fixer'],
    make: (darkroom, lot) => {
      const asked = schemas.Discard.parse({ container_id: idOf(darkroom, lot), where: 'as-allowed' })
      return (context, rooms) => discard(context, rooms, asked)
    },
  },
  {
    what: 'mixes into a bottle that is not empty',
    code: 'shelf.not-empty',
    kinds: ['stop', 'developer'],
    make: (darkroom, lot, kind) => {
      const into = [{ container_id: idOf(darkroom, lot), ml: 10 }]
      const asked = schemas.FinishMix.parse({ product_id: darkroom.of(kind).id, into })
      return (context, rooms) => finishMix(context, rooms, asked)
    },
  },
  {
    what: 'dates a use back to before the mix',
    code: 'shelf.before-last',
    kinds: ['stop'],
    make: used('stop', 1, { at: '2024-09-01T12:00:00.000Z' }),
  },
]

/** Lots in which mistakes are made: after that everybody has made each. */
const LEARNT = 27

/** Every third lot of the first year has one of the mistakes that come up with its kind, in turn. */
export function mistakesWith(lot: number, kind: Kind, at: number): Episode[] {
  if (lot >= LEARNT || Math.floor(lot / 3) % 3 !== 0) return []
  const possible = MISTAKES.filter(({ kinds }) => kinds.includes(kind))
  const { what, code, make } = possible[Math.floor(lot / 9) % possible.length] as Mistake
  return [{ at, happens: (darkroom) => darkroom.isRefused(what, code, make(darkroom, lot, kind)) }]
}
