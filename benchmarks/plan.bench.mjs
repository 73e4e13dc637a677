// What a keystroke in the plan costs before it is drawn: the whole plan worked out anew, as the form does it.
import { performance } from 'node:perf_hooks'
import { fileURLToPath, pathToFileURL } from 'node:url'

const built = (name) => import(pathToFileURL(fileURLToPath(new URL(`../dist/${name}/index.js`, import.meta.url))).href)

let parts

/** The plan's own work is read from dist, where the page's form is not; the form adds the reading of a few short texts. */
async function setUp() {
  const [kernel, science, score] = await Promise.all(['kernel', 'science', 'score'].map(built))
  const basis = kernel.expectOk(
    science.defineBasis({
      kind: 'ordinary',
      points: [{ temperature: kernel.celsius(20), time: kernel.minutes(9.5) }],
      coefficient: 2.4,
    }),
  )
  parts = { ...kernel, ...score, basis }
}

const LABELS = { title: '', description: '', hands: 'Hands', legend: { change: 'change', turn: 'turn', area: 'area' } }

/** Two tanks in a warm room, every digit of the temperature typed anew. */
function keystroke(temperature) {
  const { plan, scorePicture, expectOk, seconds, celsius, SHIPPED_RECIPES, basis } = parts
  const room = { temperature: celsius(26), timeConstant: seconds(9000) }
  const score = expectOk(
    plan(
      ['A', 'B'].map((tank, i) => ({
        recipe: SHIPPED_RECIPES[0],
        conditions: {
          tank,
          offset: seconds(720 * i),
          room,
          development: { from: 'basis', basis, temperature: celsius(temperature) },
        },
      })),
    ),
  )
  const staves = score.tanks.map((of) => ({
    plan: of,
    began: null,
    states: new Map(),
    next: null,
    now: null,
    label: of.tank.tank,
    note: '',
    band: [],
  }))
  scorePicture({ staves, form: 'page', size: { width: 760, height: 390 }, labels: LABELS, minTextSize: 14 })
}

let typed = 0

export const rows = [
  {
    name: 'a keystroke in the plan: two tanks in a warm room planned anew, and their score laid out',
    // One frame at 60 a second.
    bound: { value: 16.7, unit: 'ms' },
    setUp,
    run: () => {
      const from = performance.now()
      typed = (typed + 1) % 30
      keystroke(19 + typed / 10)
      return performance.now() - from
    },
    repeats: 60,
  },
]
