import { type FormEvent, useState } from 'react'
import { say } from '../../../words/index.js'
import { pair, useWrite } from '../../shared/api/index.js'
import { usePlace } from '../../shared/navigation/index.js'
import { Button, ButtonLink, Page, TextField, Trouble, useWriter } from '../../shared/ui/index.js'

/** What a phone sees at the address of the QR code: it names itself, and is paired. */
export function PairPage() {
  const writer = useWriter()
  const { search } = usePlace()
  const [code, setCode] = useState(search.get('code') ?? '')
  const [name, setName] = useState('')
  const [tried, setTried] = useState(false)
  const pairing = useWrite(pair, 'bench')
  const missing = (text: string) => (tried && text.trim() === '' ? say('shelf.missing', {}, writer) : null)
  const begin = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (name.trim() !== '' && code.trim() !== '' && !pairing.isPending)
      pairing.mutate({ code: code.trim(), name: name.trim() })
  }
  if (pairing.isSuccess)
    return (
      <Page title="Paired" lead={say('pair.done', { name: pairing.data.name }, writer)}>
        <ButtonLink look="go" href="/">
          To the bench
        </ButtonLink>
      </Page>
    )
  return (
    <Page title="Pair this device" lead={say('pair.lead', {}, writer)}>
      <form onSubmit={begin} noValidate className="narrow">
        <TextField
          label="Name of this device"
          hint={say('pair.name-hint', {}, writer)}
          value={name}
          onText={setName}
          maxLength={120}
          trouble={missing(name)}
        />
        <TextField
          label="Code"
          value={code}
          onText={setCode}
          maxLength={40}
          autoCapitalize="characters"
          trouble={missing(code)}
        />
        {pairing.isError && <Trouble fault={pairing.error} />}
        <div className="row">
          <Button type="submit" look="go" waits={pairing.isPending}>
            Pair
          </Button>
        </div>
      </form>
    </Page>
  )
}
