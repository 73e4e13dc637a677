import type { ReactNode } from 'react'
import { rollStickersAddress, useBench } from '../../../shared/api/index.js'
import { orderSlipAddress } from '../../../shared/desk/index.js'

interface OfRolls {
  readonly of: { readonly order_id: string } | { readonly roll_ids: readonly string[] }
}

/** Opens the paired stickers of rolls, or of an order, as a file to print. */
export function StickersLink({ of }: OfRolls) {
  const paper = usePaper()
  const rolls = 'order_id' in of ? of : { roll_ids: of.roll_ids.join(',') }
  return <PaperLink href={rollStickersAddress({ ...rolls, ...paper })}>Print stickers</PaperLink>
}

/** Opens the slip of an order; with the token of a link that was just made, its code is on it. */
export function SlipLink({ order, token }: { order: string; token?: string }) {
  const paper = usePaper()
  const said = token === undefined ? 'Print the slip' : 'Print the slip with this link'
  return (
    <PaperLink href={orderSlipAddress(order, { ...(token === undefined ? {} : { token }), ...paper })}>
      {said}
    </PaperLink>
  )
}

function usePaper(): { paper?: 'A4' | 'Letter' } {
  const paper = useBench().data?.paper
  return paper === undefined ? {} : { paper }
}

const PaperLink = ({ href, children }: { href: string; children: ReactNode }) => (
  <a className="btn" href={href} target="_blank" rel="noreferrer">
    {children}
  </a>
)
