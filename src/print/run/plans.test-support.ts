import { type Celsius, celsius, expectOk, minutes, type Seconds, seconds } from '../../kernel/index.js'
import { defineBasis, type TimeBasis } from '../../science/index.js'
import { plan, type Recipe, type Room, type Score } from '../../score/index.js'

const at20 = expectOk(
  defineBasis({ kind: 'ordinary', points: [{ temperature: celsius(20), time: minutes(9.5) }], coefficient: 2.4 }),
)
const alone = expectOk(
  defineBasis({
    kind: 'single-bath',
    points: [
      { temperature: celsius(21), time: minutes(7) },
      { temperature: celsius(24), time: minutes(6) },
    ],
  }),
)

/** The basis that a list's developer is timed by; null where its seconds are fixed. */
function basisOf({ steps }: Recipe): TimeBasis | null {
  const timed = steps.find((step) => step.step === 'bath' && step.time.law === 'by-developing-time')
  return timed === undefined ? null : timed.kind === 'single-bath' ? alone : at20
}

export interface TankSketch {
  readonly recipe: Recipe
  readonly temperature?: Celsius
  readonly offset?: Seconds
  readonly room?: Room
}

/** Tanks `A`, `B`, … of these lists: 600 mL, thermometer read three minutes into a developer. */
export const scoreOf = (...tanks: readonly TankSketch[]): Score =>
  expectOk(
    plan(
      tanks.map(({ recipe, temperature, offset, room }, i) => {
        const basis = basisOf(recipe)
        return {
          recipe,
          conditions: {
            tank: 'ABC'.charAt(i),
            offset: offset ?? seconds(0),
            volume: 600 as never,
            room: room ?? null,
            checks: basis === null ? [] : [seconds(180)],
            development:
              basis === null
                ? null
                : { from: 'basis' as const, basis, temperature: temperature ?? basis.reference.temperature },
          },
        }
      }),
    ),
  )
