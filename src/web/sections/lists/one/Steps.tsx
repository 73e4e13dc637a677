import { SPREAD } from '../../../../science/index.js'
import { hasFixedTime, isBath, type Recipe, type Step } from '../../../../score/index.js'
import {
  actLines,
  bathLines,
  cautionWords,
  commonLines,
  ORIGIN_MARKS,
  type StepLine,
  say,
  shortLength,
} from '../../../../words/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'

/** The steps of a list: what each is for, what to take care of, how exactly; what all baths share is said once. */
export function Steps({ recipe }: { recipe: Recipe }) {
  const writer = useWriter()
  const common = commonLines(recipe.steps.filter(isBath), { spread: SPREAD }, writer)
  const shared = new Set(common.map(({ words }) => words))
  return (
    <>
      <ol className="list-steps">
        {recipe.steps.map((step, i) => (
          <OneStep key={step.id} step={step} place={i + 1} shared={shared} />
        ))}
      </ol>
      {common.length > 0 && (
        <section className="list-common">
          <h2>{say('list.shared', {}, writer)}</h2>
          <Lines lines={common} />
        </section>
      )}
      <Marks />
    </>
  )
}

interface OneStepProps {
  readonly step: Step
  readonly place: number
  /** Sentences that are said once for all. */
  readonly shared: ReadonlySet<string>
}

function OneStep({ step, place, shared }: OneStepProps) {
  const writer = useWriter()
  const lines = isBath(step)
    ? bathLines(step, { spread: SPREAD, onlyTime: hasFixedTime(step) }, writer).filter(
        ({ words }) => !shared.has(words),
      )
    : actLines(step, writer)
  return (
    <li>
      <h2>
        <span className="quiet">{place}</span> {step.name}
        <span className="list-length">
          <Words>{shortLength(step, writer)}</Words>
        </span>
      </h2>
      <p>
        <Words>{step.reason}</Words>
      </p>
      {cautionWords(step, writer).map((caution) => (
        <p key={caution} className="care">
          <Words>{caution}</Words>
        </p>
      ))}
      <Lines lines={lines} />
    </li>
  )
}

const Lines = ({ lines }: { lines: readonly StepLine[] }) => (
  <dl className="list-lines">
    {lines.map(({ about, label, words, origins }) => (
      <div key={about}>
        <dt>{label}</dt>
        <dd>
          <Words>{words}</Words>
          {origins.map((origin) => (
            <small key={origin} className="mark-of">
              {' '}
              [{ORIGIN_MARKS[origin]}]
            </small>
          ))}
        </dd>
      </div>
    ))}
  </dl>
)

/** What the letters behind the figures mean. */
function Marks() {
  const writer = useWriter()
  return (
    <section className="list-common">
      <h2>{say('list.marks', {}, writer)}</h2>
      <ul className="small">
        {(Object.keys(ORIGIN_MARKS) as (keyof typeof ORIGIN_MARKS)[]).map((origin) => (
          <li key={origin}>
            {say(
              'list.mark',
              { mark: `[${ORIGIN_MARKS[origin]}]`, origin: say(`list.origin.${origin}`, {}, writer) },
              writer,
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}
