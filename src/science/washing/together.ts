import type { WashStep } from './definition.js'
import { goesOn } from './left.js'

/** What a wash begins with: mL of film in all, mL on reel and walls, and how strong each is as a part of the fixer. */
export interface BeforeWash {
  readonly film: number
  readonly walls: number
  readonly filmAt: number
  readonly wallsAt: number
}

/** Strengths, as parts of the fixer. */
interface Strengths {
  readonly film: number
  readonly water: number
}

/**
 * How strong film is after a wash in which the water fills up while the film gives off, as a part of the fixer. Film
 * nears its water with a half-life (s), and what it gives is in that water until it is dumped or runs out:
 *
 *     df/dt = −a (f − b)    db/dt = −q b + φ a (f − b)
 *
 * with a = ln 2/T½, q the flow over what the tank holds and φ the film's volume over that. Solved step by step in closed
 * form. It is never below what water alone or diffusion alone would leave, and has both as its ends. Water that stands
 * unmoved takes nothing from film, as published half-lives are for moving water.
 */
export function leftTogether(steps: readonly WashStep[], before: BeforeWash, halfLife: number): number {
  let now: Strengths = { film: before.filmAt, water: before.wallsAt }
  for (const [i, step] of steps.entries()) {
    const held = step.volume + before.walls
    const filled = goesOn(step, steps[i - 1]) ? now : { ...now, water: (now.water * before.walls) / held }
    now = afterStep(step, filled, { held, film: before.film, halfLife })
  }
  return now.film
}

interface Tank {
  readonly held: number
  readonly film: number
  readonly halfLife: number
}

function afterStep(step: WashStep, { film, water }: Strengths, { held, film: volume, halfLife }: Tank): Strengths {
  if (step.kind === 'change' && step.moved === false) return { film, water }
  const passes = Math.LN2 / halfLife
  const gives = (passes * volume) / held
  const runs = step.kind === 'running' ? step.perMinute / 60 / held : 0
  // The two rates at which both together die away; they never meet, since film gives to the water.
  const middle = (passes + gives + runs) / 2
  const apart = Math.hypot((passes - gives - runs) / 2, Math.sqrt(passes * gives))
  const fast = middle + apart
  const slow = (passes * runs) / fast
  const [late, early] = [Math.exp(-slow * step.time), Math.exp(-fast * step.time)]
  const toFilm = passes * (water - film)
  const toWater = gives * (film - water) - runs * water
  const blend = (at: number, change: number) =>
    Math.max(0, (late * (fast * at + change) - early * (slow * at + change)) / (fast - slow))
  return { film: blend(film, toFilm), water: blend(water, toWater) }
}
