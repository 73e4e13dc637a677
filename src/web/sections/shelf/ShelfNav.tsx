import { Link, usePlace } from '../../shared/navigation/index.js'

const PLACES = [
  ['/shelf', 'Bottles'],
  ['/shelf/products', 'Products'],
  ['/shelf/lots', 'Lots'],
  ['/shelf/waste', 'Waste'],
  ['/shelf/kit', 'Tanks and kit'],
] as const

/** The pages of the shelf, one beside the other. */
export function ShelfNav() {
  const { path } = usePlace()
  return (
    <nav className="shelf-nav" aria-label="Pages of the shelf">
      <ul>
        {PLACES.map(([href, name]) => (
          <li key={href}>
            <Link href={href} {...(href === path ? { 'aria-current': 'page' as const } : {})}>
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  )
}
