import type { Celsius, Seconds } from '../../kernel/index.js'
import type { Writer } from '../writer.js'

type Named = { name: string }
type Time = Seconds | number

/** Sentences of the plan about what is around the tank; only a desk says them. */
export const planWords = {
  'plan.tanks': (_: object) => 'Which tank',
  'plan.tank': (p: { tank: string }) => `Tank ${p.tank}`,
  'plan.tank.wants': (p: { tank: string }) => `Tank ${p.tank}, still incomplete`,
  'plan.tanks.add': (_: object) => 'Plan another tank beside it',
  'plan.tanks.leave-out': (p: { tank: string }) => `Leave tank ${p.tank} out`,
  'plan.room': (p: { constant: Time; room: Celsius }, w: Writer) =>
    `It is reckoned that two thirds of a difference to ${w.temperature(p.room)} are gone after ${w.time(p.constant)}: a guess from volume and material, good to a factor of two.`,
  'plan.pour': (p: { pour: Celsius; change: number }, w: Writer) =>
    `The tank itself ${p.change > 0 ? 'takes' : 'gives'} ${w.difference(Math.abs(p.change))}: pour at ${w.temperature(p.pour)}.`,
  'plan.thermometer': (p: Named & { read: Celsius; true: Celsius; band: number }, w: Writer) =>
    `Where ${p.name} shows ${w.temperature(p.read)}, the bath is at ${w.temperature(p.true)}, give or take ${w.difference(p.band)}.`,
} as const
