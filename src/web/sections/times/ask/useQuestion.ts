import { useEffect, useState } from 'react'
import { celsius, POSSIBLE, type Reading, readTemperature, writeTemperature } from '../../../../kernel/index.js'
import type { TimeBasis } from '../../../../science/index.js'
import { readFactor } from '../../../shared/figures/index.js'
import { go, usePlace } from '../../../shared/navigation/index.js'
import { useUnits } from '../../../shared/ui/index.js'

/** What is asked of a time besides the time itself. It stands in the address, so that it can be kept and shared. */
export function useQuestion(basis: TimeBasis) {
  const units = useUnits()
  const { path, search } = usePlace()
  const [typed, setTyped] = useState(search.get('typed'))
  const [factorText, setFactorText] = useState(search.get('factor') ?? '')
  const start = asked(search.get('at')) ?? basis.reference.temperature
  const text = typed ?? writeTemperature(start, units)
  // An untouched field stands for the exact temperature asked, not for its rounded text.
  const temperature: Reading<ReturnType<typeof celsius>> =
    typed === null
      ? { kind: 'read', value: start, echo: text }
      : readTemperature(typed, { system: units, what: 'a temperature of the developer' })
  const factor = readFactor(factorText, 'a factor on the time')
  const thermometerId = search.get('thermometer') ?? ''

  const at = temperature.kind === 'read' ? String(Number(temperature.value.toFixed(3))) : null
  const by = factor?.kind === 'read' ? String(factor.value) : factor && factorText
  useEffect(() => {
    const next = new URLSearchParams(window.location.search)
    // What could not be read stands there as it was typed, for a reload to lose nothing.
    if (typed !== null && at === null) next.set('typed', typed)
    else next.delete('typed')
    if (typed !== null && at !== null) next.set('at', at)
    if (by === null) next.delete('factor')
    else next.set('factor', by)
    go(next.size === 0 ? path : `${path}?${next}`, { replace: true })
  }, [typed, at, by, path])

  const setThermometer = (id: string) => {
    const next = new URLSearchParams(search)
    if (id === '') next.delete('thermometer')
    else next.set('thermometer', id)
    go(next.size === 0 ? path : `${path}?${next}`, { replace: true })
  }
  return { text, typed, setTyped, temperature, factor, factorText, setFactorText, thermometerId, setThermometer }
}

function asked(text: string | null) {
  const value = Number(text)
  const { low, high } = POSSIBLE.celsius
  return text === null || text.trim() === '' || !(value >= low && value <= high) ? null : celsius(value)
}
