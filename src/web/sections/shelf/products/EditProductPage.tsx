import { say } from '../../../../words/index.js'
import { type ProductRecord, type ProductStatementInput, useWrite } from '../../../shared/api/index.js'
import { correctProduct, undoProduct, useProducts } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, useTell, useWriter } from '../../../shared/ui/index.js'
import { draftOf } from './draft.js'
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
  const tell = useTell()
  const correct = useWrite(
    (statement: ProductStatementInput) => correctProduct(one.id, { seen_revision: one.revision, statement }),
    'products',
  )
  const back = useWrite((revision: number) => undoProduct(one.id, { seen_revision: revision }), 'products')
  const onKeep = (statement: ProductStatementInput, clear: () => void) =>
    correct.mutate(statement, {
      onSuccess: ({ name, revision }) => {
        clear()
        go(`/shelf/products/${one.id}`)
        const undo = async () => {
          await back.mutateAsync(revision)
          return say('web.undone', { name: one.name }, writer)
        }
        tell({ sentence: say('product.corrected', { name }, writer), undo })
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
