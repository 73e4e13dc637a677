import { useQuery } from '@tanstack/react-query'
import { useEffect } from 'react'
import { say } from '../../../../words/index.js'
import { rollByNumber } from '../../../shared/api/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Asked, ButtonLink, Page, Reading, useWriter } from '../../../shared/ui/index.js'

/** Where the code on a sticker leads: on to the page of that roll, or a sentence where there is none. */
export function CodePage({ params }: { params: Record<string, string> }) {
  const writer = useWriter()
  const number = params['number'] ?? ''
  const roll = useQuery({ queryKey: ['rolls', 'by-number', number], queryFn: () => rollByNumber({ number }) })
  const id = roll.data?.id
  useEffect(() => {
    // In place of this address, so that going back leads to where the scan began.
    if (id !== undefined) go(`/rolls/${id}`, { replace: true })
  }, [id])
  return (
    <Page title={say('roll.code', { number }, writer)} actions={<ButtonLink href="/rolls">All rolls</ButtonLink>}>
      <Asked query={roll}>{() => <Reading />}</Asked>
    </Page>
  )
}
