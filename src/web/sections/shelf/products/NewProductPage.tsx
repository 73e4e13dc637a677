import { say } from '../../../../words/index.js'
import { type ProductStatementInput, useWrite } from '../../../shared/api/index.js'
import { keepProduct, useStartingProducts } from '../../../shared/desk/index.js'
import { go, usePlace } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useTell, useWriter } from '../../../shared/ui/index.js'
import { BLANK, draftOf } from './draft.js'
import { ProductForm } from './ProductForm.js'

/** A product is kept from its label, or begun with a generic one. */
export function NewProductPage() {
  const writer = useWriter()
  const tell = useTell()
  const from = usePlace().search.get('from')
  const keep = useWrite((statement: ProductStatementInput) => keepProduct(statement), 'products')
  const onKeep = (statement: ProductStatementInput, clear: () => void) =>
    keep.mutate(statement, {
      onSuccess: ({ id, name }) => {
        clear()
        go(`/shelf/products/${id}`)
        tell({ sentence: say('product.kept', { name }, writer) })
      },
    })
  return (
    <Page
      title="Keep a product"
      lead={say('product.new', {}, writer)}
      actions={<ButtonLink href="/shelf/products">Leave it</ButtonLink>}
    >
      <Asked query={useStartingProducts()}>
        {(starting) => {
          const begun = starting.find(({ name }) => name === from)
          return (
            <ProductForm
              name={`product-new-${from ?? ''}`}
              initial={begun ? draftOf(begun) : BLANK}
              formula={begun?.formula ?? null}
              process={begun?.process ?? 'black-and-white'}
              words="Keep this product"
              waits={keep.isPending}
              fault={keep.isError ? keep.error : null}
              onKeep={onKeep}
            />
          )
        }}
      </Asked>
    </Page>
  )
}
