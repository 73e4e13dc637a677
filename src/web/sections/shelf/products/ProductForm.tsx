import { type FormEvent, useState } from 'react'
import { say } from '../../../../words/index.js'
import type { ProductRecord, ProductStatementInput } from '../../../shared/api/index.js'
import { Button, Trouble, useDraft, useWriter } from '../../../shared/ui/index.js'
import { type ProductDraft, readProduct } from './draft.js'
import { ProductFields } from './ProductFields.js'

interface ProductFormProps {
  /** The name under which what is typed is kept until it is saved. */
  readonly name: string
  readonly initial: ProductDraft
  readonly formula: ProductRecord['formula']
  readonly process: ProductRecord['process']
  readonly words: string
  readonly waits: boolean
  readonly fault: Error | null
  readonly onKeep: (statement: ProductStatementInput, clear: () => void) => void
}

export function ProductForm({ name, initial, formula, process, words, waits, fault, onKeep }: ProductFormProps) {
  const writer = useWriter()
  const { draft, change, clear } = useDraft(name, initial)
  const [tried, setTried] = useState(false)
  const reading = readProduct(draft, formula, process, writer)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    if (reading.statement !== null && !waits) onKeep(reading.statement, clear)
  }
  return (
    <form className="product-form" onSubmit={submit} noValidate>
      <ProductFields {...{ draft, change, reading, tried, formula }} />
      {fault && <Trouble fault={fault} />}
      <div className="row">
        <Button type="submit" look="go" waits={waits}>
          {words}
        </Button>
      </div>
      <p role="alert" className="form-said">
        {tried &&
          reading.statement === null &&
          say('times.form.wants', { count: Object.keys(reading.troubles).length }, writer)}
      </p>
    </form>
  )
}
