import { type Grams, grams, type Millilitres, ok, type Result } from '../../kernel/index.js'
import {
  type AtHand,
  type BathFormula,
  mixingSheet,
  type SheetLine,
  type Swap,
  saltNamed,
  type Weighing,
  weighingOf,
  withAtHand,
} from '../../science/index.js'
import type { MixAsked, MixDoubt, MixSheet, MixSource, MixStep } from './definition.js'
import { taken } from './takes.js'
import { waterKindFor, waterStep } from './water.js'

/** g; a small scale as many have one, until a step is stated. */
const ASSUMED_STEP = 0.1 as Grams
/** Hours after which a developer by weight is used: common practice, its powder dissolves to the last only then. */
const STANDS = 12

const familyOf = (id: string): string | null => {
  const salt = saltNamed(id)
  return salt.ok ? salt.value.family : null
}

/** A salt that is not on the shelf while another hydrate of it is: the one that is there stands for it. */
function atHandFor(formula: BathFormula, sources: readonly MixSource[]): AtHand[] {
  const salts = sources.flatMap(({ salt, held }) => (salt === null || held <= 0 ? [] : [salt]))
  return formula.additions.flatMap(({ salt, gramsPerLitre }) => {
    if (gramsPerLitre === undefined || salts.includes(salt)) return []
    const other = salts.find((one) => familyOf(one) === familyOf(salt))
    return other === undefined ? [] : [{ salt: other, instead: salt }]
  })
}

/** A bath by weight: water, each salt with the next only when the last has dissolved, topped up at the end. */
export function weighedSheet(asked: MixAsked, formula: BathFormula): Result<MixSheet> {
  const found = withAtHand(formula, atHandFor(formula, asked.sources))
  if (!found.ok) return found
  const sheet = mixingSheet(found.value.formula, asked.volume)
  if (!sheet.ok) return sheet
  const { lines, water, temperature } = sheet.value
  const got = lines.map((line) => taken(wantedOf(line, asked.sources), asked.today))
  const weighed = lines.map((line) => howWeighed(line, asked))
  const begin = waterStep(asked, water, temperature)
  const steps = lines.flatMap((line, i): MixStep[] => [
    addStep(line, found.value.swaps, weighed[i]?.weighing ?? null),
    ...(i < lines.length - 1 ? [{ do: 'dissolve' } as const] : []),
  ])
  const kind = waterKindFor(asked.product)
  const stands = asked.product.role === 'developer'
  return ok({
    doubts: [...got.flatMap(({ doubts }) => doubts), ...weighed.flatMap(({ doubts }) => doubts), ...begin.doubts],
    takes: got.flatMap(({ takes }) => takes),
    steps: [
      begin.step,
      ...steps,
      { do: 'top-up', to: asked.volume, kind },
      ...(stands ? [{ do: 'stand', hours: STANDS, origin: 'practice' } as const] : []),
      { do: 'label' },
    ],
  })
}

const wantedOf = ({ salt, name, grams: dry, millilitres: wet }: SheetLine, sources: readonly MixSource[]) => ({
  ...{ name, amount: dry ?? wet ?? 0, unit: dry === null ? ('ml' as const) : ('g' as const) },
  from: sources.filter((source) => source.salt === salt),
})

const addStep = (line: SheetLine, swaps: readonly Swap[], weighing: Weighing | null): MixStep => ({
  ...{ do: 'add', name: line.name, percent: line.percent, weighing },
  ...(line.grams === null ? { amount: line.millilitres, unit: 'ml' } : { amount: line.grams, unit: 'g' }),
  swap: swaps.find(({ have }) => have === line.salt) ?? null,
  // The step between the lines says it.
  cautions: line.cautions.filter((code) => code !== 'dissolve-before-next'),
})

function howWeighed(
  line: SheetLine,
  { scaleStep, volume }: MixAsked,
): { weighing: Weighing | null; doubts: MixDoubt[] } {
  const salt = saltNamed(line.salt)
  if (line.grams === null || !salt.ok) return { weighing: null, doubts: [] }
  const found = weighingOf(salt.value, grams(line.grams), scaleStep ?? ASSUMED_STEP, volume as Millilitres)
  if (found.ok) return { weighing: found.value, doubts: [] }
  return { weighing: null, doubts: [{ of: 'not-weighable', stops: true, sentence: found.problem.sentence }] }
}
