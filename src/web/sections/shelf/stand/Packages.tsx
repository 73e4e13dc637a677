import { say } from '../../../../words/index.js'
import type { OnShelf } from '../../../shared/api/index.js'
import { Link } from '../../../shared/navigation/index.js'
import { useWriter, Words } from '../../../shared/ui/index.js'
import { packageFacts } from '../things/facts.js'

/** Packages as they were bought, each leading to its product. */
export function Packages({ packages }: { packages: readonly OnShelf[] }) {
  const writer = useWriter()
  return (
    <ul className="rows">
      {packages.map((one) =>
        one.statement.kind === 'package' ? (
          <li key={one.id}>
            <Link className="row-link" href={`/shelf/products/${one.statement.product_id}`}>
              <strong>{one.statement.name || one.product}</strong>
              <span className="row-figure">
                <Words>
                  {say(
                    'bottle.of-full',
                    { held: { held: one.held, unit: one.unit }, full: { held: one.statement.full, unit: one.unit } },
                    writer,
                  )}
                </Words>
              </span>
              <span className="small row-more">
                <Words>
                  {[
                    one.statement.part && `part ${one.statement.part}`,
                    packageFacts(one.statement, writer),
                    one.left?.state === 'finished' && 'past its date',
                  ]
                    .filter(Boolean)
                    .join('; ')}
                </Words>
              </span>
            </Link>
          </li>
        ) : null,
      )}
    </ul>
  )
}
