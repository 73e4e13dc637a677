import { PAPERS } from '../setting/page.js'
import { paintPages } from '../setting/paint-page.js'
import { paragraph } from '../setting/paragraph.js'
import type { BenchSheetInput } from './definition.js'

/** The paper a run can be done by with a wall clock and a pencil alone: every job at its second. Tagged PDF. */
export function benchSheet(input: BenchSheetInput): Promise<Uint8Array> {
  const margin = 46
  const { block } = paragraph('H1', [input.title], margin, margin, { size: 22, face: 'strong' })
  return paintPages([{ title: input.title, ...PAPERS[input.paper], margin, blocks: [block] }], input.printedAt)
}
