import type { Celsius, Millilitres } from '../../../../kernel/index.js'
import { say } from '../../../../words/index.js'
import type { FinishMixInput, OnShelf, ProductRecord } from '../../../shared/api/index.js'
import { finishMix } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Button, Page, TextField, Trouble, useWriter, Words } from '../../../shared/ui/index.js'
import { usePosting } from '../lots/usePosting.js'
import type { MixDraft } from './draft.js'
import { type MixPlan, sharedOut } from './plan.js'
import { type SheetStep, stepsOf } from './steps.js'

interface SheetProps {
  readonly plan: MixPlan
  readonly product: ProductRecord
  readonly parts: readonly number[] | null
  readonly volume: Millilitres
  readonly from: ReadonlyMap<string, OnShelf | null>
  readonly chosen: readonly OnShelf[]
  readonly hot: Celsius | null
  readonly cold: Celsius | null
  readonly draft: MixDraft
  readonly change: (part: Partial<MixDraft>) => void
  readonly clear: () => void
}

/** The numbered sheet. A step opens when the one before it is ticked; the last one makes the lot. */
export function Sheet(props: SheetProps) {
  const { plan, product, parts, volume, from, chosen, draft, change, clear } = props
  const writer = useWriter()
  const steps = stepsOf({ ...props, bottles: chosen }, writer)
  const { post, isPending, fault } = usePosting((asked: FinishMixInput) => finishMix(asked))
  const into = sharedOut(volume, chosen)
  const finish = () => {
    if (into === null || isPending) return
    const taken = plan.lines.flatMap((line) => {
      const one = from.get(line.key)
      const amount = line.amount === 0 ? (one?.held ?? 0) : line.amount
      return one && amount > 0 ? [{ container_id: one.id, amount: Math.round(amount * 1000) / 1000 }] : []
    })
    post(
      {
        product_id: product.id,
        parts: parts === null ? null : [...parts],
        from: joined(taken),
        into,
        note: draft.note,
      },
      ({ lot }) => say('mix.made', { code: lot?.code ?? '', name: product.name }, writer),
      ({ lot }) => {
        change({ ...draft, started: false, done: 0, note: '' })
        clear()
        if (lot) go(`/shelf/lots/${lot.id}`)
      },
    )
  }
  return (
    <Page
      title={say('mix.title', { name: product.name, volume }, writer)}
      lead={say('mix.sheet.lead', {}, writer)}
      actions={<Button onClick={() => change({ started: false, done: 0 })}>Change what is mixed</Button>}
    >
      <ol className="mix-sheet">
        {steps.map((step, place) => (
          <Step key={step.key} step={step} place={place} done={draft.done} tick={(done) => change({ done })} />
        ))}
      </ol>
      {draft.done >= steps.length && (
        <div className="shelf-part mix-finish">
          <TextField label="Note" value={draft.note} onText={(note) => change({ note })} maxLength={4000} />
          <p className="small">{say('mix.finish-hint', {}, writer)}</p>
          {fault && <Trouble fault={fault} />}
          <div className="row">
            <Button look="go" onClick={finish} waits={isPending}>
              {say('mix.finish', {}, writer)}
            </Button>
          </div>
        </div>
      )}
    </Page>
  )
}

/** One package that serves two lines is named once, with its whole amount. */
function joined(taken: readonly { container_id: string; amount: number }[]) {
  const sums = new Map<string, number>()
  for (const { container_id, amount } of taken) sums.set(container_id, (sums.get(container_id) ?? 0) + amount)
  return [...sums].map(([container_id, amount]) => ({ container_id, amount }))
}

interface StepProps {
  readonly step: SheetStep
  readonly place: number
  readonly done: number
  readonly tick: (done: number) => void
}

function Step({ step, place, done, tick }: StepProps) {
  const ticked = place < done
  const now = place === done
  return (
    <li className={now ? 'now' : ticked ? 'ticked' : 'later'} {...(now ? { 'aria-current': 'step' as const } : {})}>
      <span className="mix-number" aria-hidden="true">
        {place + 1}
      </span>
      <div className="mix-words">
        <p>
          <Words>{step.words}</Words>
        </p>
        {step.more.map((words) => (
          <p key={words} className="small">
            <Words>{words}</Words>
          </p>
        ))}
        {step.cautions.length > 0 && (
          <div className="note">
            {step.cautions.map((words) => (
              <p key={words}>{words}</p>
            ))}
          </div>
        )}
        <label className="check">
          <input
            type="checkbox"
            checked={ticked}
            disabled={!(now || place === done - 1)}
            aria-label={`${step.tick}: step ${place + 1}`}
            onChange={() => tick(ticked ? place : place + 1)}
          />
          <span>{step.tick}</span>
        </label>
      </div>
    </li>
  )
}
