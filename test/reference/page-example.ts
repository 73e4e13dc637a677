import { readFileSync } from 'node:fs'

/** The table between the example marks of a science page, asked by the name of a row. */
export function exampleOf(page: string): (name: string) => string {
  const text = readFileSync(new URL(`../../docs/science/${page}.md`, import.meta.url), 'utf8')
  const part = text.split(`<!-- example: ${page} -->`)[1]?.split('<!-- end -->')[0] ?? ''
  const rows = part.trim().split('\n').slice(2)
  const cells = new Map(
    rows.map((line) => {
      const [, name, value] = line.split('|').map((cell) => cell.trim())
      return [name, value] as const
    }),
  )
  return (name) => {
    const value = cells.get(name)
    if (value === undefined) throw new Error(`the page ${page} has no row “${name}”`)
    return value
  }
}

/** Every number in a text; `m:ss` gives two. */
export const numbersOf = (text: string): number[] =>
  [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([digits]) => Number(digits))
