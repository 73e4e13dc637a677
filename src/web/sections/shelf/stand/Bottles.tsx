import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import type { OnShelf, ProductRecord } from '../../../shared/api/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Button, Select, TextField, useWriter } from '../../../shared/ui/index.js'
import { BottleRow } from './BottleRow.js'
import { Columns } from './Jugs.js'
import { codeIn, found, type Order } from './shown.js'

/** Bottles drawn at first, and more each time: a shelf of thousands opens as fast as one of five. */
const AT_ONCE = 50
/** From this many bottles on a search is worth its line. */
const SEARCH_FROM = 6

interface BottlesProps {
  readonly bottles: readonly OnShelf[]
  readonly products: readonly ProductRecord[]
  readonly now: number
}

/** Every bottle that holds a bath: to be found by its words, or gone to by the code on its label. */
export function Bottles({ bottles, products, now }: BottlesProps) {
  const writer = useWriter()
  const [words, setWords] = useState('')
  const [order, setOrder] = useState<Order>('name')
  const [most, setMost] = useState(AT_ONCE)
  if (bottles.length === 0) return <p>{say('bottle.no-bath', {}, writer)}</p>
  const kept = found(bottles, codeIn(words) ?? words, order)
  const byId = new Map(products.map((product) => [product.id, product]))
  const toLot = (event: FormEvent) => {
    event.preventDefault()
    const code = codeIn(words)
    if (code !== null) go(`/l/${code}`)
  }
  return (
    <section aria-label="Bottles">
      <form className="bottle-finder" onSubmit={toLot} noValidate>
        <TextField
          label="Find"
          type="search"
          hint={say('bottle.find-hint', {}, writer)}
          value={words}
          onText={(text) => {
            setWords(text)
            setMost(AT_ONCE)
          }}
          maxLength={200}
        />
        {bottles.length >= SEARCH_FROM && (
          <Select
            label="Order"
            value={order}
            options={[
              ['name', 'by name'],
              ['end', 'what ends first'],
            ]}
            onValue={setOrder}
          />
        )}
      </form>
      {kept.length === 0 ? (
        <p role="status">{say('bottle.none-found', {}, writer)}</p>
      ) : (
        <>
          <Columns names={['Bottle', 'What is left', 'volume', 'rolls', 'days', 'Next']} />
          <ul className="bottles">
            {kept.slice(0, most).map((one) => (
              <BottleRow key={one.id} one={one} product={byId.get(one.lot?.product_id ?? '')} now={now} />
            ))}
          </ul>
        </>
      )}
      {kept.length > most && (
        <div className="row more">
          <p role="status">{say('bottle.page', { shown: most, found: kept.length }, writer)}</p>
          <Button onClick={() => setMost(most + AT_ONCE)}>Show more</Button>
        </div>
      )}
    </section>
  )
}
