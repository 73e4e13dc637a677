import { useEffect, useState } from 'react'
import { say } from '../../../../words/index.js'
import type { RollSearchInput } from '../../../shared/api/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Select, TextField, useWriter } from '../../../shared/ui/index.js'
import { addressOf, type Look, STATE_CHOICES } from './look.js'
import { Views } from './Views.js'

/** How long the typing rests before the list is asked for anew. */
const REST_MS = 250

interface FinderProps {
  readonly look: Look
  readonly asked: RollSearchInput
  /** Dates that could not be read. */
  readonly unread: readonly string[]
}

/** What is looked for: words and a state at first sight, the rest behind one line. */
export function Finder({ look, asked, unread }: FinderProps) {
  const writer = useWriter()
  const [typed, setTyped] = useTyped(look)
  const troubleOf = (text: string) => (unread.includes(text) ? say('rolls.unread-look', { text }, writer) : null)
  const more = [look.film, look.whose, look.process, look.from, look.to, look.due].filter(Boolean).length
  return (
    <search className="roll-finder">
      <TextField
        label="Find"
        hint="Number, film, person or a word of the note."
        type="search"
        value={typed.words}
        onText={(words) => setTyped({ words })}
        maxLength={200}
      />
      <Select label="State" value={look.state} options={STATE_CHOICES} onValue={(state) => setTyped({ state }, true)} />
      <details className="whole" open={more > 0 || undefined}>
        <summary>Film, person, dates, saved views</summary>
        <div className="form-pair">
          <TextField
            label="Film, its whole name"
            value={typed.film}
            onText={(film) => setTyped({ film })}
            maxLength={120}
          />
          <TextField
            label="Person, the whole name"
            value={typed.whose}
            onText={(whose) => setTyped({ whose })}
            maxLength={120}
          />
          <TextField
            label="Taken in from"
            hint="Such as 3 May 2026."
            value={typed.from}
            onText={(from) => setTyped({ from })}
            trouble={troubleOf(look.from)}
          />
          <TextField
            label="Taken in until"
            value={typed.to}
            onText={(to) => setTyped({ to })}
            trouble={troubleOf(look.to)}
          />
          <TextField
            label="Due by"
            hint="Such as in 2 weeks."
            value={typed.due}
            onText={(due) => setTyped({ due })}
            trouble={troubleOf(look.due)}
          />
          <Select
            label="Chemistry"
            value={look.process}
            options={[
              ['', 'any'],
              ['black-and-white', 'black-and-white'],
              ['colour-negative', 'colour negative'],
              ['colour-reversal', 'colour slide'],
            ]}
            onValue={(process) => setTyped({ process }, true)}
          />
        </div>
        <Views look={look} asked={asked} />
      </details>
    </search>
  )
}

/** What is being typed; it goes into the address once the typing rests, a choice at once. */
function useTyped(look: Look) {
  const [typed, setText] = useState(look)
  const standing = addressOf(look)
  useEffect(() => {
    const next = addressOf(typed)
    if (next === standing) return
    const change = setTimeout(() => go(next, { replace: true }), REST_MS)
    return () => clearTimeout(change)
  }, [typed, standing])
  // A view that is chosen, or a step back, changes the address without the fields.
  const [known, setKnown] = useState(standing)
  if (known !== standing) {
    setKnown(standing)
    if (addressOf(typed) !== standing) setText(look)
  }
  const set = (part: Partial<Look>, atOnce = false) => {
    setText((now) => ({ ...now, ...part }))
    if (atOnce) go(addressOf({ ...typed, ...part }), { replace: true })
  }
  return [typed, set] as const
}
