import type { OnShelf, ProductRecord } from '../../../shared/api/index.js'
import { DiscardForm } from './DiscardForm.js'
import { MeasureForm } from './MeasureForm.js'
import { MoveForm } from './MoveForm.js'
import { UseForm } from './UseForm.js'

export interface ActProps {
  readonly one: OnShelf
  readonly product: ProductRecord | undefined
}

/** What hands do with a bottle, each behind a line of its own. */
export function Acts({ one, product }: ActProps) {
  return (
    <div className="acts">
      <details>
        <summary>Note a use</summary>
        <UseForm one={one} product={product} />
      </details>
      <details>
        <summary>Pour it over</summary>
        <MoveForm one={one} />
      </details>
      <details>
        <summary>It was measured otherwise</summary>
        <MeasureForm one={one} />
      </details>
      <details id="discard">
        <summary>Get rid of it</summary>
        <DiscardForm one={one} product={product} />
      </details>
    </div>
  )
}
