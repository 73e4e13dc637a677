import type { ReactNode } from 'react'
import { writeDuration, writeTemperature } from '../../../../kernel/index.js'
import { type DevelopingTime, fitLaw, type LawFit, type TimeBasis } from '../../../../science/index.js'
import type { TimeRecord } from '../../../../wire/index.js'
import { lawSentence, say, working } from '../../../../words/index.js'
import { useUnits, useWriter, Words } from '../../../shared/ui/index.js'
import { LawChoice } from './LawChoice.js'

interface GroundsProps {
  readonly record: TimeRecord
  readonly basis: TimeBasis
  readonly answer: DevelopingTime | null
}

/** The working, line by line; every figure opens where it came from. */
export function Grounds({ record, basis, answer }: GroundsProps) {
  const writer = useWriter()
  const fit = basis.kind === 'ordinary' ? fitLaw(basis, basis.law) : null
  const grounds = {
    kind: basis.kind,
    law: basis.law,
    coefficient: basis.coefficient,
    activationEnergy: fit?.activationEnergy ?? null,
    sourceWords: record.source_words,
  }
  const lines = answer === null ? [] : working(answer, grounds, writer)
  return (
    <section className="grounds" aria-labelledby="grounds">
      <h2 id="grounds">Where this number comes from</h2>
      <div>
        {lines.map(({ line, source }, place) => (
          <Figure key={line} line={line} source={source}>
            {place === 0 && <SheetPoints basis={basis} record={record} fit={fit} />}
            {place > 1 && place < lines.length - 1 && <p>{say('web.factor-own', {}, writer)}</p>}
            {place > 0 && place === lines.length - 1 && answer && <GiveOrTake answer={answer} />}
            {place === 1 && <Law basis={basis} record={record} fit={fit} sentence={lawSentence(grounds, writer)} />}
          </Figure>
        ))}
        {answer === null && <SheetPoints basis={basis} record={record} fit={fit} />}
      </div>
    </section>
  )
}

/** What the answer may be out by, part by part. */
function GiveOrTake({ answer }: { answer: DevelopingTime }) {
  const writer = useWriter()
  const { bySheetAndLaw, byThermometer, thermometerError } = answer.band
  if (answer.position === 'fixed') return null
  return (
    <p>
      <Words>{say('web.band-parts', { bySheet: bySheetAndLaw, byThermometer, error: thermometerError }, writer)}</Words>
    </p>
  )
}

function Figure({ line, source, children }: { line: string; source: string; children: ReactNode }) {
  return (
    <details className="figure">
      <summary>
        <Words>{line}</Words>{' '}
        <span className="quiet">
          <Words>{source}</Words>
        </span>
      </summary>
      <div className="figure-body">{children}</div>
    </details>
  )
}

/** The sheet's own times, and how far each lies from the law. */
function SheetPoints({ basis, record, fit }: { basis: TimeBasis; record: TimeRecord; fit: LawFit | null }) {
  const writer = useWriter()
  const units = useUnits()
  const judged = fit !== null && basis.points.length > 2
  return (
    <>
      <p>
        <Words>
          {say(
            'web.source',
            { words: record.source_words, origin: record.source_origin, count: record.points.length },
            writer,
          )}
        </Words>
      </p>
      <dl className="due">
        {basis.points.map((point, place) => (
          <PointLine
            key={point.temperature}
            temperature={writeTemperature(point.temperature, units)}
            time={writeDuration(point.time)}
            misfit={judged ? (fit.misfits[place] ?? null) : null}
          />
        ))}
      </dl>
    </>
  )
}

function PointLine({ temperature, time, misfit }: { temperature: string; time: string; misfit: number | null }) {
  const writer = useWriter()
  return (
    <>
      <dt>
        <Words>{temperature}</Words>
      </dt>
      <dd>
        {time}
        {misfit !== null && (
          <span className="quiet">
            <Words>{`, ${say('web.point-misfit', { misfit }, writer)}`}</Words>
          </span>
        )}
      </dd>
    </>
  )
}

function Law({
  basis,
  record,
  fit,
  sentence,
}: Omit<GroundsProps, 'answer'> & { fit: LawFit | null; sentence: string }) {
  const writer = useWriter()
  const { value, low, high, origin } = basis.coefficient
  const worst = fit === null || basis.points.length < 3 ? undefined : basis.points[fit.worst.index]
  return (
    <>
      <p>
        <Words>{`${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`}</Words>
      </p>
      {basis.kind === 'ordinary' && (
        <p>
          <Words>
            {say(
              `web.coefficient.${origin === 'measured' || origin === 'practice' ? 'sheet' : origin}`,
              { value, low, high },
              writer,
            )}
          </Words>
        </p>
      )}
      {fit && worst && (
        <p>
          <Words>{say('time.misfit', { misfit: fit.worst.misfit, temperature: worst.temperature }, writer)}</Words>
        </p>
      )}
      {basis.kind === 'ordinary' && <LawChoice record={record} />}
    </>
  )
}
