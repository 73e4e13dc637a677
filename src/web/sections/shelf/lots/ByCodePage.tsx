import { useEffect } from 'react'
import { useLotByCode } from '../../../shared/desk/index.js'
import { go } from '../../../shared/navigation/index.js'
import { Asked, Reading } from '../../../shared/ui/index.js'

/** The address on a label: leads to its lot. */
export function ByCodePage({ params }: { params: Record<string, string> }) {
  const lot = useLotByCode(params.code ?? '')
  const id = lot.data?.lot.id
  useEffect(() => {
    if (id !== undefined) go(`/shelf/lots/${id}`, { replace: true })
  }, [id])
  return <Asked query={lot}>{() => <Reading />}</Asked>
}
