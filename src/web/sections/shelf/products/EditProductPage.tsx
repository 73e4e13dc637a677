import { say } from '../../../../words/index.js'
import { type ProductRecord, type ProductStatementInput, useWrite } from '../../../shared/api/index.js'
import { correctProduct, useProducts, useWayBack } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useWriter } from '../../../shared/ui/index.js'
import { draftOf } from './draft.js'
import { keptProduct } from './keptProduct.js'
import { ProductForm } from './ProductForm.js'
import { NoProduct } from './ProductPage.js'

export function EditProductPage({ params }: { params: Record<string, string> }) {
  return (
    <Asked query={useProducts()}>
      {(all) => {
        const one = all.find(({ id }) => id === params.id)
        return one ? <Correction key={one.revision} one={one} /> : <NoProduct />
      }}
    </Asked>
  )
}

/** What is said of a product is corrected; what was mixed of it goes by the new words. */
function Correction({ one }: { one: ProductRecord }) {
  const writer = useWriter()
  const correct = useWrite(
    (statement: ProductStatementInput) => correctProduct(one.id, { seen_revision: one.revision, statement }),
    'products',
  )
  const { changed } = useWayBack(keptProduct(one))
  const onKeep = (statement: ProductStatementInput, clear: () => void) =>
    correct.mutate(statement, {
      onSuccess: ({ name, revision }) => {
        clear()
        go(`/shelf/products/${one.id}`)
        changed(say('product.corrected', { name }, writer), revision)
      },
    })
  return (
    <Page
      title={`Correct ${one.name}`}
      lead={say('times.form.edit', {}, writer)}
      actions={<ButtonLink href={`/shelf/products/${one.id}`}>Leave it as it was</ButtonLink>}
    >
      <ProductForm
        name={`product-${one.id}-${one.revision}`}
        initial={draftOf(one)}
        formula={one.formula}
        process={one.process}
        words="Keep the correction"
        waits={correct.isPending}
        fault={correct.isError ? correct.error : null}
        onKeep={onKeep}
      />
    </Page>
  )
}
